/** Starts the workbench as `npm start` does, opens it in the browser, and speaks to its sheets as the add-in does. */
import { spawn, type ChildProcess } from 'node:child_process'
import { join } from 'node:path'
import type { Browser, BrowserContextOptions, Frame, Page } from 'playwright-core'

const root = join(__dirname, '../..')

export interface Run {
  /** What it printed until the line that says where it serves, or until it ended. */
  output: string
  errors: string
  code: number | null
}

export interface Workbench {
  address: string
  stop(): Promise<void>
}

function spawnStart(parameters: string[]): ChildProcess {
  const child = spawn(process.execPath, ['--import', 'tsx', 'src/workbench/server/main.ts', ...parameters], {
    cwd: root,
    stdio: ['ignore', 'pipe', 'pipe']
  })
  const end = () => child.kill()
  process.once('exit', end)
  child.once('close', () => process.off('exit', end))
  return child
}

/** Runs the command to its end. */
export function runStart(parameters: string[]): Promise<Run> {
  const child = spawnStart(parameters)
  const run: Run = { output: '', errors: '', code: null }
  child.stdout?.on('data', (part) => (run.output += String(part)))
  child.stderr?.on('data', (part) => (run.errors += String(part)))
  return new Promise((resolve) => child.on('close', (code) => resolve({ ...run, code })))
}

/** Starts it on a free port. */
export function startWorkbench(parameters = ['--port', '0']): Promise<Workbench> {
  const child = spawnStart(parameters)
  const ended = new Promise<void>((resolve) => child.on('close', () => resolve()))
  let output = ''
  let errors = ''
  child.stderr?.on('data', (part) => (errors += String(part)))
  return new Promise((resolve, reject) => {
    child.stdout?.on('data', (part) => {
      output += String(part)
      const address = /https?:\/\/\S+/.exec(output)?.[0]
      if (address !== undefined)
        resolve({
          address,
          stop() {
            child.kill('SIGTERM')
            return ended
          }
        })
    })
    child.on('close', (code) => reject(new Error(`The workbench ended with ${code}: ${errors}`)))
  })
}

export interface Desk {
  page: Page
  pane: Frame
  /** Every address that was asked for, and every complaint of the pages. */
  requests: string[]
  complaints: string[]
  close(): Promise<void>
}

async function paneFrame(page: Page): Promise<Frame> {
  const handle = await page.waitForSelector('#frame')
  const frame = await handle.contentFrame()
  if (frame === null) throw new Error('The pane has no frame.')
  await frame.waitForURL(/taskpane\.html/)
  await frame.waitForFunction(() => 'Excel' in window && 'Office' in window)
  await frame.evaluate(() => Office.onReady().then(() => undefined))
  return frame
}

export async function openDesk(
  browser: Browser,
  address: string,
  options: BrowserContextOptions = {}
): Promise<Desk> {
  const context = await browser.newContext({
    viewport: { width: 1280, height: 800 },
    acceptDownloads: true,
    ...options
  })
  const page = await context.newPage()
  const requests: string[] = []
  const complaints: string[] = []
  page.on('request', (request) => requests.push(request.url()))
  page.on('pageerror', (error) => complaints.push(String(error)))
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text())
  })
  await page.goto(address)
  await page
    .waitForSelector('html[data-ready=yes]', { state: 'attached', timeout: 15000 })
    .catch((error: unknown) => {
      throw new Error(`The workbench did not become ready: ${complaints.join('; ')}`, { cause: error })
    })
  return { page, pane: await paneFrame(page), requests, complaints, close: () => context.close() }
}

/**
 * Does what opens another workbook and waits for it. The pane of another workbook is loaded again; the mark on the old
 * one tells the two apart.
 */
async function withNewPane(desk: Desk, opening: () => Promise<void>): Promise<void> {
  await desk.pane.evaluate(() => Object.assign(window, { ofTheLastWorkbook: true }))
  await opening()
  await desk.page.waitForFunction(() => {
    const pane = (document.getElementById('frame') as HTMLIFrameElement).contentWindow
    return pane !== null && pane.location.pathname.endsWith('taskpane.html') && !('ofTheLastWorkbook' in pane)
  })
  desk.pane = await paneFrame(desk.page)
}

