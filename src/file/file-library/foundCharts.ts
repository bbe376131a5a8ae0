/** Charts of an opened sheet: those that we write ourselves, those that the library copies, and those that it loses. */
import type { Chart, ChartSeriesInfo, SheetChart } from 'hucre'
import { chartKindToWriteKind, cloneChart } from 'hucre/ooxml'
import { parseAddress } from '../../../shared/a1Notation'
import type { Area } from '../../../shared/cells'
import { undrawnWidth } from './chartXml'

export interface FoundSeries {
  name: string
  drawn: 'columns' | 'line' | 'dashed-line' | 'points'
  values: Area | null
  labels: Area | null
  /** #RRGGBB */
  color: string | null
  mark: string | null
  markSize: number | null
}

/** A chart of columns and lines. */
export interface FoundChart {
  area: Area
  title: string
  alt: string | null
  legend: boolean
  valueTitle: string
  valueFormat: string
  series: FoundSeries[]
}

export interface FoundCharts {
  charts: FoundChart[]
  /** Others, as the library writes them again, in a plainer form. */
  kept: SheetChart[]
  /** Some are of a kind that the library does not write. */
  someLost: boolean
}

/**
 * True where the library reads a chart of columns and lines but does not write it: where both stand in one chart, and
 * where a line is not drawn.
 */
function combines({ kinds, series = [] }: Chart): boolean {
  const plotted = new Set<string>(kinds)
  return (
    (plotted.size > 1 || series.some(({ stroke }) => stroke?.width === undrawnWidth)) &&
    [...plotted].every((kind) => kind === 'bar' || kind === 'line') &&
    series.every(({ valuesRef }) => parseAddress(valuesRef ?? '') !== null)
  )
}

const copies = ({ kinds, series = [] }: Chart): boolean =>
  new Set(kinds).size === 1 &&
  kinds.every((kind) => chartKindToWriteKind(kind) !== undefined) &&
  series.some(({ valuesRef }) => valuesRef !== undefined)

function seriesOf({
  kind,
  name,
  valuesRef,
  categoriesRef,
  color,
  stroke,
  marker
}: ChartSeriesInfo): FoundSeries {
  const area = (place: string | undefined) => parseAddress(place ?? '')?.area ?? null
  const dashed = stroke?.dash !== undefined && stroke.dash !== 'solid'
  const line = stroke?.width === undrawnWidth ? 'points' : dashed ? 'dashed-line' : 'line'
  return {
    name: name ?? '',
    drawn: kind === 'bar' ? 'columns' : line,
    values: area(valuesRef),
    labels: area(categoriesRef),
    color: typeof color === 'string' ? `#${color}` : null,
    mark: marker?.symbol ?? null,
    markSize: marker?.size ?? null
  }
}

function chartOf({ title = '', altText, anchor, legend, axes, series = [] }: Chart): FoundChart {
  const from = anchor?.from ?? { row: 0, col: 0 }
  const to = anchor?.to ?? { row: from.row + 15, col: from.col + 8 }
  return {
    area: {
      row: from.row,
      column: from.col,
      rows: Math.max(1, to.row - from.row),
      columns: Math.max(1, to.col - from.col)
    },
    title,
    alt: altText ?? null,
    legend: legend !== false,
    valueTitle: axes?.y?.title ?? '',
    valueFormat: axes?.y?.numberFormat?.formatCode ?? 'General',
    series: [...series].sort((a, b) => a.index - b.index).map(seriesOf)
  }
}

export function chartsIn(found: readonly Chart[] = []): FoundCharts {
  const others = found.filter((chart) => !combines(chart))
  const kept = others.filter(copies)
  return {
    charts: found.filter(combines).map(chartOf),
    kept: kept.map((chart) => cloneChart(chart, { anchor: chart.anchor ?? { from: { row: 0, col: 0 } } })),
    someLost: kept.length < others.length
  }
}
