/**
 * A chart of columns and lines as its part of an .xlsx (DrawingML charts, ECMA-376 part 1, 21.2, whose order of elements
 * a reader insists on). It is our own since the file library writes one kind of chart at a time and no stored values.
 */
import { absoluteArea, sheetPrefix } from '../../shared/cells'
import { chartSizes, needsLegend, type ChartMark } from '../sheets/chartMarks'
import { markup } from '../drawing/paint/toSvg'
import { palette } from '../../shared/palette'
import type { Area, ChartSeries } from '../sheets/sheet'
import { axisIds, labelAxis, valueAxis } from './chartAxes'
import { node, solid, title, unitsAPoint, value, type Node } from './chartNodes'

export interface FileSeries extends ChartSeries {
  /** The cells that label the points. */
  labels: Area | null
  mark: ChartMark | null
}

export interface FileChart {
  area: Area
  title: string
  alt: string
  series: FileSeries[]
  valueTitle: string
  valueFormat: string
  /** The sheet of the cells, and what stands in them, for readers that do not look there. */
  sheet: string
  cellAt: (row: number, column: number) => string | number | null
}

const spaces = {
  'xmlns:c': 'http://schemas.openxmlformats.org/drawingml/2006/chart',
  'xmlns:a': 'http://schemas.openxmlformats.org/drawingml/2006/main',
  'xmlns:r': 'http://schemas.openxmlformats.org/officeDocument/2006/relationships'
}

/** A line that is not drawn has the least width, by which it is known again when a file is opened. */
export const undrawnWidth = 0.25

export function absoluteRange(sheet: string, area: Area): string {
  return sheetPrefix(sheet) + absoluteArea(area)
}

function cellsOf({ cellAt }: FileChart, area: Area): (string | number | null)[] {
  const found: (string | number | null)[] = []
  for (let row = area.row; row < area.row + area.rows; row++)
    for (let column = area.column; column < area.column + area.columns; column++)
      found.push(cellAt(row, column))
  return found
}

/** The values that stood in the cells when the file was written. */
function stored(cells: readonly (string | number | null)[]): Node[] {
  const points = cells.flatMap((cell, idx) =>
    cell === null || cell === '' ? [] : [node('c:pt', { idx }, node('c:v', {}, String(cell)))]
  )
  return [value('c:ptCount', cells.length), ...points]
}

function labelsOf(chart: FileChart, area: Area): Node {
  const texts = cellsOf(chart, area)
  const place = node('c:f', {}, absoluteRange(chart.sheet, area))
  return node('c:cat', {}, node('c:strRef', {}, place, node('c:strCache', {}, ...stored(texts))))
}

function valuesOf(chart: FileChart, area: Area): Node {
  const numbers = cellsOf(chart, area).map((cell) => (typeof cell === 'number' ? cell : null))
  const place = node('c:f', {}, absoluteRange(chart.sheet, area))
  const format = node('c:formatCode', {}, chart.valueFormat)
  return node('c:val', {}, node('c:numRef', {}, place, node('c:numCache', {}, format, ...stored(numbers))))
}

function line(color: string, drawn: ChartSeries['drawn']): Node {
  const w = Math.round((drawn === 'points' ? undrawnWidth : chartSizes.line) * unitsAPoint)
  if (drawn === 'points') return node('a:ln', { w }, node('a:noFill', {}))
  const dash = drawn === 'dashed-line' ? [value('a:prstDash', 'dash')] : []
  return node('a:ln', { w, cap: 'rnd' }, solid(color), ...dash, node('a:round', {}))
}

function markOf(shape: ChartMark, color: string): Node {
  const look = node('c:spPr', {}, solid(color), node('a:ln', { w: 9525 }, solid(color)))
  return node('c:marker', {}, value('c:symbol', shape), value('c:size', chartSizes.mark), look)
}

function seriesOf(chart: FileChart, series: FileSeries, index: number): Node {
  const { name, drawn, color, values, labels, mark } = series
  const columns = drawn === 'columns'
  return node(
    'c:ser',
    {},
    value('c:idx', index),
    value('c:order', index),
    node('c:tx', {}, node('c:v', {}, name)),
    node('c:spPr', {}, solid(color), ...(columns ? [] : [line(color, drawn)])),
    ...(columns ? [value('c:invertIfNegative', 0)] : []),
    ...(mark === null ? [] : [markOf(mark, color)]),
    ...(labels === null ? [] : [labelsOf(chart, labels)]),
    valuesOf(chart, values),
    ...(columns ? [] : [value('c:smooth', 0)])
  )
}

/** Columns first, so that lines are drawn over them. */
function plots(chart: FileChart): Node[] {
  const indexed = chart.series.map((series, index) => ({ series, index }))
  const written = (columns: boolean) =>
    indexed
      .filter(({ series }) => (series.drawn === 'columns') === columns)
      .map(({ series, index }) => seriesOf(chart, series, index))
  const [bars, lines] = [written(true), written(false)]
  const found: Node[] = []
  if (bars.length > 0)
    found.push(
      node(
        'c:barChart',
        {},
        value('c:barDir', 'col'),
        value('c:grouping', 'clustered'),
        value('c:varyColors', 0),
        ...bars,
        value('c:gapWidth', chartSizes.gap),
        ...axisIds
      )
    )
  if (lines.length > 0)
    found.push(
      node(
        'c:lineChart',
        {},
        value('c:grouping', 'standard'),
        value('c:varyColors', 0),
        ...lines,
        value('c:marker', 1),
        ...axisIds
      )
    )
  return found
}

function textLook(): Node {
  const paragraph = node(
    'a:p',
    {},
    node('a:pPr', {}, node('a:defRPr', { sz: chartSizes.text * 100 })),
    node('a:endParaRPr', { lang: 'en-US' })
  )
  return node('c:txPr', {}, node('a:bodyPr', {}), node('a:lstStyle', {}), paragraph)
}

export function chartXml(chart: FileChart): string {
  const body = node(
    'c:chart',
    {},
    title(chart.title, chartSizes.title, true),
    value('c:autoTitleDeleted', 0),
    node('c:plotArea', {}, node('c:layout', {}), ...plots(chart), labelAxis(), valueAxis(chart)),
    ...(needsLegend(chart.series)
      ? [node('c:legend', {}, value('c:legendPos', 'b'), value('c:overlay', 0))]
      : []),
    value('c:plotVisOnly', 1),
    value('c:dispBlanksAs', 'gap')
  )
  const ground = node('c:spPr', {}, solid('#ffffff'), node('a:ln', { w: 9525 }, solid(palette.rule)))
  const space = node('c:chartSpace', spaces, value('c:roundedCorners', 0), body, ground, textLook())
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n${markup(space)}`
}
