/** Rates that were changed in the yellow cells of a written Estimate, read again. */
import type { Cell, CellBlock } from '../../shared/cells'
import { estimatePlan } from '../../src/price/estimatePlan'
import { firstVisit } from '../../src/price/offers'
import { priceByRates } from '../../src/price/priceByRates'
import { rateEntry, type RateName } from '../../src/price/rateBook'
import { inventedRatesIn } from '../../src/price/rates'
import { describeEstimate } from '../../src/sheets/estimate/estimateSheet'
import { describeRates, describeStartRates } from '../../src/sheets/rates/ratesSheet'
import { isFormula, type SheetDescription } from '../../src/sheets/sheet'
import { samplePlan } from '../sheets/samplePlan'

const plan = samplePlan()

/** A written sheet as a spreadsheet gives it back, with other values typed where a rate stands. */
function sheetOf(description: SheetDescription, typed: Partial<Record<RateName, Cell>> = {}): CellBlock {
  const rows = description.rows.map((row) => {
    const cells = row.map((content): Cell => {
      if (isFormula(content)) return content.value
      return typeof content === 'object' && content !== null ? content.date : content
    })
    for (const [name, value] of Object.entries(typed)) {
      const at = cells.indexOf(rateEntry(name as RateName).name)
      if (at >= 0) cells[at + 1] = value
    }
    return cells
  })
  return { rows, sheet: description.name, top: 0, left: 0 }
}

const written = (of = estimatePlan(plan)) => describeEstimate(firstVisit(of), plan)
const ratesSheet = (typed: Partial<Record<RateName, Cell>> = {}) =>
  sheetOf(describeStartRates('in-ft'), typed)

test('an Estimate as it was written changes nothing', () => {
  const { estimate, problems } = priceByRates(plan, ratesSheet(), sheetOf(written()))
  expect(problems).toEqual([])
  expect(estimate.rates.changedHere).toBeUndefined()
  expect(estimate.total.equals(estimatePlan(plan).total)).toBe(true)
})

test('a rate that was changed on it prices everything that is written next, with or without a Rates sheet', () => {
  const wanted = estimatePlan(plan, { ...inventedRatesIn['in-ft'], wage: '41.5', profitKind: 'markup' })
  const edited = sheetOf(written(), { wage: 41.5, profitKind: 'markup' })
  for (const sheet of [null, ratesSheet()]) {
    const { estimate, problems } = priceByRates(plan, sheet, edited)
    expect(problems).toEqual([])
    expect(estimate.total.toString()).toBe(wanted.total.toString())
    expect(Object.keys(estimate.rates.changedHere ?? {}).sort()).toEqual(['profitKind', 'wage'])
    expect(estimate.rates.invented).not.toContain('wage')
  }
})

test('it holds on the Estimate that is written then, and the one after that', () => {
  const first = priceByRates(plan, ratesSheet(), sheetOf(written(), { wage: 41.5 })).estimate
  const again = priceByRates(plan, ratesSheet(), sheetOf(written(first))).estimate
  expect(again.rates.wage).toBe('41.5')
  const third = priceByRates(plan, ratesSheet(), sheetOf(written(again), { wage: 28 })).estimate
  expect([third.rates.wage, third.rates.changedHere]).toEqual(['28', undefined])
})

test('a Rates sheet that was changed since wins, with a sentence that names the cell', () => {
  const { estimate, problems } = priceByRates(
    plan,
    ratesSheet({ wage: 50 }),
    sheetOf(written(), { wage: 41.5 })
  )
  expect(estimate.rates.wage).toBe('50')
  expect(problems).toHaveLength(1)
  expect(problems[0]!.code).toBe('rate-changed-twice')
  expect(problems[0]!.cell).toMatch(/^Estimate!J\d+$/)
  expect(problems[0]!.message).toContain('changed to 41.5')
})

test.each([
  ['a negative wage', { wage: -5 }, 'rate-out-of-range'],
  ['an absurd tax', { taxRate: 900 }, 'rate-out-of-range'],
  ['a word', { mobilization: 'plenty' }, 'rate-not-a-number'],
  ['a blank', { mobilization: null }, 'rate-missing']
] as [string, Partial<Record<RateName, Cell>>, string][])(
  '%s typed on the Estimate is told with its cell and not used',
  (_name, typed, code) => {
    const { estimate, problems } = priceByRates(plan, ratesSheet({ wage: 31 }), sheetOf(written(), typed))
    expect(problems.map((each) => each.code)).toContain(code)
    expect(problems.find((each) => each.code === code)!.cell).toMatch(/^Estimate!J\d+$/)
    expect(estimate.rates.taxRate).toBe('0')
    expect(Number(estimate.rates.wage)).toBe(31)
  }
)

test('an Estimate in other units, or a sheet that is none, is left alone', () => {
  const metric = sheetOf(written(), { wage: 41.5 })
  const other = priceByRates(plan, sheetOf(describeRates(inventedRatesIn['cm-m'])), metric).estimate
  expect(other.rates.changedHere).toBeUndefined()
  const none: CellBlock = { rows: [['Estimate'], ['typed over']], sheet: 'Estimate', top: 0, left: 0 }
  expect(priceByRates(plan, ratesSheet(), none).problems).toEqual([])
})
