import type { LifeStage } from '../../shared/choices'
import type { Rules } from '../../shared/rules'
import type { UnitSystem } from '../../shared/units'
import { priority, upperThird } from '../formulas/priority'
import type { GrowingLimb } from './growingLimb'
import type { PreparedTree } from './prepareTree'

/** What holds for every limb of a tree at one visit. Heights in m. */
export interface VisitConditions {
  readonly rules: Rules
  readonly system: UnitSystem
  readonly stage: LifeStage
  /** The first visit: of more than three competing leaders only half are cut at it. */
  readonly first: boolean
  readonly height: number
  readonly crownBase: number
  /** Start of the canopy's upper third. */
  readonly third: number
  /** Whole years to the next visit. */
  readonly years: number
  /** Trunk growth, mm a year. */
  readonly stemGrowth: number
  /** Share of the live foliage that may come off. */
  readonly allowed: number
  readonly clearance: number | null
  /** Degrees from north of the side it is asked for; null where that is every side or none that could be read. */
  readonly clearanceSide: number | null
  /** Shares of a limb's foliage that a reduction may take, least first. */
  readonly steps: readonly number[]
  /** All the limbs of the tree, those that are gone among them. */
  readonly limbs: readonly GrowingLimb[]
}

/** What differs from visit to visit: the crown base then, the years to the next one, and the allowance. */
export type AtVisit = Pick<VisitConditions, 'rules' | 'crownBase' | 'years' | 'allowed' | 'first'>

/** What holds for a tree at one visit. */
export function conditionsOf(tree: PreparedTree, visit: AtVisit): VisitConditions {
  return {
    rules: visit.rules,
    system: tree.system,
    stage: tree.stage,
    first: visit.first,
    height: tree.height,
    crownBase: visit.crownBase,
    third: upperThird(tree.height, visit.crownBase),
    years: visit.years,
    stemGrowth: tree.stemGrowth,
    allowed: visit.allowed,
    clearance: tree.tree.clearance,
    clearanceSide: tree.tree.clearanceSide?.degrees ?? null,
    steps: reductionSteps(tree.stage, visit.rules),
    limbs: tree.limbs
  }
}

/** Eighths that a reduction may take: 2/8 up to 6/8 on younger trees, 1/8 or 2/8 on mature and old ones (editable). */
function reductionSteps(stage: LifeStage, rules: Rules): readonly number[] {
  return stage === 'mature' || stage === 'old'
    ? stepsBetween(1, rules.reduceMatureUpTo)
    : stepsBetween(rules.reduceFrom, rules.reduceUpTo)
}

/** The shares of a run of eighths, from the first to the last. */
function stepsBetween(first: number, last: number): readonly number[] {
  const steps: number[] = []
  for (let eighths = first; eighths <= last; eighths++) steps.push(eighths / 8)
  return steps
}

/** Priority of a limb at a ratio and with its tip at a height. */
export function priorityOf(
  { origin, surveyed }: GrowingLimb,
  ratio: number,
  tip: number,
  conditions: VisitConditions
): number {
  return priority({ aspectRatio: ratio, origin, tip, bark: surveyed.bark }, conditions, conditions.rules)
}
