import { atMost } from '../formulas/boundary'
import { isSettled } from '../formulas/priority'
import { cutOf, isGoneWithParent, type VisitChoice } from './chooseForVisit'
import type { GrowingLimb } from './growingLimb'
import type { AssessedLimb } from './assessLimb'
import { isCandidate } from './options'
import type { Hold } from './obligation'
import type { Visit } from './plan'
import type { VisitConditions } from './visitConditions'

type When = Pick<Visit, 'visit' | 'year'>

/** What the visits did with one limb, from which its end is told. */
export interface LimbTrack {
  readonly limb: GrowingLimb
  /** Priority at the survey. */
  readonly priority: number
  /** It had an obligation at a visit. */
  obliged: boolean
  /** What holds its obligation at the last visit; null where it is met or there is none. */
  hold: Hold | null
  removed: When | null
  /** The visit from which it stays settled. */
  settled: When | null
  /** A cut was offered at the last visit and the allowance did not reach it. */
  waits: boolean
  /** Priority expected after the last visit. */
  priorityAfter: number
  /** As the last visit left it where it is shortened, before it grows on; otherwise null. */
  left: AsLeft | null
}

/** A shortened limb as a visit leaves it, as far as its growth goes. */
export type AsLeft = Pick<GrowingLimb, 'diameter' | 'stem' | 'loss' | 'lossAge'>

/** Follows the limbs of a tree from its first visit on. */
export function followLimbs(choice: VisitChoice): LimbTrack[] {
  return choice.before.map(({ limb, priority }) => ({
    limb,
    priority,
    obliged: false,
    hold: null,
    removed: null,
    settled: null,
    waits: false,
    priorityAfter: priority,
    left: null
  }))
}

/** Keeps how a visit left the shortened limbs, once its cuts are made. */
export function keepAsLeft(tracks: readonly LimbTrack[]): void {
  for (const track of tracks) {
    const { diameter, stem, loss, lossAge, shortened, gone } = track.limb
    track.left = shortened && !gone ? { diameter, stem, loss, lossAge } : null
  }
}

/** A cut that is wanted does not fit: nothing is left, or other limbs need it more. */
function waitsForAllowance(
  assessed: AssessedLimb,
  left: number,
  isPlanned: boolean,
  conditions: VisitConditions
): boolean {
  return atMost(left, 0) ? isCandidate(assessed, conditions) : isPlanned && assessed.cuts.length > 0
}

/** Adds what a visit did; `when` is null where no visit is planned at that time. */
export function followVisit(
  tracks: readonly LimbTrack[],
  choice: VisitChoice,
  conditions: VisitConditions,
  when: When | null
): void {
  const { pass } = choice
  let at = 0
  for (const track of tracks) {
    const { limb } = track
    if (track.removed !== null) continue
    if (pass.obliged.has(limb)) track.obliged = true
    track.hold = pass.obliged.get(limb) ?? null
    // The limbs that are left stand in the order of the tracks.
    const assessed = choice.assessed[at]?.limb === limb ? choice.assessed[at] : undefined
    if (assessed !== undefined) at++
    const cut = cutOf(choice, limb)
    if (assessed === undefined || cut?.kind === 'remove' || isGoneWithParent(choice, limb)) {
      track.priorityAfter = 0
      track.removed = when
      continue
    }
    const { nextRatio, nextPriority } = cut ?? assessed
    track.priorityAfter = nextPriority
    track.waits = cut === undefined && waitsForAllowance(assessed, pass.left, when !== null, conditions)
    if (when === null) continue
    if (!isSettled(nextRatio, nextPriority, limb.surveyed.bark, conditions.rules)) track.settled = null
    else track.settled ??= when
  }
}
