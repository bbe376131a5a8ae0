import type { LifeStage } from '../../shared/choices'
import type { Rules } from '../../shared/rules'
import type { UnitSystem } from '../../shared/units'
import { priorityAt, upperThird } from '../formulas/priority'
import { clearableHeight } from './clearance'
import { isLevel, type GrowingLimb } from './growingLimb'
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
  /** The year of the visit, and whole years to the next one. */
  readonly year: number
  readonly years: number
  /** Trunk growth, mm a year. */
  readonly stemGrowth: number
  /** Share of the live foliage that may come off. */
  readonly allowed: number
  /** The height that is cleared now, in m: the height required, as far as the crown ratio allows. */
  readonly clearance: number | null
  /** Degrees from north of the side it is asked for; null where that is every side or none that could be read. */
  readonly clearanceSide: number | null
  /** Shares of a limb's foliage that a reduction may take, least first; those of a level limb beside them. */
  readonly steps: readonly number[]
  readonly levelSteps: readonly number[]
  /** The leader is broken or in doubt: no limb is cut for structure until it is decided. */
  readonly waitsForLeader: boolean
  /** All the limbs of the tree, those that are gone among them. */
  readonly limbs: readonly GrowingLimb[]
}

/** What differs from visit to visit: the crown base then, the years to the next one, and the allowance. */
export type AtVisit = Pick<
  VisitConditions,
  'rules' | 'stage' | 'crownBase' | 'year' | 'years' | 'allowed' | 'first'
>

/** What holds for a tree at one visit. */
export function conditionsOf(tree: PreparedTree, visit: AtVisit): VisitConditions {
  const steps = stepsOf(visit.stage, visit.rules)
  return {
    rules: visit.rules,
    system: tree.system,
    stage: visit.stage,
    first: visit.first,
    height: tree.height,
    crownBase: visit.crownBase,
    third: upperThird(tree.height, visit.crownBase),
    year: visit.year,
    years: visit.years,
    stemGrowth: tree.stemGrowth,
    allowed: visit.allowed,
    clearance: clearableHeight(tree.tree.clearance, tree.height, visit.rules),
    clearanceSide: tree.tree.clearanceSide?.degrees ?? null,
    steps: steps.all,
    levelSteps: steps.level,
    waitsForLeader: tree.waitsForLeader,
    limbs: tree.limbs
  }
}

interface StageSteps {
  readonly all: readonly number[]
  readonly level: readonly number[]
}

/** The steps are the same for every tree of a stage: those of a set of rules are made once. */
const madeSteps = new WeakMap<Rules, Map<LifeStage, StageSteps>>()

function stepsOf(stage: LifeStage, rules: Rules): StageSteps {
  let made = madeSteps.get(rules)
  if (made === undefined) madeSteps.set(rules, (made = new Map()))
  let steps = made.get(stage)
  if (steps === undefined) {
    steps = { all: reductionSteps(stage, rules), level: levelSteps(stage, rules) }
    made.set(stage, steps)
  }
  return steps
}

/** Grown trees are reduced lightly, at the ends of their limbs. */
export function isGrown(stage: LifeStage): boolean {
  return stage === 'mature' || stage === 'old'
}

/** Eighths that a reduction may take: 2/8 up to 6/8 on younger trees, 1/8 or 2/8 on mature and old ones (editable). */
function reductionSteps(stage: LifeStage, rules: Rules): readonly number[] {
  return isGrown(stage)
    ? stepsBetween(1, rules.reduceMatureUpTo)
    : stepsBetween(rules.reduceFrom, rules.reduceUpTo)
}

/** The same of a level limb: of a medium tree it may be reduced more lightly. */
function levelSteps(stage: LifeStage, rules: Rules): readonly number[] {
  return stage === 'medium'
    ? stepsBetween(Math.min(rules.levelFrom, rules.reduceFrom), rules.reduceUpTo)
    : reductionSteps(stage, rules)
}

/** The shares of a run of eighths, from the first to the last. */
function stepsBetween(first: number, last: number): readonly number[] {
  const steps: number[] = []
  for (let eighths = first; eighths <= last; eighths++) steps.push(eighths / 8)
  return steps
}

/** Shares of its foliage that a reduction of a limb may take. */
export function stepsFor(
  limb: GrowingLimb,
  { steps, levelSteps, rules }: VisitConditions
): readonly number[] {
  return levelSteps.length > steps.length && isLevel(limb, rules.flatRise) ? levelSteps : steps
}

/** Priority of a limb at a ratio and with its tip at a height. */
export function priorityOf(
  { origin, surveyed }: GrowingLimb,
  ratio: number,
  tip: number,
  conditions: VisitConditions
): number {
  return priorityAt(ratio, origin, tip, surveyed.bark, conditions, conditions.rules)
}
