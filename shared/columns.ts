import {
  askedChoice,
  choice,
  date,
  dead,
  degrees,
  flag,
  growth,
  limit,
  needed,
  optional,
  side,
  text,
  treeId,
  type Reads
} from './columnKinds'
import { unitFromWord, type LengthUnit } from './units'

/**
 * What a column moves: the plan (its cuts, prices or checks), only what is printed or drawn, or nothing yet, being kept
 * with the tree or limb. `tests/inventory/columnsInUse.test.ts` holds every column to what it says here.
 */
export type ColumnUse = 'plan' | 'document' | 'record'

/** One field of the inventory, with everything the project states about it. */
export interface Column {
  readonly field: string
  readonly of: 'tree' | 'limb'
  /** Our name for it. */
  readonly name: string
  /** Kind, limits, and what blank and unreadable cells mean. */
  readonly reads: Reads<unknown>
  readonly use: ColumnUse
  /** What a tree or limb calls it, where that is not the field's own name. */
  readonly into?: string
  /** The field whose value it completes; it is not kept by itself. */
  readonly joins?: string
  /** Headers people give it, normalized: lower case, letters and digits only, single spaces, without the unit. */
  readonly words: readonly string[]
}

/** Every column, in the order in which a choice offers them. A new one needs an entry here and its use. */
export const columns = [
  {
    field: 'tree',
    of: 'tree',
    name: 'Tree',
    reads: treeId,
    use: 'plan',
    into: 'id',
    words: ['tree', 'tree id', 'tree no', 'tree number', 'tree tag', 'tag', 'tree name', 'treeid']
  },
  {
    field: 'species',
    of: 'tree',
    name: 'Species',
    reads: text(''),
    use: 'plan',
    words: ['species', 'tree species', 'kind', 'common name', 'botanical name', 'sp']
  },
  {
    field: 'trunk',
    of: 'tree',
    name: 'Trunk diameter',
    reads: optional('stems'),
    use: 'plan',
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
    reads: needed('positive height'),
    use: 'plan',
    words: ['tree height', 'height', 'tree ht', 'total height', 'ht', 'tree h']
  },
  {
    field: 'crownBase',
    of: 'tree',
    name: 'Crown base height',
    reads: optional('height'),
    use: 'plan',
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
    reads: optional('height'),
    use: 'document',
    words: ['spread', 'crown spread', 'crown width', 'crown diameter', 'canopy spread']
  },
  {
    field: 'form',
    of: 'tree',
    name: 'Form',
    reads: askedChoice('form'),
    use: 'plan',
    words: ['form', 'tree form', 'habit', 'growth habit', 'growth form', 'crown form']
  },
  {
    field: 'stage',
    of: 'tree',
    name: 'Life stage',
    reads: askedChoice('lifeStage'),
    use: 'plan',
    words: ['life stage', 'stage', 'age class', 'age', 'maturity']
  },
  {
    field: 'vigor',
    of: 'tree',
    name: 'Vigor',
    reads: choice('vigor', null, 'it counts as not given'),
    use: 'plan',
    words: ['vigor', 'vigour', 'health', 'vitality', 'condition']
  },
  {
    field: 'growth',
    of: 'tree',
    name: 'Growth',
    reads: growth,
    use: 'plan',
    words: ['growth', 'growth rate', 'growth class', 'diameter growth', 'trunk growth']
  },
  {
    field: 'removed',
    of: 'tree',
    name: 'Foliage removed this season',
    reads: limit(null, 1),
    use: 'plan',
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
    reads: limit(null, 0),
    use: 'plan',
    words: ['local limit', 'removal limit', 'local removal limit', 'ordinance limit', 'max removal']
  },
  {
    field: 'clearance',
    of: 'tree',
    name: 'Clearance needed',
    reads: optional('height'),
    use: 'plan',
    words: ['clearance', 'clearance needed', 'clearance required', 'clearance height', 'required clearance']
  },
  {
    field: 'clearanceSide',
    of: 'tree',
    name: 'Clearance side',
    reads: side,
    use: 'plan',
    words: ['clearance side', 'clearance on side', 'side', 'clearance bearing', 'clearance direction']
  },
  {
    field: 'dieback',
    of: 'tree',
    name: 'Dieback',
    reads: optional('share'),
    use: 'plan',
    words: ['dieback', 'crown dieback']
  },
  {
    field: 'caliper',
    of: 'tree',
    name: 'Caliper',
    reads: optional('diameter'),
    use: 'plan',
    words: ['caliper', 'calliper']
  },
  {
    field: 'caliperHeight',
    of: 'tree',
    name: 'Caliper height',
    reads: optional('height'),
    use: 'record',
    words: ['caliper height', 'caliper ht', 'calliper height']
  },
  {
    field: 'access',
    of: 'tree',
    name: 'Access',
    reads: choice('access', null, 'it counts as not given'),
    use: 'plan',
    words: ['access', 'site access']
  },
  {
    field: 'site',
    of: 'tree',
    name: 'Location',
    reads: text(''),
    use: 'document',
    words: ['site', 'location', 'address', 'street', 'place']
  },
  {
    field: 'zone',
    of: 'tree',
    name: 'Zone',
    reads: text(''),
    use: 'document',
    words: ['zone', 'area', 'sector', 'district', 'section']
  },
  {
    field: 'lastPruned',
    of: 'tree',
    name: 'Last pruned',
    reads: date,
    use: 'plan',
    words: ['last pruned', 'last pruning', 'last visit', 'pruned on', 'last prune date']
  },
  {
    field: 'matureHeight',
    of: 'tree',
    name: 'Mature height',
    reads: optional('height'),
    use: 'plan',
    words: ['mature height', 'mature ht', 'eventual height', 'height at maturity']
  },
  {
    field: 'lowestPermanent',
    of: 'tree',
    name: 'Lowest permanent limb',
    reads: optional('height'),
    use: 'plan',
    words: [
      'lowest permanent limb',
      'lowest permanent branch',
      'lowest permanent limb height',
      'lowest permanent limb ht',
      'permanent limbs from',
      'first permanent branch'
    ]
  },
  {
    field: 'treeNotes',
    of: 'tree',
    name: 'Tree notes',
    reads: text(''),
    use: 'document',
    into: 'notes',
    words: ['tree notes', 'tree note', 'tree remarks', 'tree comments']
  },

  {
    field: 'limb',
    of: 'limb',
    name: 'Limb',
    reads: text('', 'the limb is named by its row'),
    use: 'plan',
    into: 'id',
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
    reads: needed('diameter'),
    use: 'plan',
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
    reads: optional('diameter'),
    use: 'plan',
    joins: 'diameter',
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
    reads: needed('diameter'),
    use: 'plan',
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
    reads: needed('diameter'),
    use: 'plan',
    joins: 'stem',
    words: ['stem below', 'stem diameter below', 'stem dia below', 'stem below union', 'trunk below union']
  },
  {
    field: 'measured',
    of: 'limb',
    name: 'Stem measured',
    reads: choice('measured', 'above', 'it counts as above'),
    use: 'plan',
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
    reads: needed('height'),
    use: 'plan',
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
    reads: needed('height'),
    use: 'plan',
    words: ['tip', 'tip height', 'tip ht', 'limb tip', 'reaches', 'top of limb', 'limb height', 'reaches to']
  },
  {
    field: 'parent',
    of: 'limb',
    name: 'Parent limb',
    reads: text(null),
    use: 'plan',
    words: ['parent', 'parent limb', 'on limb', 'grows from']
  },
  {
    field: 'role',
    of: 'limb',
    name: 'Role',
    reads: askedChoice('role'),
    use: 'plan',
    words: ['role', 'limb role', 'type']
  },
  {
    field: 'permanent',
    of: 'limb',
    name: 'Permanent',
    reads: choice('permanent', null, 'it counts as not given'),
    use: 'plan',
    words: ['permanent', 'permanent limb', 'permanent branch', 'permanent or temporary']
  },
  {
    field: 'bark',
    of: 'limb',
    name: 'Included bark',
    reads: choice('includedBark', 'none', 'it counts as none'),
    use: 'plan',
    words: ['included bark', 'bark included', 'inclusion', 'bark inclusion', 'bark', 'incl bark', 'included']
  },
  {
    field: 'angle',
    of: 'limb',
    name: 'Angle from vertical',
    reads: degrees(180),
    use: 'plan',
    words: ['angle', 'angle from vertical', 'lean', 'lean angle', 'limb angle']
  },
  {
    field: 'bearing',
    of: 'limb',
    name: 'Bearing',
    reads: optional('bearing'),
    use: 'plan',
    words: ['bearing', 'compass', 'azimuth', 'direction', 'aspect']
  },
  {
    field: 'live',
    of: 'limb',
    name: 'Live or dead',
    reads: dead,
    use: 'plan',
    into: 'dead',
    words: ['live', 'live or dead', 'alive', 'dead', 'live dead', 'status']
  },
  {
    field: 'broken',
    of: 'limb',
    name: 'Broken',
    reads: flag,
    use: 'plan',
    words: ['broken', 'break', 'hanger']
  },
  {
    field: 'breakHeight',
    of: 'limb',
    name: 'Break height',
    reads: optional('height'),
    use: 'plan',
    words: ['break height', 'break ht', 'height of break']
  },
  {
    field: 'rubbing',
    of: 'limb',
    name: 'Rubbing',
    reads: flag,
    use: 'plan',
    words: ['rubbing', 'rubs', 'crossing']
  },
  {
    field: 'decay',
    of: 'limb',
    name: 'Decay or crack',
    reads: flag,
    use: 'plan',
    words: ['decay', 'crack', 'decay or crack', 'decay crack', 'cavity']
  },
  {
    field: 'length',
    of: 'limb',
    name: 'Limb length',
    reads: optional('height'),
    use: 'plan',
    words: ['length', 'limb length', 'branch length']
  },
  {
    field: 'lowestFoliage',
    of: 'limb',
    name: 'Lowest foliage height',
    reads: optional('height'),
    use: 'plan',
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
    reads: optional('height'),
    use: 'plan',
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
    reads: optional('diameter'),
    use: 'plan',
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
    reads: optional('diameter'),
    use: 'plan',
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
    reads: optional('share'),
    use: 'plan',
    words: ['last cut share', 'last cut', 'share taken last', 'last share']
  },
  {
    field: 'lastCutDate',
    of: 'limb',
    name: 'Date of the last cut',
    reads: optional('year'),
    use: 'plan',
    into: 'lastCutYear',
    words: ['last cut date', 'last cut on', 'date of last cut', 'last cut year']
  },
  {
    field: 'foliageShare',
    of: 'limb',
    name: 'Observed foliage share',
    reads: optional('share'),
    use: 'plan',
    words: ['foliage share', 'observed share', 'observed foliage share', 'share of foliage', 'foliage']
  },
  {
    field: 'notes',
    of: 'limb',
    name: 'Notes',
    reads: text(''),
    use: 'document',
    words: ['notes', 'note', 'remarks', 'comments', 'limb notes']
  }
] as const satisfies readonly Column[]

type Entry = (typeof columns)[number]

export type Field = Entry['field']

type KeyOf<E extends Entry> = E extends { into: infer I extends string } ? I : E['field']

type ValuesOf<O extends Column['of']> = {
  readonly [E in Exclude<Extract<Entry, { of: O }>, { joins: string }> as KeyOf<E>]: E['reads'] extends Reads<
    infer T
  >
    ? T
    : never
}

/** What the columns of a tree and of a limb give, by the names that the model has for them. */
export type TreeValues = ValuesOf<'tree'>
export type LimbValues = ValuesOf<'limb'>

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
