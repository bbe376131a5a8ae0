import type { LifeStage } from '../../../shared/choices'
import type { Rules } from '../../../shared/rules'
import type { UnitSystem } from '../../../shared/units'
import type { Limb } from '../measure/inventory'
import { effectLeft } from './growth'

/** A limb as the plan carries it from visit to visit. Diameters in mm, heights in m. */
export interface Work {
  limb: Limb
  /** Place in the inventory, which settles ties. */
  order: number
  diameter: number
  /** The stem just above the union. */
  stem: number
  origin: number
  tip: number
  /** Tip as first surveyed: a reduction leaves at least a third of that length. */
  firstTip: number
  /** Height of its lowest foliage. */
  lowest: number
  /** Share of the tree's foliage the limb has when nothing was cut. */
  share: number
  /** Share of its foliage lost at its last cut, and whole years since. */
  loss: number
  lossAge: number
  parent: Work | null
  children: Work[]
  /** Its broken or rubbing part came off at an earlier visit. */
  mended: boolean
  /** Removed, or gone with its parent. */
  gone: boolean
}

/** What holds for every limb of a tree at one visit. */
export interface Season {
  rules: Rules
  system: UnitSystem
  stage: LifeStage
  height: number
  crownBase: number
  /** Start of the canopy's upper third. */
  third: number
  /** Whole years to the next visit. */
  years: number
  /** Trunk growth, mm a year. */
  stemGrowth: number
  allowed: number
  clearance: number | null
  clearanceSide: string
  /** Foliage share of all the live limbs and the leader together is 1; what a limb may carry is `share`. */
  works: Work[]
}

/** Share of its full foliage that a limb carries now. */
export function carried(work: Work): number {
  return 1 - work.loss * effectLeft(work.lossAge)
}

/** Years' worth of growth that a limb makes over the next `years`, given what it lost and when. */
export function growthYears(loss: number, age: number, years: number): number {
  if (loss === 0) return years
  let sum = 0
  for (let year = 0; year < years; year++) sum += 1 - loss * effectLeft(age + year)
  return sum
}
