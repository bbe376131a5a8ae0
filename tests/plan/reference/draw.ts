/** Small trees drawn at random, as the cells of an inventory: near the bounds of the rules more often than by chance. */
import { numbers } from '../../../bench/madeInventory'
import type { Cell } from '../../../shared/cells'

export type Units = 'in-ft' | 'cm-m'

/** What was drawn of a tree and a limb: words as they are typed, lengths in mm and m. */
export type Drawn = Readonly<Record<string, string | number | null>>
export interface DrawnTree {
  readonly tree: Drawn
  readonly limbs: readonly Drawn[]
  /** Lengths are typed in whole units, so that many of them meet a bound. */
  readonly rough?: boolean
}

/** What a drawn tree is rich in. */
type Bent = 'any' | 'leaders' | 'hanging' | 'families'

export interface Dice {
  number(low: number, high: number): number
  whole(low: number, high: number): number
  chance(part: number): boolean
  one<T>(choices: readonly T[]): T
}

export function dice(seed: number): Dice {
  const stream = numbers(seed)
  const number = (low: number, high: number) => low + (high - low) * stream()
  const whole = (low: number, high: number) => Math.floor(number(low, high + 1 - 1e-9))
  return {
    number,
    whole,
    chance: (part) => stream() < part,
    one: (choices) => choices[whole(0, choices.length - 1)]!
  }
}

const heights = { planting: [3, 5], young: [4, 9], medium: [8, 16], mature: [12, 25], old: [15, 28] } as const
const stages = ['planting', 'young', 'young', 'medium', 'medium', 'mature', 'old'] as const

export function drawTree(id: string, seed: number, most = 7): DrawnTree {
  const d = dice(seed)
  const bent: Bent = d.one(['any', 'any', 'leaders', 'hanging', 'families'])
  const stage = d.one(stages)
  const [lowest, highest] = heights[stage]
  const height = d.number(lowest, highest)
  const trunk = height * d.number(12, 25)
  const crownBase = height * d.one([0.1, 0.2, d.number(0.1, 0.35), d.number(0.3, 0.5)])
  const tree: Drawn = {
    tree: id,
    trunk,
    height,
    crownBase,
    form: d.chance(0.8) ? null : d.one(['decurrent', 'excurrent', 'multi-stem']),
    stage: d.chance(0.03) ? null : stage,
    vigor: d.chance(0.03) ? null : d.one(['good', 'good', 'good', 'fair', 'poor']),
    growth: d.chance(0.1) ? null : d.one(['slow', 'medium', 'fast']),
    removed: d.chance(0.8) ? null : d.one([0, 0.05, 0.1]),
    localLimit: d.chance(0.9) ? null : d.one([0.05, 0.1, 0.3]),
    clearance: bent !== 'hanging' && d.chance(0.6) ? null : d.number(1.8, 5),
    clearanceSide: d.chance(0.6) ? null : d.one([0, 90, 180, 225]),
    dieback: d.chance(0.85) ? null : d.one([0.05, 0.1, 0.2, 0.25, 0.4]),
    lastPruned: d.chance(0.9) ? null : `202${d.one([5, 6, 6])}-0${d.whole(1, 9)}-${d.whole(10, 28)}`
  }
  const count = d.whole(bent === 'leaders' ? Math.ceil(most / 2) : 1, most)
  const limbs: Drawn[] = []
  for (let number = 1; number <= count; number++) limbs.push(drawLimb(d, tree, `L${number}`, limbs, bent))
  if (d.chance(0.05)) limbs.push({ ...d.one(limbs), limb: 'Twin' })
  if (d.chance(0.5)) limbs.splice(d.whole(0, limbs.length), 0, drawLeader(d, tree))
  return { tree, limbs: limbs.map((limb) => measuredBelow(limb, limbs)), rough: d.chance(0.25) }
}

