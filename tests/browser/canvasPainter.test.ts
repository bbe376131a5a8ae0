import { join } from 'node:path'
import { buildSync } from 'esbuild'
import type { Browser } from 'playwright-core'
import type { Picture } from '../../src/drawing/paint/painter'
import { samplePlan, treeNamed } from '../drawing/inventedTrees'
import { drawn } from '../drawing/measured'
import { connectBrowser } from './shared'

let browser: Browser

beforeAll(async () => {
  browser = await connectBrowser()
})
afterAll(async () => {
  await browser.close()
})

it('paints a drawing as a PNG of the wanted size, with its alt text and without any request', async () => {
  const tree = treeNamed(samplePlan(), 'T01')
  const drawing = drawn(tree, tree.visits[0]!, 'before', { palette: 'print' })
  const script = buildSync({
    entryPoints: [join(__dirname, '../../src/drawing/paint/canvasPainter.ts')],
    bundle: true,
    write: false,
    format: 'iife',
    globalName: 'painting'
  }).outputFiles[0]!.text
  const page = await browser.newPage()
  const requests: string[] = []
  page.on('request', (request) => {
    if (!request.url().startsWith('data:')) requests.push(request.url())
  })
  await page.setContent('<!doctype html><title>painting</title>')
  await page.addScriptTag({ content: script })
  const picture = (await page.evaluate(
    `painting.canvasPainter(document).paint(${JSON.stringify(drawing)}, 2).then((p) => ({ ...p, png: [...p.png] }))`
  )) as Omit<Picture, 'png'> & { png: number[] }
  const png = Buffer.from(picture.png)
  expect(png.subarray(1, 4).toString('latin1')).toBe('PNG')
  expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([608, drawing.height * 2])
  expect([picture.width, picture.height, picture.alt]).toEqual([608, drawing.height * 2, drawing.alt])

  const ink = (await page.evaluate(`(async () => {
    const bytes = new Uint8Array(${JSON.stringify(picture.png)})
    const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }))
    const context = Object.assign(document.createElement('canvas'), { width: bitmap.width, height: bitmap.height }).getContext('2d')
    context.drawImage(bitmap, 0, 0)
    const { data } = context.getImageData(0, 0, bitmap.width, bitmap.height)
    let dark = 0, clear = 0
    for (let at = 0; at < data.length; at += 4) { if (data[at] < 128) dark++; if (data[at + 3] < 255) clear++ }
    return { dark: dark / (data.length / 4), clear }
  })()`)) as { dark: number; clear: number }
  expect(ink.clear).toBe(0)
  expect(ink.dark).toBeGreaterThan(0.02)
  expect(ink.dark).toBeLessThan(0.3)
  expect(requests).toEqual([])
})
