/** Reading through the unmodified Office client library. */
import { errorOf, startOffice, type OfficeInNode } from './officeInNode'

let office: OfficeInNode
let sheetId: string

beforeAll(async () => {
  office = await startOffice()
  sheetId = office.book.activeSheet()
  office.book.setValues(sheetId, { row: 1, column: 1, rows: 3, columns: 3 }, [
    ['tree', 'dbh (in)', 'live'],
    ['T1', 12.5, true],
    ["'007", '', '#N/A']
  ])
})

test('The library starts as Excel on Windows and knows the API up to 1.14', async () => {
  expect(await Office.onReady()).toMatchObject({ host: 'Excel', platform: 'PC' })
  expect(Office.context.requirements.isSetSupported('ExcelApi', '1.14')).toBe(true)
  expect(Office.context.requirements.isSetSupported('ExcelApi', '1.15')).toBe(false)
})

test('A range gives its values, address, place and size', async () => {
  await Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem('trees').getRange('B2:D4')
    range.load('address,values,valueTypes,text,rowIndex,columnIndex,rowCount,columnCount,cellCount')
    await context.sync()
    expect(range.address).toBe('Trees!B2:D4')
    expect(range.values).toEqual([
      ['tree', 'dbh (in)', 'live'],
      ['T1', 12.5, true],
      ['007', '', '#N/A']
    ])
    expect(range.valueTypes[2]).toEqual(['String', 'Empty', 'Error'])
    expect(range.valueTypes[1]).toEqual(['String', 'Double', 'Boolean'])
    expect(range.text[1]).toEqual(['T1', '12.5', 'TRUE'])
    expect([range.rowIndex, range.columnIndex, range.rowCount, range.columnCount]).toEqual([1, 1, 3, 3])
    expect(range.cellCount).toBe(9)
  })
})

test('The used range of a sheet and of whole columns ends with the last value', async () => {
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getActiveWorksheet()
    const all = sheet.getUsedRange(true).load('address')
    const columns = sheet.getRange('C:D').getUsedRangeOrNullObject(true).load('address')
    const beyond = sheet.getRange('F:G').getUsedRangeOrNullObject(true).load('address')
    await context.sync()
    expect(all.address).toBe('Trees!B2:D4')
    expect(columns.address).toBe('Trees!C2:D4')
    expect(beyond.isNullObject).toBe(true)
  })
})

test('Ranges are taken from ranges', async () => {
  await Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem('Trees').getRange('B2:D4')
    const ranges = [
      range.getCell(1, 1),
      range.getRow(2),
      range.getColumn(0),
      range.getResizedRange(1, -1),
      range.getOffsetRange(2, 0),
      range.getIntersection('C1:C9'),
      range.getEntireColumn(),
      range.getEntireRow()
    ].map((part) => part.load('address'))
    await context.sync()
    expect(ranges.map(({ address }) => address)).toEqual([
      'Trees!C3',
      'Trees!B4:D4',
      'Trees!B2:B4',
      'Trees!B2:C5',
      'Trees!B4:D6',
      'Trees!C2:C4',
      'Trees!B:D',
      'Trees!2:4'
    ])
  })
})

test('Objects that are not there are null objects, and so is what they would hold', async () => {
  await Excel.run(async (context) => {
    const { worksheets, names, tables } = context.workbook
    const sheet = worksheets.getItemOrNullObject('Felling')
    const cell = sheet.getRange('A1').load('values')
    const name = names.getItemOrNullObject('Felling')
    const table = tables.getItemOrNullObject('Felling')
    const shared = worksheets.getItem('Trees').getRange('A1').getIntersectionOrNullObject('B2')
    await context.sync()
    for (const object of [sheet, cell, name, table, shared]) expect(object.isNullObject).toBe(true)
  })
})

test('A missing sheet is an OfficeExtension.Error with its code', async () => {
  const error = await errorOf(
    Excel.run(async (context) => {
      context.workbook.worksheets.getItem('Felling').load('name')
      await context.sync()
    })
  )
  expect(error?.code).toBe('ItemNotFound')
  expect(error?.message).toBe('There is no sheet "Felling" in this workbook.')
})

test('A member that the add-in is not meant to use is refused by name', async () => {
  const error = await errorOf(
    Excel.run(async (context) => {
      context.workbook.worksheets.getItem('Trees').getRange('A1').insert('Down')
      await context.sync()
    })
  )
  expect(error?.code).toBe('NotImplemented')
  expect(error?.message).toBe("Limbwright's test host does not answer Range.insert")
  expect(error?.debugInfo.errorLocation).toBe('Range.insert')
  const property = await errorOf(
    Excel.run(async (context) => {
      context.workbook.worksheets.getItem('Trees').getRange('A1').load('formulasR1C1')
      await context.sync()
    })
  )
  expect(property?.message).toBe("Limbwright's test host does not answer Range.formulasR1C1")
})

test('A range kept over several requests stays usable', async () => {
  await Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem('Trees').getRange('C3')
    await context.sync()
    range.load('values')
    await context.sync()
    expect(range.values).toEqual([[12.5]])
  })
})

test('Collections are read with the properties of their items', async () => {
  await Excel.run(async (context) => {
    const sheets = context.workbook.worksheets.load('items/name,items/visibility')
    const count = sheets.getCount()
    await context.sync()
    expect(sheets.items.map(({ name, visibility }) => [name, visibility])).toEqual([['Trees', 'Visible']])
    expect(count.value).toBe(1)
    const range = sheets.items[0]!.getRange('C3').load('values')
    await context.sync()
    expect(range.values).toEqual([[12.5]])
  })
})

test('A load of a part reads through it', async () => {
  await Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem('Trees').getRange('C3')
    range.load('format/font/bold,worksheet/name')
    await context.sync()
    expect(range.format.font.bold).toBe(false)
    expect(range.worksheet.name).toBe('Trees')
  })
})

test('A read of more than five million cells gives null, as Excel does', async () => {
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem('Trees').getRange().load('values,address')
    await context.sync()
    expect(sheet.values).toBeNull()
    expect(sheet.address).toBe('Trees!1:1048576')
  })
})

test('A sheet name that a formula would quote is quoted in addresses', async () => {
  const id = office.book.addSheet("Oak's plan").id
  await Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem("Oak's plan").getRange('$A$1:B2').load('address')
    await context.sync()
    expect(range.address).toBe("'Oak''s plan'!A1:B2")
  })
  office.book.deleteSheet(id)
})
