import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { readXlsx } from 'hucre/xlsx'
import type { Browser } from 'playwright-core'
import { sampleInventory, sampleSheetName } from '../../src/file/sampleInventory'
import { readInventory } from '../../src/inventory/readInventory'
import { planInventory } from '../../src/plan/planInventory'
import { pageScale } from '../../src/sheets/pageBreaks'
import { describeCutPlan } from '../../src/sheets/cut-plan/cutPlan'
import { estimateColumn } from '../../src/sheets/estimate/estimateColumns'
import { rateBook } from '../../src/price/rateBook'
import { cellAddress } from '../../shared/cells'
import { startBrowser } from './browser'
import { certificate, key } from './certificate'
import {
  openDesk,
  read,
  reloadedPane,
  runStart,
  select,
  sheetNames,
  startWorkbench,
  waitForCell,
  write,
  type Desk,
  type Workbench
} from './workbench'

jest.setTimeout(60000)

let browser: Browser
let workbench: Workbench
let desk: Desk

beforeAll(async () => {
  ;[browser, workbench] = await Promise.all([startBrowser(), startWorkbench()])
})
afterAll(async () => {
  await browser.close()
  await workbench.stop()
})
beforeEach(async () => {
  desk = await openDesk(browser, workbench.address)
})
afterEach(() => desk.close())

/** Types into a cell by keyboard, with the grid in front. */
async function type(sheet: string, address: string, text: string): Promise<void> {
  await select(desk, sheet, address)
  await desk.page.locator('#grid canvas').first().focus()
  await desk.page.keyboard.type(text)
  await desk.page.keyboard.press('Enter')
}

/** The same plan as the pane makes of the sample. */
function planSample() {
  const block = { rows: sampleInventory, sheet: sampleSheetName, top: 0, left: 0 }
  const inventory = readInventory(block)
  return planInventory(inventory, { date: new Date().toISOString().slice(0, 10) })
}

const line = () => desk.page.locator('#saying').innerText()

