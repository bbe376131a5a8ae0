/** Selection and events through the unmodified Office client library. */
import { readAgain, watchChanges } from '../../src/excel/changes'
import { errorOf, startOffice, type OfficeInNode } from './officeInNode'

let office: OfficeInNode
let sheetId: string
const paneShown: boolean[] = []

beforeAll(async () => {
  office = await startOffice(undefined, { showPane: (shown) => paneShown.push(shown) })
  sheetId = office.book.activeSheet()
})

const cells = { row: 1, column: 2, rows: 3, columns: 1 }

/** Events pass through promises of the library. */
function soon(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0))
}

test('The selection is one range, or several areas', async () => {
  office.book.select(sheetId, cells)
  await Excel.run(async (context) => {
    const range = context.workbook.getSelectedRange().load('address')
    await context.sync()
    expect(range.address).toBe('Trees!C2:C4')
  })
  office.book.selectAreas(sheetId, [cells, { ...cells, column: 5 }])
  await Excel.run(async (context) => {
    const ranges = context.workbook.getSelectedRanges().load('address,areaCount,cellCount')
    const areas = ranges.areas.load('items/address')
    await context.sync()
    expect(ranges.address).toBe('Trees!C2:C4, Trees!F2:F4')
    expect([ranges.areaCount, ranges.cellCount]).toEqual([2, 6])
    expect(areas.items.map(({ address }) => address)).toEqual(['Trees!C2:C4', 'Trees!F2:F4'])
  })
  const error = await errorOf(
    Excel.run(async (context) => {
      context.workbook.getSelectedRange().load('address')
      await context.sync()
    })
  )
  expect(error?.code).toBe('InvalidSelection')
})

test('The workbook tells of each selection, until the handler is removed', async () => {
  let told = 0
  const handler = await Excel.run(async (context) => {
    const added = context.workbook.onSelectionChanged.add(() => {
      told += 1
      return Promise.resolve()
    })
    await context.sync()
    return added
  })
  office.book.select(sheetId, cells)
  office.book.select(sheetId, { ...cells, row: 5 })
  await soon()
  expect(told).toBe(2)
  await Excel.run(handler.context, async (context) => {
    handler.remove()
    await context.sync()
  })
  office.book.select(sheetId, cells)
  await soon()
  expect(told).toBe(2)
})

test('A sheet tells of its own selection, with the address', async () => {
  const told: string[] = []
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem('Trees').load('id')
    await context.sync()
    sheet.onSelectionChanged.add(({ address, worksheetId }) => {
      told.push(`${worksheetId} ${address}`)
      return Promise.resolve()
    })
    await context.sync()
  })
  const other = office.book.addSheet('Other').id
  office.book.select(other, cells)
  office.book.select(sheetId, cells)
  await soon()
  expect(told).toEqual([`${sheetId} C2:C4`])
})

test('A sheet tells of a change, with the cells that changed', async () => {
  const told: string[] = []
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem('Trees').load('id')
    await context.sync()
    sheet.onChanged.add(({ address }) => {
      told.push(address)
      return Promise.resolve()
    })
    await context.sync()
    sheet.getRange('B2:B3').values = [[1], [2]]
    await context.sync()
  })
  await soon()
  expect(told).toEqual(['B2:B3'])
})

test('Selecting a range through the client moves the selection', async () => {
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem('Trees')
    sheet.activate()
    sheet.getRange('D7').select()
    await context.sync()
  })
  expect(office.book.selection()).toEqual({
    sheetId,
    areas: [{ row: 6, column: 3, rows: 1, columns: 1 }]
  })
})

test('The add-in asks for its pane to be shown and hidden', async () => {
  await Office.addin.showAsTaskpane()
  await Office.addin.hide()
  expect(paneShown).toEqual([true, false])
})

/** Somebody types, and all that follows has happened. */
async function type(address: string, values: number[][]): Promise<void> {
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem('Trees').getRange(address).values = values
    await context.sync()
  })
  for (let turn = 0; turn < 20; turn++) await soon()
}

test('Each change of cells is told with its sheet and its place, until it is no longer wanted', async () => {
  const told: unknown[] = []
  const stop = await watchChanges((change) => told.push(change))
  await type('D3:E3', [[5, 6]])
  expect(told).toEqual([{ sheet: 'Trees', area: { row: 2, column: 3, rows: 1, columns: 2 } }])
  await stop()
  await type('D3', [[7]])
  expect(told).toHaveLength(1)
})

test('Cells are read again where they stood; a sheet that is called otherwise is not there', async () => {
  const cells = { sheet: 'Trees', rows: [[null, null]], top: 2, left: 3 }
  expect(await readAgain(cells)).toEqual({ ...cells, rows: [[7, 6]] })
  expect(await readAgain({ ...cells, sheet: 'Trees of last year' })).toBeNull()
})