/** A stem that is measured below its union bears all the limbs of the union. */
function measuredBelow(limb: Drawn, limbs: readonly Drawn[]): Drawn {
  if (limb.measured !== 'below') return limb
  const stem = Number(limb.stem)
  let below = Math.hypot(stem, Number(limb.diameter))
  for (let turn = 0; turn < 3; turn++) {
    const near = limbs.filter(
      (other) =>
        other.role !== 'leader' &&
        other.parent === limb.parent &&
        Math.abs(Number(other.origin) - Number(limb.origin)) * 1000 <= below
    )
    below = Math.hypot(stem, ...near.map(({ diameter }) => Number(diameter)))
  }
  return { ...limb, stem: below }
}

function drawLeader(d: Dice, tree: Drawn): Drawn {
  const [height, trunk] = [Number(tree.height), Number(tree.trunk)]
  return {
    limb: 'Main',
    diameter: trunk * d.number(0.3, 0.6),
    stem: null,
    origin: height * d.number(0.2, 0.5),
    tip: height,
    role: 'leader',
    live: d.chance(0.03) ? 'dead' : null,
    broken: d.chance(0.05) ? 'yes' : null,
    decay: d.chance(0.05) ? 'yes' : null
  }
}

const ratios = [0.3, 0.45, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.1]

function drawLimb(d: Dice, tree: Drawn, limb: string, before: readonly Drawn[], bent: Bent): Drawn {
  const [height, trunk, base] = [Number(tree.height), Number(tree.trunk), Number(tree.crownBase)]
  const carrying = before.filter(({ live }) => live === null)
  const onLimb = bent === 'families' ? 0.6 : bent === 'leaders' ? 0 : 0.15
  const parent = carrying.length > 0 && d.chance(onLimb) ? d.one(carrying) : null
  const isLow = bent === 'hanging' || d.chance(0.4)
  const low = d.chance(0.1) ? 0 : base * d.number(0.7, 1.1)
  const origin =
    parent === null
      ? Math.min(height * 0.9, isLow ? low : d.number(base, height * 0.8))
      : d.number(Number(parent.origin), Number(parent.tip))
  const rise =
    bent === 'leaders'
      ? d.number(0.4, 0.9)
      : d.one([d.number(0.05, 0.3), d.number(0.2, 0.7), d.number(0.2, 0.9), -0.1, 0])
  const tip = Math.min(height, Math.max(0.5, origin + height * rise))
  const stem =
    parent === null
      ? Math.max(8, trunk * (1 - origin / height) * d.number(0.8, 1.05))
      : Number(parent.diameter) * d.number(0.4, 0.95)
  const ratio = d.chance(0.3) ? d.one(ratios) : d.number(bent === 'leaders' ? 0.55 : 0.25, 1.05)
  const diameter = Math.max(5, d.chance(0.12) ? d.one([25.4, 50.8, 101.6]) : stem * ratio)
  const below = d.chance(0.15)
  const cut = d.chance(0.15) ? diameter * Math.sqrt(d.number(0.1, 0.8)) : null
  const recorded = d.chance(0.1)
  return {
    limb,
    diameter,
    stem,
    measured: below ? 'below' : null,
    origin,
    tip,
    parent: parent === null ? null : String(parent.limb),
    role: d.chance(bent === 'hanging' ? 0.25 : 0.07) ? 'temporary' : d.chance(0.5) ? 'limb' : null,
    bark: d.one(['none', 'none', 'none', 'partial', 'full']),
    bearing: d.chance(0.4) ? null : d.one([0, 45, 90, 135, 180, 270, 315]),
    live: d.chance(0.05) ? 'dead' : null,
    broken: d.chance(0.05) ? 'yes' : null,
    rubbing: d.chance(0.1) ? 'yes' : null,
    decay: d.chance(0.05) ? 'yes' : null,
    length: d.chance(0.6) ? null : Math.max(0.3, Math.abs(tip - origin)) * d.number(1, 4),
    lowestFoliage:
      d.chance(0.7) || tip <= Math.max(origin, base)
        ? null
        : d.number(Math.max(base, origin * 0.7), tip * 0.95),
    lateralHeight: d.chance(0.8) || tip <= origin ? null : origin + (tip - origin) * d.number(0.1, 0.8),
    lateral: d.chance(0.7) ? null : (cut ?? diameter / 2) * d.number(0.2, 0.9),
    cut,
    lastCutShare: recorded ? d.one([0.25, 0.5]) : null,
    lastCutDate: recorded ? 2027 - d.whole(0, 4) : null,
    foliageShare: d.chance(0.9) ? null : d.number(0.02, 0.3)
  }
}

