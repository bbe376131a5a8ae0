/** Writing through the unmodified Office client library. */
import { errorOf, startOffice, type OfficeInNode } from './officeInNode'

let office: OfficeInNode
let sheetId: string

beforeAll(async () => {
  office = await startOffice()
  sheetId = office.book.activeSheet()
})

/** A sheet of its own for each test. */
async function onNewSheet<T>(
  name: string,
  work: (sheet: Excel.Worksheet, context: Excel.RequestContext) => Promise<T>
): Promise<{ id: string; value: T }> {
  return Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.add(name)
    sheet.load('id')
    await context.sync()
    const value = await work(sheet, context)
    await context.sync()
    return { id: sheet.id, value }
  })
}

const square = { row: 0, column: 0, rows: 2, columns: 2 }

test('Values are written as if typed', async () => {
  const { id } = await onNewSheet('Typed', (sheet) => {
    sheet.getRange('A1:B2').values = [
      ['12.5', "'12.5"],
      ['=A1*2', 'oak']
    ]
    return Promise.resolve()
  })
  expect(office.book.values(id, square)).toEqual([
    [12.5, '12.5'],
    ['', 'oak']
  ])
  expect(office.book.formulas(id, square)[1]).toEqual(['=A1*2', 'oak'])
})

test('Null leaves a cell as it is, and an empty text empties it', async () => {
  const { id } = await onNewSheet('Gaps', async (sheet, context) => {
    sheet.getRange('A1:B2').values = [
      [1, 2],
      [3, 4]
    ]
    await context.sync()
    sheet.getRange('A1:B2').values = [
      [null, 5],
      ['', null]
    ]
  })
  expect(office.book.values(id, square)).toEqual([
    [1, 5],
    [null, 4]
  ])
})

test('One value alone fills the range', async () => {
  const { id } = await onNewSheet('Fill', (sheet) => {
    sheet.getRange('A1:B2').values = 7 as never
    sheet.getRange('A1:B2').numberFormat = '0.0' as never
    return Promise.resolve()
  })
  expect(office.book.texts(id, square)).toEqual([
    ['7.0', '7.0'],
    ['7.0', '7.0']
  ])
})

test('A block of another shape than the range is refused', async () => {
  const error = await errorOf(
    onNewSheet('Shape', (sheet) => {
      sheet.getRange('A1:B2').values = [[1, 2]]
      return Promise.resolve()
    })
  )
  expect(error?.code).toBe('InvalidArgument')
  expect(error?.message).toContain('2 by 2')
})

test('More than 1,500 cells travel in pieces and land whole', async () => {
  const rows = Array.from({ length: 1201 }, (_, row) => [row, `limb ${row}`, row / 8, row % 2 === 0])
  const { id } = await onNewSheet('Many', (sheet) => {
    sheet.getRangeByIndexes(3, 1, rows.length, 4).values = rows
    return Promise.resolve()
  })
  expect(office.book.values(id, { row: 3, column: 1, rows: rows.length, columns: 4 })).toEqual(rows)
  expect(office.book.usedArea(id, true)).toEqual({ row: 3, column: 1, rows: 1201, columns: 4 })
})

test('Looks are set and read back', async () => {
  await onNewSheet('Looks', async (sheet, context) => {
    const range = sheet.getRange('A1:B2')
    range.format.font.bold = true
    range.format.font.color = '#1a2b3c'
    range.format.fill.color = 'orange'
    range.format.horizontalAlignment = 'Center'
    range.format.wrapText = true
    range.format.columnWidth = 90
    range.format.borders.getItem('EdgeBottom').style = 'Continuous'
    range.format.borders.getItem('EdgeBottom').color = '#445566'
    sheet.getRange('A1').format.font.italic = true
    range.load('format/font/bold,format/font/italic,format/font/color,format/fill/color,format/wrapText')
    range.load('format/columnWidth,format/horizontalAlignment')
    const edge = range.format.borders.getItem('EdgeBottom').load('style,color')
    await context.sync()
    expect(range.format.toJSON()).toMatchObject({
      columnWidth: 90,
      horizontalAlignment: 'Center',
      wrapText: true,
      fill: { color: '#FFA500' },
      font: { bold: true, italic: null, color: '#1A2B3C' }
    })
    expect([edge.style, edge.color]).toEqual(['Continuous', '#445566'])
  })
})

