/** The deployable page where a part of it does not come: a sentence within 15 s, and no error that nobody caught. */
import { join } from 'node:path'
import type { Browser, Page, Route } from 'playwright-core'
import { patience } from '../../taskpane/loading/whyWaiting'
import { buildForTest, testBase } from '../build/addin'
import { answerWith } from './builtFiles'
import { connectBrowser } from './shared'

let out = ''
let browser: Browser
beforeAll(async () => {
  out = await buildForTest()
  browser = await connectBrowser()
}, 120000)
afterAll(() => browser.close())

const isOffice = (address: string): boolean => address.includes('/office.js')

/** Hands out the built folder; `instead` answers some addresses otherwise and says whether it did. */
async function open(
  instead: (address: string, route: Route) => Promise<boolean>
): Promise<{ page: Page; failures: string[] }> {
  const page = await browser.newPage()
  await page.clock.install()
  const failures: string[] = []
  page.on('pageerror', (error) => failures.push(error.message))
  await page.route('**/*', async (route) => {
    const address = route.request().url()
    if (await instead(address, route)) return
    const file = join(out, address.slice(testBase.length + 1).split('?')[0] ?? '')
    await answerWith(route, address.startsWith(`${testBase}/`) ? file : null)
  })
  await page.goto(`${testBase}/taskpane.html`, { waitUntil: 'commit' })
  return { page, failures }
}

const said = (page: Page): Promise<string> => page.locator('#pane [role=alert]').innerText({ timeout: 10000 })

/** A stand-in that lets a person wait: `ready` is its answer to Office.onReady. */
const standIn = (ready: string): string =>
  `window.Office = { HostType: { Excel: 'Excel' }, onReady: () => ${ready}, actions: { associate() {} } };
   window.CustomFunctions = { associate() {} }`

test('the wait ends well within 15 seconds', () => {
  expect(patience).toBeLessThanOrEqual(12_000)
})

test.each([
  ['refused', (route: Route) => route.abort('blockedbyclient')],
  ['not found', (route: Route) => route.fulfill({ status: 404, body: '' })]
])(
  'office.js %s: said at once, with the address to allow',
  async (_, answer) => {
    const { page, failures } = await open(async (address, route) => {
      if (!isOffice(address)) return false
      await answer(route)
      return true
    })
    expect(await said(page)).toMatch(
      /^Microsoft’s part of the pane, office\.js, could not be loaded from appsforoffice\.microsoft\.com\. .*allow that address/
    )
    await page.waitForLoadState('load')
    expect(failures).toEqual([])
    await page.close()
  },
  60000
)

test('office.js that hangs: said after the wait, and the pane still comes when it comes', async () => {
  let release = (): void => undefined
  const held = new Promise<void>((resolve) => {
    release = resolve
  })
  const { page, failures } = await open(async (address, route) => {
    if (!isOffice(address)) return false
    await held
    await route.fulfill({
      body: standIn('Promise.resolve({ host: null })'),
      contentType: 'text/javascript'
    })
    return true
  })
  await page.waitForSelector('#pane > .waiting')
  expect(await page.locator('#pane').innerText()).toContain('Waiting for the spreadsheet.')
  await page.clock.fastForward(patience)
  expect(await said(page)).toMatch(/office\.js, could not be loaded from appsforoffice/)
  release()
  await page.waitForFunction(() => document.body.innerText.includes('Open this pane from a spreadsheet'))
  expect(await page.locator('#pane [role=alert]').count()).toBe(0)
  expect(failures).toEqual([])
  await page.close()
}, 60000)

test('a spreadsheet that does not answer: said what may hold it up, with a way to try again', async () => {
  let asked = 0
  const { page, failures } = await open(async (address, route) => {
    if (address.endsWith('/taskpane.html')) asked += 1
    if (!isOffice(address)) return false
    await route.fulfill({ body: standIn('new Promise(() => {})'), contentType: 'text/javascript' })
    return true
  })
  await page.waitForLoadState('load')
  await page.clock.fastForward(patience)
  expect(await said(page)).toMatch(
    /^The spreadsheet has not answered yet\. Finish .* close any dialog .* try again\.$/
  )
  await page.getByRole('button', { name: 'Try again' }).click()
  await page.waitForFunction(() => document.body.innerText.includes('Waiting for the spreadsheet.'))
  expect(asked).toBe(2)
  expect(failures).toEqual([])
  await page.close()
}, 60000)

test('a start that fails is told', async () => {
  const { page, failures } = await open(async (address, route) => {
    if (!isOffice(address)) return false
    await route.fulfill({
      body: standIn("Promise.reject(new Error('no session'))"),
      contentType: 'text/javascript'
    })
    return true
  })
  await page.waitForFunction(() => document.body.innerText.includes('could not start (no session)'))
  expect(failures).toEqual([])
  await page.close()
}, 60000)

test('our own script missing on the server: said at once, with the server’s name', async () => {
  const { page, failures } = await open(async (address, route) => {
    if (isOffice(address)) {
      await route.fulfill({ body: standIn('new Promise(() => {})'), contentType: 'text/javascript' })
      return true
    }
    if (!address.endsWith('/taskpane.js')) return false
    await route.fulfill({ status: 404, body: '' })
    return true
  })
  expect(await said(page)).toMatch(/^A part of the pane could not be loaded from example\.org\./)
  expect(failures).toEqual([])
  await page.close()
}, 60000)
