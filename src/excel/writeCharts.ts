import type { Area } from '../../shared/cells'
import { chartMarks, chartSizes, needsLegend, type ChartMark } from '../sheets/chartMarks'
import type { ChartSeries, SheetChart } from '../sheets/sheet'

const marks = { circle: 'Circle', square: 'Square', diamond: 'Diamond', triangle: 'Triangle' } as const
const lines = { line: 'Continuous', 'dashed-line': 'Dash', points: 'None' } as const

type RangeOf = (area: Area) => Excel.Range

/** Members of ExcelApi 1.7; the name and the color of the fill are of 1.1. */
function setSeries(
  made: Excel.ChartSeries,
  { name, values, drawn, color }: ChartSeries,
  labels: Area,
  mark: ChartMark | null,
  range: RangeOf
): void {
  made.name = name
  made.setValues(range(values))
  made.setXAxisValues(range(labels))
  made.chartType = drawn === 'columns' ? 'ColumnClustered' : 'LineMarkers'
  if (drawn === 'columns') {
    made.format.fill.setSolidColor(color)
    made.gapWidth = chartSizes.gap
    return
  }
  made.format.line.color = color
  made.format.line.weight = chartSizes.line
  // Points are the marks of a line that is not drawn, which comes last, since a color would draw it again.
  made.format.line.lineStyle = lines[drawn]
  if (mark === null) return
  made.markerStyle = marks[mark]
  made.markerSize = chartSizes.mark
  made.markerBackgroundColor = color
  made.markerForegroundColor = color
}

/** Titles, texts and axes are of ExcelApi 1.1, the number format of an axis of 1.8. */
function setTexts(chart: Excel.Chart, { title, series, valueTitle, valueFormat }: SheetChart): void {
  chart.name = title
  chart.format.font.size = chartSizes.text
  chart.title.text = title
  chart.title.format.font.size = chartSizes.title
  chart.title.format.font.bold = true
  chart.legend.visible = needsLegend(series)
  if (needsLegend(series)) chart.legend.position = 'Bottom'
  const axis = chart.axes.valueAxis
  // Columns have to stand on nothing to be compared.
  axis.minimum = 0
  axis.numberFormat = valueFormat
  axis.title.text = valueTitle
}

/**
 * A chart that Excel draws from cells of the sheet, so that it follows them. ExcelApi up to 1.14 has no member for the
 * alternative text of a chart (only shapes have one, and a chart is none): here its title stands for it, and the files
 * carry all of it.
 */
export function addChart(sheet: Excel.Worksheet, chart: SheetChart): void {
  const range: RangeOf = ({ row, column, rows, columns }) =>
    sheet.getRangeByIndexes(row, column, rows, columns)
  const { area, labels, series } = chart
  const [first] = series
  if (first === undefined) return
  const inRows = first.values.rows === 1 && first.values.columns > 1
  // One row or column of numbers makes one series, whatever Excel makes of the cells beside it.
  const made = sheet.charts.add(
    first.drawn === 'columns' ? 'ColumnClustered' : 'LineMarkers',
    range(first.values),
    inRows ? 'Rows' : 'Columns'
  )
  made.setPosition(
    sheet.getCell(area.row, area.column),
    sheet.getCell(area.row + area.rows - 1, area.column + area.columns - 1)
  )
  const shapes = chartMarks(series)
  series.forEach((each, index) => {
    const one = index === 0 ? made.series.getItemAt(0) : made.series.add(each.name)
    setSeries(one, each, labels, shapes[index] ?? null, range)
  })
  setTexts(made, chart)
}
