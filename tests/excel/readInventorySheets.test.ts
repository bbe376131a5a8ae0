import { isRefusal } from '../../shared/refusal'
import { goToCell } from '../../src/excel/goTo'
import type { Reading } from '../../src/excel/readCells'
import { hiddenLines } from '../../src/excel/hiddenLines'
import { readInventorySheets, type Wanted } from '../../src/excel/readInventorySheets'
import { sheetsUnchanged } from '../../src/excel/sheetsUnchanged'
import { packBook } from '../../src/file/file-library/packBook'
import { readPlannedFile } from '../../src/file/readPlannedFile'
import { sampleInventory } from '../../src/file/sampleInventory'
import { readSheets } from '../../src/inventory/readSheets'
import { showsInventory } from '../../src/inventory/survey/showsInventory'
import { fill, startWith, type InventoryBook } from './inventorySheet'

let office: InventoryBook

beforeAll(async () => {
  office = await startWith()
})

const everything = { rows: 1048576, columns: 16384 }
const read = (wanted: Wanted = 'selection', options: Reading = {}) =>
  readInventorySheets(wanted, showsInventory, options)

describe('reading the inventory', () => {
  test('gives the sample inventory cell by cell', async () => {
    office.select({ row: 3, column: 3 })
    const { sheets, range, problems } = await read()
    expect(sheets).toMatchObject([{ rows: sampleInventory, name: 'Trees', top: 0, left: 0, hidden: false }])
    expect({ range, problems }).toEqual({ range: null, problems: [] })
    expect(readSheets(sheets).trees).toHaveLength(15)
  })

  test('reads in bands when answers are limited, and tells of progress', async () => {
    office.select(everything)
    office.book.faults.mostResponseCells = 2000
    const seen: [number, number][] = []
    const { sheets } = await read('selection', { onProgress: (done, total) => seen.push([done, total]) })
    office.book.faults.mostResponseCells = Infinity
    expect(sheets[0]?.rows).toEqual(sampleInventory)
    expect(seen.length).toBeGreaterThan(1)
    expect(seen.at(-1)).toEqual([sampleInventory.length, sampleInventory.length])
  })

  test('is canceled between bands', async () => {
    office.select(everything)
    office.book.faults.mostResponseCells = 2000
    const stop = new AbortController()
    const reading = read('selection', {
      signal: stop.signal,
      onProgress: () => {
        stop.abort()
      }
    })
    await expect(reading).rejects.toMatchObject({ name: 'AbortError' })
    office.book.faults.mostResponseCells = Infinity
  })

  test('waits while a cell is being edited', async () => {
    office.select({ rows: 8, columns: 16 })
    office.book.faults.cellEditRequests = 9
    const { sheets } = await read()
    expect(sheets[0]?.rows).toHaveLength(8)
  })

  test('an unusable selection is a problem without sheets', async () => {
    const area = { row: 0, column: 0, rows: 3, columns: 2 }
    office.book.selectAreas(office.sheetId, [area, { ...area, row: 10 }])
    const { sheets, problems } = await read()
    expect(sheets).toEqual([])
    expect(problems.map(({ code }) => code)).toEqual(['several-areas'])
  })

  test('a range is read again whatever is selected, and the selection stays', async () => {
    office.select({ row: 40, column: 2 })
    const { sheets, range } = await read({ range: 'Trees!A1:C3' })
    expect(sheets).toMatchObject([
      { rows: sampleInventory.slice(0, 3).map((row) => row.slice(0, 3)), name: 'Trees', top: 0, left: 0 }
    ])
    expect(range).toBe('Trees!A1:C3')
    expect(office.book.selection().areas).toEqual([{ row: 40, column: 2, rows: 1, columns: 1 }])
    const gone = await read({ range: 'Nowhere!A1:C3' })
    expect(gone.problems.map(({ code }) => code)).toEqual(['address-gone'])
  })

  test('a failure of the spreadsheet is a plain sentence', async () => {
    office.select({ rows: 8, columns: 4 })
    office.book.faults.failingRequests = 1
    const { problems } = await read()
    expect(problems.map(({ code }) => code)).toEqual(['spreadsheet-failed'])
    expect(problems[0]!.message).toMatch(/^The spreadsheet did not do what was asked: ./)
  })
})

