import type { Form, LifeStage, Vigor } from '../../shared/choices'
import type { Problem } from '../../shared/problems'
import type { UnitSystem } from '../../shared/units'
import type { Rules } from '../../shared/rules'
import type { RuleChange } from './rules/ruleChanges'
import type { Standing } from '../formulas/priority'
import type { TimingNote } from '../season/timing'
import type { Inventory, Limb, Tree, Unplanned } from '../inventory/inventory'
import type { Hold, Obligation } from './obligation'
import type { CutKind } from './possibleCut'
import type { Scaffold } from './scaffold/scaffold'

/** What was decided for one limb at one visit. */
export type Decision = 'retain' | 'hold' | CutKind

/** A cut of one visit. Diameters in mm, heights in m, shares 0 to 1. */
export interface Cut {
  readonly limb: Limb
  readonly kind: CutKind
  /** What obliges to it; null for a cut for structure. */
  readonly obligation: Obligation | null
  /** To be done in any case, or if time allows. */
  readonly must: boolean
  /** Share of the limb's own foliage that the cut takes; 1 for a removal. */
  readonly share: number
  /** How many cuts it is made as. */
  readonly count: number
  /**
   * Diameter where the cut is made, of each where there are several; the limb's base for a removal. Null for a raising, and
   * at a later visit on a limb that was cut before: measure then.
   */
  readonly cutDiameter: number | null
  /** Least diameter of the lateral left; null for a removal and where the diameter is. */
  readonly lateralMin: number | null
  /**
   * Height of the cut above ground; null for removals, level and drooping limbs, several cuts, and where it is to be
   * measured then. The height to which a limb is raised.
   */
  readonly cutHeight: number | null
  /** Distance of the cut from the union, for a level limb; otherwise null. */
  readonly distance: number | null
  /** Tip height of the limb afterward; null for a removal, a raising, and where it is to be measured then. */
  readonly tipAfter: number | null
  /** Where a forecast expects the limb to end; null for a removal. */
  readonly endsAt: number | null
  /** What hours and weights are estimated by. */
  readonly work: CutWork
  /** Share of the whole tree's live foliage; 0 for dead wood. */
  readonly dose: number
  /** Null for dead wood whose stem was not measured; live wood always has one. */
  readonly aspectRatio: number | null
  /** Aspect ratio expected at the next visit; null for a removal. */
  readonly projectedAspectRatio: number | null
  readonly priority: number
  /** Priority expected at the next visit; 0 for a removal. */
  readonly nextPriority: number
  /** Null where there is no aspect ratio to judge by. */
  readonly standing: Standing | null
  /** Live wood; dead wood costs no dose. */
  readonly live: boolean
  /** The limb's foliage hangs below the clearance that is asked for on its side. */
  readonly inClearance: boolean
  /** Over 50 mm: marked. */
  readonly marked: boolean
  /** Over 100 mm: asks for a written reason. */
  readonly needsReason: boolean
  /** Why, in one sentence of the trade's words with the numbers behind it. */
  readonly reason: string
  /** Where the reason comes from: a published source, or "house rule". */
  readonly source: string
}

/** The work of a cut, also where the cut itself is to be measured then. */
export interface CutWork {
  /** Of each cut, in mm. */
  readonly diameter: number
  readonly count: number
  /** Where the crew works, in m; null where that is not known. */
  readonly height: number | null
  /** Of one cut as large as all of them together, in mm. */
  readonly section: number
  /** Part of the limb's surveyed length that comes off. */
  readonly part: number
}

/** A limb as it stands before the visit, with what was decided. */
export interface LimbState {
  readonly limb: Limb
  readonly aspectRatio: number
  readonly standing: Standing
  readonly priority: number
  /** Share of the tree's live foliage. */
  readonly foliageShare: number
  readonly decision: Decision
  /** Priority and aspect ratio expected at the next visit under the decision; 0 for a limb that goes. */
  readonly nextPriority: number
  readonly nextRatio: number
  /** What decided it, where no cut is made. */
  readonly reason: string
}

/** One visit to one tree. */
export interface Visit {
  /** Counted from 1. */
  readonly visit: number
  readonly year: number
  readonly allowedRemoval: number
  /** Sum of the doses of this visit's cuts. */
  readonly dose: number
  /** Sum of the squares of the limbs' next priorities under the plan, which is the least possible. */
  readonly objective: number
  readonly cuts: readonly Cut[]
  readonly limbs: readonly LimbState[]
  readonly crownBaseAfter: number
  readonly liveCrownRatioAfter: number
  /** Share of the foliage in the lower two-thirds of the crown, before and after. */
  readonly lowerFoliageBefore: number
  readonly lowerFoliageAfter: number
}

