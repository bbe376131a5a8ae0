/** How every limb ends (design, section 3). */
import { limbsAfter, type VisitHeld } from './visits'
import { isTakenAway } from './limits'
import { limbAt, type LimbNow, type TreeNow } from './model'
import { atMost, over } from './near'
import { next, priorityNow } from './options'
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

export function outcomes(visits: readonly VisitHeld[]): Ends[] {
  const first = visits[0]!
  return first.tree.limbs
    .filter((limb) => hasClaim(visits, limb))
    .map((limb) => ({
      limb: limb.limb.id,
      ...endOf(visits, limb),
      priority: priorityNow(first.tree, limb)
    }))
}

/** A priority over 10 at the survey, or an obligation. */
function hasClaim(visits: readonly VisitHeld[], limb: LimbNow): boolean {
  const obliged = visits.some(({ obliged: { taken, waiting } }) =>
    [...taken, ...waiting].some(({ at, obligation }) => at === limb.at && obligation !== null)
  )
  const { tree } = visits[0]!
  return (
    obliged ||
    (!limb.limb.dead && !isStem(tree, limb) && over(priorityNow(tree, limb), tree.rules.clearedBelow))
  )
}

function endOf(visits: readonly VisitHeld[], limb: LimbNow): End {
  const held = visits.filter((visit) => visit.held)
  return (
    removedAt(held, limb) ??
    settledAt(held, limb) ??
    expectedAt(held, limb) ??
    doneAt(held, limb) ??
    waitsFor(visits, limb) ?? { outcome: 'keep', ...nowhere }
  )
}

function removedAt(held: readonly VisitHeld[], limb: LimbNow): End | null {
  const at = held.findIndex(({ tree, taken }) => isTakenAway(tree.limbs, taken, limbAt(tree.limbs, limb.at)))
  return at < 0 ? null : { outcome: 'removed', visit: at + 1, year: held[at]!.year, heldBy: null }
}

/** The visit after whose cuts the limb is settled; one whose obligation waits never is. */
function settledAt(held: readonly VisitHeld[], limb: LimbNow): End | null {
  const at = held.findIndex(({ tree, taken, obliged }) => {
    if (obliged.waiting.some((waiting) => waiting.at === limb.at)) return false
    const now = limbAt(tree.limbs, limb.at)
    const cut = taken.find((each) => each.at === limb.at && each.kind === 'reduce')
    const ratio = cut?.nextRatio ?? next(tree, now).nextRatio
    return isSettled(tree, now, ratio, cut?.tipAfter ?? now.tip)
  })
  return at < 0 ? null : { outcome: 'settled', visit: at + 1, year: held[at]!.year, heldBy: null }
}

function waits(held: readonly VisitHeld[], limb: LimbNow): boolean {
  return held.at(-1)!.obliged.waiting.some(({ at }) => at === limb.at)
}

/** Shortened, and by growth alone settled within 25 years of the plan. */
function expectedAt(held: readonly VisitHeld[], limb: LimbNow): End | null {
  if (waits(held, limb)) return null
  const last = held.at(-1)!
  const { rules, year } = last.tree
  for (let later = 1; last.year + later <= year + rules.expectedYears; later++) {
    const tree = grownOn(last, later)
    const now = limbAt(tree.limbs, limb.at)
    const ratio = now.diameter / now.stem
    if (now.shortened && isSettled(tree, now, ratio, now.tip))
      return { outcome: 'expected', visit: null, year: last.year + later, heldBy: null }
  }
  return null
}

/** The tree so many years after a visit, growing from one interval to the next. */
function grownOn({ tree, taken }: VisitHeld, years: number): TreeNow {
  let now: TreeNow = tree
  let done = taken
  for (let left = years; left > 0; left -= tree.interval) {
    now = { ...now, limbs: limbsAfter(now, done, Math.min(left, tree.interval)) }
    done = []
  }
  return now
}

/** Its obligation is met and nothing else is wanted. */
function doneAt(held: readonly VisitHeld[], limb: LimbNow): End | null {
  const met = held.findIndex(({ taken }) =>
    taken.some(({ at, obligation }) => at === limb.at && obligation !== null)
  )
  const last = held.at(-1)!
  if (met < 0 || waits(held, limb)) return null
  const now = limbAt(last.tree.limbs, limb.at)
  if (isCandidate(last.tree, now)) return null
  return { outcome: 'done', visit: met + 1, year: held[met]!.year, heldBy: null }
}

function waitsFor(visits: readonly VisitHeld[], limb: LimbNow): End | null {
  const last = visits.at(-1)!
  const now = limbAt(last.tree.limbs, limb.at)
  const heldBy = now.limb.decay
    ? 'inspect first'
    : last.tree.inDoubt
      ? 'leader'
      : isHeldByAllowance(last, limb)
        ? 'allowance'
        : null
  return heldBy === null ? null : { outcome: 'wait', visit: null, year: null, heldBy }
}

/** An obligation waits for the allowance, or a cut that is offered was not made. */
function isHeldByAllowance({ obliged, asked, taken, allowed }: VisitHeld, limb: LimbNow): boolean {
  const waiting = obliged.waiting.find(({ at }) => at === limb.at)
  if (waiting !== undefined) return waiting.heldBy === 'allowance'
  const open = asked.limbs.find((each) => each.limb.at === limb.at)
  return atMost(allowed, 0) || ((open?.options.length ?? 0) > 0 && !taken.some(({ at }) => at === limb.at))
}