describe('a sheet as a file would give it', () => {
  const headers = ['Tree', 'Species', 'DBH (in)', 'Height (ft)', 'Crown base (ft)', 'Removed', 'Last pruned']
  const rows = [
    headers,
    ['T1', 'Red oak', 6, 30, 8, 0.05, 46082],
    ['T2', 'Red oak', 7, 31, 9, 0.125, 46083.5],
    ['T3', null, 7, 31, 9, null, null],
    ['T4', 'Elm', 7, 31, 9, 0, 46090]
  ]
  const formats = { 5: '0.0%', 6: 'yyyy-mm-dd' }

  test('has dates and percentages as texts, merges, and hidden rows and columns', async () => {
    const { id } = office.book.addSheet('Looks')
    fill(office, id, rows, 1, 1)
    for (const [column, format] of Object.entries(formats))
      office.book.setNumberFormats(
        id,
        { row: 2, column: 1 + Number(column), rows: 4, columns: 1 },
        rows.slice(1).map(() => [format])
      )
    office.book.mergeCells(id, { row: 3, column: 2, rows: 2, columns: 1 })
    office.book.hideRows(id, 4, 1)
    office.book.hideColumns(id, 5, 1)
    office.book.selectAreas(id, [{ row: 1, column: 1, rows: 5, columns: 7 }])
    const { sheets, problems } = await read()
    expect(problems).toEqual([])
    const [sheet] = sheets
    expect(sheet).toMatchObject({ name: 'Looks', top: 1, left: 1 })
    expect(sheet?.rows.map((row) => row.slice(5))).toEqual([
      ['Removed', 'Last pruned'],
      ['5 %', '2026-03-01'],
      ['12.5 %', '2026-03-02'],
      [null, null],
      ['0 %', '2026-03-09']
    ])
    expect(sheet?.merges).toEqual([{ top: 2, left: 1, bottom: 3, right: 1 }])
    expect([...(sheet?.hiddenRows ?? [])]).toEqual([3])
    expect([...(sheet?.hiddenColumns ?? [])]).toEqual([4])

    const styled = new Map(
      rows.slice(1).flatMap((row, at) =>
        Object.entries(formats).flatMap(([column, numFmt]) => {
          const value = row[Number(column)] ?? null
          return value === null
            ? []
            : [[`${String(at + 1)},${column}`, { value, style: { numFmt } }] as const]
        })
      )
    )
    const plain = { freeze: { rows: 0, columns: 0 }, gridlines: true, page: {}, footer: '' }
    const bytes = await packBook({ sheets: [{ name: 'Looks', rows, cells: styled, ...plain }] })
    const file = await readPlannedFile({ name: 'looks.xlsx', bytes })
    if (isRefusal(file)) throw new Error(file.sentence)
    expect(sheet?.rows).toEqual(file.sheets[0]?.rows)
    office.book.deleteSheet(id)
  })

  test('has its merges also where there are more than Excel tells at once', async () => {
    const { id } = office.book.addSheet('Merged')
    const count = 701
    const trees = Array.from({ length: count * 3 }, (_, at) => [
      `T${String(Math.floor(at / 3))}`,
      'Elm',
      6,
      30,
      8
    ])
    fill(office, id, [headers.slice(0, 5), ...trees])
    for (let tree = 0; tree < count; tree++)
      office.book.mergeCells(id, { row: 1 + 3 * tree, column: 0, rows: 3, columns: 1 })
    office.book.selectAreas(id, [{ row: 0, column: 0, ...everything }])
    const { sheets, problems } = await read()
    expect(problems).toEqual([])
    const merges = [...(sheets[0]?.merges ?? [])].sort((a, b) => a.top - b.top)
    expect(merges).toHaveLength(count)
    expect(merges.slice(0, 2)).toEqual([
      { top: 1, left: 0, bottom: 3, right: 0 },
      { top: 4, left: 0, bottom: 6, right: 0 }
    ])
    expect(merges.every(({ top, bottom }) => bottom - top === 2)).toBe(true)
    office.book.deleteSheet(id)
  })

  test('rows too scattered to tell apart are only noticed', async () => {
    const { id } = office.book.addSheet('Scattered')
    fill(office, id, rows)
    for (const row of [1, 3]) office.book.hideRows(id, row, 1)
    const area = { row: 0, column: 0, rows: 5, columns: 7 }
    const lines = (mostPieces?: number) =>
      Excel.run((context) =>
        hiddenLines(context, context.workbook.worksheets.getItem('Scattered'), area, 'rows', mostPieces)
      )
    expect(await lines()).toEqual(new Set([1, 3]))
    expect(await lines(2)).toBeNull()
    office.book.deleteSheet(id)
  })
})

describe('whether the sheets are still the same', () => {
  test('they are, until a cell of any of them changes', async () => {
    const { id } = office.book.addSheet('More limbs')
    const headers = ['Tree', 'Limb', 'Limb dia (in)', 'Stem dia (in)', 'Origin (ft)', 'Tip (ft)', 'Last cut']
    fill(office, id, [headers, ['T1', 'Z', 2, 4, 8, 20, 46082]])
    office.book.setNumberFormats(id, { row: 1, column: 6, rows: 1, columns: 1 }, [['yyyy-mm-dd']])
    office.select({ row: 3, column: 3 })
    const { sheets } = await read()
    expect(sheets.map(({ name }) => name)).toEqual(['Trees', 'More limbs'])
    expect(sheets[1]?.rows[1]?.[6]).toBe('2026-03-01')
    expect(await sheetsUnchanged(sheets)).toBe(true)
    const cell = { row: 1, column: 6, rows: 1, columns: 1 }
    office.book.setValues(id, cell, [[46083]])
    expect(await sheetsUnchanged(sheets)).toBe(false)
    office.book.setValues(id, cell, [[46082]])
    expect(await sheetsUnchanged(sheets)).toBe(true)
    office.book.deleteSheet(id)
    expect(await sheetsUnchanged(sheets)).toBe(false)
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
