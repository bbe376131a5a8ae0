import { wholeProgram } from '../../src/price/offers'
import { estimatePlan } from '../../src/price/estimatePlan'
import { inventedRatesIn } from '../../src/price/rates'
import { describeEstimateSheets } from '../../src/sheets/estimate/estimateSheet'
import { describeRates } from '../../src/sheets/rates/ratesSheet'
import { applySheets } from '../../src/excel/applySheets'
import { isProblem } from '../../src/excel/failures'
import { formulaBlocks } from '../../src/excel/writeFormulas'
import { formulasOf } from '../sheets/sheetFormulas'
import { samplePlan } from '../sheets/samplePlan'
import { startWith, type InventoryBook } from './inventorySheet'

let office: InventoryBook
const plan = samplePlan()
const sheets = describeEstimateSheets(wholeProgram(estimatePlan(plan)), plan)
const ownNames = sheets.flatMap(({ names }) => names!.map(({ name }) => name))
const rates = describeRates(inventedRatesIn['in-ft'])

const cellNames = () =>
  office.book
    .names()
    .filter(({ name }) => !name.startsWith('Limbwright_'))
    .map(({ name }) => name)
    .sort()

beforeAll(async () => {
  office = await startWith()
})

test('the estimate’s cells get their names, and another estimate names of its own', async () => {
  await applySheets(sheets, { replace: false })
  const own = [...ownNames].sort()
  expect(cellNames()).toEqual(own)
  await applySheets(sheets, { replace: false })
  expect(cellNames()).toEqual([...own, ...own.map((name) => `${name}_2`)].sort())
})

test('a replaced estimate keeps its names, so that formulas which call them go on, and the other keeps its own', async () => {
  await applySheets(sheets, { replace: true })
  const own = ownNames
  expect(cellNames()).toEqual([...own, ...own.map((name) => `${name}_2`)].sort())
  const sheet = office.book.sheets().find(({ name }) => name === 'Estimate working (2)')!
  const formula = formulasOf(sheets[1]!).find(({ formula: text }) => text.includes('Crew_hour,'))!
  const area = { row: formula.row, column: formula.column, rows: 1, columns: 1 }
  expect(String(office.book.formulas(sheet.id, area)[0]![0])).toContain('Crew_hour_2,Money_digits_2')
})

test('a canceled run leaves no names behind', async () => {
  const before = cellNames()
  const control = new AbortController()
  const run = applySheets(sheets, {
    replace: false,
    signal: control.signal,
    onProgress: (done, total) => {
      if (done === total) control.abort()
    }
  })
  await expect(run).rejects.toThrow()
  expect(cellNames()).toEqual(before)
})

test('a Rates sheet is written with its rules once, and never replaced', async () => {
  expect(isProblem(await applySheets([rates], { replace: false }))).toBe(false)
  const sheet = office.book.sheets().find(({ name }) => name === 'Rates')!
  expect(office.book.validations(sheet.id)).toHaveLength(rates.rules!.length)
  for (const replace of [false, true]) {
    const again = await applySheets([rates], { replace })
    expect(isProblem(again) && [again.code, again.message]).toEqual([
      'users-sheet',
      'The sheet Rates is yours and is never replaced.'
    ])
  }
  expect(office.book.sheets().filter(({ name }) => name.startsWith('Rates'))).toHaveLength(1)
})

test('blocks of formulas hold every formula once, and nothing else', () => {
  const cells = formulaBlocks(sheets[1]!.rows).flatMap(({ row, column, rows, columns }) =>
    Array.from({ length: rows * columns }, (_none, index) => [
      row + Math.floor(index / columns),
      column + (index % columns)
    ])
  )
  const wanted = formulasOf(sheets[1]!).map(({ row, column }) => [row, column])
  const sorted = (list: number[][]) => list.map(([r, c]) => r! * 1000 + c!).sort((a, b) => a - b)
  expect(sorted(cells)).toEqual(sorted(wanted))
})
