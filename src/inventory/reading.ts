import type { Reads } from '../../shared/columnKinds'
import { asDoubt, type Problem } from '../../shared/problems'

/** A value that could be read, with a problem to report about it. */
export class Noted<T> {
  constructor(
    readonly value: T,
    readonly note: Problem
  ) {}
}

/** What a cell gives: its value, null where it is blank, or the problem that is the reason why it gives none. */
export type Reading<T> = T | Noted<T> | Problem | null

/** The reason why a cell gives no value. */
export function isUnread<T>(reading: Reading<T>): reading is Problem {
  return typeof reading === 'object' && reading !== null && 'code' in reading
}

/**
 * The one way from readings into the model: the value, what stands for a blank cell, or what is taken instead of a value
 * that cannot be read, and any problem to report with it.
 */
export function valueOf<T>(reading: Reading<T>, reads: Reads<T>, problems: Problem[]): T {
  if (typeof reading !== 'object') return reading
  if (reading === null) return reads.absent
  if (reading instanceof Noted) {
    problems.push(reading.note)
    return reading.value
  }
  if (!isUnread(reading)) return reading
  const { unread, absent } = reads
  problems.push(unread === 'row' ? reading : asDoubt(reading, unread.said))
  return unread === 'row' ? absent : unread.value
}
