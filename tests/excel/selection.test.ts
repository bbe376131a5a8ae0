import { describeSelection, watchSelection, type SelectionSummary } from '../../src/excel/selection'
import { showsInventory } from '../../src/inventory/survey/showsInventory'
import { sampleInventory } from '../../src/file/sampleInventory'
import { startWith, type InventoryBook } from './inventorySheet'

let office: InventoryBook
const rows = sampleInventory.length
const columns = sampleInventory[0]!.length
const describeNow = () => describeSelection(showsInventory)

beforeAll(async () => {
  office = await startWith()
})

describe('what a selection would give', () => {
  test('a range as it is selected', async () => {
    office.select({ row: 0, column: 0, rows: 7, columns: 5 })
    expect(await describeNow()).toEqual({
      places: [{ address: 'Trees!A1:E7', rows: 7, columns: 5 }],
      range: 'Trees!A1:E7',
      remark: 'Only the selected cells, Trees!A1:E7, are read.',
      problem: null,
      cells: { sheet: 'Trees', row: 0, column: 0, rows: 7, columns: 5 }
    })
  })

  test('one cell gives the whole inventory', async () => {
    office.select({ row: 20, column: 3 })
    expect(await describeNow()).toMatchObject({
      places: [{ address: `Trees!A1:V${String(rows)}`, rows, columns }],
      range: null,
      remark: '',
      cells: { row: 20, column: 3, rows: 1, columns: 1 }
    })
  })

  test('a chart gives the whole inventory too', async () => {
    office.book.selectAreas(office.sheetId, [])
    expect(await describeNow()).toMatchObject({
      places: [{ address: `Trees!A1:V${String(rows)}` }],
      range: null,
      cells: null,
      problem: null
    })
  })

  test('while a cell is edited it waits instead of failing', async () => {
    office.select({ rows: 3, columns: 3 })
    office.book.faults.cellEditRequests = 3
    expect((await describeNow()).problem).toBeNull()
  })
})

describe('following the selection', () => {
  const next = async (count: number, seen: SelectionSummary[]) => {
    for (let tries = 0; seen.length < count && tries < 200; tries++)
      await new Promise((resolve) => setTimeout(resolve, 5))
  }

  test('tells of each new selection until it is stopped', async () => {
    const seen: SelectionSummary[] = []
    const stop = await watchSelection((summary) => seen.push(summary), describeNow)
    office.select({ rows: 4, columns: 9 })
    await next(1, seen)
    office.select({ rows: 6, columns: 9 })
    await next(2, seen)
    expect(seen.at(-1)).toMatchObject({ range: 'Trees!A1:I6' })
    await stop()
    const before = seen.length
    office.select({ rows: 8, columns: 9 })
    await new Promise((resolve) => setTimeout(resolve, 50))
    expect(seen).toHaveLength(before)
  })

  test('a run through the sheet is gathered, and the last selection is told', async () => {
    const seen: SelectionSummary[] = []
    const stop = await watchSelection((summary) => seen.push(summary), describeNow)
    for (let last = 2; last <= 30; last++) office.select({ rows: last, columns: 2 })
    for (let tries = 0; seen.at(-1)?.cells?.rows !== 30 && tries < 200; tries++)
      await new Promise((resolve) => setTimeout(resolve, 5))
    expect(seen.at(-1)!.cells!.rows).toBe(30)
    expect(seen.length).toBeLessThan(29)
    await stop()
  })
})
