/**
 * Surveys that lie on the boundaries of classes and rules: halves, quarters, fifths and thirds of a tree, limbs of 1, 2 and
 * 4 in, ratios of 0.5 to 1. Every length is a whole number of tenths of an inch or a foot, and so exact in centimeters and
 * meters too, and no writing of it is rounded.
 */
import fc from 'fast-check'
import type { Field } from '../../../shared/columns'
import type { DrawnSurvey, DrawnTree, Measured } from './drawnSurvey'

const inch = 25.4
const tenthOfFoot = 30.48

/** Sixtieths of the tree's height. */
const origins = [3, 6, 12, 15, 20, 24, 29, 30, 31, 36, 45] as const
const tips = [20, 30, 36, 42, 45, 46, 48, 50, 54, 60] as const
const bases = [6, 12, 15, 24] as const
const ratios = [0.3, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.1] as const
const sizes = [0.4, 0.8, 1, 2, 4, 5] as const

const often = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 2 })
const seldom = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 1 })
const flag = fc.constantFrom('', '', '', '', 'yes')

const drawnLimb = fc.record({
  origin: fc.constantFrom(...origins),
  tip: fc.constantFrom(...tips),
  stem: fc.integer({ min: 1, max: 12 }),
  ratio: often(fc.constantFrom(...ratios)),
  size: fc.constantFrom(...sizes),
  length: fc.integer({ min: 1, max: 4 }),
  lowest: fc.integer({ min: 0, max: 6 }),
  lateral: fc.record({ along: fc.integer({ min: 1, max: 9 }), part: fc.constantFrom(2, 3, 5) }),
  cut: seldom(fc.constantFrom(0.4, 0.5, 0.8)),
  bark: fc.constantFrom('none', 'none', 'partial', 'full'),
  angle: fc.constantFrom(0, 30, 45, 60),
  bearing: fc.constantFrom(0, 45, 90, 180, 270),
  live: fc.constantFrom('live', 'live', 'live', 'live', 'dead'),
  role: fc.constantFrom('', '', '', 'limb', 'temporary', 'leader'),
  parent: seldom(fc.nat(5)),
  measured: fc.constantFrom('above', 'above', 'below'),
  broken: flag,
  rubbing: flag,
  decay: flag,
  lastCutShare: fc.constantFrom('', '', '25 %')
})

const drawnTree = fc.record({
  height: fc.integer({ min: 2, max: 8 }),
  base: fc.constantFrom(...bases),
  trunk: fc.integer({ min: 2, max: 16 }),
  clearance: fc.constantFrom(8, 10, 12, 14),
  clearanceSide: fc.constantFrom('', 'N', 'E', 'street'),
  dieback: fc.constantFrom('', '', '10 %', '25 %'),
  removed: fc.constantFrom('', '', '5 %', '10 %', '25 %'),
  matureHeight: fc.constantFrom(30, 50, 60),
  access: fc.constantFrom('', 'open', 'fenced'),
  stage: fc.constantFrom('planting', 'young', 'young', 'medium', 'mature', 'old'),
  vigor: fc.constantFrom('good', 'good', 'good', 'fair', 'poor'),
  growth: fc.constantFrom('slow', 'medium', 'fast'),
  species: fc.constantFrom('Red maple', 'Pin oak', 'Ginkgo'),
  limbs: fc.array(drawnLimb, { minLength: 1, maxLength: 7 })
})

type Limb = typeof drawnLimb extends fc.Arbitrary<infer T> ? T : never
type Tree = typeof drawnTree extends fc.Arbitrary<infer T> ? T : never

/** Tenths of an inch, in mm. */
const tenths = (inches: number): number => Math.max(1, Math.round(inches * 10)) * (inch / 10)

const letter = (at: number): string => String.fromCharCode(65 + (at % 26)).repeat(1 + Math.floor(at / 26))

function limbOf(limb: Limb, at: number, sixtieth: number): Measured {
  const { stem, ratio, size, length, lowest, lateral, cut, parent, ...words } = limb
  const [origin, tip] = [limb.origin * sixtieth, limb.tip * sixtieth]
  const thick = ratio === undefined ? size : stem * ratio
  return {
    ...words,
    ...{ limb: letter(at), diameter: tenths(thick), stem: tenths(stem), origin, tip },
    ...(parent !== undefined && at > 0 && { parent: letter(parent % at) }),
    ...(cut !== undefined && { cut: tenths(thick * cut) }),
    length: Math.abs(tip - origin) + length * sixtieth,
    lowestFoliage: Math.max(1, limb.origin + lowest - 2) * sixtieth,
    lateralHeight: (limb.origin + lateral.along) * sixtieth,
    lateral: tenths(thick / lateral.part)
  }
}

/** A tree of a height that is a multiple of 6 ft. */
function treeOf(tree: Tree, at: number): DrawnTree {
  const { height, base, trunk, clearance, matureHeight, limbs, ...words } = tree
  const sixtieth = height * tenthOfFoot
  return {
    values: {
      ...words,
      ...{ tree: `T${String(at + 1)}`, height: 60 * sixtieth, crownBase: base * sixtieth },
      ...{ trunk: trunk * inch, clearance: clearance * 10 * tenthOfFoot },
      matureHeight: matureHeight * 10 * tenthOfFoot
    },
    limbs: limbs.map((limb, place) => limbOf(limb, place, sixtieth))
  }
}

const always: readonly Field[] = ['tree', 'height', 'crownBase', 'stage', 'vigor']
const ofTrees: readonly Field[] = [
  ...(['species', 'trunk', 'growth', 'clearance', 'clearanceSide', 'dieback'] as const),
  ...(['removed', 'matureHeight', 'access'] as const)
]
const needed: readonly Field[] = ['limb', 'diameter', 'stem', 'origin', 'tip', 'bark']
const ofLimbs: readonly Field[] = [
  ...(['role', 'parent', 'measured', 'angle', 'bearing', 'live', 'broken', 'rubbing', 'decay'] as const),
  ...(['length', 'lowestFoliage', 'lateralHeight', 'lateral', 'cut', 'lastCutShare'] as const)
]

/** Trees of so many limbs each, or of as many as are drawn. */
export function surveysOnBounds(limbsOf?: readonly number[]): fc.Arbitrary<DrawnSurvey> {
  const trees =
    limbsOf === undefined
      ? fc.array(drawnTree, { minLength: 1, maxLength: 2 })
      : fc.tuple(
          ...limbsOf.map((count) =>
            fc
              .tuple(drawnTree, fc.array(drawnLimb, { minLength: count, maxLength: count }))
              .map(([tree, limbs]) => ({ ...tree, limbs }))
          )
        )
  return fc
    .record({ tree: fc.subarray([...ofTrees]), limb: fc.subarray([...ofLimbs]), trees })
    .map(({ tree, limb, trees: drawn }) => ({
      units: 'in-ft' as const,
      fields: [...always, ...tree, ...needed, ...limb],
      trees: drawn.map(treeOf)
    }))
}
