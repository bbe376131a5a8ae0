/** What a user does in the grid of the workbench. */
import type { Browser } from 'playwright-core'
import { sampleSheetName } from '../../src/file/sampleInventory'
import { connectBrowser, workbenchAddress } from './shared'
import { openDesk, read, select, startAgain, type, waitForCell, write, type Desk } from './workbench'

jest.setTimeout(60000)

let browser: Browser
let desk: Desk

beforeAll(async () => {
  browser = await connectBrowser()
  desk = await openDesk(browser, workbenchAddress())
})
afterAll(() => browser.close())
beforeEach(() => startAgain(desk))

const line = () => desk.page.locator('#saying').innerText()

describe('the grid of the workbench', () => {
  test('plans a range that was selected by dragging', async () => {
    const box = (await desk.page.locator('#grid canvas[id^=univer-sheet]').boundingBox())!
    await desk.page.mouse.move(box.x + 70, box.y + 40)
    await desk.page.mouse.down()
    await desk.page.mouse.move(box.x + 620, box.y + 200, { steps: 6 })
    await desk.page.mouse.up()
    await desk.pane
      .getByText(/Inventory!A1:[D-I]\d+/)
      .first()
      .waitFor()
  })

  test('takes a formula typed by keyboard, and follows its inputs', async () => {
    await type(desk, sampleSheetName, 'Y2', '=LIMB.ASPECTRATIO(4,8)')
    await waitForCell(desk, sampleSheetName, 'Y2', 0.5)
    await type(desk, sampleSheetName, 'Y3', '=LIMB.ASPECTRATIO(N3,O3)')
    await waitForCell(desk, sampleSheetName, 'Y3', 4.4 / 5.2)
    await type(desk, sampleSheetName, 'N3', '2.6')
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
    await type(desk, sampleSheetName, 'Y2', '=LIMB.ASPECTRATIO(-4,8)')
    await waitForCell(desk, sampleSheetName, 'Y2', '#VALUE!')
    await select(desk, sampleSheetName, 'Y2')
    await desk.page.waitForFunction(() =>
      document.getElementById('saying')?.textContent?.startsWith('#VALUE!')
    )
    expect((await line()).length).toBeGreaterThan('#VALUE! '.length + 15)
    await select(desk, sampleSheetName, 'Y3')
    await desk.page.waitForFunction(() => document.getElementById('saying')?.textContent === '')
    await type(desk, sampleSheetName, 'Y4', '=LIMB.ASPECTRATIO(4)')
    await waitForCell(desk, sampleSheetName, 'Y4', '#VALUE!')
    await select(desk, sampleSheetName, 'Y4')
    await desk.page.waitForFunction(() =>
      document.getElementById('saying')?.textContent?.includes('also needs stem_diameter')
    )
    await type(desk, sampleSheetName, 'Y3', '=LIMB.ASPECTRATIO(1,4)')
    await waitForCell(desk, sampleSheetName, 'Y3', 0.25)
  })

  test('takes over what is being typed when the pane is used', async () => {
    await select(desk, sampleSheetName, 'D2')
    await desk.page.locator('#grid canvas').first().focus()
    await desk.page.keyboard.type('8.25')
    await desk.pane.getByRole('button', { name: 'Plan inventory' }).click()
    await desk.pane.getByRole('heading', { name: /^Plan for/ }).waitFor()
    expect(await read(desk, sampleSheetName, 'D2')).toEqual([[8.25]])
    await desk.page.mouse.click(300, 300)
    await desk.page.keyboard.press('Control+z')
    await waitForCell(desk, sampleSheetName, 'D2', 7.5)
  })
})