/**
 * How a limb ends: removed or settled at a visit, expected to settle by growth alone, done where its obligation is met and
 * nothing else is wanted, waiting for what holds it, or kept and inspected.
 */
export type OutcomeKind = 'removed' | 'settled' | 'expected' | 'done' | 'wait' | 'keep'

/** What a limb waits for. */
export type WaitsFor = 'allowance' | 'inspect first' | 'leader'

/** How one limb ends that had a priority over 10 at the survey, or an obligation. */
export interface Outcome {
  readonly limb: Limb
  readonly outcome: OutcomeKind
  /** The visit at which it is so, counted from 1; null where no visit makes it so. */
  readonly visit: number | null
  readonly year: number | null
  readonly heldBy: WaitsFor | null
  /** At the survey. */
  readonly priority: number
  /** After the last visit; 0 for a limb that is gone. */
  readonly priorityAfter: number
  /** A stem of a multi-stem tree, which is not reduced for the others. */
  readonly isStem: boolean
}

/** How far a clearance that is asked for is reached. Heights in m. */
export interface ClearanceReached {
  readonly required: number
  /** Height that is clear after the first visit. */
  readonly reachedNow: number
  /** The year in which the required height is reached, or null. */
  readonly reachedYear: number | null
  /** What holds it where it is not reached at the first visit. */
  readonly heldBy: Hold | null
}

/** Which stem is kept as the leader. `limb` is null where it is the trunk itself, not listed as a row. */
export interface LeaderChoice {
  readonly limb: Limb | null
  readonly name: string
  readonly reason: string
  /** To be confirmed on site. */
  readonly confirm: boolean
  /** The marked leader that is dead or broken and is no longer the leader, or null. */
  readonly lost: Limb | null
}

/** One tree's plan over all its visits. */
export interface TreePlan {
  readonly tree: Tree
  readonly form: Form
  readonly stage: LifeStage
  readonly vigor: Vigor
  readonly leader: LeaderChoice
  readonly allowedRemoval: number
  /** How the allowance came about: "young 25 % × fair vigor 0.5". */
  readonly allowedBasis: string
  readonly liveCrownRatio: number | null
  /** Years between visits. */
  readonly interval: number
  readonly visits: readonly Visit[]
  /** How every limb ends that is worth a word, in the inventory's order. */
  readonly outcomes: readonly Outcome[]
  /** Null where no clearance is asked for, or where the limbs cannot be judged. */
  readonly clearance: ClearanceReached | null
  /** Its permanent and temporary limbs, or why none are chosen; null where the limbs cannot be judged. */
  readonly scaffold: Scaffold | null
  /** Limbs that could not be judged, with their rows in the plan's `unplanned`; the leader is none of them. */
  readonly notJudged: readonly Limb[]
  /** Highest priority among its limbs before any cut, which orders the trees. */
  readonly urgency: number
}

export interface Plan {
  /** ISO date the plan is made for; visit 1 falls in its year, or in `firstYear` where that is given. */
  readonly date: string
  readonly firstYear?: number
  readonly system: UnitSystem
  readonly inventory: Inventory
  /** In the inventory's order. */
  readonly trees: readonly TreePlan[]
  /** Every row that is not planned; `leftOut` draws them together by cause. */
  readonly unplanned: readonly Unplanned[]
  /** One a cause, each with what waits for it. */
  readonly problems: readonly Problem[]
  /** The rules it was made by; the defaults where it does not say. */
  readonly rules?: Rules
  /** Rules that do not have their default, with the reasons written for it. */
  readonly ruleChanges?: readonly RuleChange[]
  /** What is to be known about the season, worst first; empty where it was not looked at. */
  readonly timing?: readonly TimingNote[]
}

/** The year of visit 1. */
export function firstYearOf({
  date,
  firstYear
}: {
  readonly date: string
  readonly firstYear?: number | null | undefined
}): number {
  return firstYear ?? Number(date.slice(0, 4))
}

/** A plan is a value, and every document asks for its trees in this order. */
const ordered = new WeakMap<readonly TreePlan[], readonly TreePlan[]>()

/** Trees most urgent first: highest priority, then the inventory's order. */
export function byUrgency({ trees }: Pick<Plan, 'trees'>): readonly TreePlan[] {
  let known = ordered.get(trees)
  if (known === undefined) {
    known = [...trees].sort((a, b) => b.urgency - a.urgency || a.tree.row - b.tree.row)
    ordered.set(trees, known)
  }
  return known
}
