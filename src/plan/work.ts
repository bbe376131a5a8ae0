import type { LifeStage } from '../../shared/choices'
import type { Rules } from '../../shared/rules'
import type { UnitSystem } from '../../shared/units'
import type { Limb } from '../inventory/inventory'
import { foliageKept } from '../formulas/growth'
import { Pool } from './pool'
import type { Barrier, Option } from './options'

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
  /** Years over which the effect of a cut fades. */
  fade: number
  parent: Work | null
  readonly children: Work[]
  /** Its broken or rubbing part came off at an earlier visit. */
  mended: boolean
  /** Removed, or gone with its parent. */
  gone: boolean
  /** At the visit being planned: the ratio and priority now, and at the next visit if it is left alone. */
  ratio: number
  priority: number
  nextRatio: number
  nextPriority: number
  /** A competing leader: competes with the leader or more, and reaches the top quarter of the tree. */
  leads: boolean
  /** The cuts offered, and what stands against every reduction where none can be made. */
  readonly options: Option[]
  barrier: Barrier | null
  /** The cut chosen, or null where the limb is retained or goes with its parent. */
  chosen: Option | null
  withParent: boolean
}

/** Stands in a new object of the pool until a limb is put there. */
const nobody = {} as Limb

/** The limbs of the tree being planned. */
export const workPool = new Pool<Work>(() => ({
  limb: nobody,
  order: 0,
  diameter: 0,
  stem: 0,
  origin: 0,
  tip: 0,
  firstTip: 0,
  lowest: 0,
  share: 0,
  loss: 0,
  lossAge: 0,
  fade: 0,
  parent: null,
  children: [],
  mended: false,
  gone: false,
  ratio: 0,
  priority: 0,
  nextRatio: 0,
  nextPriority: 0,
  leads: false,
  options: [],
  barrier: null,
  chosen: null,
  withParent: false
}))

/** The shares of a run of eighths, from the first to the last. */
function stepsBetween(first: number, last: number): readonly number[] {
  return Array.from({ length: Math.max(0, last - first + 1) }, (_none, index) => (first + index) / 8)
}

/** Eighths that a reduction may take: 2/8 up to 6/8 on younger trees, 1/8 or 2/8 on mature and old ones (editable). */
export function reductionSteps(stage: LifeStage, rules: Rules): readonly number[] {
  return stage === 'mature' || stage === 'old'
    ? stepsBetween(1, rules.reduceMatureUpTo)
    : stepsBetween(rules.reduceFrom, rules.reduceUpTo)
}

/** What holds for every limb of a tree at one visit. */
export interface Season {
  rules: Rules
  system: UnitSystem
  stage: LifeStage
  /** The first visit: of more than three competing leaders only half are cut at it. */
  first: boolean
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
  /** Degrees from north of the side it is asked for; null where that is every side or none that could be read. */
  clearanceSide: number | null
  /** Shares of a limb's foliage that a reduction may take, least first. */
  steps: readonly number[]
  /** Foliage share of all the live limbs and the leader together is 1; what a limb may carry is `share`. */
  works: Work[]
}

/** Share of its full foliage that a limb carries now. */
export function carried(work: Work): number {
  return foliageKept(work.loss, work.lossAge, work.fade)
}

/** Where a limb starts along its parent, 0 at the parent's origin and 1 at its tip, by heights. */
export function alongParent(child: Work, parent: Work): number {
  return (child.origin - parent.origin) / (parent.tip - parent.origin)
}
