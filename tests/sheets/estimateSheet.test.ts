import { Money } from '../../shared/money'
import { estimatePlan } from '../../src/price/estimatePlan'
import { firstVisit, wholeProgram, type ChosenOffer } from '../../src/price/offers'
import { withinBudget } from '../../src/price/withinBudget'
import { inventedRates, inventedRatesIn, type Rates } from '../../src/price/rates'
import { cautions, inventedRatesNotice } from '../../src/sheets/cautions'
import { estimateColumn, type EstimateColumn } from '../../src/sheets/estimate/estimateColumns'
import { describeEstimateSheets } from '../../src/sheets/estimate/estimateSheet'
import { priceColumns } from '../../src/sheets/estimate/priceTable'
import { describeRates } from '../../src/sheets/rates/ratesSheet'
import { withFreeNames } from '../../src/sheets/namedCells'
import { isFormula, type Content, type SheetDescription } from '../../src/sheets/sheet'
import { definedNameFault } from '../../src/workbench/host/sheetNames'
import { metricRows, planOf, samplePlan } from './samplePlan'
import { circle, formulasOf } from './sheetFormulas'
import { runningText } from './sheetTexts'

const plan = samplePlan()
const rates: Rates = { ...inventedRatesIn['in-ft'], taxRate: '0.0825' }
const estimate = estimatePlan(plan, rates)
const program = wholeProgram(estimate)
const first = firstVisit(estimate)
const budget = withinBudget(estimate, new Money(1200))

function sheetsOf(offer: ChosenOffer): [sheet: SheetDescription, working: SheetDescription] {
  const [sheet, working] = describeEstimateSheets(offer, plan)
  return [sheet!, working!]
}

const [sheet, working] = sheetsOf(program)
const table = working.tables[0]!.area

type Formula = Extract<Content, { formula: string }>

const labeled = (description: SheetDescription, label: string): Content[] =>
  description.rows.find((row) => String(row[0]).startsWith(label))!

/** What the paper says: the rates beside it are not printed. */
const paperText = (description: SheetDescription): string =>
  runningText({
    ...description,
    rows: description.rows.map((row) => row.slice(0, description.page.columns))
  })

const stored = (content: Content | undefined) => (isFormula(content) ? content.value : content)
const inTable = (row: Content[], column: EstimateColumn) => row[estimateColumn[column]] as Formula
const priceIn = (row: Content[]) => stored(row[priceColumns.price])

/** Functions that every spreadsheet program has had since 2007 (from memory). */
const oldFunctions = new Set(
  'ROUND ROUNDUP ROUNDDOWN SUM SUMIF COUNTIF IF AND INT MAX MIN LARGE ROW INDEX LOG10'.split(' ')
)

