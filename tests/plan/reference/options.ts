/** Removals, and how a limb stands today (design, section 3, "Options"). */
import { isInClearance } from './hanging'
import type { LimbNow, Option, TreeNow } from './model'
import { atMost, over } from './near'
import { priority, reachesHigh, startsLow } from './priority'

export function ratioNow({ diameter, stem }: LimbNow): number {
  return diameter / stem
}

export function priorityNow(tree: TreeNow, limb: LimbNow): number {
  return priority(tree, limb.limb.bark, ratioNow(limb), limb.origin, limb.tip)
}

/** Within a foot of a larger permanent limb. */
function isCrowded({ limbs, rules }: TreeNow, limb: LimbNow): boolean {
  return limbs.some(
    (other) =>
      other.at !== limb.at &&
      other.parent === limb.parent &&
      !other.gone &&
      !other.limb.dead &&
      other.limb.role !== 'temporary' &&
      over(other.diameter, limb.diameter) &&
      atMost(Math.abs(other.origin - limb.origin) * 1000, rules.crowdedWithin)
  )
}

function hasReason(tree: TreeNow, limb: LimbNow): boolean {
  const { bark, rubbing, broken } = limb.limb
  return (
    isInClearance(tree, limb) ||
    bark !== 'none' ||
    startsLow(tree, limb.origin) * reachesHigh(tree, limb.tip) > 0 ||
    isCrowded(tree, limb) ||
    ((rubbing || broken) && !limb.corrected) ||
    limb.shortened
  )
}

export function mayBeRemoved(tree: TreeNow, limb: LimbNow): boolean {
  const { rules, now } = tree
  const ratio = ratioNow(limb)
  const early = now === 'planting' || now === 'young'
  return (
    limb.limb.dead ||
    limb.limb.role === 'temporary' ||
    (early && atMost(limb.diameter, rules.smallRemoval)) ||
    ((early || now === 'medium') &&
      limb.shortened &&
      atMost(limb.diameter, rules.stagedRemoval) &&
      atMost(ratio, rules.stagedRemovalRatio)) ||
    (atMost(ratio, rules.removeUpToRatio) && atMost(limb.diameter, rules.removeUpTo) && hasReason(tree, limb))
  )
}

export function removal(tree: TreeNow, limb: LimbNow): Option {
  return {
    kind: 'remove',
    share: 1,
    count: 1,
    cutDiameter: limb.diameter,
    height: limb.origin,
    distance: null,
    lateralMin: null,
    tipAfter: null,
    dose: tree.shares[limb.at]!,
    cutAt: 0,
    endsAt: 0,
    lateralAt: null,
    nextRatio: null,
    nextPriority: 0
  }
}
