import { currencyDecimals } from '../../shared/words/money'
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

/** A yen has no decimals and a Kuwaiti dinar three: the start value of two is not kept by mistake. */
function checkDecimals(
  table: RatesTable,
  values: RateValues,
  start: RateValues,
  confirmed: ReadonlySet<RateName>,
  problems: Problem[]
): void {
  const typed = Number(values.minorDigits)
  if (typed !== Number(start.minorDigits) || confirmed.has('minorDigits')) return
  const decimals = currencyDecimals(values.currency)
  if (decimals === null || decimals === typed || decimals > rateEntry('minorDigits').high) return
  const [, cell] = valueCell(table, 'minorDigits')
  const facts = { text: values.currency, value: decimals === 0 ? 'none' : String(decimals), digits: typed }
  problems.push(problem('rate-decimals', cell, facts))
  values.minorDigits = String(decimals)
}

/** Puts right those that contradict each other, each with a problem: to the start values, or to what the currency has. */
export function checkTogether(
  table: RatesTable,
  values: RateValues,
  start: RateValues,
  confirmed: ReadonlySet<RateName>,
  problems: Problem[]
): void {
  checkOrder(table, values, start, problems)
  checkMargin(table, values, start, problems)
  checkDecimals(table, values, start, confirmed, problems)
}