describe('the workbench', () => {
  test('opens with the invented sample inventory, its header row frozen', async () => {
    const last = sampleInventory.length
    const found = await read(desk, sampleSheetName, `A1:V${last}`)
    expect(found).toEqual(sampleInventory.map((row) => row.map((cell) => cell ?? '')))
    const frozen = await desk.pane.evaluate(() =>
      Excel.run(async (context) => {
        const range = context.workbook.worksheets.getActiveWorksheet().freezePanes.getLocationOrNullObject()
        range.load('address')
        await context.sync()
        return range.isNullObject ? '' : range.address
      })
    )
    expect(frozen).toBe(`${sampleSheetName}!1:1`)
    expect(await desk.page.locator('#file').innerText()).toContain('invented')
    expect(await desk.page.locator('footer.foot').innerText()).toContain('not Excel')
  })

  test('plans the selection from the bar and writes the documents from the pane', async () => {
    await select(desk, sampleSheetName, `A1:V${sampleInventory.length}`)
    await desk.page.getByRole('button', { name: 'Plan selection' }).click()
    await desk.pane.getByRole('heading', { name: /^Plan for/ }).waitFor()
    await desk.pane.getByRole('tab', { name: /^Write/ }).click()
    await desk.pane.getByRole('button', { name: 'Write sheets' }).click()
    await desk.pane
      .getByText(/^Written/)
      .first()
      .waitFor()
    expect(await sheetNames(desk)).toEqual([sampleSheetName, 'Cut plan', 'Estimate'])
    expect(await read(desk, 'Cut plan', 'A1')).toEqual([['Cut plan']])
    expect(await read(desk, sampleSheetName, 'A1:V2')).toEqual(
      sampleInventory.slice(0, 2).map((row) => row.map((cell) => cell ?? ''))
    )
  })

  test('plans a range that was selected by dragging', async () => {
    const box = (await desk.page.locator('#grid canvas[id^=univer-sheet]').boundingBox())!
    await desk.page.mouse.move(box.x + 70, box.y + 40)
    await desk.page.mouse.down()
    await desk.page.mouse.move(box.x + 400, box.y + 200, { steps: 6 })
    await desk.page.mouse.up()
    await desk.pane
      .getByText(/Inventory!A1:[C-E]\d+/)
      .first()
      .waitFor()
  })

  test('takes a formula typed by keyboard, and follows its inputs', async () => {
    await type(sampleSheetName, 'Y2', '=LIMB.ASPECTRATIO(4,8)')
    await waitForCell(desk, sampleSheetName, 'Y2', 0.5)
    await type(sampleSheetName, 'Y3', '=LIMB.ASPECTRATIO(N3,O3)')
    await waitForCell(desk, sampleSheetName, 'Y3', 4.4 / 5.2)
    await type(sampleSheetName, 'N3', '2.6')
    await waitForCell(desk, sampleSheetName, 'Y3', 0.5)
  })

  test('spills a function over a range', async () => {
    await write(desk, sampleSheetName, 'Y3', [['=LIMB.ASPECTRATIO(N3:N5,O3:O5)']])
    await waitForCell(desk, sampleSheetName, 'Y5', 1.6 / 4.8)
    expect(await read(desk, sampleSheetName, 'Y3:Y5', 'formulas')).toEqual([
      ['=LIMB.ASPECTRATIO(N3:N5,O3:O5)'],
      [2.6 / 5.6],
      [1.6 / 4.8]
    ])
  })

  test('says why a function gives no value, and goes on calculating', async () => {
    await type(sampleSheetName, 'Y2', '=LIMB.ASPECTRATIO(-4,8)')
    await waitForCell(desk, sampleSheetName, 'Y2', '#VALUE!')
    await select(desk, sampleSheetName, 'Y2')
    await desk.page.waitForFunction(() =>
      document.getElementById('saying')?.textContent?.startsWith('#VALUE!')
    )
    expect((await line()).length).toBeGreaterThan('#VALUE! '.length + 15)
    await select(desk, sampleSheetName, 'Y3')
    await desk.page.waitForFunction(() => document.getElementById('saying')?.textContent === '')
    await type(sampleSheetName, 'Y4', '=LIMB.ASPECTRATIO(4)')
    await waitForCell(desk, sampleSheetName, 'Y4', '#VALUE!')
    await select(desk, sampleSheetName, 'Y4')
    await desk.page.waitForFunction(() =>
      document.getElementById('saying')?.textContent?.includes('also needs stem_diameter')
    )
    await type(sampleSheetName, 'Y3', '=LIMB.ASPECTRATIO(1,4)')
    await waitForCell(desk, sampleSheetName, 'Y3', 0.25)
  })

  test('takes over what is being typed when the pane is used', async () => {
    await select(desk, sampleSheetName, 'D2')
    await desk.page.locator('#grid canvas').first().focus()
    await desk.page.keyboard.type('8.25')
    await desk.pane.getByRole('button', { name: 'Plan selection' }).click()
    await desk.pane.getByRole('heading', { name: /^Plan for/ }).waitFor()
    expect(await read(desk, sampleSheetName, 'D2')).toEqual([[8.25]])
    await desk.page.mouse.click(300, 300)
    await desk.page.keyboard.press('Control+z')
    await waitForCell(desk, sampleSheetName, 'D2', 7.5)
  })

  test('calculates while the pane is closed', async () => {
    await desk.page.getByRole('button', { name: 'Close pane' }).click()
    expect(await desk.page.locator('#frame').isVisible()).toBe(false)
    await type(sampleSheetName, 'Y2', '=LIMB.CUTDIAMETER(4,0.25)')
    await waitForCell(desk, sampleSheetName, 'Y2', 2)
    await desk.page.getByRole('button', { name: 'Open pane' }).click()
    expect(await desk.page.locator('#frame').isVisible()).toBe(true)
  })

  test('saves an .xlsx and opens it again', async () => {
    await write(desk, sampleSheetName, 'Y2:Y3', [
      ['=LIMB.ASPECTRATIO(4,8)'],
      ['=LIMB.ASPECTRATIO(N3:N5,O3:O5)']
    ])
    await waitForCell(desk, sampleSheetName, 'Y5', 1.6 / 4.8)
    const waiting = desk.page.waitForEvent('download')
    await desk.page.getByRole('button', { name: 'Save .xlsx' }).click()
    const download = await waiting
    expect(download.suggestedFilename()).toBe('Sample inventory (invented).xlsx')
    const path = await download.path()
    const file = await readXlsx(readFileSync(path), { readStyles: true })
    const sheet = file.sheets[0]!
    expect(sheet.cells?.get('1,24')).toMatchObject({ formula: '_xldudf_LIMB_ASPECTRATIO(4,8)', value: 0.5 })
    expect(sheet.cells?.get('2,24')).toMatchObject({ formulaRef: 'Y3:Y5', formulaDynamic: true })
    expect(sheet.freezePane).toEqual({ rows: 1 })

    await desk.page.getByRole('button', { name: 'Sample' }).click()
    await reloadedPane(desk)
    expect(await read(desk, sampleSheetName, 'Y2')).toEqual([['']])
    await desk.page
      .locator('#choose')
      .setInputFiles({ name: 'again.xlsx', mimeType: '', buffer: readFileSync(path) })
    await desk.page.waitForFunction(() => document.getElementById('file')?.textContent === 'again.xlsx')
    await reloadedPane(desk)
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

  test('asks nothing of any other machine, and nothing fails on the page', async () => {
    await desk.page.getByRole('button', { name: 'Plan selection' }).click()
    await desk.pane.getByRole('heading', { name: /^Plan for/ }).waitFor()
    const elsewhere = desk.requests.filter(
      (url) => !/^(data|blob):/.test(url) && !url.startsWith(`${workbench.address}/`)
    )
    expect(desk.requests.length).toBeGreaterThan(5)
    expect(elsewhere).toEqual([])
    expect(desk.complaints).toEqual([])
  })

  test('the width of the pane moves with the arrow keys, between 320 and 500', async () => {
    const width = async () => (await desk.page.locator('#beside').boundingBox())!.width
    expect(await width()).toBe(350)
    await desk.page.locator('#divider').focus()
    await desk.page.keyboard.press('End')
    expect(await width()).toBe(320)
    await desk.page.keyboard.press('ArrowRight')
    expect(await width()).toBe(320)
    await desk.page.keyboard.press('Home')
    expect(await width()).toBe(500)
  })
})

describe('the documents in the grid and in the saved file', () => {
  test('hold their tables, names, page set-up, freeze and heights', async () => {
    await desk.page.getByRole('button', { name: 'Plan selection' }).click()
    await desk.pane.getByRole('heading', { name: /^Plan for/ }).waitFor()
    await desk.pane.getByRole('tab', { name: /^Write/ }).click()
    await desk.pane.getByRole('button', { name: 'Write sheets' }).click()
    await desk.pane
      .getByText(/^Written/)
      .first()
      .waitFor()
    const waiting = desk.page.waitForEvent('download')
    await desk.page.getByRole('button', { name: 'Save .xlsx' }).click()
    const file = await readXlsx(readFileSync(await (await waiting).path()), { readStyles: true })
    const sheet = file.sheets.find(({ name }) => name === 'Cut plan')!
    const description = describeCutPlan(planSample())
    expect(sheet.tables?.map(({ name }) => name)).toEqual(description.tables.map(({ name }) => name))
    expect(sheet.tables?.[0]?.columns.map(({ name }) => name)).toEqual(
      description.rows[description.tables[0]!.area.row]!.slice(0, description.tables[0]!.area.columns)
    )
    expect(sheet.pageSetup).toMatchObject({
      orientation: description.page.orientation,
      scale: pageScale(description.page, description.widths)
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

  test('an estimate written twice in the same place comes to the pane’s total, and follows its rates', async () => {
    await desk.page.getByRole('button', { name: 'Plan selection' }).click()
    await desk.pane.getByRole('heading', { name: /^Plan for/ }).waitFor()
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
    expect(await sheetNames(desk)).toEqual([sampleSheetName, 'Cut plan', 'Estimate'])
    const cells = await read(desk, 'Estimate', 'A1:T400')
    const row = cells.findIndex(([label]) => String(label).startsWith('Total ('))
    const place = cellAddress(row, estimateColumn.price)
    await waitForCell(desk, 'Estimate', place, total)
    // A changed rate has the grid reckon every price again, by names on the sheet that took its place.
    const wage = cells.findIndex(([label]) => label === rateBook.wage.name)
    await write(desk, 'Estimate', cellAddress(wage, 5), [[56]])
    const end = Date.now() + 10000
    let now: unknown = total
    while (now === total && Date.now() < end) {
      await desk.page.waitForTimeout(50)
      now = (await read(desk, 'Estimate', place))[0]![0]
    }
    expect(now).toBeGreaterThan(total)
    await write(desk, 'Estimate', cellAddress(wage, 5), [[cells[wage]![5]]])
    await waitForCell(desk, 'Estimate', place, total)
  })

  test('a Rates sheet written from the pane prices the next plan, and a budget marks the Estimate', async () => {
    const estimate = async () => {
      await desk.pane.getByRole('tab', { name: 'Estimate' }).click()
      return Number((await desk.pane.locator('.totals-last dd').innerText()).replaceAll(',', ''))
    }
    await desk.page.getByRole('button', { name: 'Plan selection' }).click()
    await desk.pane.getByRole('heading', { name: /^Plan for/ }).waitFor()
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
    const choice = cells.findIndex(([label]) => String(label).startsWith('Most priority relieved within'))
    await waitForCell(desk, 'Estimate', cellAddress(choice, estimateColumn.price), fits)
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

describe('npm start', () => {
  test('serves the add-in for Excel over HTTPS, with functions.json open to Excel on the web', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'limbwright-'))
    writeFileSync(join(folder, 'cert.pem'), certificate)
    writeFileSync(join(folder, 'key.pem'), key)
    const serving = await startWorkbench([
      ...['--https', '--port', '0', '--cert', join(folder, 'cert.pem'), '--key', join(folder, 'key.pem')]
    ])
    const context = await browser.newContext({ ignoreHTTPSErrors: true })
    try {
      const json = await context.request.get(`${serving.address}/functions.json`)
      expect(json.headers()['access-control-allow-origin']).toBe('*')
      expect(((await json.json()) as { functions: unknown[] }).functions.length).toBeGreaterThan(16)
      const pane = await context.request.get(`${serving.address}/taskpane.html`)
      expect(await pane.text()).toContain('https://appsforoffice.microsoft.com/lib/1/hosted/office.js')
      expect(pane.headers()['x-frame-options']).toBeUndefined()
      expect(serving.address).toMatch(/^https:\/\/localhost:/)
      const manifest = await context.request.get(`${serving.address}/manifest.xml`)
      expect(await manifest.text()).toContain(`${serving.address}/taskpane.html`)
    } finally {
      await context.close()
      await serving.stop()
      rmSync(folder, { recursive: true })
    }
  })

  test('a taken port gets a sentence and exit code 2', async () => {
    const other = createServer()
    await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve))
    const { port } = other.address() as { port: number }
    const run = await runStart(['--port', String(port)])
    other.close()
    expect(run).toMatchObject({ code: 2, output: '' })
    expect(run.errors).toBe(
      `Port ${port} is taken by another program: close it, or choose another with npm start -- --port ${port + 1}.\n`
    )
  })

  test.each([
    [['--port', 'many'], /--port many is not a port/],
    [['--https'], /--https needs a certificate/],
    [['--https', '--cert', 'no.crt', '--key', 'no.key'], /The certificate no\.crt is not there/],
    [['--frobnicate'], /--frobnicate/]
  ])('%j gets a sentence and exit code 2', async (parameters, sentence) => {
    const run = await runStart(parameters)
    expect(run.code).toBe(2)
    expect(run.errors.trim().split('\n')).toHaveLength(1)
    expect(run.errors).toMatch(sentence)
  })
})
