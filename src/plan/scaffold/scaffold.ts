import type { Limb } from '../../inventory/inventory'

/** A permanent limb belongs to the scaffold that the tree keeps; a temporary one goes in time. */
export type Permanence = 'permanent' | 'temporary'

/** What a limb is to the scaffold of its tree. */
export interface ScaffoldLimb {
  readonly limb: Limb
  /** Null where it is not judged. */
  readonly permanence: Permanence | null
  /** The year by which a temporary limb goes; otherwise null. */
  readonly goneBy: number | null
  /** Whether the survey says so or the rules do. */
  readonly by: 'survey' | 'rules'
  /** Why, in the trade's words: "0.30 m from permanent limb B". */
  readonly reason: string
}

/** Two permanent limbs of the survey that start closer than the spacing, or one above the other on one side. */
export interface ClosePair {
  readonly upper: Limb
  readonly lower: Limb
  /** Meters between their origins, and meters wanted. */
  readonly apart: number
  readonly wanted: number
}

/** The scaffold of a tree. Heights in m. */
export interface Scaffold {
  /** From this height limbs can be permanent on the side that has to be clear; null where that is not known. */
  readonly lowest: number | null
  /** The same on the other sides. */
  readonly lowestElsewhere: number | null
  /** Who says so: the owner, or the clearance that is asked for. */
  readonly lowestFrom: 'owner' | 'clearance' | null
  /** Least distance of the origins of two permanent limbs; null where the mature height is not known. */
  readonly spacing: number | null
  /** The live limbs, in the inventory's order; where nothing is chosen, only those of which the survey says it. */
  readonly limbs: readonly ScaffoldLimb[]
  /** Why no permanent limbs are chosen, in one sentence; null where they are. */
  readonly withheld: string | null
  /** What is missing of the survey to choose them; null where nothing is. */
  readonly missing: string | null
  /** Permanent limbs of the survey that do not keep the spacing. */
  readonly close: readonly ClosePair[]
}
