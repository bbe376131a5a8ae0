import { hair, isOver } from '../formulas/boundary'
import { assessLimb, assessLimbs, type AssessedLimb } from './assessLimb'
import { noEffort, type Effort, type Limits } from './choice'
import { crownBaseAfter, crownOf, rootsOf, type Crown } from './crown'
import { doseUnits } from './families'
import { groupsOfFamilies, groupsOfLimbs, type TreeGroups } from './groupsOfTree'
import type { GrowingLimb } from './growingLimb'
import { meetObligations } from './obligations/firstPass'
import type { FirstPass } from './obligations/passState'
import { isCandidate, offerCuts } from './options'
import type { PreparedTree } from './prepareTree'
import { atOnce } from './turns'
import type { VisitConditions } from './visitConditions'

/** What a visit has to choose from once its obligations are met: limbs, their cuts, and the tree's limits. */
export interface VisitProblem extends AssessedVisit, TreeGroups {}

/** A visit once its obligations are met, before its limbs are grouped. */
export interface AssessedVisit {
  /** Every limb that was there before any cut, in the inventory's order. */
  readonly before: readonly AssessedLimb[]
  readonly pass: FirstPass
  /** Every limb that is still there, in the inventory's order. */
  readonly assessed: readonly AssessedLimb[]
  readonly limits: Limits
  /** The crown before any cut, and once the obligations are met. */
  readonly crownBefore: Crown
  readonly crown: Crown
  /** The crown base once the obligations are met. */
  readonly crownBase: number
  /** Competing leaders before any cut. */
  readonly leaders: number
  /** What was looked at so far to find the best. */
  readonly effort: Effort
}

/** Assesses every limb, meets the obligations and puts the problem of the visit. The limbs have their shares. */
export function visitProblem(tree: PreparedTree, conditions: VisitConditions): VisitProblem {
  const visit = assessVisit(tree, conditions)
  return { ...visit, ...(groupsOfLimbs(visit) ?? atOnce(groupsOfFamilies(visit))) }
}

/** The same before its limbs are grouped. */
export function assessVisit(tree: PreparedTree, conditions: VisitConditions): AssessedVisit {
  const before = assessLimbs(conditions)
  let leaders = 0
  for (const { leads } of before) if (leads) leaders++
  const crownBefore = crownOf(tree, conditions)
  const pass = meetObligations(tree, conditions, before, crownBefore)
  const isTouched = pass.made.length > 0
  const crownBase = isTouched ? baseAfter(pass) : conditions.crownBase
  const crown = isTouched ? crownOf(tree, { ...conditions, crownBase }, crownBefore) : crownBefore
  const assessed = candidates(before, pass, conditions)
  const limits = limitsOf(pass, crown, leaders)
  const effort = noEffort()
  return { before, pass, assessed, limits, crownBefore, crown, crownBase, leaders, effort }
}

/** The limbs that are left after the first pass, with the cuts offered for structure. */
function candidates(
  before: readonly AssessedLimb[],
  pass: FirstPass,
  conditions: VisitConditions
): AssessedLimb[] {
  const isOpen = isOver(pass.left, 0) && !conditions.waitsForLeader
  const kinds = new Map<GrowingLimb, string>()
  const laterals = new Set<GrowingLimb>()
  for (const { limb, cut } of pass.made) {
    if (limb !== null) kinds.set(limb, cut.kind)
    if (cut.lateral !== null) laterals.add(cut.lateral)
  }
  const left: AssessedLimb[] = []
  for (const each of before) {
    if (each.limb.gone) continue
    const kind = kinds.size === 0 ? undefined : kinds.get(each.limb)
    const assessed = kind === undefined ? each : assessLimb(each.limb, conditions)
    const isWanted = isOpen && kind !== 'reduce' && isCandidate(each, conditions)
    if (isWanted) offerCuts(assessed, conditions)
    left.push(laterals.has(each.limb) ? staying(assessed) : assessed)
  }
  return left
}

/** The limb to which a broken one is cut back stays. */
function staying(assessed: AssessedLimb): AssessedLimb {
  return { ...assessed, cuts: assessed.cuts.filter(({ kind }) => kind !== 'remove') }
}

function baseAfter({ tree, conditions, leader, lowestBefore }: FirstPass): number {
  const after = rootsOf(tree).map(({ lowest }) => lowest)
  const sides = { before: lowestBefore, after }
  return crownBaseAfter(tree, conditions.crownBase, leader.leaderFrom, sides, conditions.rules)
}

/** What structure may still take: the allowance and the cuts that the obligations left. */
function limitsOf({ conditions, left, made }: FirstPass, crown: Crown, leaders: number): Limits {
  const { rules } = conditions
  const led = made.reduce((count, { assessed }) => count + (assessed?.leads === true ? 1 : 0), 0)
  return {
    units: Math.round((left + hair) * doseUnits),
    cuts: Math.max(0, rules.cutsPerVisit - made.length),
    lower: crown.lowerRoom,
    holders: crown.holders.size > 0 ? crown.holders.size : Infinity,
    leaders: Math.max(0, leadersAtOnce(leaders, conditions) - led)
  }
}

/** Of more than three competing leaders, half (rounded up) are cut at the first visit and the rest later. */
function leadersAtOnce(leaders: number, { first, rules }: VisitConditions): number {
  return first && leaders > rules.leadersAtOnce ? Math.ceil(leaders / 2) : Infinity
}
