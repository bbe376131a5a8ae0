/** Charts through the unmodified Office client library. */
import { errorOf, startOffice, type OfficeInNode } from './officeInNode'

let office: OfficeInNode
let sheetId: string

beforeAll(async () => {
  office = await startOffice()
  sheetId = office.book.activeSheet()
})

afterEach(() => {
  for (const { id } of office.book.charts(sheetId)) office.book.deleteChart(id)
})

function onSheet<T>(work: (sheet: Excel.Worksheet, context: Excel.RequestContext) => T): Promise<void> {
  return Excel.run(async (context) => {
    await work(context.workbook.worksheets.getItem('Trees'), context)
    await context.sync()
  })
}

const column = (index: number) => ({ row: 1, column: index, rows: 4, columns: 1 })

test('a chart of columns with a line over them is made, placed and named', async () => {
  await onSheet(async (sheet, context) => {
    const chart = sheet.charts.add('ColumnClustered', sheet.getRange('B2:B5'), 'Columns')
    chart.name = 'Dose'
    chart.title.text = 'Dose against allowance'
    chart.title.format.font.size = 13
    chart.title.format.font.bold = true
    chart.format.font.size = 11
    chart.setPosition('D2', 'H16')
    chart.legend.position = 'Bottom'
    chart.axes.valueAxis.title.text = 'Share of the foliage'
    chart.axes.valueAxis.numberFormat = '0%'
    chart.axes.valueAxis.minimum = 0
    const first = chart.series.getItemAt(0)
    first.name = 'Dose'
    first.setXAxisValues(sheet.getRange('A2:A5'))
    first.format.fill.setSolidColor('#2c5a41')
    first.gapWidth = 60
    const second = chart.series.add('Allowance')
    second.setValues(sheet.getRange('C2:C5'))
    second.setXAxisValues(sheet.getRange('A2:A5'))
    second.chartType = 'LineMarkers'
    second.format.line.color = '#7a3e16'
    second.format.line.lineStyle = 'Dash'
    second.markerStyle = 'Square'
    await context.sync()
    sheet.charts.load('items/name,count')
    chart.series.load('items/name,items/chartType')
    await context.sync()
    expect(sheet.charts.items.map(({ name }) => name)).toEqual(['Dose'])
    expect(chart.series.items.map(({ name, chartType }) => [name, chartType])).toEqual([
      ['Dose', 'ColumnClustered'],
      ['Allowance', 'LineMarkers']
    ])
  })
  const [chart] = office.book.charts(sheetId)
  expect(chart).toMatchObject({
    name: 'Dose',
    area: { row: 1, column: 3, rows: 15, columns: 5 },
    title: 'Dose against allowance',
    titleSize: 13,
    titleBold: true,
    textSize: 11,
    legend: true,
    legendPosition: 'Bottom',
    valueTitle: 'Share of the foliage',
    valueFormat: '0%',
    valueMinimum: 0
  })
  expect(chart!.series).toMatchObject([
    { name: 'Dose', values: column(1), labels: column(0), fill: '#2C5A41', gapWidth: 60 },
    {
      name: 'Allowance',
      values: column(2),
      labels: column(0),
      line: '#7A3E16',
      lineStyle: 'Dash',
      marker: 'Square'
    }
  ])
})

test('a source in a row makes a series of that row', async () => {
  await onSheet((sheet) => sheet.charts.add('LineMarkers', sheet.getRange('B2:E2'), 'Rows'))
  expect(office.book.charts(sheetId)[0]!.series).toMatchObject([
    { type: 'LineMarkers', values: { row: 1, column: 1, rows: 1, columns: 4 } }
  ])
})

test('a color draws a line again that was not drawn', async () => {
  await onSheet((sheet) => {
    const { line } = sheet.charts
      .add('LineMarkers', sheet.getRange('B2:B5'), 'Columns')
      .series.getItemAt(0).format
    line.lineStyle = 'None'
    line.color = '#123456'
  })
  expect(office.book.charts(sheetId)[0]!.series[0]!.lineStyle).toBe('Continuous')
})

test('a chart is found by its name and deleted', async () => {
  await onSheet((sheet) => {
    sheet.charts.add('ColumnClustered', sheet.getRange('B2:B5'), 'Columns').name = 'Dose'
  })
  await onSheet((sheet) => {
    sheet.charts.getItem('Dose').delete()
  })
  expect(office.book.charts(sheetId)).toEqual([])
  const error = await errorOf(
    onSheet((sheet) => {
      sheet.charts.getItem('Dose').delete()
    })
  )
  expect(error?.code).toBe('ItemNotFound')
})

test('a chart goes with its sheet, and a protected sheet takes none', async () => {
  const other = office.book.addSheet('Other')
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem('Other')
    sheet.charts.add('ColumnClustered', sheet.getRange('A1:A3'), 'Columns')
    await context.sync()
  })
  expect(office.book.charts(other.id)).toHaveLength(1)
  office.book.deleteSheet(other.id)
  expect(() => office.book.charts(other.id)).toThrow('no sheet')
  office.book.faults.protectedSheets.add(sheetId)
  const error = await errorOf(
    onSheet((sheet) => sheet.charts.add('ColumnClustered', sheet.getRange('B2:B5'), 'Columns'))
  )
  office.book.faults.protectedSheets.clear()
  expect(error?.code).toBe('AccessDenied')
})

test.each([
  ['another type of chart', (sheet: Excel.Worksheet) => sheet.charts.add('Pie', sheet.getRange('B2:B5'))],
  [
    'a block of several columns',
    (sheet: Excel.Worksheet) => sheet.charts.add('ColumnClustered', sheet.getRange('B2:C5'), 'Columns')
  ],
  [
    'a color by a word nobody knows',
    (sheet: Excel.Worksheet) => {
      const chart = sheet.charts.add('ColumnClustered', sheet.getRange('B2:B5'), 'Columns')
      chart.series.getItemAt(0).format.fill.setSolidColor('mossy')
    }
  ]
])('%s is refused', async (_what, work) => {
  expect((await errorOf(onSheet(work)))?.code).toBe('InvalidArgument')
})

test('members that the add-in does not use are refused by name', async () => {
  const error = await errorOf(
    onSheet((sheet) => {
      const chart = sheet.charts.add('ColumnClustered', sheet.getRange('B2:B5'), 'Columns')
      chart.plotVisibleOnly = false
    })
  )
  expect(error?.code).toBe('NotImplemented')
  expect(error?.message).toContain('Chart.plotVisibleOnly')
  const axis = await errorOf(
    onSheet((sheet) => {
      const chart = sheet.charts.add('ColumnClustered', sheet.getRange('B2:B5'), 'Columns')
      chart.axes.categoryAxis.title.text = 'Trees'
    })
  )
  expect(axis?.message).toContain('ChartAxes.categoryAxis')
})