test('A table is made, named and styled, and its headers become unique texts', async () => {
  const { id } = await onNewSheet('Table', async (sheet, context) => {
    sheet.getRange('A1:C2').values = [
      ['limb', 'limb', ''],
      ['L1', 1, 2]
    ]
    const table = sheet.tables.add('A1:C2', true)
    table.name = 'CutPlan'
    table.style = 'TableStyleLight1'
    table.showFilterButton = false
    table.showBandedRows = false
    table.load('name,style,showFilterButton')
    const range = table.getRange().load('address,values')
    await context.sync()
    expect(table.name).toBe('CutPlan')
    expect(range.address).toBe('Table!A1:C2')
    expect(range.values[0]).toEqual(['limb', 'limb2', 'Column3'])
  })
  expect(office.book.tables()).toMatchObject([
    { name: 'CutPlan', sheetId: id, style: 'TableStyleLight1', showFilter: false, banded: false }
  ])
  const taken = await errorOf(
    Excel.run(async (context) => {
      context.workbook.worksheets.getItem('Table').tables.add('C1:D4', true)
      await context.sync()
    })
  )
  expect(taken?.code).toBe('InvalidOperation')
})

test('Names are added for a range and for a formula, hidden, found and deleted', async () => {
  await onNewSheet('Cut plan', async (sheet, context) => {
    const { names } = context.workbook
    names.add('LIMB_plan', sheet.getRange('A1:B2')).visible = false
    names.add('LIMB_version', '="0.1.0"')
    await context.sync()
    const found = names.getItemOrNullObject('limb_PLAN').load('formula,visible')
    const range = found.getRangeOrNullObject().load('address')
    const noRange = names.getItem('LIMB_version').getRangeOrNullObject()
    await context.sync()
    expect(found.formula).toBe("='Cut plan'!$A$1:$B$2")
    expect(found.visible).toBe(false)
    expect(range.address).toBe("'Cut plan'!A1:B2")
    expect(noRange.isNullObject).toBe(true)
    found.delete()
  })
  expect(office.book.names().map(({ name }) => name)).toEqual(['LIMB_version'])
})

test('Panes are frozen, the page is set up, the tab is colored', async () => {
  const { id } = await onNewSheet('Page', async (sheet, context) => {
    sheet.freezePanes.freezeAt(sheet.getRange('A1:B3'))
    sheet.tabColor = '#336633'
    sheet.showGridlines = false
    sheet.pageLayout.orientation = 'Landscape'
    sheet.pageLayout.paperSize = 'A4'
    sheet.pageLayout.zoom = { horizontalFitToPages: 1, verticalFitToPages: 0 }
    sheet.pageLayout.centerHorizontally = true
    sheet.pageLayout.firstPageNumber = 1
    sheet.pageLayout.setPrintTitleRows('$3:$3')
    sheet.pageLayout.setPrintArea('A1:F40')
    sheet.pageLayout.setPrintMargins('Inches', { left: 0.5 })
    sheet.pageLayout.headersFooters.defaultForAllPages.leftFooter = 'Sample'
    sheet.load('showGridlines,tabColor')
    await context.sync()
    expect([sheet.showGridlines, sheet.tabColor]).toEqual([false, '#336633'])
  })
  expect(office.book.frozen(id)).toEqual({ rows: 3, columns: 2 })
  expect([office.book.tabColor(id), office.book.gridlines(id)]).toEqual(['#336633', false])
  expect(office.book.page(id)).toMatchObject({
    orientation: 'Landscape',
    paperSize: 'A4',
    fitToWidth: 1,
    fitToHeight: 0,
    titleRows: '$3:$3',
    printArea: 'A1:F40',
    firstPageNumber: 1,
    centerHorizontally: true,
    footerLeft: 'Sample',
    margins: { left: 36, right: 50.4 }
  })
})

