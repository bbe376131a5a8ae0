import type { ChoiceName } from './choices'
import { unitFromWord, type LengthUnit } from './units'

/** What kind of number or word a column holds. */
export type Measure =
  | { kind: 'text' }
  | { kind: 'diameter' }
  | { kind: 'height' }
  | { kind: 'share' }
  | { kind: 'degrees'; limit: number }
  | { kind: 'date' }
  | { kind: 'growth' }
  | { kind: 'choice'; choice: ChoiceName }

/** One field of the inventory: our name for it and the words people head it with. */
export interface Column {
  field: string
  of: 'tree' | 'limb'
  name: string
  measure: Measure
  /** Normalised headers: lower case, letters and digits only, single spaces, without the unit. */
  words: readonly string[]
}

const text: Measure = { kind: 'text' }
const diameter: Measure = { kind: 'diameter' }
const height: Measure = { kind: 'height' }
const share: Measure = { kind: 'share' }
const date: Measure = { kind: 'date' }
const choice = (name: ChoiceName): Measure => ({ kind: 'choice', choice: name })

export const columns = [
  {
    field: 'tree',
    of: 'tree',
    name: 'Tree',
    measure: text,
    words: ['tree', 'tree id', 'tree no', 'tree number', 'tree tag', 'tag', 'tree name', 'treeid']
  },
  {
    field: 'species',
    of: 'tree',
    name: 'Species',
    measure: text,
    words: ['species', 'tree species', 'kind', 'common name', 'botanical name', 'sp']
  },
  {
    field: 'trunk',
    of: 'tree',
    name: 'Trunk diameter',
    measure: diameter,
    words: [
      'trunk diameter',
      'trunk dia',
      'trunk diam',
      'trunk',
      'dbh',
      'diameter at breast height',
      'tree dbh',
      'trunk dbh'
    ]
  },
  {
    field: 'height',
    of: 'tree',
    name: 'Tree height',
    measure: height,
    words: ['tree height', 'height', 'tree ht', 'total height', 'ht', 'tree h']
  },
  {
    field: 'crownBase',
    of: 'tree',
    name: 'Crown base height',
    measure: height,
    words: [
      'crown base',
      'crown base height',
      'crown base ht',
      'live crown base',
      'base of crown',
      'height to crown base',
      'canopy base'
    ]
  },
  {
    field: 'spread',
    of: 'tree',
    name: 'Crown spread',
    measure: height,
    words: ['spread', 'crown spread', 'crown width', 'crown diameter', 'canopy spread']
  },
  {
    field: 'stage',
    of: 'tree',
    name: 'Life stage',
    measure: choice('lifeStage'),
    words: ['life stage', 'stage', 'age class', 'age', 'maturity']
  },
  {
    field: 'vigor',
    of: 'tree',
    name: 'Vigor',
    measure: choice('vigor'),
    words: ['vigor', 'vigour', 'health', 'vitality', 'condition']
  },
  {
    field: 'growth',
    of: 'tree',
    name: 'Growth',
    measure: { kind: 'growth' },
    words: ['growth', 'growth rate', 'growth class', 'diameter growth', 'trunk growth']
  },
  {
    field: 'removed',
    of: 'tree',
    name: 'Foliage removed this season',
    measure: share,
    words: [
      'foliage removed this season',
      'removed this season',
      'foliage removed',
      'already removed',
      'removed already',
      'removed'
    ]
  },
  {
    field: 'localLimit',
    of: 'tree',
    name: 'Local limit',
    measure: share,
    words: ['local limit', 'removal limit', 'local removal limit', 'ordinance limit', 'max removal']
  },
  {
    field: 'clearance',
    of: 'tree',
    name: 'Clearance needed',
    measure: height,
    words: ['clearance', 'clearance needed', 'clearance required', 'clearance height', 'required clearance']
  },
  {
    field: 'clearanceSide',
    of: 'tree',
    name: 'Clearance side',
    measure: text,
    words: ['clearance side', 'clearance on side', 'side', 'clearance bearing', 'clearance direction']
  },
  { field: 'dieback', of: 'tree', name: 'Dieback', measure: share, words: ['dieback', 'crown dieback'] },
  { field: 'caliper', of: 'tree', name: 'Caliper', measure: diameter, words: ['caliper', 'calliper'] },
  {
    field: 'caliperHeight',
    of: 'tree',
    name: 'Caliper height',
    measure: height,
    words: ['caliper height', 'caliper ht', 'calliper height']
  },
  {
    field: 'access',
    of: 'tree',
    name: 'Access',
    measure: choice('access'),
    words: ['access', 'site access']
  },
  {
    field: 'site',
    of: 'tree',
    name: 'Location',
    measure: text,
    words: ['site', 'location', 'address', 'street', 'place']
  },
  {
    field: 'lastPruned',
    of: 'tree',
    name: 'Last pruned',
    measure: date,
    words: ['last pruned', 'last pruning', 'last visit', 'pruned on', 'last prune date']
  },
  {
    field: 'matureHeight',
    of: 'tree',
    name: 'Mature height',
    measure: height,
    words: ['mature height', 'mature ht', 'eventual height', 'height at maturity']
  },
  {
    field: 'treeNotes',
    of: 'tree',
    name: 'Tree notes',
    measure: text,
    words: ['tree notes', 'tree note', 'tree remarks', 'tree comments']
  },

  {
    field: 'limb',
    of: 'limb',
    name: 'Limb',
    measure: text,
    words: [
      'limb',
      'limb id',
      'limb no',
      'limb number',
      'branch',
      'branch id',
      'branch no',
      'limb name',
      'stem',
      'stem id'
    ]
  },
  {
    field: 'diameter',
    of: 'limb',
    name: 'Limb diameter',
    measure: diameter,
    words: [
      'limb diameter',
      'limb dia',
      'limb diam',
      'branch diameter',
      'branch dia',
      'base diameter',
      'limb d'
    ]
  },
  {
    field: 'diameter2',
    of: 'limb',
    name: 'Limb diameter, second reading',
    measure: diameter,
    words: [
      'limb diameter 2',
      'limb dia 2',
      'branch diameter 2',
      'limb diameter second reading',
      'limb dia second'
    ]
  },
  {
    field: 'stem',
    of: 'limb',
    name: 'Stem diameter at the union',
    measure: diameter,
    words: [
      'stem diameter',
      'stem dia',
      'stem diam',
      'stem at union',
      'stem diameter at union',
      'trunk at union',
      'trunk diameter at union',
      'trunk dia at union',
      'stem dia at union',
      'stem d',
      'stem above',
      'stem diameter above'
    ]
  },
  {
    field: 'stemBelow',
    of: 'limb',
    name: 'Stem diameter below the union',
    measure: diameter,
    words: ['stem below', 'stem diameter below', 'stem dia below', 'stem below union', 'trunk below union']
  },
  {
    field: 'measured',
    of: 'limb',
    name: 'Stem measured',
    measure: choice('measured'),
    words: [
      'measured',
      'stem measured',
      'measured at',
      'measured where',
      'above or below',
      'stem measured at'
    ]
  },
  {
    field: 'origin',
    of: 'limb',
    name: 'Origin height',
    measure: height,
    words: [
      'origin',
      'origin height',
      'origin ht',
      'attachment height',
      'union height',
      'height of union',
      'starts at'
    ]
  },
  {
    field: 'tip',
    of: 'limb',
    name: 'Tip height',
    measure: height,
    words: ['tip', 'tip height', 'tip ht', 'limb tip', 'reaches', 'top of limb', 'limb height', 'reaches to']
  },
  {
    field: 'parent',
    of: 'limb',
    name: 'Parent limb',
    measure: text,
    words: ['parent', 'parent limb', 'on limb', 'grows from']
  },
  { field: 'role', of: 'limb', name: 'Role', measure: choice('role'), words: ['role', 'limb role', 'type'] },
  {
    field: 'bark',
    of: 'limb',
    name: 'Included bark',
    measure: choice('includedBark'),
    words: ['included bark', 'bark included', 'inclusion', 'bark inclusion', 'bark', 'incl bark', 'included']
  },
  {
    field: 'angle',
    of: 'limb',
    name: 'Angle from vertical',
    measure: { kind: 'degrees', limit: 180 },
    words: ['angle', 'angle from vertical', 'lean', 'lean angle', 'limb angle']
  },
  {
    field: 'bearing',
    of: 'limb',
    name: 'Bearing',
    measure: { kind: 'degrees', limit: 360 },
    words: ['bearing', 'compass', 'azimuth', 'direction', 'aspect']
  },
  {
    field: 'live',
    of: 'limb',
    name: 'Live or dead',
    measure: choice('live'),
    words: ['live', 'live or dead', 'alive', 'dead', 'live dead', 'status']
  },
  {
    field: 'broken',
    of: 'limb',
    name: 'Broken',
    measure: choice('flag'),
    words: ['broken', 'break', 'hanger']
  },
  {
    field: 'rubbing',
    of: 'limb',
    name: 'Rubbing',
    measure: choice('flag'),
    words: ['rubbing', 'rubs', 'crossing']
  },
  {
    field: 'decay',
    of: 'limb',
    name: 'Decay or crack',
    measure: choice('flag'),
    words: ['decay', 'crack', 'decay or crack', 'decay crack', 'cavity']
  },
  {
    field: 'length',
    of: 'limb',
    name: 'Limb length',
    measure: height,
    words: ['length', 'limb length', 'branch length']
  },
  {
    field: 'lowestFoliage',
    of: 'limb',
    name: 'Lowest foliage height',
    measure: height,
    words: [
      'lowest foliage',
      'lowest foliage height',
      'lowest leaves',
      'foliage starts at',
      'foliage from',
      'lowest foliage ht'
    ]
  },
  {
    field: 'lateralHeight',
    of: 'limb',
    name: 'First live lateral height',
    measure: height,
    words: [
      'first lateral',
      'first lateral height',
      'first live lateral',
      'first live lateral height',
      'lateral height',
      'first lateral ht'
    ]
  },
  {
    field: 'lateral',
    of: 'limb',
    name: 'Lateral diameter',
    measure: diameter,
    words: [
      'lateral diameter',
      'lateral dia',
      'first lateral diameter',
      'first lateral dia',
      'lateral at cut',
      'lateral'
    ]
  },
  {
    field: 'cut',
    of: 'limb',
    name: 'Measured cut diameter',
    measure: diameter,
    words: [
      'cut diameter',
      'cut dia',
      'measured cut',
      'measured cut diameter',
      'proposed cut',
      'diameter at cut'
    ]
  },
  {
    field: 'lastCutShare',
    of: 'limb',
    name: 'Share taken at the last cut',
    measure: share,
    words: ['last cut share', 'last cut', 'share taken last', 'last share']
  },
  {
    field: 'lastCutDate',
    of: 'limb',
    name: 'Date of the last cut',
    measure: date,
    words: ['last cut date', 'last cut on', 'date of last cut', 'last cut year']
  },
  {
    field: 'foliageShare',
    of: 'limb',
    name: 'Observed foliage share',
    measure: share,
    words: ['foliage share', 'observed share', 'observed foliage share', 'share of foliage', 'foliage']
  },
  {
    field: 'notes',
    of: 'limb',
    name: 'Notes',
    measure: text,
    words: ['notes', 'note', 'remarks', 'comments', 'limb notes']
  }
] as const satisfies readonly Column[]

