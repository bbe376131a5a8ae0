/** How every limb ends (design, section 3). */
import { limbsAfter, type VisitHeld } from './visits'
import { isTakenAway } from './limits'
import { limbAt, type LimbNow, type TreeNow } from './model'
import { atMost, over, under } from './near'
import { priorityNow } from './options'
import { next } from './reductions'
import { isCandidate, isSettled } from './worth'
import { isStem } from './structure'

export interface Ends {
  readonly limb: string
  readonly outcome: 'removed' | 'settled' | 'expected' | 'done' | 'wait' | 'keep'
  readonly visit: number | null
  readonly year: number | null
  readonly heldBy: string | null
  readonly priority: number
}

type End = Pick<Ends, 'outcome' | 'visit' | 'year' | 'heldBy'>

const nowhere = { visit: null, year: null, heldBy: null }

/** The ends of the live limbs with a priority over 10 at the survey, or with an obligation. */
export function outcomes(visits: readonly VisitHeld[]): Ends[] {
  const { tree } = visits[0]!
  return tree.limbs
    .filter(({ limb }) => !limb.dead)
    .filter((limb) => over(priorityNow(tree, limb), tree.rules.clearedBelow) || isObliged(visits, limb))
    .map((limb) => ({ limb: limb.limb.id, ...endOf(visits, limb), priority: priorityNow(tree, limb) }))
}

function isObliged(visits: readonly VisitHeld[], limb: LimbNow): boolean {
  return visits.some(({ obliged }) => [...obliged.taken, ...obliged.waiting].some(({ at }) => at === limb.at))
}

function endOf(visits: readonly VisitHeld[], limb: LimbNow): End {
  const held = visits.filter((visit) => visit.held)
  const removed = removedAt(held, limb)
  if (removed !== null) return removed
  const met = isWaiting(visits, limb) ? null : whereItGoes(visits, held, limb)
  return met ?? waitsFor(visits.at(-1)!, limb) ?? { outcome: 'keep', ...nowhere }
}

function whereItGoes(visits: readonly VisitHeld[], held: readonly VisitHeld[], limb: LimbNow): End | null {
  return settledFrom(held, limb) ?? expectedIn(held.at(-1)!, limb) ?? isDone(visits, limb)
}

/** An obligation that waits at the last visit that was looked at. */
function isWaiting(visits: readonly VisitHeld[], limb: LimbNow): boolean {
  return visits.at(-1)!.obliged.waiting.some(({ at }) => at === limb.at)
}

function removedAt(held: readonly VisitHeld[], limb: LimbNow): End | null {
  const at = held.findIndex(({ tree, taken }) => isTakenAway(tree.limbs, taken, limbAt(tree.limbs, limb.at)))
  return at < 0 ? null : { outcome: 'removed', visit: at + 1, year: held[at]!.year, heldBy: null }
}

/** As a visit leaves it: the ratio and the priority of the limb at the next one, and its tip. */
function afterVisit({ asked, answer }: VisitHeld, limb: LimbNow) {
  const now = limbAt(asked.tree.limbs, limb.at)
  const cut = answer.taken.find((each) => each.at === limb.at)
  const tip = cut?.tipAfter ?? now.tip
  return cut === undefined
    ? { now, tip, ...next(asked.tree, now) }
    : { now, tip, nextRatio: cut.nextRatio!, nextPriority: cut.nextPriority }
}

/** The visit from which it stays settled. */
function settledFrom(held: readonly VisitHeld[], limb: LimbNow): End | null {
  let from = held.length
  while (from > 0 && isSettledAfter(held[from - 1]!, limb)) from--
  if (from === held.length) return null
  return { outcome: 'settled', visit: from + 1, year: held[from]!.year, heldBy: null }
}

function isSettledAfter(visit: VisitHeld, limb: LimbNow): boolean {
  const { now, tip, nextRatio } = afterVisit(visit, limb)
  return isSettled(visit.tree, now, nextRatio, tip)
}

/** Shortened, and by growth alone settled within 25 years of the plan. */
function expectedIn(last: VisitHeld, limb: LimbNow): End | null {
  const { rules, year, crownBase } = { ...last.tree, crownBase: last.baseAfter }
  for (let later = 1; last.year + later <= year + rules.expectedYears; later++) {
    const tree = { ...grownOn(last, later), crownBase }
    const now = limbAt(tree.limbs, limb.at)
    if (now.shortened && isSettled(tree, now, now.diameter / now.stem, now.tip))
      return { outcome: 'expected', visit: null, year: last.year + later, heldBy: null }
  }
  return null
}

/** The tree so many years after a visit, growing from one interval to the next. */
function grownOn({ tree, taken, baseAfter }: VisitHeld, years: number): TreeNow {
  let now: TreeNow = { ...tree, limbs: limbsAfter(tree, taken, 0), crownBase: baseAfter }
  for (let left = years; left > 0; left -= tree.interval)
    now = { ...now, limbs: limbsAfter(now, [], Math.min(left, tree.interval)) }
  return now
}

/** Its obligation is met and nothing else is wanted. */
function isDone(visits: readonly VisitHeld[], limb: LimbNow): End | null {
  const last = visits.at(-1)!
  const wanted = !under(afterLast(last, limb), last.tree.rules.clearedBelow)
  return isObliged(visits, limb) && !wanted ? { outcome: 'done', ...nowhere } : null
}

function afterLast(last: VisitHeld, limb: LimbNow): number {
  return afterVisit(last, limb).nextPriority
}

/** Decay is inspected first, structure waits for the leader, or the allowance does not reach. */
function waitsFor(last: VisitHeld, limb: LimbNow): End | null {
  const waiting = last.obliged.waiting.find(({ at }) => at === limb.at)
  const heldBy = limb.limb.decay
    ? 'inspect first'
    : last.tree.inDoubt && waiting === undefined && !isStem(last.tree, limb)
      ? 'leader'
      : waiting?.heldBy === 'allowance' || structureWaits(last, limb)
        ? 'allowance'
        : null
  return heldBy === null ? null : { outcome: 'wait', visit: null, year: null, heldBy }
}

/** A cut for structure is wanted: nothing is left for it, or one was offered and others need the allowance more. */
function structureWaits({ tree, obliged, asked, answer, held }: VisitHeld, limb: LimbNow): boolean {
  if (answer.taken.some(({ at }) => at === limb.at)) return false
  const now = limbAt(tree.limbs, limb.at)
  if (atMost(obliged.left, 0)) return !isStem(tree, now) && !now.limb.decay && isCandidate(tree, now)
  const open = asked.limbs.find((each) => each.limb.at === limb.at)
  return held && (open?.options.length ?? 0) > 0
}