/** Loads the pane again, as when it is closed and opened. */
export function reloadPane(desk: Desk): Promise<void> {
  return withNewPane(desk, () =>
    desk.page.evaluate(() => {
      const frame = document.getElementById('frame') as HTMLIFrameElement
      frame.contentWindow?.location.reload()
    })
  )
}

/** Opens a file as a user who chose it. */
export function openFile(desk: Desk, name: string, buffer: Buffer): Promise<void> {
  return withNewPane(desk, async () => {
    await desk.page.locator('#choose').setInputFiles({ name, mimeType: '', buffer })
    await desk.page.waitForFunction((file) => document.getElementById('file')?.textContent === file, name)
  })
}

/**
 * Puts an open desk back to the sample and its pane to the start, and forgets what was asked and complained of: as good
 * as a new desk, and four times as fast, for tests that leave the page around the sheet as it was.
 */
export async function startAgain(desk: Desk): Promise<void> {
  await withNewPane(desk, () => desk.page.getByRole('button', { name: 'Sample' }).click())
  desk.requests.length = 0
  desk.complaints.length = 0
}

/** The workbook as a user saves it. */
export async function savedFile({ page }: Desk): Promise<{ name: string; bytes: Buffer }> {
  const waiting = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save .xlsx' }).click()
  const download = await waiting
  const bytes = Buffer.concat(await (await download.createReadStream()).toArray())
  return { name: download.suggestedFilename(), bytes }
}

/** Plans the selection, or the inventory around it, from the bar. */
export async function planSelection({ page, pane }: Desk): Promise<void> {
  await page.getByRole('button', { name: 'Plan inventory' }).click()
  await pane.getByRole('heading', { name: /^Plan for/ }).waitFor()
}

/** Types into a cell by keyboard, with the grid in front. */
export async function type(desk: Desk, sheet: string, address: string, text: string): Promise<void> {
  await select(desk, sheet, address)
  await desk.page.locator('#grid canvas').first().focus()
  await desk.page.keyboard.type(text)
  await desk.page.keyboard.press('Enter')
}

/** What a range holds, through office.js. */
export function read(
  { pane }: Desk,
  sheet: string,
  address: string,
  what: 'values' | 'formulas' | 'text' | 'numberFormat' = 'values'
): Promise<unknown[][]> {
  return pane.evaluate(
    ([name, place, member]) =>
      Excel.run(async (context) => {
        const range = context.workbook.worksheets.getItem(name).getRange(place)
        range.load(member)
        await context.sync()
        return range[member] as unknown[][]
      }),
    [sheet, address, what] as const
  )
}

/** Writes values into a range, through office.js. */
export function write({ pane }: Desk, sheet: string, address: string, values: unknown[][]): Promise<void> {
  return pane.evaluate(
    ([name, place, cells]) =>
      Excel.run(async (context) => {
        context.workbook.worksheets.getItem(name).getRange(place).values = cells as unknown[][]
        await context.sync()
      }),
    [sheet, address, values] as const
  )
}

/** Selects a range, through office.js. */
export function select({ pane }: Desk, sheet: string, address: string): Promise<void> {
  return pane.evaluate(
    ([name, place]) =>
      Excel.run(async (context) => {
        const worksheet = context.workbook.worksheets.getItem(name)
        worksheet.activate()
        worksheet.getRange(place).select()
        await context.sync()
      }),
    [sheet, address] as const
  )
}

export function sheetNames({ pane }: Desk): Promise<string[]> {
  return pane.evaluate(() =>
    Excel.run(async (context) => {
      const { worksheets } = context.workbook
      worksheets.load('items/name')
      await context.sync()
      return worksheets.items.map((sheet) => sheet.name)
    })
  )
}

/** Waits until a cell holds what is expected, as calculation and drawing take a moment. */
export async function waitForCell(
  desk: Desk,
  sheet: string,
  address: string,
  expected: unknown
): Promise<void> {
  const end = Date.now() + 10000
  let found: unknown
  do {
    found = (await read(desk, sheet, address))[0]?.[0]
    if (found === expected) return
    await desk.page.waitForTimeout(50)
  } while (Date.now() < end)
  throw new Error(`${sheet}!${address} holds ${JSON.stringify(found)}, not ${JSON.stringify(expected)}`)
}
