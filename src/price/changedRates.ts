import { addressIn, isBlank, type CellBlock } from '../../shared/cells'
import { styleOf } from '../../shared/numbers'
import { problem, type Problem } from '../../shared/problems'
import { rateEntry, rateNames, type RateName, type RateValues } from './rateBook'
import { rateKinds } from './rateKinds'
import { ratesFrom, rateValues, type Rates } from './rates'
import { ratesTable, systemOf, valueCell } from './ratesTable'
import { readRate, shownRate } from './readRate'

/** On the Estimate, over what the Rates sheet said when it was written: a yellow cell that differs was changed there. */
export const baseHeader = 'By the Rates sheet'

function same(name: RateName, a: string, b: string): boolean {
  return rateKinds[rateEntry(name).kind].holds === 'word' ? a === b : Number(a) === Number(b)
}

/**
 * The rates with those that were changed in the yellow cells of an Estimate, so that they reach every document that is
 * written next. A change there holds as long as the Rates sheet says what it said when the Estimate was written; where both
 * were changed the Rates sheet wins, with a problem.
 */
export function withChangedRates(rates: Rates, estimate: CellBlock): { rates: Rates; problems: Problem[] } {
  const problems: Problem[] = []
  const table = ratesTable(estimate, [])
  const header = table === null ? undefined : estimate.rows[table.columns.headerRow]
  const base = header?.indexOf(baseHeader) ?? -1
  if (table === null || base < 0 || systemOf(table, rates.system) !== rates.system) return { rates, problems }
  const now = rateValues(rates)
  const changed: Partial<RateValues> = {}
  const style = styleOf(estimate.rows.map((row) => row[table.columns.value]))
  for (const name of rateNames) {
    const row = table.rows.get(name)
    const before = row === undefined ? null : (estimate.rows[row]?.[base] ?? null)
    if (row === undefined || isBlank(before)) continue
    const [cell, address] = valueCell(table, name)
    const typed = readRate(name, cell, address, now[name], style)
    const said = readRate(name, before, addressIn(estimate, row, base), now[name], style)
    if (typeof typed !== 'string') problems.push(typed)
    else if (typeof said !== 'string' || same(name, typed, said)) continue
    else if (same(name, said, now[name])) changed[name] = typed
    else if (!same(name, typed, now[name])) problems.push(changedTwice(name, address, typed, now[name]))
  }
  return { rates: Object.keys(changed).length === 0 ? rates : changedRates(rates, now, changed), problems }
}

function changedTwice(name: RateName, address: string, typed: string, value: string): Problem {
  const facts = { name: rateEntry(name).name, text: shownRate(name, typed), value: shownRate(name, value) }
  return problem('rate-changed-twice', address, facts)
}

function changedRates(rates: Rates, now: RateValues, changed: Partial<RateValues>): Rates {
  const names = Object.keys(changed) as RateName[]
  const invented = rates.invented.filter((name) => !names.includes(name))
  const changedHere = Object.fromEntries(names.map((name) => [name, now[name]])) as Partial<RateValues>
  return { ...ratesFrom({ ...now, ...changed }, rates.system, invented), changedHere }
}
