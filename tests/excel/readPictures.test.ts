/** The logo and the photographs as they stand on sheets, through the real Office library. */
import { base64 } from '../../shared/pictures/base64'
import type { Cell, CellBlock } from '../../shared/cells'
import { noDetails } from '../../src/details/detailsBook'
import { readPictures, type PicturesWanted } from '../../src/excel/readPictures'
import { readInventory } from '../../src/inventory/readInventory'
import { planInventory } from '../../src/plan/planInventory'
import { wholeProgram } from '../../src/price/offers'
import { estimatePlan } from '../../src/price/estimatePlan'
import { sampleInventory } from '../../src/file/sampleInventory'
import { inventedPng } from '../pictures/invented'
import { startWith, type InventoryBook } from './inventorySheet'

let office: InventoryBook
let trees: string
let job: string
beforeAll(async () => {
  office = await startWith()
  trees = office.book.sheets()[0]!.id
  job = office.book.addSheet('Job details').id
})
afterEach(() => {
  for (const sheet of [trees, job])
    for (const { id } of office.book.pictures(sheet)) office.book.deletePicture(id)
})

function put(sheet: string, image: Uint8Array, place: { left?: number; top: number; height?: number }): void {
  const { id } = office.book.addPicture(sheet, base64(image))
  office.book.changePicture(id, { left: 0, height: 20, ...place })
}

const detailsWith = (logo: Cell): CellBlock => ({
  sheet: 'Job details',
  rows: [
    ['What', 'Value'],
    ['Company', 'Elmgate (invented)'],
    ['Logo', logo]
  ],
  ...{ top: 0, left: 0 }
})

function wanted(rows: readonly (readonly Cell[])[], logo: Cell = null, report = true): PicturesWanted {
  const sheet = { name: office.book.sheets()[0]!.name, rows: rows.map((row) => [...row]), top: 0, left: 0 }
  const plan = planInventory(readInventory({ ...sheet, sheet: sheet.name }), { date: '2026-03-02' })
  const details = { ...noDetails, treePages: 'all' }
  return {
    ...{ plan, offer: wholeProgram(estimatePlan(plan)), details, report },
    ...{ detailsSheet: detailsWith(logo), sheets: [sheet] }
  }
}

/** Points of a row of standard height. */
const rowOf = (tree: string): number => sampleInventory.findIndex(([id]) => id === tree)
const topOf = (row: number): number => row * 15

test('the highest picture on the Job details sheet is the logo', async () => {
  put(job, inventedPng(40, 10), { top: 80 })
  put(job, inventedPng(30, 10), { top: 20 })
  const { logo, problems } = await readPictures(wanted(sampleInventory))
  expect(logo).toMatchObject({ kind: 'png', width: 30, height: 10 })
  expect(problems.map(({ code }) => code)).toEqual(['logo-several'])
  expect(Buffer.compare(await logo!.bytes(), inventedPng(30, 10))).toBe(0)
})

test('a picture shows the tree in whose row it begins, or whose row it first reaches', async () => {
  put(trees, inventedPng(11, 10), { top: topOf(rowOf('T03')) + 4 })
  // It begins a hair above the row.
  put(trees, inventedPng(12, 10), { top: topOf(rowOf('T05')) - 2 })
  // On the headers, over the first tree.
  put(trees, inventedPng(13, 10), { top: 2, height: 40 })
  // The second of a tree.
  put(trees, inventedPng(14, 10), { top: topOf(rowOf('T03') + 1) + 4 })
  const { photographs, problems } = await readPictures(wanted(sampleInventory))
  expect([...photographs].map(([tree, { width }]) => [tree, width]).sort()).toEqual([
    ['T01', 13],
    ['T03', 11],
    ['T05', 12]
  ])
  expect(problems).toEqual([])
})

test('without a report no photograph is asked for, and without pictures there is nothing to say', async () => {
  expect(await readPictures(wanted(sampleInventory))).toEqual({
    logo: null,
    photographs: new Map(),
    problems: []
  })
  put(trees, inventedPng(11, 10), { top: topOf(rowOf('T03')) + 4 })
  expect((await readPictures(wanted(sampleInventory, null, false))).photographs.size).toBe(0)
})

test('what is damaged is told, and the others are used', async () => {
  put(job, inventedPng(30, 10).subarray(0, 50), { top: 20 })
  put(trees, inventedPng(30, 10).subarray(0, 50), { top: topOf(rowOf('T01')) })
  put(trees, inventedPng(11, 10), { top: topOf(rowOf('T03')) })
  const { logo, photographs, problems } = await readPictures(wanted(sampleInventory))
  expect([logo, [...photographs.keys()]]).toEqual([null, ['T03']])
  expect(problems.map(({ message }) => message)).toEqual([
    'The logo on the sheet Job details is damaged; the documents are written without it.',
    `The photograph on the sheet Trees of tree T01 is damaged; its page in the report has none.`
  ])
})

test('files that are named cannot be opened here, which is told once', async () => {
  const rows = sampleInventory.map((row, at): Cell[] => [
    ...row,
    at === 0 ? 'Photo' : `${String(row[0])}.jpg`
  ])
  const { logo, photographs, problems } = await readPictures(wanted(rows, 'logo.png'))
  expect([logo, photographs.size]).toEqual([null, 0])
  expect(problems.map(({ code, cell }) => [code, cell])).toEqual([
    ['logo-unusable', `'Job details'!B3`],
    ['photo-files', expect.stringMatching(/^Trees!\w+2$/)]
  ])
})

test('an Excel that gives no pictures writes without them', async () => {
  put(job, inventedPng(30, 10), { top: 20 })
  const spy = jest.spyOn(Office.context.requirements, 'isSetSupported').mockReturnValue(false)
  expect(await readPictures(wanted(sampleInventory))).toMatchObject({ logo: null, problems: [] })
  spy.mockRestore()
})

test('a picture that Excel refuses to give is told, and nothing else fails', async () => {
  put(job, inventedPng(30, 10), { top: 20 })
  put(trees, inventedPng(11, 10), { top: topOf(rowOf('T03')) })
  const pictures = office.book.pictures.bind(office.book)
  // It is gone between the look at the sheet and the picture.
  const spy = jest.spyOn(office.book, 'pictures').mockImplementation((sheet) => {
    const found = pictures(sheet)
    return sheet === job
      ? found.map((each) => ({
          ...each,
          get image(): string {
            throw new OfficeFault()
          }
        }))
      : found
  })
  class OfficeFault extends Error {}
  const { logo, photographs, problems } = await readPictures(wanted(sampleInventory))
  spy.mockRestore()
  expect([logo, photographs.size, problems.map(({ code }) => code)]).toEqual([null, 1, ['pictures-unread']])
})
