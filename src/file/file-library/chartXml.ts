/**
 * A chart of columns and lines as its part of an .xlsx (DrawingML charts, ECMA-376 part 1, 21.2, whose order of elements
 * a reader insists on). It is our own since the file library writes one kind of chart at a time and no stored values.
 */
import { possibleText } from './xmlText'
import { absoluteArea, type Area, sheetPrefix } from '../../../shared/cells'
import { chartSizes, needsLegend, type ChartMark } from '../../sheets/chartMarks'
import { markup } from '../../drawing/paint/toSvg'
import { palette } from '../../../shared/palette'
import type { ChartSeries } from '../../sheets/sheet'
import { axisIds, labelAxis, valueAxis } from './chartAxes'
import { element, solidFill, titleElement, unitsAPoint, valueElement, type Node } from './chartNodes'

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
    cell === null || cell === '' ? [] : [element('c:pt', { idx }, element('c:v', {}, String(cell)))]
  )
  return [valueElement('c:ptCount', cells.length), ...points]
}

function labelsOf(chart: FileChart, area: Area): Node {
  const texts = cellsOf(chart, area)
  const place = element('c:f', {}, absoluteRange(chart.sheet, area))
  return element('c:cat', {}, element('c:strRef', {}, place, element('c:strCache', {}, ...stored(texts))))
}

function valuesOf(chart: FileChart, area: Area): Node {
  const numbers = cellsOf(chart, area).map((cell) => (typeof cell === 'number' ? cell : null))
  const place = element('c:f', {}, absoluteRange(chart.sheet, area))
  const format = element('c:formatCode', {}, chart.valueFormat)
  return element(
    'c:val',
    {},
    element('c:numRef', {}, place, element('c:numCache', {}, format, ...stored(numbers)))
  )
}

function line(color: string, drawn: ChartSeries['drawn']): Node {
  const w = Math.round((drawn === 'points' ? undrawnWidth : chartSizes.line) * unitsAPoint)
  if (drawn === 'points') return element('a:ln', { w }, element('a:noFill', {}))
  const dash = drawn === 'dashed-line' ? [valueElement('a:prstDash', 'dash')] : []
  return element('a:ln', { w, cap: 'rnd' }, solidFill(color), ...dash, element('a:round', {}))
}

function markOf(shape: ChartMark, color: string): Node {
  const look = element('c:spPr', {}, solidFill(color), element('a:ln', { w: 9525 }, solidFill(color)))
  return element(
    'c:marker',
    {},
    valueElement('c:symbol', shape),
    valueElement('c:size', chartSizes.mark),
    look
  )
}

function seriesOf(chart: FileChart, series: FileSeries, index: number): Node {
  const { name, drawn, color, values, labels, mark } = series
  const columns = drawn === 'columns'
  return element(
    'c:ser',
    {},
    valueElement('c:idx', index),
    valueElement('c:order', index),
    element('c:tx', {}, element('c:v', {}, name)),
    element('c:spPr', {}, solidFill(color), ...(columns ? [] : [line(color, drawn)])),
    ...(columns ? [valueElement('c:invertIfNegative', 0)] : []),
    ...(mark === null ? [] : [markOf(mark, color)]),
    ...(labels === null ? [] : [labelsOf(chart, labels)]),
    valuesOf(chart, values),
    ...(columns ? [] : [valueElement('c:smooth', 0)])
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
      element(
        'c:barChart',
        {},
        valueElement('c:barDir', 'col'),
        valueElement('c:grouping', 'clustered'),
        valueElement('c:varyColors', 0),
        ...bars,
        valueElement('c:gapWidth', chartSizes.gap),
        ...axisIds
      )
    )
  if (lines.length > 0)
    found.push(
      element(
        'c:lineChart',
        {},
        valueElement('c:grouping', 'standard'),
        valueElement('c:varyColors', 0),
        ...lines,
        valueElement('c:marker', 1),
        ...axisIds
      )
    )
  return found
}

function textLook(): Node {
  const paragraph = element(
    'a:p',
    {},
    element('a:pPr', {}, element('a:defRPr', { sz: chartSizes.text * 100 })),
    element('a:endParaRPr', { lang: 'en-US' })
  )
  return element('c:txPr', {}, element('a:bodyPr', {}), element('a:lstStyle', {}), paragraph)
}

export function chartXml(chart: FileChart): string {
  const body = element(
    'c:chart',
    {},
    titleElement(chart.title, chartSizes.title, true),
    valueElement('c:autoTitleDeleted', 0),
    element('c:plotArea', {}, element('c:layout', {}), ...plots(chart), labelAxis(), valueAxis(chart)),
    ...(needsLegend(chart.series)
      ? [element('c:legend', {}, valueElement('c:legendPos', 'b'), valueElement('c:overlay', 0))]
      : []),
    valueElement('c:plotVisOnly', 1),
    valueElement('c:dispBlanksAs', 'gap')
  )
  const ground = element(
    'c:spPr',
    {},
    solidFill('#ffffff'),
    element('a:ln', { w: 9525 }, solidFill(palette.rule))
  )
  const space = element('c:chartSpace', spaces, valueElement('c:roundedCorners', 0), body, ground, textLook())
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n${possibleText(markup(space))}`
}
