import type { Area } from '../../../shared/cells'
import { allowedRange } from '../../price/readRate'
import type { RateEntry } from '../../price/rateEntry'
import { rateKinds } from '../../price/rateKinds'
import type { CellRule, Content } from '../sheet'

/** What stands in the cell of a rate. */
export function rateContent({ kind }: RateEntry, value: string): Content {
  return rateKinds[kind].holds === 'word' ? value : Number(value)
}

/** What the cell of a rate takes, by the range that the reading goes by; a currency's letters are judged when read. */
export function rateRule(entry: RateEntry, area: Area): CellRule | null {
  const sentence = `${entry.name}: ${allowedRange(entry)}.`
  if (entry.kind === 'code') return null
  if (entry.kind === 'choice') return { area, takes: { values: entry.choices }, sentence }
  return { area, takes: { from: entry.low, to: entry.high, whole: entry.kind === 'whole' }, sentence }
}
