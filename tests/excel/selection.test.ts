import { describeSelection, watchSelection, type SelectionSummary } from '../../src/excel/selection'
import { sampleInventory } from '../../src/file/sampleInventory'
import { fill, startWith, type InventoryBook } from './inventorySheet'

let office: InventoryBook
const rows = sampleInventory.length
const columns = sampleInventory[0]!.length

beforeAll(async () => {
  office = await startWith()
})

describe('what a selection would give', () => {
  test('a block as it is selected', async () => {
    office.select({ row: 0, column: 0, rows: 7, columns: 5 })
    expect(await describeSelection()).toEqual({
      usable: true,
      address: 'Trees!A1:E7',
      sheet: 'Trees',
      rows: 7,
      columns: 5,
      sentence: '',
      problem: null,
      cells: { sheet: 'Trees', row: 0, column: 0, rows: 7, columns: 5 }
    })
  })

  test('whole columns are cut to what is filled, and it says so', async () => {
    office.select({ rows: 1048576, columns: 4 })
    const summary = await describeSelection()
    expect(summary).toMatchObject({ usable: true, rows, columns: 4 })
    expect(summary.sentence).toBe(
      `Only the filled part of the selection, Trees!A1:D${String(rows)}, is taken.`
    )
  })

  test('the whole sheet is cut to the inventory', async () => {
    office.select({ rows: 1048576, columns: 16384 })
    expect(await describeSelection()).toMatchObject({ usable: true, rows, columns })
  })

  test('one cell in the data is widened to the block around it, and it says so', async () => {
    office.select({ row: 20, column: 3 })
    const summary = await describeSelection()
    expect(summary).toMatchObject({ usable: true, rows, columns, address: `Trees!A1:V${String(rows)}` })
    expect(summary.sentence).toMatch(/^One cell was selected, so the block of cells around it/)
    expect(summary.sentence).not.toMatch(/There is more/)
  })

  test('one cell far from the data is no inventory', async () => {
    office.select({ row: 500, column: 60 })
    const summary = await describeSelection()
    expect(summary).toMatchObject({ usable: false, rows: 0 })
    expect(summary.problem!.code).toBe('empty-selection')
    expect(summary.sentence).toMatch(/Select the inventory with its header row/)
  })

  test('several areas are refused with their number', async () => {
    const area = { row: 0, column: 0, rows: 3, columns: 2 }
    office.book.selectAreas(office.sheetId, [area, { ...area, row: 10 }])
    const summary = await describeSelection()
    expect(summary.usable).toBe(false)
    expect(summary.sentence).toMatch(/2 separate areas.*Select one block/)
  })

  test('a chart is no block of cells', async () => {
    office.book.selectAreas(office.sheetId, [])
    expect((await describeSelection()).problem!.code).toBe('not-cells')
  })

  test('an empty sheet is no inventory', async () => {
    const { id } = office.book.addSheet('Empty')
    office.book.selectAreas(id, [{ row: 0, column: 0, rows: 5, columns: 5 }])
    expect((await describeSelection()).problem!.code).toBe('empty-selection')
  })

  test('a sheet of ours is told from an inventory', async () => {
    const { id } = office.book.addSheet('Cut plan')
    office.book.setValues(id, { row: 0, column: 0, rows: 1, columns: 1 }, [['Cut plan']])
    office.book.addName({ name: 'Limbwright_cut_plan', formula: "='Cut plan'!$A$1", visible: false })
    office.book.selectAreas(id, [{ row: 0, column: 0, rows: 1, columns: 1 }])
    const summary = await describeSelection()
    expect(summary.problem!.code).toBe('own-sheet')
    expect(summary.cells).toMatchObject({ sheet: 'Cut plan', row: 0 })
    office.book.deleteName('Limbwright_cut_plan')
  })

  test('while a cell is edited it waits instead of failing', async () => {
    office.select({ rows: 3, columns: 3 })
    office.book.faults.cellEditRequests = 3
    expect((await describeSelection()).usable).toBe(true)
  })
})

describe('blank rows in the inventory', () => {
  const group = (tree: string) => [
    [tree, 'A', 4],
    [tree, 'B', 3]
  ]
  const headers = ['Tree', 'Limb', 'Limb dia (in)']

  test('a cell above them takes its block and says that there is more', async () => {
    const { id } = office.book.addSheet('Grouped')
    fill(office, id, [headers, ...group('T1'), [null, null, null], ...group('T2')])
    office.book.selectAreas(id, [{ row: 1, column: 0, rows: 1, columns: 1 }])
    const summary = await describeSelection()
    expect(summary.address).toBe('Grouped!A1:C3')
    expect(summary.sentence).toMatch(/There is more on this sheet/)
  })

  test('a cell below them takes everything from the headers on', async () => {
    const { id } = office.book.addSheet('Grouped again')
    fill(office, id, [headers, ...group('T1'), [null, null, null], ...group('T2')], 2, 1)
    office.book.selectAreas(id, [{ row: 7, column: 2, rows: 1, columns: 1 }])
    expect((await describeSelection()).address).toBe("'Grouped again'!B3:D8")
  })
})

describe('following the selection', () => {
  const next = async (count: number, seen: SelectionSummary[]) => {
    for (let tries = 0; seen.length < count && tries < 200; tries++)
      await new Promise((resolve) => setTimeout(resolve, 5))
  }

  test('tells of each new selection until it is stopped', async () => {
    const seen: SelectionSummary[] = []
    const stop = await watchSelection((summary) => seen.push(summary))
    office.select({ rows: 4, columns: 2 })
    await next(1, seen)
    office.select({ rows: 6, columns: 2 })
    await next(2, seen)
    expect(seen.at(-1)).toMatchObject({ address: 'Trees!A1:B6' })
    await stop()
    const before = seen.length
    office.select({ rows: 8, columns: 2 })
    await new Promise((resolve) => setTimeout(resolve, 50))
    expect(seen).toHaveLength(before)
  })

  test('a run through the sheet is gathered, and the last selection is told', async () => {
    const seen: SelectionSummary[] = []
    const stop = await watchSelection((summary) => seen.push(summary))
    for (let last = 2; last <= 30; last++) office.select({ rows: last, columns: 2 })
    for (let tries = 0; seen.at(-1)?.rows !== 30 && tries < 200; tries++)
      await new Promise((resolve) => setTimeout(resolve, 5))
    expect(seen.at(-1)!.rows).toBe(30)
    expect(seen.length).toBeLessThan(29)
    await stop()
  })
})
