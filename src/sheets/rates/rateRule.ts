import type { Area } from '../../../shared/cells'
import { allowedRange } from '../../price/readRate'
import type { RateEntry } from '../../price/rateBook'
import type { CellRule } from '../sheet'

/** What the cell of a rate takes, by the range that the reading goes by; a currency's letters are judged when read. */
export function rateRule(entry: RateEntry, area: Area): CellRule | null {
  const sentence = `${entry.name}: ${allowedRange(entry)}.`
  if (entry.kind === 'code') return null
  if (entry.kind === 'choice') return { area, takes: { values: entry.choices }, sentence }
  return { area, takes: { from: entry.low, to: entry.high, whole: entry.kind === 'whole' }, sentence }
}
