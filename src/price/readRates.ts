import { addressIn, type CellBlock } from '../../shared/cells'
import { styleOf } from '../../shared/numbers'
import { groupProblems } from '../../shared/groupProblems'
import { problem, type Problem } from '../../shared/problems'
import type { UnitSystem } from '../../shared/units'
import { rateEntry, rateNames, startValues, type RateName, type RateValues } from './rateBook'
import { rateKinds } from './rateKinds'
import { ratesFrom, type Rates } from './rates'
import { checkUnits, isMarked, ratesTable, systemOf, valueCell } from './ratesTable'
import { checkTogether } from './ratesTogether'
import { readRate } from './readRate'

/**
 * The rates of a Rates sheet. Each is found by its name; a value that cannot be used becomes a problem with its address
 * and a remedy, and the invented start value stands in for that one alone. A rate counts as the user's own where it
 * differs from the start value or is marked as theirs. `assumed` is the unit system where no unit on the sheet tells it.
 */
export function readRates(
  block: CellBlock,
  assumed: UnitSystem = 'in-ft'
): { rates: Rates; problems: Problem[] } {
  const problems: Problem[] = []
  const table = ratesTable(block, problems)
  if (table === null) {
    const rates = ratesFrom(startValues(assumed), assumed, rateNames)
    return { rates, problems: [problem('no-rates', addressIn(block, 0, 0))] }
  }
  const system = systemOf(table, assumed)
  checkUnits(table, system, problems)
  const start = startValues(system)
  const values = { ...start }
  const confirmed = new Set<RateName>()
  const style = styleOf(block.rows.map((row) => row[table.columns.value]))
  for (const name of rateNames) {
    const read = readRate(name, ...valueCell(table, name), start[name], style)
    if (typeof read !== 'string') problems.push(read)
    else {
      values[name] = read
      if (isMarked(table, name)) confirmed.add(name)
    }
  }
  const typed = { ...values }
  checkTogether(table, values, start, confirmed, problems)
  const own = (name: RateName) => confirmed.has(name) && values[name] === typed[name]
  const invented = rateNames.filter((name) => isStart(name, values, start) && !own(name))
  return { rates: ratesFrom(values, system, invented), problems: [...groupProblems(problems)] }
}

function isStart(name: RateName, values: RateValues, start: RateValues): boolean {
  if (rateKinds[rateEntry(name).kind].holds === 'word') return values[name] === start[name]
  return Number(values[name]) === Number(start[name])
}
