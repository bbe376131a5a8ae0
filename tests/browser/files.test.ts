/** Workbooks that the workbench opens and saves. */
import { readXlsx } from 'hucre/xlsx'
import type { Browser } from 'playwright-core'
import { sampleInventory, sampleSheetName } from '../../src/file/sampleInventory'
import { readInventory } from '../../src/inventory/readInventory'
import { planInventory } from '../../src/plan/planInventory'
import { describeCutPlan } from '../../src/sheets/cut-plan/cutPlan'
import { isScaled, pageScale } from '../../src/sheets/pageBreaks'
import { connectBrowser, workbenchAddress } from './shared'
import {
  openDesk,
  openFile,
  planSelection,
  read,
  savedFile,
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

/** The same plan as the pane makes of the sample. */
function planSample() {
  const block = { rows: sampleInventory, sheet: sampleSheetName, top: 0, left: 0 }
  const inventory = readInventory(block)
  return planInventory(inventory, { date: new Date().toISOString().slice(0, 10) })
}

describe('the files of the workbench', () => {
  test('saves an .xlsx and opens it again', async () => {
    await write(desk, sampleSheetName, 'Y2:Y3', [
      ['=LIMB.ASPECTRATIO(4,8)'],
      ['=LIMB.ASPECTRATIO(N3:N5,O3:O5)']
    ])
    await waitForCell(desk, sampleSheetName, 'Y5', 1.6 / 4.8)
    const { name, bytes } = await savedFile(desk)
    expect(name).toBe('Sample inventory (invented).xlsx')
    const file = await readXlsx(bytes, { readStyles: true })
    const sheet = file.sheets[0]!
    expect(sheet.cells?.get('1,24')).toMatchObject({ formula: '_xldudf_LIMB_ASPECTRATIO(4,8)', value: 0.5 })
    expect(sheet.cells?.get('2,24')).toMatchObject({ formulaRef: 'Y3:Y5', formulaDynamic: true })
    expect(sheet.freezePane).toEqual({ rows: 1 })

    await startAgain(desk)
    expect(await read(desk, sampleSheetName, 'Y2')).toEqual([['']])
    await openFile(desk, 'again.xlsx', bytes)
    await waitForCell(desk, sampleSheetName, 'Y5', 1.6 / 4.8)
    expect(await read(desk, sampleSheetName, 'Y2', 'formulas')).toEqual([['=LIMB.ASPECTRATIO(4,8)']])
    expect(await read(desk, sampleSheetName, 'A1:V65')).toEqual(
      sampleInventory.slice(0, 65).map((row) => row.map((cell) => cell ?? ''))
    )
  })

  test('refuses a file that is no workbook, and keeps what is open', async () => {
    await desk.page
      .locator('#choose')
      .setInputFiles({ name: 'broken.xlsx', mimeType: '', buffer: Buffer.from('not a workbook') })
    await desk.page.waitForFunction(() =>
      document.getElementById('saying')?.textContent?.includes('broken.xlsx')
    )
    expect(await desk.page.locator('#file').innerText()).toContain('Sample inventory')
    expect((await read(desk, sampleSheetName, 'A1'))[0]).toEqual(['Tree'])
  })
})

describe('the documents in the saved file', () => {
  test('hold their tables, names, page set-up, freeze and heights', async () => {
    await planSelection(desk)
    await desk.pane.getByRole('tab', { name: /^Write/ }).click()
    await desk.pane.getByRole('button', { name: 'Write sheets' }).click()
    await desk.pane
      .getByText(/^Written/)
      .first()
      .waitFor()
    const file = await readXlsx((await savedFile(desk)).bytes, { readStyles: true })
    const sheet = file.sheets.find(({ name }) => name === 'Cut plan')!
    const description = describeCutPlan(planSample())
    expect(sheet.tables?.map(({ name }) => name)).toEqual(description.tables.map(({ name }) => name))
    expect(sheet.tables?.[0]?.columns.map(({ name }) => name)).toEqual(
      description.rows[description.tables[0]!.area.row]!.slice(0, description.tables[0]!.area.columns)
    )
    expect(sheet.pageSetup).toMatchObject({
      orientation: description.page.orientation,
      ...(isScaled(description.page)
        ? { scale: pageScale(description.page, description.widths) }
        : { fitToPage: true, fitToWidth: 1, fitToHeight: 0 })
    })
    expect(sheet.headerFooter?.oddFooter).toContain(description.page.footer.replaceAll('&', '&&'))
    expect(sheet.freezePane ?? {}).toEqual(
      Object.fromEntries(
        Object.entries({ rows: description.freezeRows, columns: description.freezeColumns }).filter(
          ([, n]) => n > 0
        )
      )
    )
    const { area } = description.tables[0]!
    const above = description.heights.filter(({ row }) => row < area.row + area.rows)
    expect(above.length).toBeGreaterThan(0)
    for (const { row, points } of above) expect(sheet.rowDefs?.get(row)?.height).toBeCloseTo(points, 0)
    expect(file.namedRanges).toContainEqual({ name: 'Limbwright_cut_plan', range: "'Cut plan'!$A$1" })
    expect(sheet.cells?.get('0,0')?.style?.font?.bold).toBe(true)
  })
})
