/** A tree as it was surveyed, ready for its first visit; null where it cannot be planned. */
import type { Rules } from '../../../shared/rules'
import { visitInterval } from '../../../shared/rules'
import type { Limb, Tree } from '../../../src/inventory/inventory'
import { isPrunedLately, stageAt, vigorOf } from './allowance'
import type { LimbNow, TreeModel, TreeNow } from './model'
import { stemAbove } from './ratio'
import { foliageShare } from './shares'

/** The model of a tree for a date; palms are out of scope. */
export function surveyed(tree: Tree, rules: Rules, date: string): TreeModel | null {
  if (tree.height === null || tree.crownBase === null || formOf(tree, rules) === 'palm') return null
  const leader = tree.limbs.find(({ role }) => role === 'leader') ?? null
  return {
    tree,
    rules,
    form: formOf(tree, rules),
    stage: tree.stage ?? 'mature',
    vigor: vigorOf(tree, rules),
    height: tree.height,
    crownBase: tree.crownBase,
    leader,
    inDoubt: leader !== null && (leader.dead || leader.broken || leader.decay),
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
    if (limb === model.leader) return []
    const parent = tree.limbs.findIndex(({ id }) => id === limb.parent)
    return limbNow(model, limb, at, parent < 0 ? null : parent) ?? []
  })
}

function limbNow({ tree, year }: TreeModel, limb: Limb, at: number, parent: number | null): LimbNow | null {
  const beside = tree.limbs.filter(
    (other) => other.role !== 'leader' && other.parent === limb.parent && !other.dead
  )
  const stem = stemAbove(limb, beside)
  const { diameter, origin, tip, lastCutShare, lastCutYear } = limb
  if (diameter === null || (!limb.dead && (stem === null || origin === null || tip === null))) return null
  const lost =
    lastCutShare === null || lastCutYear === null ? [] : [{ share: lastCutShare, years: year - lastCutYear }]
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
    losses: lost,
    lossesOfPlan: [],
    shortened: lastCutShare !== null,
    shortenedInPlan: false,
    cutBefore: false,
    raisedTo: null,
    gone: false
  }
}

/** The tree at a visit, with the limbs as they are then. */
export function atVisit(
  model: TreeModel,
  limbs: readonly LimbNow[],
  slot: number,
  base = model.crownBase
): TreeNow {
  const now = stageAt(model.stage, slot)
  const tree = { ...model, slot, now, limbs, shares: [], base, interval: visitInterval(model.rules, now) }
  const shares: number[] = []
  for (const limb of limbs) shares[limb.at] = limb.gone || limb.limb.dead ? 0 : foliageShare(tree, limb)
  return { ...tree, shares }
}
