/**
 * Pictures of the pane at 320 and 350 px, light, dark and in forced colors, into build/screenshots/pane. The pane is
 * the real one with the real engine; the spreadsheet is a stand-in that holds the invented sample inventory. Run with
 * `npx tsx tests/taskpane/gallery.ts`, then look at the pictures.
 */
import { mkdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { buildSync } from 'esbuild'
import type { Browser, Page } from 'playwright-core'
import { paneStyle } from '../../tools/style'
import { startBrowser } from '../browser/browser'

const root = join(__dirname, '../..')
const folder = join(root, 'build/screenshots/pane')

function pageSource(entry: string): string {
  const script = buildSync({
    entryPoints: [join(__dirname, entry)],
    bundle: true,
    write: false,
    format: 'iife',
    target: 'es2022'
  }).outputFiles[0]?.text
  return readFileSync(join(root, 'taskpane/taskpane.html'), 'utf8')
    .replace(/<link [^>]*>/, () => `<style>${paneStyle()}</style>`)
    .replace(
      '<!-- scripts -->',
      () => `<script>${(script ?? '').replaceAll('</script', '<\\/script')}</script>`
    )
}

const looks = {
  light: { colorScheme: 'light', forcedColors: 'none' },
  dark: { colorScheme: 'dark', forcedColors: 'none' },
  forced: { colorScheme: 'dark', forcedColors: 'active' }
} as const

/** Each picture: what a person does to get there from the first screen. */
const screens: Record<string, (page: Page) => Promise<void>> = {
  start: async () => undefined,
  sheets: async (page) => {
    await page.evaluate('stage.severalSheets()')
  },
  needs: async (page) => {
    await page.click('text=What the inventory needs')
  },
  working: async (page) => {
    await page.evaluate('stage.holdReading()')
    await page.click('text=Plan inventory')
  },
  plan: async (page) => {
    await plan(page)
  },
  stale: async (page) => {
    await plan(page)
    await page.evaluate('stage.typeOver()')
    await page.waitForSelector('text=/Changed since this plan/')
  },
  reopened: async (page) => {
    await page.evaluate('stage.reopen()')
    await page.waitForSelector('text=/were planned from/')
  },
  tree: async (page) => {
    await plan(page)
    await page.click('.card-toggle >> nth=0')
    await page.click('.card-body .more-toggle >> nth=0')
    await page.click('.later-toggle >> nth=0')
  },
  copied: async (page) => {
    await plan(page)
    await page.click('.card-toggle >> nth=0')
    await page.click('text=Copy specification')
    await page.waitForSelector('text=/is copied|copy it from here/')
  },
  'copy-by-hand': async (page) => {
    await page.evaluate('stage.closeClipboard()')
    await plan(page)
    await page.click('.card-toggle >> nth=0')
    await page.click('text=Copy specification')
    await page.waitForSelector('textarea')
  },
  rules: async (page) => {
    await plan(page)
    await page.click('text=Rules: the defaults')
  },
  season: async (page) => {
    await page.evaluate('stage.useRules()')
    await plan(page)
    await page.click('text=/Rules: 2 changed/')
    await page.click('.card-toggle:has-text("Pin oak")')
  },
  estimate: async (page) => {
    await plan(page)
    await page.click('role=tab[name=/Estimate/]')
  },
  rates: async (page) => {
    await plan(page)
    await page.click('role=tab[name=/Estimate/]')
    await page.click('text=/Rates: /')
  },
  budget: async (page) => {
    await plan(page)
    await page.click('role=tab[name=/Estimate/]')
    await page.click('label:has-text("Within a budget")')
    await page.fill('input[inputmode=decimal]', '2500')
    await page.click('text=Show what fits')
    await page.click('text=/left out/')
  },
  nobudget: async (page) => {
    await plan(page)
    await page.click('role=tab[name=/Estimate/]')
    await page.click('label:has-text("Within a budget")')
    await page.fill('input[inputmode=decimal]', 'plenty')
    await page.click('text=Show what fits')
  },
  checks: async (page) => {
    await plan(page)
    await page.click('role=tab[name=/Checks/]')
  },
  columns: async (page) => {
    await plan(page)
    await page.click('role=tab[name=/Columns/]')
  },
  confirm: async (page) => {
    await page.evaluate('stage.doubtfulColumns()')
    await plan(page)
  },
  remembered: async (page) => {
    await page.evaluate('stage.doubtfulColumns()')
    await plan(page)
    await page.selectOption('.columns-card select >> nth=0', 'stem')
    await page.click('.columns-card .button-primary')
    await page.waitForSelector('.remembered')
  },
  notree: async (page) => {
    await page.evaluate('stage.doubtfulColumns()')
    await plan(page)
    await page.click('role=tab[name=/Checks/]')
  },
  write: async (page) => {
    await plan(page)
    await page.click('role=tab[name=/Write/]')
  },
  details: async (page) => {
    await plan(page)
    await page.click('role=tab[name=/Write/]')
    await page.click('text=Job details: none')
  },
  replace: async (page) => {
    await plan(page)
    await page.click('role=tab[name=/Write/]')
    await page.click('text=Write sheets')
    await page.waitForSelector('.done')
    await page.click('text=Write again')
    await page.waitForSelector('.question')
  },
  written: async (page) => {
    await plan(page)
    await page.click('role=tab[name=/Write/]')
    await page.click('text=Write sheets')
    await page.waitForSelector('.done')
  },
  limb: async (page) => {
    await plan(page)
    await page.evaluate('stage.selectRow(2)')
  },
  refusal: async (page) => {
    await page.evaluate('stage.failReading()')
    await page.click('text=Plan inventory')
    await page.waitForSelector('.refusal')
  },
  nothing: async (page) => {
    await page.evaluate('stage.selectNothing()')
  }
}

async function plan(page: Page): Promise<void> {
  await page.click('text=Plan inventory')
  await page.waitForSelector('.result')
}

async function shoot(browser: Browser, source: string, wanted: string[]): Promise<void> {
  for (const [look, media] of Object.entries(looks)) {
    for (const width of [320, 350]) {
      if (look === 'forced' && width === 320) continue
      const page = await browser.newPage({ viewport: { width, height: 700 } })
      page.on('pageerror', (error) => {
        process.exitCode = 1
        console.error(error.message)
      })
      await page.emulateMedia(media)
      for (const [name, act] of Object.entries(screens)) {
        if (wanted.length > 0 && !wanted.includes(name)) continue
        await page.setContent(source)
        await page.waitForSelector('.selection')
        await act(page)
        const wide = await page.evaluate('document.documentElement.scrollWidth')
        if (wide !== width) {
          process.exitCode = 1
          console.error(`${name} at ${width} px is ${String(wide)} px wide`)
        }
        const fullPage = name !== 'limb'
        await page.screenshot({ path: join(folder, `${name}-${look}-${width}.png`), fullPage })
      }
      await page.close()
    }
  }
}

async function main(): Promise<void> {
  mkdirSync(folder, { recursive: true })
  const browser = await startBrowser()
  try {
    await shoot(browser, pageSource('galleryPage.ts'), process.argv.slice(2))
  } finally {
    await browser.close()
  }
}

void main()
