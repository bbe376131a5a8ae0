/** To what height a tree is clear, and when it will be as high as asked (design, section 3). */
import { heightToClear, isOnSide, lowestFoliage } from './hanging'
import { isTakenAway } from './limits'
import { atLeast, under } from './near'
import { stemGrowth } from './growth'
import type { VisitHeld } from './visits'

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
  const reached = held.find((visit) => atLeast(clearAfter(visit, required), required))
  const now = { requiredM: required, reachedNowM: clearAfter(first, required) }
  if (reached !== undefined)
    return { ...now, reachedYear: reached.year, heldBy: reached === first ? null : heldBy(first) }
  if (under(heightToClear(first.tree)!, required))
    return { ...now, reachedYear: yearByHeight(first, required), heldBy: 'crown ratio' }
  return { ...now, reachedYear: null, heldBy: heldBy(held.at(-1)!) }
}

/** The lowest foliage on the side after a visit, no more than is asked for. */
function clearAfter({ tree, taken }: VisitHeld, required: number): number {
  const left = tree.limbs
    .filter(({ gone, limb }) => !gone && !limb.dead)
    .filter((limb) => isOnSide(tree, limb) && !isTakenAway(tree.limbs, taken, limb))
    .map((limb) => {
      const raise = taken.find(({ at, kind }) => at === limb.at && kind === 'raise')
      return Math.max(lowestFoliage(tree, limb), raise?.height ?? 0)
    })
  return Math.min(required, ...left)
}

function heldBy({ obliged }: VisitHeld): string | null {
  const waiting = obliged.waiting.find(({ obligation }) => obligation === 'clearance')
  return waiting?.heldBy ?? 'size'
}

/** The year in which the tree is high enough to keep its crown ratio, its height growing as its trunk to the power 2/3. */
function yearByHeight({ tree }: VisitHeld, required: number): number | null {
  const { trunk } = tree.tree
  if (trunk === null) return null
  const needed = required / (1 - tree.rules.crownRatioGoal)
  const growth = stemGrowth(tree)
  for (let years = 1; years <= tree.rules.expectedYears; years++) {
    const height = tree.height * ((trunk + growth * years) / trunk) ** tree.rules.heightPower
    if (atLeast(height, needed)) return tree.year + years
  }
  return null
}
