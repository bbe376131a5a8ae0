import { membersOf } from '../../shared/groupProblems'
import type { Problem } from '../../shared/problems'
import { counted } from '../../shared/words/counts'
import { listed } from '../../shared/words/lists'
import { rowsNamed } from '../../shared/words/some'
import type { Unplanned } from '../inventory/inventory'
import type { Plan } from './plan'

/** Rows that are not planned for one cause. */
export interface LeftOut {
  readonly rows: readonly Unplanned[]
  /** Why, in a sentence that is true of all of them. */
  readonly reason: string
  /** What to do about it; empty where no problem says it. */
  readonly remedy: string
}

/** The problem that stands for a reason, by the reason's sentence; notes keep no row out, but that a tree has no limbs. */
function causes(problems: readonly Problem[]): Map<string, Problem> {
  const found = new Map<string, Problem>()
  const reasons = problems.filter(({ level, code }) => level !== 'note' || code === 'no-limbs')
  for (const each of reasons) for (const { message } of membersOf(each)) found.set(message, each)
  return found
}

/** Unplanned rows by their cause: by the problem that is their reason, or by the reason's own sentence. */
function byCause(
  unplanned: readonly Unplanned[],
  problems: readonly Problem[]
): Map<Problem | string, Unplanned[]> {
  const found = new Map<Problem | string, Unplanned[]>()
  if (unplanned.length === 0) return found
  const known = causes(problems)
  for (const row of unplanned) {
    const cause = known.get(row.reason) ?? row.reason
    const rows = found.get(cause)
    if (rows === undefined) found.set(cause, [row])
    else rows.push(row)
  }
  return found
}

/** The rows of a plan that are not planned, one entry a cause, in the order of the first row of each. */
export function leftOut({ unplanned, problems }: Pick<Plan, 'unplanned' | 'problems'>): readonly LeftOut[] {
  return [...byCause(unplanned, problems)].map(([cause, rows]) =>
    typeof cause === 'string'
      ? { rows, reason: cause, remedy: '' }
      : { rows, reason: cause.message, remedy: cause.remedy }
  )
}

/** How many rows wait for a cause, and which: "1,000 limbs wait for it: rows 2 to 1001." */
function waitingWords(rows: readonly Unplanned[], { of }: Problem): string {
  const limbs = rows.filter(({ wholeTree }) => wholeTree !== true).length
  const trees = rows.length - limbs
  const who = listed([
    ...(limbs > 0 ? [counted(limbs, 'limb')] : []),
    ...(trees > 0 ? [counted(trees, 'tree')] : [])
  ])
  return `${who} wait for ${of === undefined ? 'it' : 'them'}: ${rowsNamed(rows.map(({ row }) => row))}.`
}

/** Each problem with what cannot be planned because of it, where that is more than the one row that it names itself. */
export function withWaiting(
  problems: readonly Problem[],
  unplanned: readonly Unplanned[]
): readonly Problem[] {
  const waiting = byCause(unplanned, problems)
  return problems.map((each) => {
    const rows = waiting.get(each) ?? []
    return rows.length < 2 ? each : { ...each, waits: waitingWords(rows, each) }
  })
}
