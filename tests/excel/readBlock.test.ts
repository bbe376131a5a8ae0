import { readInventory } from '../../src/inventory/readInventory'
import { blockUnchanged } from '../../src/excel/blockUnchanged'
import { goToCell } from '../../src/excel/goTo'
import { readSelectedBlock } from '../../src/excel/readBlock'
import { sampleInventory } from '../../src/file/sampleInventory'
import { startWith, type InventoryBook } from './inventorySheet'

let office: InventoryBook

beforeAll(async () => {
  office = await startWith()
})

const everything = { rows: 1048576, columns: 16384 }

describe('reading the selected block', () => {
  test('gives the sample inventory cell by cell', async () => {
    office.select(everything)
    const { block, problems } = await readSelectedBlock()
    expect(block).toEqual({ rows: sampleInventory, sheet: 'Trees', top: 0, left: 0 })
    expect(problems).toEqual([])
    expect(readInventory(block).trees).toHaveLength(15)
  })

  test('reads in bands when answers are limited, and tells of progress', async () => {
    office.select(everything)
    office.book.faults.mostResponseCells = 200
    const seen: [number, number][] = []
    const { block } = await readSelectedBlock({ onProgress: (done, total) => seen.push([done, total]) })
    office.book.faults.mostResponseCells = Infinity
    expect(block.rows).toEqual(sampleInventory)
    expect(seen.length).toBeGreaterThan(3)
    expect(seen.at(-1)).toEqual([sampleInventory.length, sampleInventory.length])
  })

  test('is canceled between bands', async () => {
    office.select(everything)
    office.book.faults.mostResponseCells = 200
    const stop = new AbortController()
    const reading = readSelectedBlock({
      signal: stop.signal,
      onProgress: () => {
        stop.abort()
      }
    })
    await expect(reading).rejects.toMatchObject({ name: 'AbortError' })
    office.book.faults.mostResponseCells = Infinity
  })

  test('counts hidden rows, scattered as they may be', async () => {
    office.select(everything)
    office.book.hideRows(office.sheetId, 3, 4)
    office.book.hideRows(office.sheetId, 20, 1)
    const { problems, block } = await readSelectedBlock()
    expect(problems.map(({ message }) => message)).toEqual([
      `5 hidden or filtered rows in Trees!A1:V${String(sampleInventory.length)} were included.`
    ])
    expect(block.rows).toEqual(sampleInventory)
  })

  test('notes merged cells with their address', async () => {
    office.book.mergeCells(office.sheetId, { row: 5, column: 1, rows: 2, columns: 1 })
    office.select({ rows: 4, columns: 4 })
    expect((await readSelectedBlock()).problems.map(({ code }) => code)).not.toContain('merged-cells')
    office.select({ rows: 8, columns: 4 })
    const found = (await readSelectedBlock()).problems.find(({ code }) => code === 'merged-cells')
    expect(found!.cell).toBe('Trees!B6:B7')
  })

  test('waits while a cell is being edited', async () => {
    office.select({ rows: 8, columns: 4 })
    office.book.faults.cellEditRequests = 9
    const { block } = await readSelectedBlock()
    expect(block.rows).toHaveLength(8)
  })

  test('an unusable selection is a problem with an empty block', async () => {
    office.book.selectAreas(office.sheetId, [])
    const { block, problems } = await readSelectedBlock()
    expect(block.rows).toEqual([])
    expect(problems.map(({ code }) => code)).toEqual(['not-cells'])
  })

  test('an address is read whatever is selected, and the selection stays', async () => {
    office.select({ row: 40, column: 2 })
    const { block } = await readSelectedBlock({ address: 'Trees!A1:C3' })
    expect(block).toEqual({
      rows: sampleInventory.slice(0, 3).map((row) => row.slice(0, 3)),
      sheet: 'Trees',
      top: 0,
      left: 0
    })
    expect(office.book.selection().areas).toEqual([{ row: 40, column: 2, rows: 1, columns: 1 }])
    const gone = await readSelectedBlock({ address: 'Nowhere!A1:C3' })
    expect(gone.problems.map(({ code }) => code)).toEqual(['address-gone'])
  })

  test('a failure of the spreadsheet is a plain sentence', async () => {
    office.select({ rows: 8, columns: 4 })
    office.book.faults.failingRequests = 1
    const { problems } = await readSelectedBlock()
    expect(problems.map(({ code }) => code)).toEqual(['spreadsheet-failed'])
    expect(problems[0]!.message).toMatch(/^The spreadsheet did not do what was asked: ./)
  })
})

describe('whether the block is still the same', () => {
  test('it is, until a cell changes', async () => {
    office.select(everything)
    const { block } = await readSelectedBlock()
    expect(await blockUnchanged(block)).toBe(true)
    office.book.setValues(office.sheetId, { row: 4, column: 13, rows: 1, columns: 1 }, [[99]])
    expect(await blockUnchanged(block)).toBe(false)
    const old = sampleInventory[4]![13]!
    office.book.setValues(office.sheetId, { row: 4, column: 13, rows: 1, columns: 1 }, [[old]])
    expect(await blockUnchanged(block)).toBe(true)
  })

  test('it is not where the sheet is gone', async () => {
    expect(await blockUnchanged({ rows: [['Tree']], sheet: 'Nowhere', top: 0, left: 0 })).toBe(false)
  })
})

describe('going to a cell', () => {
  test('shows its sheet and selects it', async () => {
    const { id } = office.book.addSheet("Far 'side'")
    expect(await goToCell("'Far ''side'''!C5")).toBeNull()
    expect(office.book.activeSheet()).toBe(id)
    expect(office.book.selection()).toEqual({
      sheetId: id,
      areas: [{ row: 4, column: 2, rows: 1, columns: 1 }]
    })
  })

  test.each(['Nowhere!A1', 'A1', 'Trees!ZZZZ9', 'nonsense'])('%s is not there', async (address) => {
    expect((await goToCell(address))!.code).toMatch(/address-gone/)
  })

  test('is refused in one sentence while a cell is edited', async () => {
    office.book.faults.cellEditRequests = 1
    const found = await goToCell('Trees!B2')
    expect(`${found!.message} ${found!.remedy}`).toMatch(/A cell is being edited.*Press Enter or Escape/)
  })
})
