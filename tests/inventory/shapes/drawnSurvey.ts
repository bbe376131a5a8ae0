/** Small invented surveys as they are drawn: what was measured, before anybody puts it into a table. */
import fc from 'fast-check'
import type { Cell } from '../../../shared/cells'
import type { Field } from '../../../shared/columns'

/** Lengths in mm, the rest as typed; a field that was not measured is not there. */
export type Measured = Readonly<Partial<Record<Field, number | string>>>

export interface DrawnTree {
  readonly values: Measured
  readonly limbs: readonly Measured[]
}

/** The fields that every row gives, where it has a value for them, and the units they are measured in. */
export interface DrawnSurvey {
  readonly units: 'in-ft' | 'cm-m'
  readonly fields: readonly Field[]
  readonly trees: readonly DrawnTree[]
}

const optionalOfTree = ['species', 'trunk', 'growth', 'spread', 'site', 'treeNotes'] as const
const optionalOfLimb = ['angle', 'bearing', 'live', 'lowestFoliage', 'notes'] as const

/** In the order of our own sample. */
const order: readonly Field[] = [
  'tree',
  'site',
  'species',
  'trunk',
  'height',
  'crownBase',
  'spread',
  'stage',
  'vigor',
  'growth',
  'treeNotes',
  'limb',
  'diameter',
  'stem',
  'origin',
  'tip',
  'bark',
  'angle',
  'bearing',
  'live',
  'lowestFoliage',
  'notes'
]

const treeIds: readonly ((at: number) => Cell)[] = [
  (at) => `T${String(at + 1)}`,
  (at) => at + 1,
  (at) => 1204 + 3 * at,
  (at) => `EL-${String(at + 7)}`
]
const limbIds: readonly ((at: number) => Cell)[] = [
  (at) => String.fromCharCode(65 + at),
  (at) => `L${String(at + 1)}`,
  (at) => at + 1
]

const part = fc.integer({ min: 0, max: 100 }).map((percent) => percent / 100)

const drawnLimb = fc.record({
  start: part,
  reach: part,
  taper: part,
  ratio: part,
  bark: fc.constantFrom('none', 'none', 'partial', 'full'),
  angle: fc.integer({ min: 10, max: 85 }),
  bearing: fc.integer({ min: 0, max: 359 }),
  live: fc.constantFrom('live', 'live', 'live', 'dead'),
  notes: fc.constantFrom('', 'thin bark', 'old wound, dry', '3 nests', 'cracked\nat the union')
})

const drawnTree = fc.record({
  height: fc.integer({ min: 60, max: 160 }),
  base: part,
  trunk: part,
  species: fc.constantFrom('Red maple', 'Pin oak', 'Hackberry', 'Ginkgo'),
  stage: fc.constantFrom('young', 'young', 'medium', 'mature'),
  vigor: fc.constantFrom('good', 'good', 'fair', 'poor'),
  growth: fc.constantFrom('slow', 'medium', 'fast'),
  site: fc.constantFrom('North row', 'South row'),
  treeNotes: fc.constantFrom('', 'near the gate', 'two stakes', 'staked;\nnorth side'),
  limbs: fc.array(drawnLimb, { minLength: 1, maxLength: 6 })
})

/** As a person writes it down: tenths of an inch and of a foot, millimeters and decimeters. */
const steps = { 'in-ft': { small: 2.54, tall: 30.48 }, 'cm-m': { small: 1, tall: 100 } } as const

function rounded(value: number, step: number): number {
  return Math.max(1, Math.round(value / step)) * step
}

type Limb = typeof drawnLimb extends fc.Arbitrary<infer T> ? T : never
type Tree = typeof drawnTree extends fc.Arbitrary<infer T> ? T : never

function measuredTree(
  drawn: Tree,
  units: DrawnSurvey['units'],
  id: Cell,
  limbId: (at: number) => Cell
): DrawnTree {
  const { small, tall } = steps[units]
  const height = rounded(drawn.height * 100, tall)
  const base = rounded(height * (0.15 + 0.15 * drawn.base), tall)
  const trunk = rounded(60 + 18 * drawn.height * (0.1 + 0.1 * drawn.trunk), small)
  const limbOf = ({ start, reach, taper, ratio, ...limb }: Limb, at: number): Measured => {
    const origin = rounded(base + (0.6 * height - base) * start, tall)
    const stem = rounded(Math.max(30, trunk * (1 - (origin / height) * (0.7 + 0.3 * taper))), small)
    const tip = Math.min(height, rounded(origin + (height - origin) * (0.3 + 0.7 * reach), tall))
    return {
      limb: limbId(at) as string | number,
      diameter: Math.min(stem, rounded(Math.max(12, stem * (0.2 + 0.75 * ratio)), small)),
      stem,
      origin,
      tip,
      lowestFoliage: rounded(origin + (tip - origin) * 0.3, tall),
      ...limb
    }
  }
  const { stage, vigor, growth, site, species, treeNotes } = drawn
  return {
    values: {
      ...{ tree: id as string | number, height, crownBase: base, trunk, spread: rounded(height / 2, tall) },
      ...{ stage, vigor, growth, site, species, treeNotes }
    },
    limbs: drawn.limbs.map(limbOf)
  }
}

/** A survey of so many trees at most. */
export function surveys(mostTrees = 5): fc.Arbitrary<DrawnSurvey> {
  return fc
    .record({
      units: fc.constantFrom('in-ft' as const, 'cm-m' as const),
      ofTree: fc.subarray([...optionalOfTree]),
      ofLimb: fc.subarray([...optionalOfLimb]),
      trees: fc.array(drawnTree, { minLength: 1, maxLength: mostTrees }),
      treeId: fc.nat(treeIds.length - 1),
      limbId: fc.nat(limbIds.length - 1)
    })
    .map(({ units, ofTree, ofLimb, trees, treeId, limbId }) => {
      const left = new Set<Field>([...optionalOfTree, ...optionalOfLimb])
      for (const field of [...ofTree, ...ofLimb]) left.delete(field)
      const ids = treeIds[treeId]!
      return {
        units,
        fields: order.filter((field) => !left.has(field)),
        trees: trees.map((tree, at) => measuredTree(tree, units, ids(at), limbIds[limbId]!))
      }
    })
}
