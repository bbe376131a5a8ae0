import type { Form, LifeStage, Vigor } from '../../../shared/choices'
import type { Rules } from '../../../shared/rules'
import type { Limb, Tree } from '../../../src/inventory/inventory'

/** Foliage that a limb lost: the share of what it had, and the years since. */
export interface Loss {
  readonly share: number
  readonly years: number
}

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
  readonly losses: readonly Loss[]
  /** Of them, those of this plan. */
  readonly lossesOfPlan: readonly Loss[]
  /** Shortened in this plan, or with a last cut on record. */
  readonly shortened: boolean
  readonly shortenedInPlan: boolean
  /** Cut in this plan in whatever way. */
  readonly cutBefore: boolean
  /** The height it was raised to. */
  readonly raisedTo: number | null
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
  readonly crownBase: number
  /** The row of the leader, or null where it is the stem above the highest union. */
  readonly leader: Limb | null
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
  /** The share of the tree's foliage that each row has as the visit begins, less what was taken from it since. */
  readonly shares: readonly number[]
  /** Where the foliage starts now, of limbs listed or not. */
  readonly base: number
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
  /** The part of the way from union to tip at which the limb ends; limbs on it that start beyond are gone. */
  readonly endsAt: number
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