test('A scale takes the place of fitting to pages', async () => {
  const { id } = await onNewSheet('Scale', async (sheet, context) => {
    sheet.pageLayout.zoom = { horizontalFitToPages: 1 }
    sheet.pageLayout.zoom = { scale: 85 }
    const layout = sheet.pageLayout.load('zoom')
    await context.sync()
    expect(layout.zoom).toMatchObject({ scale: 85, horizontalFitToPages: null })
  })
  expect(office.book.page(id)).toMatchObject({ scale: 85, fitToWidth: null, fitToHeight: null })
  await expect(
    onNewSheet('Too small', async (sheet, context) => {
      sheet.pageLayout.zoom = { scale: 5 }
      await context.sync()
    })
  ).rejects.toThrow(/scale/)
})

test('A validation keeps its rule and what it says', async () => {
  const rule = { list: { inCellDropDown: true, source: 'retain,reduce,remove' } }
  await onNewSheet('Valid', async (sheet, context) => {
    const { dataValidation } = sheet.getRange('A2:A9')
    dataValidation.rule = rule
    dataValidation.errorAlert = { title: 'Cut', message: 'Choose one.', showAlert: true, style: 'Stop' }
    const one = sheet.getRange('A4').dataValidation.load('rule,type,errorAlert')
    await context.sync()
    expect(one.rule).toEqual(rule)
    expect(one.type).toBe('List')
    expect(one.errorAlert.message).toBe('Choose one.')
    dataValidation.clear()
    const none = sheet.getRange('A4').dataValidation.load('type')
    await context.sync()
    expect(none.type).toBe('None')
  })
})

test('A conditional format keeps its formula and its look; the newest comes first', async () => {
  const { id } = await onNewSheet('Following', async (sheet, context) => {
    const range = sheet.getRange('B3:B9')
    const older = range.conditionalFormats.add('Custom')
    older.custom.rule.formula = '=$B3=$C3'
    older.custom.format.font.italic = true
    older.custom.format.font.color = '#7a3e16'
    await context.sync()
    // The object holds after a sync, when the client calls it by its id.
    older.custom.format.fill.color = '#f6dfc0'
    const newer = sheet.getRange('B3:C3').conditionalFormats.add('Custom')
    newer.custom.rule.formula = '=B3>1'
    newer.custom.format.font.bold = true
    await context.sync()
    const found = sheet.getRange('B3:B4').conditionalFormats.load('items/id,items/type')
    const other = sheet.getRange('B5').conditionalFormats.load('items/id')
    await context.sync()
    expect(found.items.map(({ type }) => type)).toEqual(['Custom', 'Custom'])
    expect(other.items).toHaveLength(1)
    const { rule, format } = found.items[0]!.custom
    rule.load('formula')
    format.font.load('bold,italic,color')
    await context.sync()
    expect(rule.formula).toBe('=B3>1')
    expect([format.font.bold, format.font.italic, format.font.color]).toEqual([true, null, null])
  })
  expect(
    office.book.conditionalFormats(id).map(({ areas, formula, look }) => [areas, formula, look])
  ).toEqual([
    [[{ row: 2, column: 1, rows: 1, columns: 2 }], '=B3>1', { bold: true }],
    [
      [{ row: 2, column: 1, rows: 7, columns: 1 }],
      '=$B3=$C3',
      { italic: true, color: '#7A3E16', fill: '#F6DFC0' }
    ]
  ])
})

test('What a conditional format is not used for is refused by name', async () => {
  const refusal = (work: (format: Excel.ConditionalFormatCollection) => void) =>
    errorOf(
      Excel.run(async (context) => {
        work(context.workbook.worksheets.getItem('Trees').getRange('A1:A3').conditionalFormats)
        await context.sync()
      })
    )
  const kind = await refusal((formats) => formats.add('ColorScale'))
  expect(kind?.message).toContain("ConditionalFormatCollection.add('ColorScale')")
  const part = await refusal((formats) => (formats.add('Custom').custom.format.font.underline = 'Single'))
  expect(part?.message).toContain('ConditionalRangeFont.underline')
  const local = await refusal((formats) => (formats.add('Custom').custom.rule.formulaLocal = '=A1=1'))
  expect(local?.message).toContain('ConditionalFormatRule.formulaLocal')
  const text = await refusal((formats) => (formats.add('Custom').custom.rule.formula = 'A1=1'))
  expect(text?.code).toBe('InvalidArgument')
  office.book.faults.protectedSheets.add(sheetId)
  const shut = await refusal((formats) => formats.add('Custom'))
  office.book.faults.protectedSheets.clear()
  expect(shut?.code).toBe('AccessDenied')
})

