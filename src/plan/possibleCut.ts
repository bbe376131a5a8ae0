import type { Growing } from '../formulas/growth'
import type { GrowingLimb } from './growingLimb'

/** A cut that may be made on one limb at one visit, and what it comes to. Diameters in mm, heights in m. */
export interface PossibleCut {
  readonly kind: 'reduce' | 'remove'
  /** Share of the limb's present foliage that goes. */
  readonly share: number
  readonly cutDiameter: number
  /** Null for drooping limbs and removals, where it is not judged. */
  readonly cutHeight: number | null
  readonly tipAfter: number
  /** Share of the tree's live foliage. */
  readonly dose: number
  readonly nextRatio: number
  readonly nextPriority: number
  /** Answers something that was asked for (clearance, a broken or a rubbing limb): 1 by shortening, 2 by removal. */
  readonly asked: 0 | 1 | 2
  /** The listed limb that is left as the lateral, or null. */
  readonly lateral: GrowingLimb | null
}

/** Why a reduction is not offered. */
export type Barrier = 'small' | 'bare' | 'short' | 'lateral'

/** What the cuts of a limb are judged against. */
export interface Prospect {
  readonly limb: GrowingLimb
  /** Growth of its diameter in mm a year if it is left alone. */
  readonly growth: number
  /** Its stem until the next visit. */
  readonly stem: Growing
  /** Its next priority if it is left alone, and the points by which a cut has to lower it. */
  readonly nextPriority: number
  readonly least: number
  readonly asked: boolean
}

/** The cuts that may be made on a limb, and what stands against every reduction where none can be made. */
export interface OfferedCuts {
  readonly cuts: readonly PossibleCut[]
  readonly barrier: Barrier | null
}