const small = ['diameter', 'stem', 'cut', 'lateral', 'trunk']
const tall = ['height', 'crownBase', 'clearance', 'origin', 'tip', 'length', 'lowestFoliage', 'lateralHeight']

const headers: Readonly<Record<string, string>> = {
  tree: 'Tree',
  trunk: 'Trunk diameter',
  height: 'Tree height',
  crownBase: 'Crown base height',
  form: 'Form',
  stage: 'Life stage',
  vigor: 'Vigor',
  growth: 'Growth',
  removed: 'Foliage removed this season',
  localLimit: 'Local limit',
  clearance: 'Clearance needed',
  clearanceSide: 'Clearance side',
  dieback: 'Dieback',
  lastPruned: 'Last pruned',
  limb: 'Limb',
  diameter: 'Limb diameter',
  stem: 'Stem diameter at the union',
  measured: 'Stem measured',
  origin: 'Origin height',
  tip: 'Tip height',
  parent: 'Parent limb',
  role: 'Role',
  bark: 'Included bark',
  bearing: 'Bearing',
  live: 'Live or dead',
  broken: 'Broken',
  rubbing: 'Rubbing',
  decay: 'Decay or crack',
  length: 'Limb length',
  lowestFoliage: 'Lowest foliage height',
  lateralHeight: 'First live lateral height',
  lateral: 'Lateral diameter',
  cut: 'Measured cut diameter',
  lastCutShare: 'Share taken at the last cut',
  lastCutDate: 'Date of the last cut',
  foliageShare: 'Observed foliage share'
}

/** How finely lengths are typed. */
type Step = 'exact' | 'fine' | 'rough'

function typed(field: string, value: string | number | null | undefined, units: Units, step: Step): Cell {
  if (value === null || value === undefined) return null
  if (typeof value === 'string') return value
  const inches = units === 'in-ft'
  if (small.includes(field))
    return rounded(value / (inches ? 25.4 : 10), { exact: 0, fine: 1e-4, rough: 0.5 }[step])
  if (tall.includes(field))
    return rounded(value / (inches ? 0.3048 : 1), { exact: 0, fine: 1e-4, rough: inches ? 1 : 0.5 }[step])
  return value
}

function headerOf(field: string, units: Units): string {
  const unit = small.includes(field) ? units.slice(0, 2) : tall.includes(field) ? units.slice(3) : ''
  return unit === '' ? headers[field]! : `${headers[field]!} (${unit})`
}

const fields = Object.keys(headers)

function rounded(value: number, step: number): number {
  if (step === 0) return value
  return Number((Math.max(1, Math.round(value / step)) * step).toFixed(4))
}

function rowsOf(trees: readonly DrawnTree[], units: Units, stepOf: (tree: DrawnTree) => Step): Cell[][] {
  const rows = trees.flatMap((drawn) =>
    drawn.limbs.map((limb) =>
      fields.map((field) => typed(field, drawn.tree[field] ?? limb[field], units, stepOf(drawn)))
    )
  )
  return [fields.map((field) => headerOf(field, units)), ...rows]
}

/** The rows of an inventory: a header and one row per limb, with what is known of its tree. */
export function inventoryRows(trees: readonly DrawnTree[], units: Units): Cell[][] {
  return rowsOf(trees, units, ({ rough }) => (rough === true ? 'rough' : 'fine'))
}

/** The same with every length as it was drawn, to the last digit. */
export function exactRows(trees: readonly DrawnTree[], units: Units): Cell[][] {
  return rowsOf(trees, units, () => 'exact')
}