test('Settings are kept in the workbook', async () => {
  await Excel.run(async (context) => {
    const { settings } = context.workbook
    settings.add('limbwright.columns', { dbh: 'C', unit: 'in' })
    await context.sync()
    const kept = settings.getItemOrNullObject('limbwright.columns').load('value')
    const none = settings.getItemOrNullObject('limbwright.rows')
    await context.sync()
    expect(kept.value).toEqual({ dbh: 'C', unit: 'in' })
    expect(none.isNullObject).toBe(true)
    kept.delete()
    await context.sync()
  })
  expect(office.book.settings()).toEqual({})
})

test('A picture keeps its place and its alternative text', async () => {
  const png = 'iVBORw0KGgoAAAANSUhEUg=='
  const { id } = await onNewSheet('Picture', (sheet) => {
    const shape = sheet.shapes.addImage(png)
    shape.left = 12
    shape.height = 240
    shape.altTextDescription = 'Tree before and after'
    return Promise.resolve()
  })
  expect(office.book.pictures(id)).toMatchObject([
    { image: png, left: 12, height: 240, alt: 'Tree before and after' }
  ])
})

test('A picture keeps its proportion until that is unlocked, as in Excel', async () => {
  const { id } = await onNewSheet('Proportion', (sheet) => {
    const [locked, free] = [1, 2].map(() => sheet.shapes.addImage('iVBORw0KGgoAAAANSUhEUg=='))
    for (const shape of [locked!, free!]) {
      if (shape === free) shape.lockAspectRatio = false
      shape.width = 300
      shape.height = 50
    }
    free!.placement = 'OneCell'
    return Promise.resolve()
  })
  const [locked, free] = office.book.pictures(id)
  expect([locked!.width, locked!.height]).toEqual([50, 50])
  expect([free!.width, free!.height]).toEqual([300, 50])
  expect(free!.placement).toBe('OneCell')
})

test('A range says where it stands and how large it is, in points', async () => {
  const { value } = await onNewSheet('Extent', async (sheet, context) => {
    sheet.getRange('B:B').format.columnWidth = 100
    sheet.getRange('2:3').format.rowHeight = 40
    const range = sheet.getRange('C3:C4').load('left,top,width,height')
    await context.sync()
    return [range.left, range.top, range.width, range.height]
  })
  expect(value).toEqual([48 + 100, 15 + 40, 48, 40 + 15])
})

test('A sheet cannot take a name that is taken or that Excel forbids', async () => {
  const taken = await errorOf(onNewSheet('TREES', () => Promise.resolve()))
  expect(taken?.code).toBe('ItemAlreadyExists')
  const forbidden = await errorOf(onNewSheet('Cut/plan', () => Promise.resolve()))
  expect(forbidden?.code).toBe('InvalidArgument')
})

test('A deleted sheet is gone, and a range on it says so', async () => {
  const error = await errorOf(
    onNewSheet('Gone', async (sheet, context) => {
      const range = sheet.getRange('A1')
      range.load('address')
      await context.sync()
      sheet.delete()
      range.load('address')
      await context.sync()
    })
  )
  expect(error?.code).toBe('ItemNotFound')
  expect(office.book.sheets().map(({ name }) => name)).not.toContain('Gone')
})

test('Actions before the one that fails have taken effect', async () => {
  await errorOf(
    Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem('Trees')
      sheet.getRange('A1').values = [['done']]
      sheet.getRange('no such name').values = [['never']]
      await context.sync()
    })
  )
  expect(office.book.values(sheetId, { row: 0, column: 0, rows: 1, columns: 1 })).toEqual([['done']])
})

test('A name follows its sheet when the sheet is renamed, and is lost with it', async () => {
  await onNewSheet('Cut plan (2)', async (sheet, context) => {
    const name = context.workbook.names.add('LIMB_second', sheet.getRange('A1'))
    sheet.name = 'Second'
    name.load('formula')
    await context.sync()
    expect(name.formula).toBe('=Second!$A$1')
    sheet.delete()
    name.load('formula')
    const range = name.getRangeOrNullObject()
    await context.sync()
    expect(name.formula).toBe('=#REF!$A$1')
    expect(range.isNullObject).toBe(true)
  })
})
