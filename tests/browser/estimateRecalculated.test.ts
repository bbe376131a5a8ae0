/**
 * Every formula of the written estimate, calculated by a spreadsheet that is not ours: the file is opened in the grid of the
 * workbench with wrong values in store, so that only what the grid computed itself can agree with the engine.
 */
import type { Browser } from 'playwright-core'
import { cellAddress } from '../../shared/cells'
import { readInventory } from '../../src/inventory/readInventory'
import { planInventory } from '../../src/plan/planInventory'
import { estimatePlan } from '../../src/price/estimatePlan'
import type { Estimate } from '../../src/price/estimate'
import { firstVisit, offerOf, type ChosenOffer } from '../../src/price/offers'
import { withinBudget } from '../../src/price/withinBudget'
import { inventedRatesIn, type Rates } from '../../src/price/rates'
import { estimateColumn } from '../../src/sheets/estimate/estimateColumns'
import { describeEstimateSheets } from '../../src/sheets/estimate/estimateSheet'
import type { SheetDescription } from '../../src/sheets/sheet'
import { sampleInventory, sampleSheetName } from '../../src/file/sampleInventory'
import { writeWorkbook } from '../../src/file/writeWorkbook'
import { samplePlan } from '../sheets/samplePlan'
import { formulasOf, spoiled, yenRates } from '../sheets/sheetFormulas'
import { connectBrowser, workbenchAddress } from './shared'
import { openDesk, openFile, planSelection, read, select, startAgain, write, type Desk } from './workbench'

jest.setTimeout(90000)

const plan = samplePlan()
const dollars: Rates = { ...inventedRatesIn['in-ft'], taxRate: '0.0825' }
type Sheets = [sheet: SheetDescription, working: SheetDescription]
type OfferOf = (estimate: Estimate) => ChosenOffer
const aThird: OfferOf = (estimate) => withinBudget(estimate, estimate.total.div(3))

const described = (rates: Rates, offer: OfferOf = aThird): Sheets => {
  const [sheet, working] = describeEstimateSheets(offer(estimatePlan(plan, rates)), plan)
  return [sheet!, working!]
}

const wrong = -1

/** The cell that tells whether the other documents are older. */
const ageOf = (sheet: SheetDescription): string =>
  formulasOf(sheet).find(({ formula }) => formula.startsWith('=IF(ROUND(Offer_total-'))!.address

let browser: Browser
let desk: Desk

beforeAll(async () => {
  browser = await connectBrowser()
  desk = await openDesk(browser, workbenchAddress())
})
afterAll(() => browser.close())
beforeEach(() => startAgain(desk))

async function open(descriptions: SheetDescription[]): Promise<void> {
  const buffer = Buffer.from(
    await writeWorkbook(descriptions.map((description) => spoiled(description, wrong)))
  )
  await openFile(desk, 'estimate.xlsx', buffer)
}

/** The cells where the grid and the engine do not agree, and how many formulas were looked at. */
async function compared(sheet: string, description: SheetDescription, but: readonly string[] = []) {
  const formulas = formulasOf(description).filter(({ address }) => !but.includes(address))
  const area = `A1:${cellAddress(description.rows.length - 1, description.widths.length - 1)}`
  const end = Date.now() + 15000
  for (;;) {
    const values = await read(desk, sheet, area)
    const differing = formulas.flatMap(({ row, column, address, formula, value }) => {
      const found = values[row]?.[column]
      const near =
        typeof value === 'number' && typeof found === 'number'
          ? Math.abs(found - value) <= 1e-9 * Math.max(1, Math.abs(value))
          : found === value
      return near ? [] : [{ address, formula, value, found }]
    })
    // Calculating takes the grid a moment.
    if (differing.length === 0 || Date.now() > end) return { differing, count: formulas.length }
    await desk.page.waitForTimeout(100)
  }
}