describe.each([
  ['the whole program', program],
  ['the first visit', first],
  ['a budget', budget]
] as [string, ChosenOffer][])('the estimate of %s', (_name, offer) => {
  const [own, ownWorking] = sheetsOf(offer)
  const printed = own.rows.map((row) => row.slice(0, own.page.columns))

  test('has its price first: on the left, in the third row, before anything else', () => {
    expect(String(own.rows[1]![0])).toBe('Price in USD, with tax')
    expect(own.rows[2]![0]).toEqual({ formula: '=Offer_total', value: offer.total.toNumber() })
  })

  test('has one row per line of the offer and no other, each with its price', () => {
    const ids = new Set(plan.trees.map(({ tree }) => tree.id))
    const rows = printed.filter(
      (row) => ids.has(String(row[0])) && typeof row[priceColumns.visit] === 'number'
    )
    expect(rows.map((row) => [row[0], row[1], row[2], priceIn(row)])).toEqual(
      offer.lines.map(({ tree, visit, year, price }) => [tree, visit, year, price.toNumber()])
    )
  })

  test('adds up what is printed to what is offered, as a formula', () => {
    const sums = [labeled(own, 'Subtotal'), labeled(own, 'Tax'), labeled(own, 'Total with tax')]
    expect(sums.map(priceIn)).toEqual([offer.subtotal, offer.tax, offer.total].map((each) => each.toNumber()))
    for (const row of sums) expect(isFormula(row[priceColumns.price])).toBe(true)
  })

  test('prints neither minutes nor rates nor working columns: those stand beside and on a hidden sheet', () => {
    const shown = printed.flat().map(String).join(' ')
    for (const word of ['Working', 'smallest units', '(min)', 'Wage', 'Mobilization'])
      expect([word, shown.includes(word)]).toEqual([word, false])
    expect([ownWorking.hidden, ownWorking.continues]).toEqual([true, true])
    expect(own.page.titleRow).toBeNull()
  })

  test('no formula leads back to itself, across both sheets, areas and names included', () => {
    expect(circle([own, ownWorking])).toBeNull()
  })

  test('keeps what is forecast, what waits and budget figures out of every sum', () => {
    const text = paperText(own)
    const { forecast } = offer
    expect(text.includes('a forecast and not in the price above')).toBe(forecast !== null)
    if (forecast !== null) {
      const row = labeled(own, 'All later visits')
      expect([stored(row[priceColumns.brush]), priceIn(row)]).toEqual([
        forecast.low.toNumber(),
        forecast.high.toNumber()
      ])
    }
    expect(text).toContain('Budget figures, not offered and in no sum')
    expect(printed.filter((row) => row[0] === 'T15').map(priceIn)).toEqual([
      offer.budgetFigures[0]!.price.toNumber()
    ])
    for (const { tree } of offer.waiting) expect(text).toMatch(new RegExp(`not offered: .*\\b${tree}\\b`))
  })

  test('calls only functions that are older than 2016', () => {
    const called = [own, ownWorking].flatMap(formulasOf).flatMap(({ formula }) => {
      return [...formula.replace(/"[^"]*"/g, '').matchAll(/([A-Za-z0-9.]+)\(/g)].map((found) => found[1]!)
    })
    expect(called.length).toBeGreaterThan(100)
    expect([...new Set(called)].filter((name) => !oldFunctions.has(name))).toEqual([])
  })
})

test('the first visit and the budget are offers of their own, so that the cases above differ', () => {
  expect(budget.lines.length).toBeGreaterThan(2)
  expect(budget.lines.length).toBeLessThan(first.lines.length)
  expect(first.lines.length).toBeLessThan(program.lines.length)
  expect(first.forecast).not.toBeNull()
})

test('a circle would be found across the two sheets', () => {
  const broken = { ...working, rows: working.rows.map((row) => [...row]) }
  broken.rows[table.row + 1]![estimateColumn.hours] = { formula: '=ROUND(Offer_total,2)', value: 0 }
  expect(circle([sheet, broken])).not.toBeNull()
})

describe('the sheet of workings', () => {
  test('weighs brush in pounds for an inventory in feet and kilograms for one in meters', () => {
    expect(working.rows[table.row]).toContain('Brush (lb)')
    expect(working.rows[table.row + 1]![estimateColumn.weight]).toBeCloseTo(
      estimate.lines[0]!.brushKilograms / 0.45359237,
      6
    )
    const metric = planOf(metricRows())
    const [, other] = describeEstimateSheets(wholeProgram(estimatePlan(metric)), metric)
    expect(other!.rows[other!.tables[0]!.area.row]).toEqual(
      expect.arrayContaining(['Brush (kg)', 'Loose (m³)', 'Chips (m³)'])
    )
  })

  test('every number of a line that follows from others is a formula with the engine’s value in store', () => {
    program.lines.forEach((line, index) => {
      const row = working.rows[table.row + 1 + index]!
      const values = (
        ['hours', 'crew', 'disposal', 'shared', 'cost', 'charged', 'topUp', 'price'] as const
      ).map((column) => inTable(row, column).value)
      const { crew, disposal, shared, cost, charged, topUp } = line.money
      const amounts = [crew, disposal, shared, cost, charged, topUp, line.price]
      expect(values).toEqual([line.crewHours, ...amounts.map((amount) => amount.toNumber())])
    })
  })

  test('a price can be read: cost, contingency, overhead, profit, least charge', () => {
    const row = String(table.row + 2)
    const cell = (column: EstimateColumn) => `${'ABCDEFGHIJKLMNOPQRSTUVWXYZ'[estimateColumn[column]]!}${row}`
    const line = working.rows[table.row + 1]!
    expect(inTable(line, 'charged').formula).toBe(
      `=ROUND(MAX(${cell('cost')}*(1+Contingency_rate)*(1+Overhead_rate)*Profit_factor,Least_charge),Money_digits)`
    )
    expect(inTable(line, 'price').formula).toBe(`=ROUND(${cell('charged')}+${cell('topUp')},Money_digits)`)
  })
})

describe('the rates beside the prices', () => {
  test('every name that a formula calls is a cell of the two sheets, and none reads like a cell', () => {
    const given = new Set([sheet, working].flatMap(({ names }) => names!.map(({ name }) => name)))
    for (const name of given) expect([name, definedNameFault(name)]).toEqual([name, null])
    const [later, laterWorking] = sheetsOf(first)
    const used = [sheet, working, later, laterWorking].flatMap(formulasOf).flatMap(({ formula }) => {
      return [...formula.replace(/"[^"]*"/g, '').matchAll(/[A-Z][a-z]+(?:_[a-z]+)+/g)].map(([name]) => name)
    })
    const all = new Set([
      ...given,
      ...[later, laterWorking].flatMap(({ names }) => names!.map(({ name }) => name))
    ])
    expect([...new Set(used)].filter((name) => !all.has(name))).toEqual([])
    // Every name is called by something.
    expect([...all].filter((name) => !used.includes(name))).toEqual([])
  })

  test('says which rates are invented, and how many', () => {
    const said = paperText(sheet)
    expect(said).toContain(inventedRatesNotice)
    expect(said).toContain(
      `${String(estimate.rateCount)} of ${String(estimate.rateCount)} rates are still invented.`
    )
    const invented = (own: SheetDescription) =>
      own.rows.filter((row) => row.at(-1) === 'invented').map((row) => row[priceColumns.price + 2])
    const of = (names: Rates['invented']) =>
      describeEstimateSheets(wholeProgram(estimatePlan(plan, { ...rates, invented: names })), plan)[0]!
    expect(invented(of(['wage']))).toEqual(['Wage of one person'])
    expect(paperText(of([]))).not.toContain(inventedRatesNotice)
    expect(invented(of([]))).toEqual([])
  })

  test('every yellow rate takes what the Rates sheet takes, and says the same where it does not', () => {
    const onRates = new Map(describeRates(rates).rules!.map(({ sentence, takes }) => [sentence, takes]))
    for (const { sentence, takes } of sheet.rules!) expect(takes).toEqual(onRates.get(sentence))
    const cells = sheet.rules!.map(({ area }) => `${String(area.row)},${String(area.column)}`)
    const checked = sheet.names!.filter(({ area }) =>
      cells.includes(`${String(area.row)},${String(area.column)}`)
    )
    expect(checked.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['Wage_hour', 'Profit_kind', 'Profit_rate', 'Tax_rate', 'Money_digits'])
    )
    expect(checked).toHaveLength(sheet.rules!.length)
    expect(sheet.rules!.length).toBeGreaterThan(15)
  })

  test('shows the averages of the estimate beside what is published, with the source', () => {
    const rows = sheet.rows.filter((row) =>
      /for each (inch|minute)/.test(String(row[priceColumns.price + 2]))
    )
    expect(rows).toHaveLength(3)
    expect(rows.map((row) => row[priceColumns.price + 5])).toEqual(['6', '1.5', '3'])
    for (const row of rows) {
      expect(row[priceColumns.price + 3]).toBeGreaterThan(0)
      expect(row[priceColumns.price + 6]).toContain('Churack')
    }
  })
})

test('the estimate carries every caution', () => {
  for (const caution of cautions) expect(paperText(sheet)).toContain(caution)
})

test('without any work it has one sheet, no names and no sums over nothing', () => {
  const none = { ...estimate, lines: [], years: [], budgetFigures: [] }
  const sheets = describeEstimateSheets(firstVisit(none), plan)
  expect(sheets).toHaveLength(1)
  expect(formulasOf(sheets[0]!)).toEqual([])
  expect(paperText(sheets[0]!)).toContain('No work is planned, so nothing is priced or offered.')
})

test('the default rates are those of the plan’s units', () => {
  expect(estimatePlan(plan).rates).toBe(inventedRatesIn['in-ft'])
  expect(estimatePlan(planOf(metricRows())).rates).toBe(inventedRates)
})

describe('names that the workbook has already', () => {
  test('are left alone: all of both sheets get one number, and the formulas of both follow', () => {
    const others = withFreeNames([sheet, working], new Set(['crew_hour', 'line_price_2']))
    expect(others.flatMap(({ names }) => names!).every(({ name }) => name.endsWith('_3'))).toBe(true)
    const formulas = others.flatMap(formulasOf).map(({ formula }) => formula)
    expect(formulas.some((formula) => formula.includes('*Crew_hour_3,Money_digits_3)'))).toBe(true)
    expect(formulas.join()).not.toMatch(/(Crew_hour|Money_digits|Profit_kind|Line_price|Trip_units)(?!_3)/)
    expect(withFreeNames([sheet, working], new Set(['budget']))).toEqual([sheet, working])
  })

  test('two estimates in one workbook have names of their own, each both of its sheets', () => {
    const four = withFreeNames([sheet, working, sheet, working], new Set())
    const ends = four.map(({ names }) => [...new Set(names!.map(({ name }) => /_2$/.test(name)))])
    expect(ends).toEqual([[false], [false], [true], [true]])
  })
})