export type Field = (typeof columns)[number]['field']

/** A header taken apart: "Limb dia. (in)" gives the words "limb dia" and the unit "in". */
export interface Header {
  words: string
  unit: LengthUnit | null
  /** The header says percent: "Foliage share %". */
  percent: boolean
}

/** Takes a header apart into its words and its unit. */
export function readHeader(header: string): Header {
  let words = header.toLowerCase().replace(/[_\-/]+/g, ' ')
  let unit: LengthUnit | null = null
  const percent = /%|\bpercent\b|\bpct\b/.test(words)
  words = words.replace(/%|\bpercent\b|\bpct\b/g, ' ')
  words = words.replace(/[([{]\s*([^)\]}]*?)\s*[)\]}]/g, (_whole, inner: string) => {
    const found = unitFromWord(inner.replace(/\s*(yr|year|a year|per year)$/, ''))
    if (found !== null) unit = found
    return found !== null || /^(deg|degrees|°|date|id|no)?\.?$/.test(inner) ? ' ' : ` ${inner} `
  })
  words = words
    .replace(/[.,:;°#?*]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()
  const last = /^(.*\S) (\S+)$/.exec(words)
  if (unit === null && last?.[1] !== undefined && last[2] !== undefined) {
    const found = unitFromWord(last[2])
    if (found !== null) {
      unit = found
      words = last[1].replace(/ in$/, '')
    }
  }
  words = words.replace(/ (deg|degrees)$/, '')
  return { words, unit, percent }
}

const byWords = new Map<string, Field>()
for (const column of columns) for (const word of column.words) byWords.set(word, column.field)

const byField = new Map<Field, Column>(columns.map((column) => [column.field, column]))

/** The field a header's words name, or null. */
export function fieldFromWords(words: string): Field | null {
  return byWords.get(words) ?? null
}

/** The dictionary's entry of a field. */
export function columnOf(field: Field): Column {
  const column = byField.get(field)
  if (column === undefined) throw new Error(`No column ${field}`)
  return column
}
