import { ratio } from '../../shared/words/figures'
import type { LifeStage, Vigor } from '../../shared/choices'
import { classGrowth, stageGrowthFactor, type Rules } from '../../shared/rules'
import type { UnitSystem } from '../../shared/units'
import { stemAbove } from '../formulas/aspectRatio'
import type { Limb, Tree } from '../inventory/inventory'
import { chooseLeader } from './chooseLeader'
import { checkParents, checkTree, type TreeCheck } from './checkTree'
import type { LeaderChoice } from './plan'
import { workPool, type Work } from './work'

/** A dead limb of known diameter: all that dead wood needs to be planned. */
export type MeasuredDeadwood = Limb & { diameter: number }

/** A tree made ready: what is assumed is said, stems stand above their unions, limbs know their parents. */
export interface PreparedTree {
  tree: Tree
  stage: LifeStage
  vigor: Vigor
  /** Mm a year, slowed by the life stage where it comes from a class. */
  stemGrowth: number
  system: UnitSystem
  height: number
  crownBase: number
  leader: LeaderChoice
  /** Live limbs to plan, in the inventory's order, the leader and dead wood left out. */
  works: Work[]
  /** Dead limbs, which are removed. */
  dead: MeasuredDeadwood[]
  /** Live limbs on the trunk that cannot be planned but hold foliage. */
  unplanned: Limb[]
}

/** What could be settled of a tree even where its limbs cannot be judged. */
export type TreeBasics = Pick<PreparedTree, 'tree' | 'stage' | 'vigor' | 'stemGrowth'>

/** Life stage, vigor and growth, with what is assumed where they are missing. */
export function basics(check: TreeCheck, rules: Rules): TreeBasics {
  const { tree } = check
  const stage = tree.stage ?? 'mature'
  const vigor = tree.vigor ?? 'fair'
  if (tree.stage === null) check.assume('stage', stage)
  if (tree.vigor === null) check.assume('vigor', vigor)
  if (vigor === 'poor') check.note('poor-vigor', tree.row, 'vigor')
  const { growth } = tree
  const stemGrowth =
    typeof growth === 'number'
      ? growth
      : classGrowth(rules, growth ?? 'medium') * stageGrowthFactor(rules, stage)
  return { tree, stage, vigor, stemGrowth }
}

/** Makes a tree ready to plan, or null where its limbs cannot be judged; problems and unplanned rows are noted. */
export function prepareTree(
  check: TreeCheck,
  known: TreeBasics,
  rules: Rules,
  year: number
): PreparedTree | null {
  const checked = checkTree(check)
  if (checked === null) return null
  const { tree, height, crownBase } = checked
  checkParents(check)
  const leader = chooseLeader(check.inventory, tree, check.problems, rules)
  const works = worksOf(check, leader, crownBase, rules, year)
  const dead: MeasuredDeadwood[] = []
  const unplanned: Limb[] = []
  for (const limb of tree.limbs) {
    const out = check.isOut(limb)
    if (limb.dead) {
      if (out || limb === leader.limb) continue
      if (isMeasured(limb)) dead.push(limb)
      else refuseUnmeasured(check, limb)
    } else if (out && limb.diameter !== null && limb.parent === null) unplanned.push(limb)
  }
  const { stage, vigor, stemGrowth } = known
  const { system } = check.inventory
  return { tree, stage, vigor, stemGrowth, system, height, crownBase, leader, works, dead, unplanned }
}

function isMeasured(limb: Limb): limb is MeasuredDeadwood {
  return limb.diameter !== null
}

/** A dead leader that another stem replaces is dead wood to be cut, and may have come without a diameter. */
function refuseUnmeasured(check: TreeCheck, limb: Limb): void {
  const facts = { column: 'The limb diameter', limb: limb.id }
  check.refuse(limb, check.note('missing-value', limb.row, 'diameter', facts).message)
}

function worksOf(
  check: TreeCheck,
  leader: LeaderChoice,
  crownBase: number,
  rules: Rules,
  year: number
): Work[] {
  workPool.reset()
  const works: Work[] = []
  const { limbs } = check.tree
  for (let order = 0; order < limbs.length; order++) {
    const limb = limbs[order]
    if (limb === undefined || limb === leader.limb || limb === leader.lost) continue
    if (limb.dead || check.isOut(limb)) continue
    const work = workOf(check, limb, order, crownBase, year)
    if (work === null) continue
    work.fade = rules.effectYears
    works.push(work)
    if (work.diameter > work.stem) noteOvertaken(check, work)
  }
  if (works.some((work) => work.limb.parent !== null)) joinParents(works)
  return works
}

/** A limb whose parent is the leader, dead or not planned counts as one on the trunk. */
function joinParents(works: readonly Work[]): void {
  const byId = new Map(works.map((work) => [work.limb.id, work]))
  for (const work of works) {
    const parent = work.limb.parent === null ? undefined : byId.get(work.limb.parent)
    if (parent === undefined) continue
    work.parent = parent
    parent.children.push(work)
  }
}

function workOf(check: TreeCheck, limb: Limb, order: number, crownBase: number, year: number): Work | null {
  const { diameter, origin, tip } = limb
  if (diameter === null || limb.stem === null || origin === null || tip === null) return null
  const stem =
    limb.measured === 'above' ? limb.stem : stemAbove(limb.stem, unionSquares(check.tree, limb, limb.stem))
  if (!(stem > 0)) {
    check.refuse(limb, check.note('union-impossible', limb.row, 'stem', { limb: limb.id }).message)
    return null
  }
  const work = workPool.take()
  work.limb = limb
  work.order = order
  work.diameter = diameter
  work.stem = stem
  work.origin = origin
  work.tip = tip
  work.firstTip = tip
  work.lowest = limb.lowestFoliage ?? Math.max(crownBase, Math.min(origin, tip))
  work.share = 0
  work.loss = limb.lastCutShare ?? 0
  work.lossAge = limb.lastCutYear === null ? 0 : Math.max(0, year - limb.lastCutYear)
  work.parent = null
  work.children.length = 0
  work.options.length = 0
  work.chosen = null
  work.mended = work.gone = work.withParent = false
  return work
}

/** Σd² of the limbs whose unions are within one stem diameter of this one: they count as one union. */
function unionSquares(tree: Tree, limb: Limb, stem: number): number {
  let squares = 0
  for (const other of tree.limbs) {
    if (other.role === 'leader' || other.diameter === null || other.parent !== limb.parent) continue
    const together =
      other === limb ||
      (other.measured === 'below' &&
        other.origin !== null &&
        Math.abs(other.origin - (limb.origin ?? 0)) * 1000 <= stem)
    if (together) squares += other.diameter * other.diameter
  }
  return squares
}

function noteOvertaken(check: TreeCheck, work: Work): void {
  const value = ratio(work.diameter / work.stem)
  check.note('thicker-than-stem', work.limb.row, 'diameter', { limb: work.limb.id, value })
}
