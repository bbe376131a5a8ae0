/** Every rate on the Rates sheet moves what is printed: none is typed in, counted as one's own, and then ignored. */
import { firstVisit, wholeProgram } from '../../src/price/offers'
import { cellAddress, type Cell } from '../../shared/cells'
import { estimatePlan } from '../../src/price/estimatePlan'
import { rateEntry, rateNames, startValues, type RateName } from '../../src/price/rateBook'
import { inventedRatesIn, ratesFrom, rateValues, type Rates } from '../../src/price/rates'
import { describeEstimateSheets } from '../../src/sheets/estimate/estimateSheet'
import { isFormula, type SheetDescription } from '../../src/sheets/sheet'
import { addressOn, formulasIn, precedents } from '../sheets/sheetFormulas'
import { planOf, samplePlan } from '../sheets/samplePlan'

const headers =
  'Tree | Access | Height (m) | Crown base (m) | Life stage | Vigor | Limb | Role | Limb dia (mm) | Stem dia (mm) | Origin (m) | Tip (m) | Status'

/** An invented tree of an access whose dead limbs come off whole: a cut of each diameter, in mm, at each height, in m. */
function tree(id: string, access: string, cuts: [diameter: number, height: number][]): Cell[][] {
  const whole = (row: number): Cell[] =>
    row === 0 ? [access, 24, 2, 'mature', 'good'] : [null, null, null, null, null]
  return [
    [id, ...whole(0), 'A', 'leader', 500, null, 2, 24, null],
    ...cuts.map(([diameter, height], at): Cell[] => [
      id,
      ...whole(at + 1),
      `L${String(at)}`,
      null,
      diameter,
      600,
      height,
      height + 4,
      'dead'
    ])
  ]
}

/** Cuts in every class of diameter and every band of height, on trees of every access. */
const plan = planOf([
  headers.split(' | '),
  ...tree('one', 'open', [
    [20, 2],
    [40, 5],
    [90, 9],
    [140, 15],
    [200, 2]
  ]),
  ...tree('two', 'fenced', [[90, 2]]),
  ...tree('three', 'no machine', [[90, 5]]),
  // One person with a pole does.
  ...tree('four', 'open', [[40, 3]])
])

/** With a tax, so that everything that a price goes through shows. */
const start = { ...startValues('cm-m'), taxRate: '0.08' }
const ratesWith = (values: Partial<Record<RateName, string>>): Rates =>
  ratesFrom({ ...start, ...values }, 'cm-m', [])

/** What a rate needs beside it to be used at all. */
const beside = (name: RateName): Partial<Record<RateName, string>> =>
  name === 'loadCharge' || name === 'loadVolume' ? { disposalKind: 'load' } : {}

/** The two ends of a rate's range, or the other words that it may be. */
function ends(name: RateName): string[] {
  const { kind, choices, low, high } = rateEntry(name)
  const range = name === 'profitRate' ? [low, 0.9] : [low, high]
  const all = kind === 'code' ? ['EUR'] : kind === 'choice' ? choices : range.map(String)
  return all.filter((value) => value !== start[name])
}

/** What the client is charged, in what currency and until when. */
function charged(rates: Rates): string {
  const { lines, subtotal, tax, total, currency, validUntil } = estimatePlan(plan, rates)
  const { forecast } = firstVisit(estimatePlan(samplePlan(), rates))
  const range = [forecast?.low, forecast?.high]
  return JSON.stringify([lines.map(({ price }) => price), subtotal, tax, total, currency, validUntil, range])
}

/** The Estimate and its sheet of workings. */
function sheetsOf(rates: Rates): [SheetDescription, SheetDescription] {
  const [sheet, working] = describeEstimateSheets(wholeProgram(estimatePlan(plan, rates)), plan)
  return [sheet!, working!]
}

/** The values in the Estimate, without its list of rates, and in its workings. */
function printed(rates: Rates): string {
  const later = describeEstimateSheets(firstVisit(estimatePlan(samplePlan(), rates)), samplePlan())
  const cells = [...sheetsOf(rates), ...later].flatMap(({ rows, page }) =>
    rows.flatMap((row) => row.slice(0, page.columns ?? row.length))
  )
  return JSON.stringify(cells.map((content) => (isFormula(content) ? content.value : content)))
}

describe.each(rateNames)('the rate %s', (name) => {
  test('moves what is charged at one end of its range', () => {
    const before = charged(ratesWith(beside(name)))
    expect(ends(name).some((end) => charged(ratesWith({ ...beside(name), [name]: end })) !== before)).toBe(
      true
    )
  })

  test('moves what the Estimate shows', () => {
    const before = printed(ratesWith(beside(name)))
    expect(ends(name).some((end) => printed(ratesWith({ ...beside(name), [name]: end })) !== before)).toBe(
      true
    )
  })

  test('comes back from the arithmetic as it was typed', () => {
    for (const end of ends(name)) expect(rateValues(ratesWith({ [name]: end }))[name]).toBe(end)
  })
})

/** Cells that a cell of the sheets depends on, through any number of formulas. */
function behind(start: string, sheets: readonly SheetDescription[]): Set<string> {
  const formulas = formulasIn(sheets)
  const found = new Set<string>()
  const follow = (address: string): void => {
    if (found.has(address)) return
    found.add(address)
    const own = formulas.get(address)
    if (own !== undefined) for (const next of precedents(own.formula, own.sheet, sheets)) follow(next)
  }
  follow(start)
  return found
}

const named = rateNames.filter((name) => rateEntry(name).cell !== null)
const sheets = sheetsOf(ratesWith({}))
const { names = [] } = sheets[0]
const totalCell = names.find(({ name }) => name === 'Offer_total')!.area
const total = behind(addressOn(0, cellAddress(totalCell.row, totalCell.column)), sheets)
const forecast = describeEstimateSheets(
  firstVisit(estimatePlan(samplePlan(), inventedRatesIn['in-ft'])),
  samplePlan()
)

/** What a rate moves on the Estimate: its total, or the range of what is forecast. */
test.each(named)('the Estimate follows the cell of the rate %s', (rate) => {
  const cells = names.filter(({ name }) => name === rateEntry(rate).cell)
  expect(cells).toHaveLength(1)
  const { row, column } = cells[0]!.area
  if (rateEntry(rate).use !== 'forecast') expect(total).toContain(addressOn(0, cellAddress(row, column)))
  else {
    const own = forecast[0]!.names!.find(({ name }) => name === rateEntry(rate).cell)!.area
    const range = forecast[1]!.names!.find(({ name }) => name === 'Forecast_to')!.area
    const behindRange = behind(addressOn(1, cellAddress(range.row, range.column)), forecast)
    expect(behindRange).toContain(addressOn(0, cellAddress(own.row, own.column)))
  }
})

test('the cells of rates have names of their own', () => {
  const cells = named.map((name) => rateEntry(name).cell)
  expect(new Set(cells).size).toBe(cells.length)
})
