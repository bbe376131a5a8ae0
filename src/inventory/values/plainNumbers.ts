import type { Column } from '../../../shared/columns'
import { leastNines } from './missing'
import { tallest, thickest } from './lengthReader'

/**
 * What the plain numbers of a column come to, almost all that a sheet holds: multiplied and divided, if that is more than 0
 * and at most `most`. All others are looked at one by one.
 */
export interface PlainNumbers {
  readonly times: number
  readonly over: number
  readonly most: number
}

/** Takes no number as it stands. */
const none: PlainNumbers = { times: 1, over: 1, most: 0 }

/**
 * By kind and by the millimeters of 1. They are kept, because the engine throws away what it compiled for objects that hold
 * decimals whenever the memory is tidied up while there are none.
 */
const kept = new Map<string, PlainNumbers>()

export function plainNumbers(column: Column, millimeters: number): PlainNumbers {
  const { kind, limit } = column.reads
  const name = `${kind} ${String(limit)} ${String(millimeters)}`
  const numbers = kept.get(name) ?? takenAsTheyStand(column, millimeters)
  kept.set(name, numbers)
  return numbers
}

function takenAsTheyStand({ reads }: Column, millimeters: number): PlainNumbers {
  const { kind } = reads
  if (kind === 'diameter' || kind === 'stems') return { times: millimeters, over: 1, most: thickest }
  if (kind === 'height' || kind === 'positive height')
    return { times: millimeters, over: 1000, most: tallest }
  if (kind === 'degrees' || kind === 'bearing') return { times: 1, over: 1, most: reads.limit ?? 360 }
  return none
}

/** The value of a plain number; NaN where it needs a closer look, as one that could stand for "not measured". */
export function plainValue(cell: number, { times, over, most }: PlainNumbers): number {
  const value = cell * times + 0
  return value > 0 && value <= most && cell < leastNines ? value / over : NaN
}
