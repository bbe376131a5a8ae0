/** Charts of a sheet between its file and the book: the grid draws none, and keeps them for the file. */
import type { IWorksheetData } from '@univerjs/core'
import { chartSizes } from '../../sheets/chartMarks'
import type { FileChart, FileSeries } from '../../file/file-library/chartXml'
import type { FoundChart, FoundSeries } from '../../file/file-library/foundCharts'
import type { Chart, ChartSeries } from '../book'
import { newSeries } from '../host/chartSeries'
import { fileValue } from './cellsToFile'

const drawn = { Continuous: 'line', Dash: 'dashed-line', None: 'points' } as const
const marks = { Circle: 'circle', Square: 'square', Diamond: 'diamond', Triangle: 'triangle' } as const
const isMark = (marker: string): marker is keyof typeof marks => Object.hasOwn(marks, marker)

/** What a series without a color of its own gets. */
const plain = '#4F5C54'

function fileSeries({
  name,
  type,
  values,
  labels,
  fill,
  line,
  lineStyle,
  marker
}: ChartSeries): FileSeries[] {
  if (values === null) return []
  const columns = type === 'ColumnClustered'
  return [
    {
      name,
      values,
      labels,
      drawn: columns ? 'columns' : drawn[lineStyle],
      color: (columns ? fill : line) ?? plain,
      mark: !columns && isMark(marker) ? marks[marker] : null
    }
  ]
}

/** The book's charts as a file draws them; the title stands for words that the book does not have. */
export function writeCharts(charts: readonly Chart[], sheet: Partial<IWorksheetData>): FileChart[] {
  const cellAt = (row: number, column: number) => {
    const cell = sheet.cellData?.[row]?.[column]
    const value = cell ? fileValue(cell) : null
    return typeof value === 'string' || typeof value === 'number' ? value : null
  }
  return charts.map(({ area, title, alt, valueTitle, valueFormat, series }) => ({
    area,
    title,
    alt: alt ?? title,
    valueTitle,
    valueFormat,
    series: series.flatMap(fileSeries),
    sheet: sheet.name ?? '',
    cellAt
  }))
}

function capital<Word extends string>(word: Word): Capitalize<Word> {
  return (word.charAt(0).toUpperCase() + word.slice(1)) as Capitalize<Word>
}

const lineStyles = { line: 'Continuous', 'dashed-line': 'Dash', points: 'None' } as const

function readSeries({ name, drawn, values, labels, color, mark, markSize }: FoundSeries): ChartSeries {
  const type = drawn === 'columns' ? ('ColumnClustered' as const) : ('LineMarkers' as const)
  const series: ChartSeries = { ...newSeries(name, type), values, labels }
  if (drawn === 'columns') return { ...series, fill: color, gapWidth: chartSizes.gap }
  return {
    ...series,
    line: color,
    lineStyle: lineStyles[drawn],
    marker: mark === null ? 'None' : capital(mark),
    markerSize: markSize ?? chartSizes.mark,
    markerFill: color,
    markerEdge: color
  }
}

/** A chart of an opened sheet in the book's words. */
export function readChart(found: FoundChart, id: string, sheetId: string): Chart {
  const { title, alt, area, legend, valueTitle, valueFormat, series } = found
  return {
    id,
    sheetId,
    name: title,
    area,
    title,
    titleSize: chartSizes.title,
    titleBold: true,
    textSize: chartSizes.text,
    legend,
    legendPosition: 'Bottom',
    valueTitle,
    valueFormat,
    valueMinimum: 0,
    ...(alt === null ? {} : { alt }),
    series: series.map(readSeries)
  }
}
