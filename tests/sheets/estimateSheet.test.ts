import { estimatePlan } from '../../src/price/estimatePlan'
import { withinBudget } from '../../src/price/offers'
import { inventedRates, inventedRatesIn, type Rates } from '../../src/price/rates'
import { cautions, inventedRatesNotice } from '../../src/sheets/cautions'
import { estimateColumn } from '../../src/sheets/estimate/estimateColumns'
import { describeEstimate } from '../../src/sheets/estimate/estimateSheet'
import { describeRates } from '../../src/sheets/rates/ratesSheet'
import { withFreeNames } from '../../src/sheets/namedCells'
import type { Content, SheetDescription } from '../../src/sheets/sheet'
import { Money } from '../../shared/money'
import { definedNameFault } from '../../src/workbench/host/sheetNames'
import { metricRows, planOf, samplePlan } from './samplePlan'
import { circle, formulasOf } from './sheetFormulas'

const plan = samplePlan()
const rates: Rates = { ...inventedRatesIn['in-ft'], taxRate: '0.0825' }
const estimate = estimatePlan(plan, rates)
const sheet = describeEstimate(estimate, plan)
const table = sheet.tables[0]!.area

type Formula = Extract<Content, { formula: string }>

function labeled(description: SheetDescription, label: string): Content[] {
  return description.rows.find((row) => row[0] === label)!
}

const formulaIn = (row: Content[], column: keyof typeof estimateColumn) =>
  row[estimateColumn[column]] as Formula

/** Functions that every spreadsheet program has had since 2007 (from memory). */
const oldFunctions = new Set([
  'ROUND',
  'ROUNDUP',
  'SUM',
  'SUMIF',
  'COUNTIF',
  'IF',
  'AND',
  'INT',
  'MAX',
  'LARGE',
  'ROW'
])

