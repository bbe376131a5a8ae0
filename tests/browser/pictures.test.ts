/** Drawings in the real pane, painted by the browser, and charts, put onto the sheet through office.js, and saved. */
import { readXlsx, type Sheet } from 'hucre/xlsx'
import type { Browser } from 'playwright-core'
import { connectBrowser, workbenchAddress } from './shared'
import { openDesk, planSelection, savedFile, type Desk } from './workbench'

jest.setTimeout(90000)

let browser: Browser
let desk: Desk
/** As saved by the workbench. */
let sheets: Sheet[] = []

beforeAll(async () => {
  browser = await connectBrowser()
  desk = await openDesk(browser, workbenchAddress())
  await planSelection(desk)
})
afterAll(() => browser.close())

const fetched = () => desk.requests.filter((address) => address.endsWith('/documents.js')).length

test('the script with the reader and the drawings is fetched once, after the pane’s own', async () => {
  const order = ['/taskpane.js', '/documents.js'].map((name) =>
    desk.requests.findIndex((address) => address.endsWith(name))
  )
  expect(order).toEqual([...order].sort((a, b) => a - b))
  expect(fetched()).toBe(1)
  await desk.pane.getByRole('button', { name: /^Tree T01/ }).click()
  await desk.pane.getByRole('img', { name: /^Tree T01, before visit 1/ }).waitFor()
  await desk.pane.getByRole('radio', { name: 'After' }).check()
  await desk.pane.getByRole('img', { name: /^Tree T01, after visit 1/ }).waitFor()
  expect(fetched()).toBe(1)
})

test('a drawing is as wide as the pane, and is drawn again when the pane gets another width', async () => {
  const widths = () =>
    desk.pane
      .locator('.tree-drawing')
      .first()
      .evaluate((place) => {
        const drawing = place.querySelector('svg')
        return [Math.floor(place.clientWidth), Math.round(drawing?.getBoundingClientRect().width ?? 0)]
      })
  const [room = 0, before = 0] = await widths()
  expect(before).toBe(room)
  await desk.page.locator('#divider').focus()
  await desk.page.keyboard.press('End')
  let [wider = 0, after = 0] = await widths()
  for (let turn = 0; turn < 100 && (after === before || after !== wider); turn++) {
    await desk.page.waitForTimeout(50)
    ;[wider = 0, after = 0] = await widths()
  }
  expect(after).not.toBe(before)
  expect(after).toBe(wider)
})

test('the client report is written with its pictures, and the saved file has them', async () => {
  await desk.pane.getByRole('tab', { name: /^Write/ }).click()
  await desk.pane.getByRole('checkbox', { name: /^Client report/ }).check()
  await desk.pane.getByRole('button', { name: 'Write sheets' }).click()
  await desk.pane.locator('.done').waitFor({ timeout: 60000 })
  ;({ sheets } = await readXlsx((await savedFile(desk)).bytes))
  const images = sheets.find(({ name }) => name === 'Client report')!.images!
  // The trees of the sample that need explaining.
  expect(images.length).toBeGreaterThan(7)
  expect(images.length).toBeLessThan(14)
  for (const { data, anchor, altText, height = 0 } of images) {
    expect([...data.slice(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10])
    expect(altText).toMatch(/^Tree \S+, before visit \d, \d{4}.* Tree \S+, after visit \d, \d{4}/)
    // One corner and a size, so that no other font stretches it.
    expect(anchor.to).toBeUndefined()
    expect(height).toBeGreaterThan(120)
    const size = new DataView(data.buffer, data.byteOffset)
    // Two trees beside each other, each with the pixels that a print needs.
    expect(size.getUint32(16)).toBeGreaterThan(900)
    expect(size.getUint32(20)).toBeGreaterThan(250)
  }
  expect(desk.complaints).toEqual([])
})

test('the saved file has the charts of the cut plan', () => {
  const charts = sheets
    .filter(({ name }) => name !== 'Client report')
    .flatMap(({ name, charts = [] }) =>
      charts.map(({ title, kinds, series }) => ({ name, title, kinds, count: series!.length }))
    )
  expect(charts).toMatchObject([
    { name: 'Cut plan', kinds: ['bar', 'line'], count: 2 },
    { name: 'Cut plan', kinds: ['bar', 'line'], count: 3 }
  ])
})
