/** Excel's faults, raised on demand by the book in memory, as they arrive through the unmodified client library. */
import { errorOf, startOffice, type OfficeInNode } from './officeInNode'

let office: OfficeInNode
let sheetId: string

beforeAll(async () => {
  office = await startOffice()
  sheetId = office.book.activeSheet()
})

function write(options: Excel.RunOptions = {}) {
  return Excel.run(options, async (context) => {
    context.workbook.worksheets.getItem('Trees').getRange('A1').values = [['oak']]
    await context.sync()
  })
}

function read(address: string) {
  return Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem('Trees').getRange(address).load('values')
    await context.sync()
    return range.values as unknown[][]
  })
}

test('While a cell is edited a request is refused, and the next one after it is not', async () => {
  office.book.faults.cellEditRequests = 1
  expect((await errorOf(write()))?.code).toBe('InvalidOperationInCellEditMode')
  expect(await errorOf(write())).toBeUndefined()
})

test('A request that waits for the end of editing goes through', async () => {
  office.book.faults.cellEditRequests = 5
  expect(await errorOf(write({ delayForCellEdit: true }))).toBeUndefined()
  expect(office.book.faults.cellEditRequests).toBe(0)
})

test('A protected sheet can be read and not written', async () => {
  office.book.faults.protectedSheets.add(sheetId)
  const error = await errorOf(write())
  expect(error?.code).toBe('AccessDenied')
  expect(error?.message).toBe('The sheet "Trees" is protected.')
  expect(await read('A1')).toEqual([['oak']])
  await Excel.run(async (context) => {
    const { protection } = context.workbook.worksheets.getItem('Trees').load('protection/protected')
    await context.sync()
    expect(protection.protected).toBe(true)
  })
  office.book.faults.protectedSheets.clear()
})

test('A protected workbook takes no new sheet', async () => {
  office.book.faults.protectedWorkbook = true
  const error = await errorOf(
    Excel.run(async (context) => {
      context.workbook.worksheets.add('Cut plan')
      await context.sync()
    })
  )
  expect(error?.code).toBe('AccessDenied')
  office.book.faults.protectedWorkbook = false
})

test('An answer of too many cells is refused, and the same range in pieces is not', async () => {
  office.book.faults.mostResponseCells = 10
  expect((await errorOf(read('A1:B10')))?.code).toBe('ResponsePayloadSizeLimitExceeded')
  expect(await read('A1:B5')).toHaveLength(5)
  expect(await read('A6:B10')).toHaveLength(5)
  office.book.faults.mostResponseCells = Infinity
})

test('A request that is too long is refused', async () => {
  office.book.faults.mostRequestCharacters = 5000
  const error = await errorOf(
    Excel.run(async (context) => {
      const long = 'x'.repeat(6000)
      context.workbook.worksheets.getItem('Trees').getRange('A1').values = [[long]]
      await context.sync()
    })
  )
  expect(error?.code).toBe('RequestPayloadSizeLimitExceeded')
  office.book.faults.mostRequestCharacters = Infinity
})

test('A co-author changes the sheet between two requests', async () => {
  office.book.setValues(sheetId, { row: 0, column: 3, rows: 1, columns: 1 }, [[1]])
  const first = office.host.requests() + 1
  office.book.faults.beforeRequest = (number) => {
    if (number === first + 1)
      office.book.setValues(sheetId, { row: 0, column: 3, rows: 1, columns: 1 }, [[2]])
  }
  await Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem('Trees').getRange('D1').load('values')
    await context.sync()
    expect(range.values).toEqual([[1]])
    range.load('values')
    await context.sync()
    expect(range.values).toEqual([[2]])
  })
  office.book.faults.beforeRequest = null
})

test('A failure without a reason arrives as GeneralException', async () => {
  office.book.faults.failingRequests = 1
  expect((await errorOf(write()))?.code).toBe('GeneralException')
  expect(await errorOf(write())).toBeUndefined()
})

test('Merged cells are told, and keep only their first value', async () => {
  office.book.mergeCells(sheetId, { row: 4, column: 0, rows: 1, columns: 3 })
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem('Trees')
    sheet.getRange('A5:C5').values = [['oak', 'elm', 'ash']]
    const range = sheet.getRange('A5:C6').load('values')
    const merged = sheet.getRange('A1:C9').getMergedAreasOrNullObject().load('address,areaCount')
    const none = sheet.getRange('A1:C4').getMergedAreasOrNullObject()
    await context.sync()
    expect(range.values[0]).toEqual(['oak', '', ''])
    expect([merged.address, merged.areaCount]).toEqual(['Trees!A5:C5', 1])
    expect(none.isNullObject).toBe(true)
  })
})

test('Hidden rows are told', async () => {
  office.book.setValues(sheetId, { row: 9, column: 0, rows: 1, columns: 1 }, [['last']])
  office.book.hideRows(sheetId, 6, 2)
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem('Trees')
    const mixed = sheet.getRange('A1:A10').load('rowHidden')
    const hidden = sheet.getRange('A7:A8').load('rowHidden')
    const shown = sheet.getRange('A1:A3').load('rowHidden')
    await context.sync()
    expect([mixed.rowHidden, hidden.rowHidden, shown.rowHidden]).toEqual([null, true, false])
  })
})

test('A formula cell holds what the test calculates for it', async () => {
  office.book.calculate = (formula) => (formula === '=SUM(A1:A9)' ? 42 : '#NAME?')
  await Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem('Trees').getRange('E1:F1')
    range.formulas = [['=SUM(A1:A9)', '=OAK()']]
    range.load('values,formulas,valueTypes')
    await context.sync()
    expect(range.values).toEqual([[42, '#NAME?']])
    expect(range.formulas).toEqual([['=SUM(A1:A9)', '=OAK()']])
    expect(range.valueTypes).toEqual([['Double', 'Error']])
  })
  office.book.calculate = null
})
