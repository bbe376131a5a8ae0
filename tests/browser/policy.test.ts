/** The deployable page in a real browser: its own policy lets it run, and it asks for nothing from anywhere else. */
import { join } from 'node:path'
import type { Browser } from 'playwright-core'
import { buildForTest, testBase } from '../build/addin'
import { answerWith } from './builtFiles'
import { connectBrowser } from './shared'

const library = join(__dirname, '../../node_modules/@microsoft/office-js/dist')
const hosted = 'https://appsforoffice.microsoft.com/lib/1/hosted/'

let out = ''
let browser: Browser
beforeAll(async () => {
  out = await buildForTest()
  browser = await connectBrowser()
}, 120000)
afterAll(() => browser.close())

/** The file that stands for an address: ours from the build, Microsoft's from the development package. */
function fileFor(address: string): string | null {
  const path = address.split('?')[0] ?? ''
  if (path.startsWith(`${testBase}/`)) return join(out, path.slice(testBase.length + 1))
  return path.startsWith(hosted) ? join(library, path.slice(hosted.length)) : null
}

test('the pane runs under its policy and asks for its own files and office.js only', async () => {
  const page = await browser.newPage()
  const asked: string[] = []
  const failures: string[] = []
  page.on('pageerror', (error) => failures.push(error.message))
  await page.route('**/*', async (route) => {
    const address = route.request().url()
    asked.push(address)
    await answerWith(route, fileFor(address))
  })
  await page.goto(`${testBase}/taskpane.html`)
  await page.waitForFunction(() => 'Office' in window && 'CustomFunctions' in window)
  await page.waitForSelector('h1')
  const associated = await page.evaluate(() => {
    const runtime = window as unknown as { CustomFunctions: { _association?: { mappings?: object } } }
    return Object.keys(runtime.CustomFunctions._association?.mappings ?? {})
  })
  expect(failures).toEqual([])
  await page.waitForFunction(() => document.body.innerText.includes('Open this pane from a spreadsheet'))
  expect(await page.locator('button, a, input, select, [tabindex], [onclick]').count()).toBe(0)
  expect(associated).toContain('ASPECTRATIO')
  expect(asked).toEqual(
    expect.arrayContaining(
      ['taskpane.html', 'taskpane.css', 'functions.js', 'taskpane.js'].map((name) => `${testBase}/${name}`)
    )
  )
  expect(asked).toContain(`${hosted}office.js`)
  expect(asked.filter((address) => fileFor(address) === null)).toEqual([])
}, 60000)
