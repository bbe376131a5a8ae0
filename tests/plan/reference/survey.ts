/** A tree as it was surveyed, ready for its first visit; null where it cannot be planned. */
import type { Rules } from '../../../shared/rules'
import { visitInterval } from '../../../shared/rules'
import type { Limb, Tree } from '../../../src/inventory/inventory'
import { isPrunedLately, stageAt, vigorOf } from './allowance'
import { partLeft } from './growth'
import { leadersOf } from './leader'
import { firstOrder, type LimbNow, type TreeModel, type TreeNow } from './model'
import { stemAbove } from './ratio'
import { sum } from './near'
import { fullShare } from './shares'

/** The model of a tree for a date; palms are out of scope. */
export function surveyed(tree: Tree, rules: Rules, date: string): TreeModel | null {
  if (tree.height === null || tree.crownBase === null || formOf(tree, rules) === 'palm') return null
  const leaders = leadersOf(tree, rules)
  const { leader, lost } = leaders
  return {
    tree,
    rules,
    form: formOf(tree, rules),
    stage: tree.stage ?? 'mature',
    vigor: vigorOf(tree, rules),
    height: tree.height,
    crownBase: tree.crownBase,
    leaders,
    inDoubt: lost !== null || leader?.decay === true,
    year: Number(date.slice(0, 4)),
    prunedLately: isPrunedLately(tree, rules, date)
  }
}

/** Multi-stem is proposed where three or more unmarked stems rise from below half a meter, and none is the leader. */
function formOf({ form, limbs }: Tree, rules: Rules): TreeModel['form'] {
  if (form !== null) return form
  const stems = limbs.filter(
    ({ role, dead, parent, origin }) =>
      role === null &&
      !dead &&
      parent === null &&
      origin !== null &&
      origin * 1000 < rules.multiStemBelow - 1e-6
  )
  const marked = limbs.some(({ role }) => role === 'leader')
  return !marked && stems.length >= rules.multiStemFrom ? 'multi-stem' : 'decurrent'
}

/** The rows beside the leader's, as they stand at the first visit. */
export function limbsAtSurvey(model: TreeModel): LimbNow[] {
  const { tree } = model
  return tree.limbs.flatMap((limb, at) => {
    const { leader, lost } = model.leaders
    if ((limb === leader || limb === lost) && !limb.dead) return []
    const parent = tree.limbs.findIndex(({ id }) => id === limb.parent)
    const carrier = tree.limbs[parent]
    const isOnTrunk = carrier === undefined || carrier === leader || carrier === lost
    return limbNow(model, limb, at, isOnTrunk ? null : parent) ?? []
  })
}

function limbNow(
  { tree, year, crownBase, rules }: TreeModel,
  limb: Limb,
  at: number,
  parent: number | null
): LimbNow | null {
  const beside = tree.limbs.filter((other) => other.role !== 'leader' && other.parent === limb.parent)
  const stem = stemAbove(limb, beside)
  const { diameter, origin, tip, lastCutShare, lastCutYear } = limb
  if (diameter === null || (!limb.dead && (stem === null || origin === null || tip === null))) return null
  const record = {
    lost: lastCutShare ?? 0,
    since: lastCutYear === null ? 0 : Math.max(0, year - lastCutYear)
  }
  return {
    limb,
    at,
    parent,
    diameter,
    stem: stem ?? diameter,
    origin: origin ?? 0,
    tip: tip ?? 0,
    firstDiameter: diameter,
    firstTip: tip ?? 0,
    ...record,
    hadAtSurvey: partLeft(rules, record),
    shortened: (lastCutShare ?? 0) > 0 || lastCutYear !== null,
    shortenedInPlan: false,
    lowest: limb.lowestFoliage ?? Math.max(crownBase, Math.min(origin ?? 0, tip ?? 0)),
    observedFrom: limb.lowestFoliage,
    corrected: false,
    gone: false
  }
}

/** The tree at a visit, with the limbs as they are then. */
export function atVisit(
  model: TreeModel,
  limbs: readonly LimbNow[],
  slot: number,
  crownBase = model.crownBase
): TreeNow {
  const now = stageAt(model.stage, slot)
  const tree = {
    ...model,
    crownBase,
    slot,
    now,
    limbs,
    interval: visitInterval(model.rules, now)
  }
  const [full, shares]: [number[], number[]] = [[], []]
  for (const limb of limbs) {
    full[limb.at] = limb.gone || limb.limb.dead ? 0 : fullShare(tree, limb)
    shares[limb.at] = full[limb.at]! * partLeft(model.rules, limb)
  }
  const trunk = firstOrder(limbs)
  return {
    ...tree,
    full,
    shares,
    crownBaseNow: crownBase,
    leaderShare: Math.max(0, 1 - sum(trunk.map(({ at }) => full[at]!))),
    leaderFrom: Math.max(crownBase, ...trunk.map(({ origin }) => origin))
  }
}
