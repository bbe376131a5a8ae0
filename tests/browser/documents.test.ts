/** Documents that the pane writes into the grid. */
import type { Browser } from 'playwright-core'
import { cellAddress } from '../../shared/cells'
import { sampleInventory, sampleSheetName } from '../../src/file/sampleInventory'
import { rateBook } from '../../src/price/rateBook'
import { priceColumns } from '../../src/sheets/estimate/priceTable'
import { connectBrowser, workbenchAddress } from './shared'
import {
  openDesk,
  planSelection,
  read,
  select,
  sheetNames,
  startAgain,
  waitForCell,
  write,
  type Desk
} from './workbench'

jest.setTimeout(60000)

let browser: Browser
let desk: Desk

beforeAll(async () => {
  browser = await connectBrowser()
  desk = await openDesk(browser, workbenchAddress())
})
afterAll(() => browser.close())
beforeEach(() => startAgain(desk))

describe('the documents in the grid', () => {
  test('plans the selection from the bar and writes the documents from the pane', async () => {
    await select(desk, sampleSheetName, `A1:V${sampleInventory.length}`)
    await planSelection(desk)
    await desk.pane.getByRole('tab', { name: /^Write/ }).click()
    await desk.pane.getByRole('button', { name: 'Write sheets' }).click()
    await desk.pane
      .getByText(/^Written/)
      .first()
      .waitFor()
    expect(await sheetNames(desk)).toEqual([sampleSheetName, 'Cut plan', 'Estimate', 'Estimate working'])
    expect(await read(desk, 'Cut plan', 'A1')).toEqual([['Cut plan']])
    expect(await read(desk, sampleSheetName, 'A1:V2')).toEqual(
      sampleInventory.slice(0, 2).map((row) => row.map((cell) => cell ?? ''))
    )
  })

  test('an estimate written twice in the same place comes to the pane’s total, and follows its rates', async () => {
    await planSelection(desk)
    await desk.pane.getByRole('tab', { name: 'Estimate' }).click()
    const shown = await desk.pane.locator('.totals-last dd').innerText()
    const total = Number(shown.replaceAll(',', ''))
    expect(total).toBeGreaterThan(0)
    await desk.pane.getByRole('tab', { name: /^Write/ }).click()
    await desk.pane.getByRole('button', { name: 'Write sheets' }).click()
    await desk.pane.locator('.done').waitFor()
    await desk.pane.getByRole('button', { name: 'Write again' }).click()
    await desk.pane.getByRole('button', { name: 'Replace them' }).click()
    await desk.pane.locator('.done').waitFor()
    expect(await sheetNames(desk)).toEqual([sampleSheetName, 'Cut plan', 'Estimate', 'Estimate working'])
    const cells = await read(desk, 'Estimate', 'A1:T400')
    // The rates stand beside the prices, a column between.
    const rate = priceColumns.price + 2
    const row = cells.findIndex(([label]) => String(label).startsWith('Total with tax'))
    const place = cellAddress(row, priceColumns.price)
    await waitForCell(desk, 'Estimate', place, total)
    // A changed rate has the grid recalculate every price, by names on the sheet that took its place.
    const wage = cells.findIndex((cells) => cells[rate] === rateBook.wage.name)
    await write(desk, 'Estimate', cellAddress(wage, rate + 1), [[56]])
    const end = Date.now() + 10000
    let now: unknown = total
    while (now === total && Date.now() < end) {
      await desk.page.waitForTimeout(50)
      now = (await read(desk, 'Estimate', place))[0]![0]
    }
    expect(now).toBeGreaterThan(total)
    await write(desk, 'Estimate', cellAddress(wage, rate + 1), [[cells[wage]![rate + 1]]])
    await waitForCell(desk, 'Estimate', place, total)
  })

  test('a Rates sheet written from the pane prices the next plan, and a budget fills the Estimate', async () => {
    const estimate = async () => {
      await desk.pane.getByRole('tab', { name: 'Estimate' }).click()
      return Number((await desk.pane.locator('.totals-last dd').innerText()).replaceAll(',', ''))
    }
    await planSelection(desk)
    const before = await estimate()
    await desk.pane.getByRole('button', { name: /^Rates: \d+ of \d+ still invented/ }).click()
    await desk.pane.getByRole('button', { name: 'Write a Rates sheet' }).click()
    await desk.pane.locator('.done').waitFor()
    const rates = await read(desk, 'Rates', 'A1:B80')
    const row = rates.findIndex(([label]) => label === rateBook.wage.name)
    await write(desk, 'Rates', `B${String(row + 1)}`, [[56]])
    await desk.pane.getByRole('button', { name: 'Plan again' }).click()
    await desk.pane.locator('.result-head:focus').waitFor()
    const after = await estimate()
    expect(after).toBeGreaterThan(before)
    await desk.pane.getByLabel('Within a budget').check()
    await desk.pane.getByLabel(/^Budget/).fill(String(Math.round(after / 3)))
    await desk.pane.getByRole('button', { name: 'Show what fits' }).click()
    const fits = await estimate()
    expect(fits).toBeGreaterThan(0)
    expect(fits).toBeLessThanOrEqual(Math.round(after / 3))
    await desk.pane.getByRole('tab', { name: /^Write/ }).click()
    await desk.pane.getByRole('button', { name: 'Write sheets' }).click()
    await desk.pane.locator('.write-place .done').waitFor()
    const cells = await read(desk, 'Estimate', 'A1:U100')
    expect(cells.flat().join(' ')).toContain('The first visits that fit a budget of')
    const bottom = cells.findIndex(([label]) => String(label).startsWith('Total with tax'))
    await waitForCell(desk, 'Estimate', cellAddress(bottom, priceColumns.price), fits)
  })

  test('a sheet of ours is found again after it was renamed', async () => {
    const formula = await desk.pane.evaluate(() =>
      Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.add('Mine')
        const name = context.workbook.names.add('Limbwright_test', sheet.getRange('A1'))
        name.visible = false
        await context.sync()
        sheet.name = "Owner's"
        const found = context.workbook.names.getItem('Limbwright_test').load('formula')
        await context.sync()
        return found.formula as string
      })
    )
    expect(formula).toBe("='Owner''s'!$A$1")
  })
})
