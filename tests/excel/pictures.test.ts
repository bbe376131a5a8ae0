/** Pictures on their way onto a sheet: in requests of a size that Excel takes, with progress, and with a way back. */
import { wholeProgram } from '../../src/price/offers'
import { estimatePlan } from '../../src/price/estimatePlan'
import { describeDocuments } from '../../src/sheets/describeDocuments'
import type { DrawingPainter } from '../../src/drawing/paint/painter'
import type { SheetDescription } from '../../src/sheets/sheet'
import { applySheets } from '../../src/excel/applySheets'
import { isProblem } from '../../src/excel/failures'
import { samplePlan } from '../sheets/samplePlan'
import { startWith, type InventoryBook } from './inventorySheet'

const plan = samplePlan()
const [report] = describeDocuments(['client-report'], plan, wholeProgram(estimatePlan(plan))) as [
  SheetDescription
]
const pictures = report.pictures!

/** A stand-in that paints nothing but weighs as much as it is told. */
class Stub implements DrawingPainter {
  readonly painted: string[] = []
  constructor(
    private readonly bytes: number,
    private readonly after: (count: number) => void = () => undefined
  ) {}

  paint({ width, height, alt, title }: Parameters<DrawingPainter['paint']>[0]) {
    this.painted.push(title)
    this.after(this.painted.length)
    const png = new Uint8Array(this.bytes)
    png.set([137, 80, 78, 71, 13, 10, 26, 10])
    return Promise.resolve({ png, width, height, alt })
  }
}

let office: InventoryBook
beforeAll(async () => {
  office = await startWith()
})
afterEach(() => {
  for (const { id, name } of office.book.sheets()) if (name !== 'Trees') office.book.deleteSheet(id)
  for (const { name } of office.book.names()) office.book.deleteName(name)
  office.book.faults.mostRequestCharacters = Infinity
})

const sheetNames = () => office.book.sheets().map(({ name }) => name)

test('large pictures go in several requests, each far below the 5 MB that Excel on the web takes', async () => {
  // 28 pictures of 400,000 characters each: one request would hold 11 million.
  office.book.faults.mostRequestCharacters = 2_000_000
  const painter = new Stub(300_000)
  const result = await applySheets([report], { replace: false, painter })
  expect(isProblem(result)).toBe(false)
  expect(painter.painted).toHaveLength(pictures.length)
  const { id } = office.book.sheets().find(({ name }) => name === 'Client report')!
  expect(office.book.pictures(id)).toHaveLength(pictures.length)
})

test('each picture fits its area, keeps its proportion, and moves with its cells', async () => {
  await applySheets([report], { replace: false, painter: new Stub(100) })
  const { id } = office.book.sheets().find(({ name }) => name === 'Client report')!
  office.book.pictures(id).forEach((picture, index) => {
    const { width, height, alt } = pictures[index]!
    expect(picture.width).toBeCloseTo(width, 6)
    expect(picture.height).toBeCloseTo(height, 6)
    expect(picture.alt).toBe(alt)
    expect([picture.proportionLocked, picture.placement]).toEqual([true, 'OneCell'])
  })
})

test('the progress counts pictures and ends at the whole', async () => {
  const told: [number, number][] = []
  const onProgress = (done: number, total: number) => told.push([done, total])
  await applySheets([report], { replace: false, painter: new Stub(300_000), onProgress })
  const [done, total] = told.at(-1)!
  expect(done).toBe(total)
  expect(told.length).toBeGreaterThan(5)
  told.slice(1).forEach(([now], index) => expect(now).toBeGreaterThanOrEqual(told[index]![0]))
})

test('canceled while the pictures are painted, the workbook is as it was', async () => {
  const before = sheetNames()
  const control = new AbortController()
  const painter = new Stub(300_000, (count) => {
    if (count === 8) control.abort()
  })
  const writing = applySheets([report], { replace: false, painter, signal: control.signal })
  await expect(writing).rejects.toMatchObject({ name: 'AbortError' })
  expect(painter.painted.length).toBeLessThan(pictures.length)
  expect(sheetNames()).toEqual(before)
  expect(office.book.names()).toEqual([])
})

test('a sheet with pictures is not written without a painter, and one without pictures needs none', async () => {
  const before = sheetNames()
  await expect(applySheets([report], { replace: false })).rejects.toThrow(/without a painter/)
  expect(sheetNames()).toEqual(before)
  const plain = { ...report, pictures: [] }
  expect(isProblem(await applySheets([plain], { replace: false }))).toBe(false)
})
