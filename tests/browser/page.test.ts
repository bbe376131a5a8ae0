/** The page of the workbench as it opens, and what a user changes of it: a new desk for each test. */
import type { Browser } from 'playwright-core'
import { sampleInventory, sampleSheetName } from '../../src/file/sampleInventory'
import { connectBrowser, workbenchAddress } from './shared'
import { openDesk, planSelection, read, type, waitForCell, type Desk } from './workbench'

jest.setTimeout(60000)

let browser: Browser
let desk: Desk

beforeAll(async () => {
  browser = await connectBrowser()
})
afterAll(() => browser.close())
beforeEach(async () => {
  desk = await openDesk(browser, workbenchAddress())
})
afterEach(() => desk.close())

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

  test('calculates while the pane is closed', async () => {
    await desk.page.getByRole('button', { name: 'Close pane' }).click()
    expect(await desk.page.locator('#frame').isVisible()).toBe(false)
    await type(desk, sampleSheetName, 'Y2', '=LIMB.CUTDIAMETER(4,0.25)')
    await waitForCell(desk, sampleSheetName, 'Y2', 2)
    await desk.page.getByRole('button', { name: 'Open pane' }).click()
    expect(await desk.page.locator('#frame').isVisible()).toBe(true)
  })

  test('asks nothing of any other machine, and nothing fails on the page', async () => {
    await planSelection(desk)
    const elsewhere = desk.requests.filter(
      (url) => !/^(data|blob):/.test(url) && !url.startsWith(`${workbenchAddress()}/`)
    )
    expect(desk.requests.length).toBeGreaterThan(5)
    expect(elsewhere).toEqual([])
    expect(desk.complaints).toEqual([])
  })

  test('the pane runs where no style may stand in a page, and a style written into it would be told', async () => {
    await planSelection(desk)
    expect(desk.complaints).toEqual([])
    const look = await desk.pane.evaluate(() => {
      const marked = document.createElement('p')
      marked.setAttribute('style', 'color: rgb(1, 2, 3)')
      document.body.append(marked)
      return getComputedStyle(marked).color
    })
    expect(look).not.toBe('rgb(1, 2, 3)')
    expect(desk.complaints.join()).toMatch(/style-src 'self'/)
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
