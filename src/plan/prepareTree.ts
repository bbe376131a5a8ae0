import { columnOf } from '../../shared/columns'
import { ratio } from '../../shared/words/figures'
import type { LifeStage, Vigor } from '../../shared/choices'
import { classGrowth, stageGrowthFactor, type Rules } from '../../shared/rules'
import type { UnitSystem } from '../../shared/units'
import { aspectRatio } from '../formulas/diameters'
import type { Limb, Tree } from '../inventory/inventory'
import { chooseLeader } from './chooseLeader'
import { checkParents, checkTree, type TreeCheck } from './checkTree'
import type { GrowingLimb } from './growingLimb'
import type { LeaderChoice } from './plan'
import { stemAtUnion } from './unionStem'

/** A dead limb of known diameter: all that dead wood needs to be planned. */
export type MeasuredDeadwood = Limb & { readonly diameter: number }

/** A tree made ready: what is assumed is reported, stems stand above their unions, limbs know their parents. */
export interface PreparedTree {
  readonly tree: Tree
  readonly stage: LifeStage
  readonly vigor: Vigor
  /** Mm a year, slowed by the life stage where it comes from a class. */
  readonly stemGrowth: number
  readonly system: UnitSystem
  readonly height: number
  readonly crownBase: number
  readonly leader: LeaderChoice
  /** Live limbs to plan, in the inventory's order, the leader and dead wood left out. */
  readonly limbs: readonly GrowingLimb[]
  /** Dead limbs, which are removed. */
  readonly dead: readonly MeasuredDeadwood[]
  /** Live limbs on the trunk that cannot be planned but hold foliage. */
  readonly unplanned: readonly Limb[]
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
  const limbs = limbsOf(check, leader, crownBase, rules, year)
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
  return { tree, stage, vigor, stemGrowth, system, height, crownBase, leader, limbs, dead, unplanned }
}

function isMeasured(limb: Limb): limb is MeasuredDeadwood {
  return limb.diameter !== null
}

/** What a limb needs; only a row marked as leader, and not kept as one, can have come without. */
const measurements = ['diameter', 'stem', 'origin', 'tip'] as const

/** A row marked as leader that is dead wood to be cut, or a limb beside the leader that is kept. */
function refuseUnmeasured(check: TreeCheck, limb: Limb): void {
  const field = measurements.find((each) => limb[each] === null) ?? 'diameter'
  const facts = { column: columnOf(field).name.toLowerCase(), limb: limb.id }
  check.refuse(limb, check.note('missing-value', limb.row, field, facts).message)
}

function limbsOf(
  check: TreeCheck,
  leader: LeaderChoice,
  crownBase: number,
  rules: Rules,
  year: number
): GrowingLimb[] {
  const growing: GrowingLimb[] = []
  for (const limb of check.tree.limbs) {
    if (limb === leader.limb || limb === leader.lost || limb.dead || check.isOut(limb)) continue
    const made = growingLimb(check, limb, { crownBase, year, fade: rules.effectYears })
    if (made === null) continue
    growing.push(made)
    if (made.diameter > made.stem) noteOvertaken(check, made)
  }
  if (growing.some(({ surveyed }) => surveyed.parent !== null)) joinParents(growing)
  return growing
}

/** A limb whose parent is the leader, dead or not planned counts as one on the trunk. */
function joinParents(growing: readonly GrowingLimb[]): void {
  const byId = new Map(growing.map((limb) => [limb.surveyed.id, limb]))
  for (const limb of growing) {
    const { parent: id } = limb.surveyed
    const parent = id === null ? undefined : byId.get(id)
    if (parent === undefined) continue
    limb.parent = parent
    parent.children.push(limb)
  }
}

function growingLimb(
  check: TreeCheck,
  limb: Limb,
  { crownBase, year, fade }: { crownBase: number; year: number; fade: number }
): GrowingLimb | null {
  const { diameter, stem: measured, origin, tip } = limb
  if (diameter === null || measured === null || origin === null || tip === null) {
    refuseUnmeasured(check, limb)
    return null
  }
  const stem = stemAtUnion(check.tree, limb)
  if (stem === null) {
    check.refuse(limb, check.note('union-impossible', limb.row, 'stem', { limb: limb.id }).message)
    return null
  }
  return {
    surveyed: limb,
    diameter,
    stem,
    origin,
    tip,
    firstTip: tip,
    lowest: limb.lowestFoliage ?? Math.max(crownBase, Math.min(origin, tip)),
    share: 0,
    loss: limb.lastCutShare ?? 0,
    lossAge: limb.lastCutYear === null ? 0 : Math.max(0, year - limb.lastCutYear),
    fade,
    parent: null,
    children: [],
    corrected: false,
    gone: false
  }
}

function noteOvertaken(check: TreeCheck, limb: GrowingLimb): void {
  const value = ratio(aspectRatio(limb.diameter, limb.stem))
  check.note('thicker-than-stem', limb.surveyed.row, 'diameter', { limb: limb.surveyed.id, value })
}
