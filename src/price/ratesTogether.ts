import { problem, type Problem } from '../../shared/problems'
import { rateEntry, rateNames, type RateName, type RateValues } from './rateBook'
import { shownRate } from './readRate'
import { valueCell, type RatesTable } from './ratesTable'

/** The limits of the classes of cut and of the height bands, each in the order in which they have to rise. */
const ladders: readonly (readonly RateName[])[] = (['upToMillimeters', 'upToMeters'] as const).map((limit) =>
  rateNames.filter((name) => rateEntry(name).place?.[2] === limit)
)

/** Limits that do not rise all return to their start values, as nothing tells which of them is wrong. */
function checkOrder(table: RatesTable, values: RateValues, start: RateValues, problems: Problem[]): void {
  for (const ladder of ladders) {
    const wrong = ladder.find(
      (name, at) => at > 0 && Number(values[name]) <= Number(values[ladder[at - 1] ?? name])
    )
    if (wrong === undefined) continue
    const [, cell] = valueCell(table, wrong)
    const facts = {
      name: rateEntry(wrong).name,
      text: values[wrong],
      value: ladder.map((name) => start[name]).join(', ')
    }
    problems.push(problem('rate-order', cell, facts))
    for (const name of ladder) values[name] = start[name]
  }
}

/** A margin is a share of the price and stays below 1; a markup has no such limit. */
function checkMargin(table: RatesTable, values: RateValues, start: RateValues, problems: Problem[]): void {
  if (values.profitKind !== 'margin' || Number(values.profitRate) < 1) return
  const [, address] = valueCell(table, 'profitRate')
  const cell = table.rows.has('profitRate') ? address : ''
  const text = shownRate('profitRate', values.profitRate)
  problems.push(
    problem('rate-margin-whole', cell, { text, value: shownRate('profitRate', start.profitRate) })
  )
  values.profitRate = start.profitRate
}

/** Puts back to the start values those that contradict each other, each with a problem. */
export function checkTogether(
  table: RatesTable,
  values: RateValues,
  start: RateValues,
  problems: Problem[]
): void {
  checkOrder(table, values, start, problems)
  checkMargin(table, values, start, problems)
}
