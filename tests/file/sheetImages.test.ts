import { noDetails } from '../../src/details/detailsBook'
import { wholeProgram } from '../../src/price/offers'
import { readXlsx } from 'hucre/xlsx'
import { byUrgency } from '../../src/plan/plan'
import { estimatePlan } from '../../src/price/estimatePlan'
import { describeDocuments } from '../../src/sheets/describeDocuments'
import { sheetPixelRatio } from '../../src/drawing/paint/painter'
import { filePainter } from '../../src/file/paintDrawing'
import { writeWorkbook } from '../../src/file/writeWorkbook'
import { samplePlan } from '../sheets/samplePlan'

const plan = samplePlan()
const drawnTrees = byUrgency(plan).filter(({ visits }) => visits.some(({ cuts }) => cuts.length > 0))
const [report] = describeDocuments(['client-report'], plan, wholeProgram(estimatePlan(plan)), {
  ...noDetails,
  treePages: 'all'
})
const pictures = report!.pictures!

/** Width and height of a PNG (W3C PNG, sections 5.2 and 11.2.1: signature, then IHDR; from memory). */
function pngSize(data: Uint8Array): { width: number; height: number } {
  expect([...data.slice(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10])
  const view = new DataView(data.buffer, data.byteOffset)
  return { width: view.getUint32(16), height: view.getUint32(20) }
}

test('the file’s report holds a picture for each tree with cuts, which says how it is before and after', async () => {
  const { sheets } = await readXlsx(await writeWorkbook([report!]))
  const images = sheets[0]!.images!
  expect(images).toHaveLength(drawnTrees.length)
  drawnTrees.forEach(({ tree, visits }) => {
    const visit = visits.find(({ cuts }) => cuts.length > 0)!
    const { altText } = images.find(({ altText }) => altText!.startsWith(`Tree ${tree.id},`))!
    expect(altText).toContain(`Tree ${tree.id}, before visit ${String(visit.visit)}`)
    expect(altText).toContain(`Tree ${tree.id}, after visit ${String(visit.visit)}`)
    for (const cut of visit.cuts) expect(altText).toContain(`limb ${cut.limb.id}: ${cut.kind}`)
  })
  for (const [index, image] of images.entries()) {
    const { data, type, anchor } = image
    const { area } = pictures[index]!
    expect(type).toBe('png')
    expect([anchor.from.row, anchor.from.col]).toEqual([area.row, area.column])
    // One corner and a size: it is not stretched where a program sets the columns wider.
    expect(anchor.to).toBeUndefined()
    const { width: across, height: down } = pictures[index]!
    expect([image.width, image.height]).toEqual([
      Math.round((across * 96) / 72),
      Math.round((down * 96) / 72)
    ])
    const { width, height } = pngSize(data)
    expect(Math.abs(width / height - pictures[index]!.width / pictures[index]!.height)).toBeLessThan(0.003)
  }
})

test('a painted drawing has the pixels asked for, and its letters are painted without fonts of the machine', async () => {
  const drawing = pictures[0]!.draw()
  const { png, width, height, alt } = await filePainter.paint(drawing, sheetPixelRatio)
  expect(pngSize(png)).toEqual({ width, height })
  expect(width).toBe(Math.round(drawing.width * sheetPixelRatio))
  expect(Math.abs(height - drawing.height * sheetPixelRatio)).toBeLessThanOrEqual(1)
  expect(alt).toBe(drawing.alt)
  const mute = { ...drawing, shapes: drawing.shapes.filter(({ kind }) => kind !== 'text') }
  expect((await filePainter.paint(mute, sheetPixelRatio)).png.length).toBeLessThan(png.length * 0.8)
})
