import type { LifeStage, Vigor } from '../../shared/choices'
import type { Problem } from '../../shared/problems'
import type { UnitSystem } from '../../shared/units'
import type { Rules } from '../../shared/rules'
import type { RuleChange } from './rules/ruleChanges'
import type { Standing } from '../formulas/priority'
import type { TimingNote } from '../season/timing'
import type { Inventory, Limb, Tree, Unplanned } from '../inventory/inventory'

/** What was decided for one limb at one visit. */
export type Decision = 'retain' | 'reduce' | 'remove' | 'hold'

/** A cut of one visit. Diameters in mm, heights in m, shares 0 to 1. */
export interface Cut {
  readonly limb: Limb
  readonly kind: 'reduce' | 'remove'
  /** Share of the limb's own foliage that the cut takes; 1 for a removal. */
  readonly share: number
  /** Diameter where the cut is made; the limb's base for a removal. */
  readonly cutDiameter: number
  /** Least diameter of the lateral left; null for a removal. */
  readonly lateralMin: number | null
  /** Height of the cut above ground, or null where it was not judged (drooping limbs) and for removals. */
  readonly cutHeight: number | null
  /** Tip height of the limb afterward; null for a removal. */
  readonly tipAfter: number | null
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
  /** What was weighed and refused, a sentence each. */
  readonly refused: readonly string[]
  /** Where the reason comes from: a published source, or "house rule". */
  readonly source: string
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

/** A limb that still carries a next priority of 10 or more after the last visit. */
export interface Remaining {
  readonly limb: Limb
  readonly priority: number
  /** The visit by which it would be cleared if visits went on, or null where none looked at does. */
  readonly clearedByVisit: number | null
  /** What would clear it, in one sentence. */
  readonly remedy: string
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
  readonly remaining: readonly Remaining[]
  /** Limbs that could not be judged, with their rows in the plan's `unplanned`; the leader is none of them. */
  readonly notJudged: readonly Limb[]
  /** Highest priority among its limbs before any cut, which orders the trees. */
  readonly urgency: number
}

export interface Plan {
  /** ISO date the plan is made for; visit 1 falls in its year. */
  readonly date: string
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
