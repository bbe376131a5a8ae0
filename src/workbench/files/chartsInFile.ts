/** Charts of a sheet between its file and the book: the grid draws none, and keeps them for the file. */
import type { IWorksheetData } from '@univerjs/core'
import type { Chart as FoundChart, ChartSeriesInfo, Sheet, SheetChart as LibraryChart } from 'hucre'
import { chartKindToWriteKind, cloneChart } from 'hucre/ooxml'
import { chartSizes } from '../../sheets/chartMarks'
import { undrawnWidth, type FileSeries } from '../../file/chartXml'
import { drawnChart } from '../../file/fileCharts'
import type { Chart, ChartSeries } from '../book'
import { parseAddress } from '../host/a1Notation'
import { newSeries } from '../host/chartSeries'
import { fileValue } from './cellsToFile'

const drawn = { Continuous: 'line', Dash: 'dashed-line', None: 'points' } as const
const marks = { Circle: 'circle', Square: 'square', Diamond: 'diamond', Triangle: 'triangle' } as const
const isMark = (marker: string): marker is keyof typeof marks => Object.hasOwn(marks, marker)

/** What a series without a colour of its own gets. */
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

/** The book's charts as the file library takes them; the title stands for words that the book does not have. */
export function writeCharts(charts: readonly Chart[], sheet: Partial<IWorksheetData>): LibraryChart[] {
  const cellAt = (row: number, column: number) => {
    const cell = sheet.cellData?.[row]?.[column]
    const value = cell ? fileValue(cell) : null
    return typeof value === 'string' || typeof value === 'number' ? value : null
  }
  return charts.map(({ area, title, alt, valueTitle, valueFormat, series }) =>
    drawnChart({
      area,
      title,
      alt: alt ?? title,
      valueTitle,
      valueFormat,
      series: series.flatMap(fileSeries),
      sheet: sheet.name ?? '',
      cellAt
    })
  )
}

/**
 * True where the file library reads a chart of columns and lines but does not write it: where both stand in one chart,
 * and where a line is not drawn.
 */
function combines({ kinds, series = [] }: FoundChart): boolean {
  const plotted = new Set<string>(kinds)
  return (
    (plotted.size > 1 || series.some(({ stroke }) => stroke?.width === undrawnWidth)) &&
    [...plotted].every((kind) => kind === 'bar' || kind === 'line') &&
    series.every(({ valuesRef }) => parseAddress(valuesRef ?? '') !== null)
  )
}

function capital<Word extends string>(word: Word): Capitalize<Word> {
  return (word.charAt(0).toUpperCase() + word.slice(1)) as Capitalize<Word>
}

function readSeries({ kind, name, valuesRef, categoriesRef, color, stroke, marker }: ChartSeriesInfo) {
  const area = (place: string | undefined) => parseAddress(place ?? '')?.area ?? null
  const own = typeof color === 'string' ? `#${color}` : null
  const type = kind === 'bar' ? ('ColumnClustered' as const) : ('LineMarkers' as const)
  const series: ChartSeries = {
    ...newSeries(name ?? '', type),
    values: area(valuesRef),
    labels: area(categoriesRef)
  }
  if (kind === 'bar') return { ...series, fill: own, gapWidth: chartSizes.gap }
  const undrawn = stroke?.width === undrawnWidth
  const dashed = stroke?.dash !== undefined && stroke.dash !== 'solid'
  return {
    ...series,
    line: own,
    lineStyle: undrawn ? ('None' as const) : dashed ? ('Dash' as const) : ('Continuous' as const),
    marker: marker?.symbol === undefined ? 'None' : capital(marker.symbol),
    markerSize: marker?.size ?? chartSizes.mark,
    markerFill: own,
    markerEdge: own
  }
}

function readChart(found: FoundChart, id: string, sheetId: string): Chart {
  const { title = '', altText, anchor, legend, axes, series = [] } = found
  const from = anchor?.from ?? { row: 0, col: 0 }
  const to = anchor?.to ?? { row: from.row + 15, col: from.col + 8 }
  return {
    id,
    sheetId,
    name: title,
    area: {
      row: from.row,
      column: from.col,
      rows: Math.max(1, to.row - from.row),
      columns: Math.max(1, to.col - from.col)
    },
    title,
    titleSize: chartSizes.title,
    titleBold: true,
    textSize: chartSizes.text,
    legend: legend !== false,
    legendPosition: 'Bottom',
    valueTitle: axes?.y?.title ?? '',
    valueFormat: axes?.y?.numberFormat?.formatCode ?? 'General',
    valueMinimum: 0,
    ...(altText === undefined ? {} : { alt: altText }),
    series: [...series].sort((a, b) => a.index - b.index).map(readSeries)
  }
}

/** True for a chart that goes back into the file in some form. */
export function isKept(chart: FoundChart): boolean {
  return combines(chart) || (new Set(chart.kinds).size === 1 && copies(chart))
}

const copies = ({ kinds, series = [] }: FoundChart): boolean =>
  kinds.every((kind) => chartKindToWriteKind(kind) !== undefined) &&
  series.some(({ valuesRef }) => valuesRef !== undefined)

/** The charts of an opened sheet: those the book can hold, and those that go back as the library copies them. */
export function readCharts(sheet: Sheet, sheetId: string): { charts: Chart[]; kept: LibraryChart[] } {
  const found = (sheet.charts ?? []).filter(isKept)
  return {
    charts: found
      .filter(combines)
      .map((chart, index) => readChart(chart, `${sheetId}-chart${index + 1}`, sheetId)),
    kept: found
      .filter((chart) => !combines(chart))
      .map((chart) => cloneChart(chart, { anchor: chart.anchor ?? { from: { row: 0, col: 0 } } }))
  }
}
