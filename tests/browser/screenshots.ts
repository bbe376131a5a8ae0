/**
 * Takes the pictures by which the looks are judged, into build/screenshots: the workbench in light and dark, and the
 * pane at its two widths in light, dark and forced colors. Run it with npx tsx tests/browser/screenshots.ts.
 */
import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser, BrowserContextOptions } from 'playwright-core'
import { startBrowser } from './browser'
import { openDesk, select, startWorkbench, write, type Desk } from './workbench'

const folder = join(__dirname, '../../build/screenshots')
const looks: Record<string, BrowserContextOptions> = {
  light: { colorScheme: 'light' },
  dark: { colorScheme: 'dark' },
  forced: { colorScheme: 'dark', forcedColors: 'active' }
}

/** Waits for fonts, calculation and the grid's drawing. */
const rest = ({ page }: Desk) => page.waitForTimeout(700)

async function plan(desk: Desk): Promise<void> {
  await desk.page.getByRole('button', { name: 'Plan inventory' }).click()
  await desk.pane.getByRole('heading', { name: /^Plan for/ }).waitFor()
}

async function shootWorkbench(browser: Browser, address: string, look: string): Promise<void> {
  const desk = await openDesk(browser, address, looks[look])
  const shoot = async (name: string) => {
    await rest(desk)
    await desk.page.screenshot({ path: join(folder, `workbench-${name}-${look}.png`) })
  }
  await shoot('start')
  await write(desk, 'Inventory', 'E2', [['=LIMB.ASPECTRATIO(-4,8)']])
  await select(desk, 'Inventory', 'E2')
  await desk.page.mouse.move(530, 140)
  await desk.page.mouse.move(532, 142)
  await shoot('message')
  await write(desk, 'Inventory', 'E2', [[32]])
  await plan(desk)
  await shoot('planned')
  await desk.pane.getByRole('tab', { name: /^Write/ }).click()
  await desk.pane.getByRole('button', { name: 'Write sheets' }).click()
  await desk.pane
    .getByText(/^Written/)
    .first()
    .waitFor()
  for (const sheet of ['Estimate', 'Cut plan']) {
    await select(desk, sheet, 'A1')
    await shoot(sheet.toLowerCase().replace(' ', '-'))
  }
  await desk.close()
}

async function shootPane(browser: Browser, address: string, look: string, width: number): Promise<void> {
  const desk = await openDesk(browser, address, { ...looks[look], viewport: { width: 1280, height: 1500 } })
  await desk.page.locator('#divider').focus()
  if (width === 320) await desk.page.keyboard.press('End')
  const shoot = async (name: string) => {
    await rest(desk)
    await desk.page.locator('#beside').screenshot({ path: join(folder, `pane-${width}-${name}-${look}.png`) })
  }
  await shoot('start')
  await plan(desk)
  await shoot('plan')
  for (const tab of ['Estimate', 'Checks', 'Write']) {
    await desk.pane.getByRole('tab', { name: new RegExp(`^${tab}`) }).click()
    await shoot(tab.toLowerCase())
  }
  await desk.close()
}

async function main(): Promise<void> {
  mkdirSync(folder, { recursive: true })
  const [browser, workbench] = await Promise.all([startBrowser(), startWorkbench()])
  try {
    for (const look of Object.keys(looks)) {
      await shootWorkbench(browser, workbench.address, look)
      for (const width of [320, 350]) await shootPane(browser, workbench.address, look, width)
    }
  } finally {
    await browser.close()
    await workbench.stop()
  }
  process.stdout.write(`Pictures are in ${folder}\n`)
}

main().catch((error: unknown) => {
  process.stderr.write(`${String(error)}\n`)
  process.exit(1)
})