describe('the estimate as a sheet', () => {
  test('has one row per tree and visit', () => {
    const body = sheet.rows.slice(table.row + 1, table.row + table.rows)
    expect(body.map((row) => [row[0], row[1], row[2]])).toEqual(
      estimate.lines.map(({ tree, visit, year }) => [tree, visit, year])
    )
    expect(body.length).toBeGreaterThan(15)
  })

  test('weighs brush in pounds for an inventory in feet and kilograms for one in meters', () => {
    expect(sheet.rows[table.row]).toContain('Brush (lb)')
    expect(sheet.rows[table.row + 1]![estimateColumn.weight]).toBeCloseTo(
      estimate.lines[0]!.brushKilograms / 0.45359237,
      6
    )
    const metric = planOf(metricRows())
    const other = describeEstimate(estimatePlan(metric), metric)
    expect(other.rows[other.tables[0]!.area.row]).toEqual(
      expect.arrayContaining(['Brush (kg)', 'Loose (m³)', 'Chips (m³)'])
    )
  })

  test('every number of a line that follows from others is a formula with the engine’s value in store', () => {
    estimate.lines.forEach((line, index) => {
      const row = sheet.rows[table.row + 1 + index]!
      const stored = (column: keyof typeof estimateColumn) => formulaIn(row, column).value
      expect([stored('hours'), stored('crew'), stored('disposal'), stored('shared')]).toEqual([
        line.crewHours,
        line.money.crew.toNumber(),
        line.money.disposal.toNumber(),
        line.money.shared.toNumber()
      ])
      expect([stored('cost'), stored('price')]).toEqual([line.money.cost.toNumber(), line.price.toNumber()])
    })
  })

  test('a price can be read: cost, contingency, overhead, profit, least charge', () => {
    const row = table.row + 2
    expect(formulaIn(sheet.rows[table.row + 1]!, 'price').formula).toBe(
      `=ROUND(MAX(Q${String(row)}*(1+Contingency_rate)*(1+Overhead_rate)*Profit_factor,Least_charge),Money_digits)`
    )
  })

  test('sums exactly the printed prices, with the engine’s value in store', () => {
    const { formula, value } = formulaIn(labeled(sheet, 'Subtotal'), 'price')
    const [from, to] = [table.row + 2, table.row + table.rows]
    expect(formula).toBe(`=SUM($R$${String(from)}:$R$${String(to)})`)
    expect(value).toBe(estimate.subtotal.toNumber())
  })

  test('the years add up to the subtotal', () => {
    const years = sheet.rows.filter((row) => String(row[0]).startsWith('Price of '))
    expect(years.length).toBe(new Set(estimate.lines.map(({ year }) => year)).size)
    const total = years.reduce((sum, row) => sum + (formulaIn(row, 'price').value as number), 0)
    expect(total).toBeCloseTo(estimate.subtotal.toNumber(), 6)
  })

  test('calls only functions that are older than 2016', () => {
    const called = formulasOf(sheet).flatMap(({ formula }) =>
      [...formula.matchAll(/([A-Za-z.]+)\(/g)].map((found) => found[1]!)
    )
    expect(called.length).toBeGreaterThan(300)
    expect([...new Set(called)].filter((name) => !oldFunctions.has(name))).toEqual([])
  })

  test('no formula leads back to itself, areas and names included', () => {
    expect(circle(sheet)).toBeNull()
    const broken = { ...sheet, rows: sheet.rows.map((row) => [...row]) }
    const hours = broken.rows[table.row + 1]!
    hours[estimateColumn.hours] = { formula: `=ROUND(Crew_hour*${`R${String(table.row + 2)}`},2)`, value: 0 }
    expect(circle(broken)).not.toBeNull()
  })

  test('every name that a formula calls is a cell of the sheet, and none reads like a cell', () => {
    const given = new Set(sheet.names!.map(({ name }) => name))
    expect(given.size).toBe(sheet.names!.length)
    for (const name of given) expect([name, definedNameFault(name)]).toEqual([name, null])
    const used = formulasOf(sheet).flatMap(({ formula }) =>
      [...formula.replace(/"[^"]*"/g, '').matchAll(/[A-Z][a-z]+(?:_[a-z]+)+/g)].map(([name]) => name)
    )
    expect(new Set(used)).toEqual(new Set([...given].filter((name) => used.includes(name))))
    expect(used.length).toBeGreaterThan(100)
    // Persons, wage, burden and equipment are called by Crew_hour alone; every name is called by something.
    expect([...given].filter((name) => !used.includes(name))).toEqual([])
  })

  test('says which rates are invented, and how many', () => {
    const said = sheet.rows.flat()
    expect(said).toContain(inventedRatesNotice)
    expect(said).toContain(
      `${String(estimate.rateCount)} of ${String(estimate.rateCount)} rates are still invented.`
    )
    const own = describeEstimate(estimatePlan(plan, { ...rates, invented: ['wage'] }), plan)
    const remarks = own.rows.filter((row) => row[9] === 'invented')
    expect(remarks.map((row) => row[0])).toEqual(['Wage of one person'])
    const mine = describeEstimate(estimatePlan(plan, { ...rates, invented: [] }), plan)
    expect(mine.rows.flat()).not.toContain(inventedRatesNotice)
    expect(mine.rows.flat()).not.toContain('invented')
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

  test('carries every caution', () => {
    for (const caution of cautions) expect(sheet.rows.flat()).toContain(caution)
  })

  test('marks what a budget buys and sums it by a formula', () => {
    const offer = withinBudget(estimate, new Money(2000))
    const chosen = describeEstimate(estimate, plan, offer)
    const marks = chosen.rows.filter((row) => row[estimateColumn.chosen] === '✓')
    expect(marks.map((row) => [row[0], row[1]])).toEqual(offer.lines.map(({ tree, visit }) => [tree, visit]))
    expect(offer.lines.length).toBeGreaterThan(3)
    const row = labeled(chosen, 'Most priority relieved within 2,000.00 with tax')
    expect(formulaIn(row, 'price').value).toBe(offer.total.toNumber())
    expect(circle(chosen)).toBeNull()
  })

  test('without any line it has no table, no names and no sums over nothing', () => {
    const empty = describeEstimate({ ...estimate, lines: [], years: [] }, plan)
    expect([empty.tables, empty.names]).toEqual([[], undefined])
    expect(formulasOf(empty)).toEqual([])
    expect(empty.rows.flat()).toContain('No work is planned, so there is nothing to price.')
  })

  test('the default rates are those of the plan’s units', () => {
    expect(estimatePlan(plan).rates).toBe(inventedRatesIn['in-ft'])
    expect(estimatePlan(planOf(metricRows())).rates).toBe(inventedRates)
  })
})

describe('names that the workbook has already', () => {
  test('are left alone: all of ours get one number, and the formulas follow', () => {
    const other = withFreeNames(sheet, new Set(['crew_hour', 'tax_rate_2']))
    expect(other.names!.every(({ name }) => name.endsWith('_3'))).toBe(true)
    const formulas = formulasOf(other).map(({ formula }) => formula)
    expect(formulas.some((formula) => formula.includes('*Crew_hour_3,Money_digits_3)'))).toBe(true)
    expect(formulas.join()).not.toMatch(/(Crew_hour|Money_digits|Profit_kind)(?!_3)/)
    expect(formulas.join()).toContain('Profit_kind_3="markup"')
    expect(withFreeNames(sheet, new Set(['budget']))).toBe(sheet)
  })
})
