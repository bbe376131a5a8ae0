/** To what height a tree is clear, and when it will be as high as asked (design, section 3). */
import { heightToClear, isOnSide } from './hanging'
import type { LimbNow } from './model'
import { atLeast, under } from './near'
import { stemGrowth } from './growth'
import { limbsAfter, type VisitHeld } from './visits'

export interface Reached {
  readonly requiredM: number
  readonly reachedNowM: number
  readonly reachedYear: number | null
  readonly heldBy: string | null
}

export function clearanceReached(visits: readonly VisitHeld[]): Reached | null {
  const first = visits[0]!
  const required = first.tree.tree.clearance
  if (required === null) return null
  const held = visits.filter((visit) => visit.held)
  const reached = held.find((visit) => clearAfter(visit) >= required - 1e-6)
  const now = { requiredM: required, reachedNowM: Math.min(required, clearAfter(first)) }
  if (reached === first) return { ...now, reachedYear: first.year, heldBy: null }
  const heldBy = holdOf(first)
  if (reached !== undefined) return { ...now, reachedYear: reached.year, heldBy }
  const last = held.at(-1)!
  const height = heightToClear(first.tree)!
  const onlyByRatio = under(height, required) && atLeast(clearAfter(last), height)
  return { ...now, reachedYear: onlyByRatio ? yearByHeight(first, required) : null, heldBy }
}

/** The limb on the side whose foliage is lowest once the cuts of a visit are made. */
function lowestAfter({ tree, taken }: VisitHeld): LimbNow | null {
  const left = limbsAfter(tree, taken, 0)
    .filter(({ gone, limb }) => !gone && !limb.dead)
    .filter((limb) => isOnSide(tree, limb))
  return left.sort((a, b) => a.lowest - b.lowest || a.at - b.at)[0] ?? null
}

function clearAfter(visit: VisitHeld): number {
  return lowestAfter(visit)?.lowest ?? Infinity
}

/** What holds the limb that hangs lowest. */
function holdOf(visit: VisitHeld): string {
  const { tree, obliged } = visit
  const lowest = lowestAfter(visit)!
  if (atLeast(lowest.lowest, heightToClear(tree)!)) return 'crown ratio'
  if (lowest.limb.decay) return 'inspect first'
  return obliged.waiting.find(({ at }) => at === lowest.at)?.heldBy ?? 'size'
}

/** The year in which the tree is high enough to keep its crown ratio, its height growing as its trunk to the power 2/3. */
function yearByHeight({ tree }: VisitHeld, required: number): number | null {
  const { trunk } = tree.tree
  const growth = stemGrowth(tree)
  if (trunk === null || !(growth > 0)) return null
  const needed = required / (1 - tree.rules.crownRatioGoal)
  const heightIn = (years: number) =>
    tree.height * ((trunk + growth * years) / trunk) ** tree.rules.heightPower
  let years = 0
  while (heightIn(years) < needed * (1 - 1e-12)) years++
  return tree.year + years
}