describe('the estimate, opened in a spreadsheet', () => {
  test('comes to what the engine says in every formula, for two sets of rates in one workbook', async () => {
    const sheets = [described(dollars), described(yenRates, firstVisit)]
    await open(sheets.flat())
    const names = ['Estimate', 'Estimate working', 'Estimate (2)', 'Estimate working (2)']
    let all = 0
    for (const [index, name] of names.entries()) {
      const { differing, count } = await compared(name, sheets.flat()[index]!)
      expect(differing).toEqual([])
      all += count
    }
    expect(all).toBeGreaterThan(500)
  })

  test('follows a change of its rates as the engine does', async () => {
    const [before, working] = described(dollars)
    await open([before, working])
    await compared('Estimate', before)
    const cellOf = (name: string) => {
      const { area } = before.names!.find((named) => named.name === name)!
      return cellAddress(area.row, area.column)
    }
    await write(desk, 'Estimate', cellOf('Wage_hour'), [[41.35]])
    await write(desk, 'Estimate', cellOf('Mobilization_charge'), [[333.33]])
    await write(desk, 'Estimate', cellOf('Profit_kind'), [['markup']])
    await write(desk, 'Estimate', cellOf('Tax_rate'), [[0.07]])
    const changed: Rates = {
      ...dollars,
      wage: '41.35',
      mobilization: '333.33',
      profitKind: 'markup',
      taxRate: '0.07'
    }
    const estimate = estimatePlan(plan, changed)
    expect(estimate.total.equals(estimatePlan(plan, dollars).total)).toBe(false)
    const budget = aThird(estimatePlan(plan, dollars))
    const bought = new Set(budget.lines.map(({ tree }) => tree))
    const lines = estimate.lines.filter(({ tree, visit }) => visit === 1 && bought.has(tree))
    const [sheet, follows] = describeEstimateSheets(
      { ...budget, ...offerOf('within budget', lines, estimate) },
      plan
    )
    expect((await compared('Estimate working', follows!)).differing).toEqual([])
    // The head tells that the other documents are older now; everything else is what the engine says.
    const { differing } = await compared('Estimate', sheet!, [ageOf(sheet!)])
    expect(differing).toEqual([])
    expect(String((await read(desk, 'Estimate', ageOf(before)))[0]![0])).toMatch(
      /^Rates were changed here after writing\. The other documents are older/
    )
  })

  test('a margin typed into it that no price can hold gives no price, and a sentence', async () => {
    const [sheet, working] = described(dollars)
    await open([sheet, working])
    await compared('Estimate', sheet)
    const rowOf = (name: string) => sheet.names!.find((named) => named.name === name)!.area
    const { row, column } = rowOf('Profit_rate')
    const [line] = working.tables
    const price = cellAddress(line!.area.row + 1, estimateColumn.price)
    const remark = cellAddress(rowOf('Profit_factor').row, rowOf('Profit_factor').column + 3)
    const typed = async (margin: number) => {
      await write(desk, 'Estimate', cellAddress(row, column), [[margin]])
      const end = Date.now() + 5000
      for (;;) {
        const [[said], [charged]] = [
          await read(desk, 'Estimate', remark),
          await read(desk, 'Estimate working', price)
        ] as [unknown[][], unknown[][]]
        const refused = String(said?.[0]).includes('below 100 %')
        if (refused === margin >= 1 || Date.now() > end) return { refused, charged: charged?.[0] }
        await desk.page.waitForTimeout(100)
      }
    }
    expect(await typed(1.2)).toEqual({ refused: true, charged: '#DIV/0!' })
    expect(await typed(1)).toEqual({ refused: true, charged: '#DIV/0!' })
    expect(await typed(0.2)).toEqual({ refused: false, charged: expect.any(Number) })
  })

  test('is calculated when the pane wrote it', async () => {
    const today = await desk.pane.evaluate(() => {
      const now = new Date()
      const two = (part: number) => String(part).padStart(2, '0')
      return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
    })
    const inventory = readInventory({ rows: sampleInventory, sheet: sampleSheetName, top: 0, left: 0 })
    const planned = planInventory(inventory, { date: today })
    const [expected, working] = describeEstimateSheets(firstVisit(estimatePlan(planned)), planned)
    await select(desk, sampleSheetName, `A1:V${String(sampleInventory.length)}`)
    await planSelection(desk)
    await desk.pane.getByRole('tab', { name: /^Write/ }).click()
    await desk.pane.getByRole('button', { name: 'Write sheets' }).click()
    const names = [expected!, working!].flatMap((sheet) => sheet.names!.map(({ name }) => name))
    await untilNamed(desk, names.sort())
    for (const [name, sheet] of [
      ['Estimate', expected!],
      ['Estimate working', working!]
    ] as const) {
      const { differing, count } = await compared(name, sheet)
      expect(differing).toEqual([])
      expect(count).toBeGreaterThan(40)
    }
  })
})

/** Waits until the workbook has these names of cells and no others: the sheet is then in its place. */
async function untilNamed(desk: Desk, names: string[]): Promise<void> {
  const end = Date.now() + 20000
  while ((await named(desk)).join() !== names.join() && Date.now() < end) await desk.page.waitForTimeout(100)
  expect(await named(desk)).toEqual(names)
}

/** The names of cells that formulas call, as the workbook has them. */
function named({ pane }: Desk): Promise<string[]> {
  return pane.evaluate(() =>
    Excel.run(async (context) => {
      context.workbook.names.load('items/name')
      await context.sync()
      const names = context.workbook.names.items.map(({ name }) => name)
      return names.filter((name) => !name.startsWith('Limbwright_')).sort()
    })
  )
}
