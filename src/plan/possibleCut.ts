import type { GrowingLimb } from './growingLimb'

/** What may be done to a limb. */
export type CutKind = 'reduce' | 'remove' | 'raise'

/** A cut that may be made on one limb at one visit, and what it comes to. Diameters in mm, heights in m. */
export interface PossibleCut {
  readonly kind: CutKind
  /** Share of the limb's present foliage that goes. */
  readonly share: number
  /** Diameter of the cut, of each where there are several; that of one as large as the side branches taken by a raising. */
  readonly cutDiameter: number
  /** How many cuts it is made as. */
  readonly count: number
  /** Null for drooping and level limbs, several cuts and removals; the height reached where a limb is raised. */
  readonly cutHeight: number | null
  /** Distance of the cut from the union in m, for a level limb of known length; otherwise null. */
  readonly distance: number | null
  /** Part of the limb's present length beyond the cut. */
  readonly beyond: number
  readonly tipAfter: number
  /** Share of the tree's live foliage. */
  readonly dose: number
  readonly nextRatio: number
  readonly nextPriority: number
  /** The listed limb that is left as the lateral, or null. */
  readonly lateral: GrowingLimb | null
}

/** Why a reduction is not offered. */
export type Barrier = 'small' | 'bare' | 'short' | 'lateral'

/** What the cuts of a limb are judged against. */
export interface Prospect {
  readonly limb: GrowingLimb
  readonly aspectRatio: number
}

/** The reductions of a limb, how many could be made at all, and what stands against every one where none can. */
export interface OfferedCuts {
  readonly cuts: readonly PossibleCut[]
  readonly possible: number
  readonly barrier: Barrier | null
}
