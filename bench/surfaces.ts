import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { startBrowser } from '../tests/browser/browser'
import { buildAddin } from '../tools/build'
import { hostedOffice } from '../tools/pane'
import { serveWorkbench } from '../src/workbench/server/serve'
import type { Measurement } from './measure'

/** The pane's own script, as it travels. */
export async function paneSize(): Promise<Measurement[]> {
  const out = join(__dirname, '../build/bench-addin')
  await buildAddin({ out, base: 'https://localhost:3000', office: hostedOffice })
  const bytes = gzipSync(readFileSync(join(out, 'taskpane.js'))).length
  return [
    { what: 'the pane’s own script, compressed', value: bytes / 1024, unit: 'KB', limit: 100, note: 'gzip' }
  ]
}

/** From opening the page until the grid, the pane and the cell functions answer; the best of three openings. */
export async function workbenchReady(): Promise<Measurement[]> {
  const served = await serveWorkbench(0)
  const browser = await startBrowser()
  const times: number[] = []
  try {
    for (let turn = 0; turn < 3; turn++) {
      const page = await browser.newPage()
      const start = performance.now()
      await page.goto(served.address)
      await page.locator('html[data-ready=yes]').waitFor({ state: 'attached', timeout: 60000 })
      times.push((performance.now() - start) / 1000)
      await page.close()
    }
  } finally {
    await browser.close()
    await served.close()
  }
  const note = `${times.map((time) => time.toFixed(2)).join(', ')} s`
  return [{ what: 'the workbench is ready', value: Math.min(...times), unit: 's', limit: 4, note }]
}
