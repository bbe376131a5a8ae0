/** ChartCollection and Chart of the Excel API, for charts of columns and lines. */
import type { Area } from '../../../shared/cells'
import type { Chart, ChartSeries } from '../book'
import { boundingArea } from '../../../shared/a1Notation'
import { booleanValue, numberValue, oneOf, textValue } from './memberArguments'
import { chartSeriesCollection, newSeries } from './chartSeries'
import { chartOf, changeChart, type ChartTarget } from './chartTarget'
import { invalidArgument, itemNotFound } from './faults'
import { hostType } from './hostObject'
import { rangeArgument } from './rangeTarget'
import { writable, type SheetTarget } from './session'

const types = ['ColumnClustered', 'LineMarkers'] as const
const positions = ['Top', 'Bottom', 'Left', 'Right'] as const

/** The font of a chart's part: its size, and whether it is bold where that can be set. */
function fontOf(size: 'titleSize' | 'textSize', bold?: 'titleBold') {
  return hostType<ChartTarget>({
    name: 'ChartFont',
    reads: {
      size: (target) => chartOf(target)[size],
      ...(bold ? { bold: (target: ChartTarget) => chartOf(target)[bold] } : {})
    },
    writes: {
      size: (target, to) => {
        changeChart(target, { [size]: numberValue(to, 'The font size', 1) })
      },
      ...(bold
        ? {
            bold: (target: ChartTarget, to: unknown) => {
              changeChart(target, { [bold]: booleanValue(to, 'Bold') })
            }
          }
        : {})
    }
  })
}
const titleFont = fontOf('titleSize', 'titleBold')
const textFont = fontOf('textSize')

const areaFormat = hostType<ChartTarget>({
  name: 'ChartAreaFormat',
  parts: { font: (target) => textFont(target) }
})

const titleFormat = hostType<ChartTarget>({
  name: 'ChartTitleFormat',
  parts: { font: (target) => titleFont(target) }
})

const titleObject = hostType<ChartTarget>({
  name: 'ChartTitle',
  reads: { text: (target) => chartOf(target).title },
  writes: {
    text: (target, to) => {
      changeChart(target, { title: textValue(to, 'The title') })
    }
  },
  parts: { format: (target) => titleFormat(target) }
})

const legendObject = hostType<ChartTarget>({
  name: 'ChartLegend',
  reads: {
    visible: (target) => chartOf(target).legend,
    position: (target) => chartOf(target).legendPosition
  },
  writes: {
    visible: (target, to) => {
      changeChart(target, { legend: booleanValue(to, 'Showing the legend') })
    },
    position: (target, to) => {
      changeChart(target, { legendPosition: oneOf(to, positions, 'The position of the legend') })
    }
  }
})

const axisTitleObject = hostType<ChartTarget>({
  name: 'ChartAxisTitle',
  reads: { text: (target) => chartOf(target).valueTitle },
  writes: {
    text: (target, to) => {
      changeChart(target, { valueTitle: textValue(to, 'The title of the axis') })
    }
  }
})

const valueAxisObject = hostType<ChartTarget>({
  name: 'ChartAxis',
  reads: {
    numberFormat: (target) => chartOf(target).valueFormat,
    minimum: (target) => chartOf(target).valueMinimum ?? ''
  },
  writes: {
    numberFormat: (target, to) => {
      changeChart(target, { valueFormat: textValue(to, 'The number format') })
    },
    minimum: (target, to) => {
      changeChart(target, { valueMinimum: numberValue(to, 'The least value', -Infinity) })
    }
  },
  parts: { title: (target) => axisTitleObject(target) }
})

const axesObject = hostType<ChartTarget>({
  name: 'ChartAxes',
  parts: { valueAxis: (target) => valueAxisObject(target) }
})

/** The first and the last cell that the chart covers; without a last one, the first alone. */
function setPosition(target: ChartTarget, [start, end]: unknown[]): void {
  const { session, sheetId } = target
  const first = rangeArgument(session, sheetId, start).area
  const last = end === undefined || end === null ? first : rangeArgument(session, sheetId, end).area
  changeChart(target, { area: boundingArea(first, last) })
}

const chartObject = hostType<ChartTarget>({
  name: 'Chart',
  identity: (target) => ({ Id: chartOf(target).id }),
  reads: { id: ({ id }) => id, name: (target) => chartOf(target).name },
  writes: {
    name: (target, to) => {
      changeChart(target, { name: textValue(to, 'The name of the chart') })
    }
  },
  parts: {
    title: (target) => titleObject(target),
    format: (target) => areaFormat(target),
    legend: (target) => legendObject(target),
    axes: (target) => axesObject(target),
    series: (target) => chartSeriesCollection(target)
  },
  calls: {
    setPosition,
    delete: (target) => {
      chartOf(target)
      writable(target.session, target.sheetId).deleteChart(target.id)
    }
  }
})

/** Each row or column of the source by itself; Excel looks for headers and labels in it too, which is not answered. */
function seriesOf(area: Area, byRows: boolean, type: ChartSeries['type']): ChartSeries[] {
  const count = byRows ? area.rows : area.columns
  return Array.from({ length: count }, (_, index) => ({
    ...newSeries(`Series${index + 1}`, type),
    values: byRows
      ? { ...area, row: area.row + index, rows: 1 }
      : { ...area, column: area.column + index, columns: 1 }
  }))
}

function newChart(area: Area, series: ChartSeries[], number: number): Omit<Chart, 'id' | 'sheetId'> {
  return {
    name: `Chart ${number}`,
    area: { row: area.row, column: area.column, rows: 15, columns: 6 },
    title: '',
    titleSize: 14,
    titleBold: false,
    textSize: 10,
    legend: true,
    legendPosition: 'Right',
    valueTitle: '',
    valueFormat: 'General',
    valueMinimum: null,
    series
  }
}

function add({ session, sheetId }: SheetTarget, [kind, source, by]: unknown[]) {
  const type = oneOf(kind, types, 'The type of the chart')
  const { area } = rangeArgument(session, sheetId, source)
  if (area.rows > 1 && area.columns > 1)
    throw invalidArgument('The source of a chart is one row or one column here.')
  const byRows = oneOf(by, ['Rows', 'Columns'], 'What makes a series') === 'Rows'
  const number = session.book.charts(sheetId).length + 1
  const chart = newChart(area, seriesOf(area, byRows, type), number)
  const { id } = writable(session, sheetId).addChart(sheetId, chart)
  return chartObject({ session, sheetId, id })
}

export const chartsObject = hostType<SheetTarget>({
  name: 'ChartCollection',
  reads: { count: ({ session, sheetId }) => session.book.charts(sheetId).length },
  items: ({ session, sheetId }) =>
    session.book.charts(sheetId).map(({ id }) => chartObject({ session, sheetId, id })),
  item: ({ session, sheetId }, key) => {
    const known = session.book.charts(sheetId).find(({ id, name }) => id === key || name === key)
    if (!known) throw itemNotFound(`chart "${String(key)}"`)
    return chartObject({ session, sheetId, id: known.id })
  },
  opens: { add }
})
