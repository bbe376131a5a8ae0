import type { Form, LifeStage, Vigor } from '../../../shared/choices'
import type { Rules } from '../../../shared/rules'
import type { Limb, Tree } from '../../../src/inventory/inventory'
import type { Leaders } from './leader'

/** A limb as it stands at a visit. Diameters in mm, heights in m. */
export interface LimbNow {
  readonly limb: Limb
  /** Its place among the tree's rows. */
  readonly at: number
  /** The place of the limb it grows on; null on the trunk. */
  readonly parent: number | null
  readonly diameter: number
  /** Just above the union. */
  readonly stem: number
  readonly origin: number
  readonly tip: number
  /** Its diameter and its tip at the survey. */
  readonly firstDiameter: number
  readonly firstTip: number
  /** The share of its foliage that it lacked when it was cut last, and the years since. */
  readonly lost: number
  readonly since: number
  /** The part of its foliage that it had at the survey, when its share was observed. */
  readonly hadAtSurvey: number
  /** Shortened in this plan, or with a last cut on record. */
  readonly shortened: boolean
  readonly shortenedInPlan: boolean
  /** Where its foliage starts: observed, raised, or else the lower of its ends and not below the crown base. */
  readonly lowest: number
  /** The same where it was observed or raised; null elsewhere. */
  readonly observedFrom: number | null
  /** What broke off it, or rubbed on it, was seen to. */
  readonly corrected: boolean
  readonly gone: boolean
}

/** What does not change from visit to visit. */
export interface TreeModel {
  readonly tree: Tree
  readonly rules: Rules
  readonly form: Form
  /** At the survey. */
  readonly stage: LifeStage
  readonly vigor: Vigor
  readonly height: number
  /** At the survey; of a tree at a visit, what it is then. */
  readonly crownBase: number
  readonly leaders: Leaders
  /** The leader is dead, broken or decayed. */
  readonly inDoubt: boolean
  readonly year: number
  readonly prunedLately: boolean
}

/** The tree as it stands at a visit. */
export interface TreeNow extends TreeModel {
  /** From 0. */
  readonly slot: number
  readonly now: LifeStage
  /** Every row but the leader's, in the inventory's order; dead wood is among them until it is cut. */
  readonly limbs: readonly LimbNow[]
  /** The share of the tree's foliage that each row has now, and that it would have if nothing of it were cut. */
  readonly shares: readonly number[]
  readonly full: readonly number[]
  /** What the leader carries as the visit begins, and from where on: from the highest union to the top. */
  readonly leaderShare: number
  readonly leaderFrom: number
  /** Where the crown starts once the obligations of the visit are met. */
  readonly crownBaseNow: number
  /** Years until the next visit. */
  readonly interval: number
}

export type Kind = 'reduce' | 'remove' | 'raise'
export type Duty = 'dead' | 'broken' | 'rubbing' | 'clearance' | 'temporary'

/** Something that can be done to a limb. */
export interface Option {
  readonly kind: Kind
  readonly share: number
  readonly count: number
  /** Of each cut; null for a raise. */
  readonly cutDiameter: number | null
  readonly height: number | null
  readonly distance: number | null
  readonly lateralMin: number | null
  readonly tipAfter: number | null
  readonly dose: number
  /** The part of the way from union to tip at which it is cut. */
  readonly cutAt: number
  /** The same where limbs on it that start beyond are gone; several small cuts leave them. */
  readonly endsAt: number
  /** The row of the listed limb that is left as the lateral. */
  readonly lateralAt: number | null
  readonly nextRatio: number | null
  readonly nextPriority: number
}

/** An option that was taken. */
export interface Taken extends Option {
  readonly at: number
  readonly obligation: Duty | null
}

/** The parts of a tree that hang on its trunk and live. */
export function firstOrder(limbs: readonly LimbNow[]): LimbNow[] {
  return limbs.filter(({ parent, gone, limb }) => parent === null && !gone && !limb.dead)
}

export function childrenOf(limbs: readonly LimbNow[], at: number): LimbNow[] {
  return limbs.filter(({ parent, gone, limb }) => parent === at && !gone && !limb.dead)
}

export function limbAt(limbs: readonly LimbNow[], at: number): LimbNow {
  const found = limbs.find((each) => each.at === at)
  if (found === undefined) throw new Error(`No limb at ${at}`)
  return found
}

/** A limb and the limbs that carry it, the nearest first. */
export function carriersOf(limbs: readonly LimbNow[], limb: LimbNow): LimbNow[] {
  if (limb.parent === null) return []
  const parent = limbAt(limbs, limb.parent)
  return [parent, ...carriersOf(limbs, parent)]
}
