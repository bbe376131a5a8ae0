import { estimatePlan } from '../../src/arbor/price/estimatePlan'
import { inventedRates } from '../../src/arbor/price/rates'
import { inventedRatesNotice } from '../../src/documents/cautions'
import { describeEstimate } from '../../src/documents/estimateSheet'
import type { Content, SheetDescription } from '../../src/documents/sheet'
import { columnLetters } from '../../shared/cells'
import { metricRows, planOf, samplePlan } from './samplePlan'

const plan = samplePlan()
const estimate = estimatePlan(plan)
const sheet = describeEstimate(estimate, plan)
const table = sheet.tables[0]!.area

type Formula = Extract<Content, { formula: string }>

function labelled(description: SheetDescription, label: string): Content[] {
  return description.rows.find((row) => row[0] === label)!
}

function formulaIn(row: Content[], column: number): Formula {
  return row[column] as Formula
}

/** The numbers that the cells of a reference such as L9:L36 hold. */
function numbersIn(description: SheetDescription, reference: string): number[] {
  const found = /^([A-Z]+)(\d+):([A-Z]+)(\d+)$/.exec(reference)!
  const column = description.widths.findIndex((_width, index) => columnLetters(index) === found[1])
  return description.rows.slice(Number(found[2]) - 1, Number(found[4])).map((row) => row[column] as number)
}

describe('the estimate as a sheet', () => {
  test('has one row a tree and visit', () => {
    const body = sheet.rows.slice(table.row + 1, table.row + table.rows)
    expect(body.map((row) => [row[0], row[1], row[2]])).toEqual(
      estimate.lines.map(({ tree, visit, year }) => [tree, visit, year])
    )
    expect(body.length).toBeGreaterThan(20)
  })

  test('weighs brush in pounds for an inventory in feet and kilograms for one in metres', () => {
    expect(sheet.rows[table.row]).toContain('Brush weight (lb)')
    expect(sheet.rows[table.row + 1]![10]).toBeCloseTo(estimate.lines[0]!.brushKilograms / 0.45359237, 6)
    const metric = planOf(metricRows())
    const other = describeEstimate(estimatePlan(metric), metric)
    expect(other.rows[other.tables[0]!.area.row]).toContain('Brush weight (kg)')
  })

  test('sums exactly the printed prices, with the engine’s value in store', () => {
    const { formula, value } = formulaIn(labelled(sheet, 'Subtotal'), 11)
    const reference = /^=SUM\((.+)\)$/.exec(formula)![1]!
    const prices = numbersIn(sheet, reference)
    expect(prices).toEqual(estimate.lines.map(({ price }) => price.toNumber()))
    expect(value).toBeCloseTo(
      prices.reduce((sum, price) => sum + price, 0),
      6
    )
    expect(value).toBe(estimate.subtotal.toNumber())
  })

  test('the years add up to the subtotal', () => {
    const years = sheet.rows.filter((row) => String(row[0]).startsWith('Work of '))
    expect(years.length).toBe(new Set(estimate.lines.map(({ year }) => year)).size)
    const total = years.reduce((sum, row) => sum + (formulaIn(row, 11).value as number), 0)
    expect(total).toBeCloseTo(estimate.subtotal.toNumber(), 6)
    for (const row of years)
      expect(formulaIn(row, 11).formula).toMatch(/^=SUMIF\(C\d+:C\d+,\d{4},L\d+:L\d+\)$/)
  })

  test('tax and total are native formulas on the cells above them', () => {
    const taxed = describeEstimate(estimatePlan(plan, { ...inventedRates, taxRate: '0.0825' }), plan)
    const at = (label: string) => taxed.rows.findIndex((row) => row[0] === label) + 1
    const tax = labelled(taxed, 'Tax, rate shown')
    const [sub, taxRow] = [at('Subtotal'), at('Tax, rate shown')]
    expect(formulaIn(tax, 11).formula).toBe(`=ROUND(L${String(sub)}*K${String(taxRow)},2)`)
    expect(tax[10]).toBeCloseTo(0.0825, 10)
    const total = formulaIn(labelled(taxed, `Total (${estimate.currency})`), 11)
    expect(total.formula).toBe(`=L${String(sub)}+L${String(taxRow)}`)
    const subtotal = formulaIn(labelled(taxed, 'Subtotal'), 11).value as number
    expect(total.value).toBeCloseTo(subtotal + (formulaIn(tax, 11).value as number), 6)
  })

  test('says that the default rates are invented, and only then', () => {
    const said = (invented: boolean) =>
      describeEstimate({ ...estimate, inventedRates: invented }, plan)
        .rows.flat()
        .includes(inventedRatesNotice)
    expect(said(true)).toBe(true)
    expect(said(false)).toBe(false)
  })

  test('without any line it has no table and no sums over nothing', () => {
    const empty = describeEstimate({ ...estimate, lines: [] }, plan)
    expect(empty.tables).toEqual([])
    expect(
      empty.rows.flat().some((cell) => typeof cell === 'object' && cell !== null && 'formula' in cell)
    ).toBe(false)
    expect(empty.rows.flat()).toContain('No work is planned, so there is nothing to price.')
  })
})
