/** Which options of the second pass are offered (design, section 3, "Worth"). */
import { mayBeRemoved, priorityNow, removal } from './options'
import { next, reductions } from './reductions'
import type { LimbNow, Option, TreeNow } from './model'
import { atLeast, atMost, over, under } from './near'
import { structuralPart } from './priority'

/** A ratio of 0.50 or less at the next visit with a structural part of 10 or less. */
export function isSettled(tree: TreeNow, limb: LimbNow, ratio: number, tip: number): boolean {
  const { rules } = tree
  return (
    atMost(ratio, rules.settledRatio) &&
    atMost(structuralPart(tree, ratio, limb.origin, tip), rules.settledPart)
  )
}

export function isCandidate(tree: TreeNow, limb: LimbNow): boolean {
  return (
    atLeast(priorityNow(tree, limb), tree.rules.clearedBelow) &&
    !isSettled(tree, limb, next(tree, limb).nextRatio, limb.tip)
  )
}

/** What a cut has to lower the next priority by, set against doing nothing. */
function leastGain(tree: TreeNow, limb: LimbNow, option: Option): number {
  const { rules } = tree
  const cut = option.cutDiameter ?? 0
  const spared = atLeast(priorityNow(tree, limb), rules.urgentFrom)
  const bySize = spared
    ? 0
    : over(cut, rules.reasonedCut)
      ? rules.gainLargest
      : over(cut, rules.markedCut)
        ? rules.gainLarge
        : 0
  return Math.max(rules.leastGain, option.dose / rules.dosePerPoint, bySize)
}

/** Cuts more than 2.4 m above ground are at least 20 mm, unless the limb's priority is 20 or more. */
function isTooSmallUpThere(tree: TreeNow, limb: LimbNow, option: Option): boolean {
  const { rules } = tree
  const height = limb.origin + (limb.tip - limb.origin) * option.cutAt
  return (
    over(height * 1000, rules.smallCutAbove) &&
    under(option.cutDiameter ?? 0, rules.leastHighCut) &&
    !atLeast(priorityNow(tree, limb), rules.smallCutPriority)
  )
}

/** The options that are offered, the smallest dose first. */
export function offered(tree: TreeNow, limb: LimbNow): Option[] {
  const possible = [...reductions(tree, limb), ...(mayBeRemoved(tree, limb) ? [removal(tree, limb)] : [])]
    .filter((option) => !isTooSmallUpThere(tree, limb, option))
    .sort((a, b) => a.dose - b.dose)
  const kept: Option[] = []
  const { rules } = tree
  const without = next(tree, limb).nextPriority
  for (const option of possible) {
    const isStep = kept
      .filter(({ dose }) => dose < option.dose)
      .every((smaller) =>
        atLeast(
          smaller.nextPriority - option.nextPriority,
          Math.max(rules.leastGain, (option.dose - smaller.dose) / rules.dosePerPoint)
        )
      )
    if (isStep && atLeast(without - option.nextPriority, leastGain(tree, limb, option))) kept.push(option)
  }
  return kept
}
