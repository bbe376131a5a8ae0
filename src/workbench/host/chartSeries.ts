/** ChartSeriesCollection and ChartSeries of the Excel API. */
import type { ChartSeries } from '../book'
import { numberArgument, numberValue, oneOf, textArgument, textValue } from './memberArguments'
import { changeChart, chartOf, type ChartTarget } from './chartTarget'
import { colorValue } from './colors'
import { itemNotFound } from './faults'
import { hostType, type HostObject } from './hostObject'
import { rangeArgument } from './rangeTarget'

interface SeriesTarget extends ChartTarget {
  /** Place among the chart's series, from 0. */
  index: number
}

const types = ['ColumnClustered', 'LineMarkers'] as const
const lineStyles = ['Continuous', 'Dash', 'None'] as const
const markers = ['Circle', 'Square', 'Diamond', 'Triangle'] as const

export function newSeries(name: string, type: ChartSeries['type']): ChartSeries {
  return {
    name,
    type,
    values: null,
    labels: null,
    fill: null,
    gapWidth: 150,
    line: null,
    lineStyle: 'Continuous',
    lineWeight: 2.25,
    marker: 'Automatic',
    markerSize: 5,
    markerFill: null,
    markerEdge: null
  }
}

function seriesOf(target: SeriesTarget): ChartSeries {
  const found = chartOf(target).series[target.index]
  if (!found) throw itemNotFound('series of that number')
  return found
}

function change(target: SeriesTarget, to: Partial<ChartSeries>): void {
  const { series } = chartOf(target)
  changeChart(target, {
    series: series.map((each, index) => (index === target.index ? { ...each, ...to } : each))
  })
}

const fillObject = hostType<SeriesTarget>({
  name: 'ChartFill',
  calls: {
    setSolidColor: (target, args) => {
      change(target, { fill: colorValue(args[0]) })
    }
  }
})

const lineObject = hostType<SeriesTarget>({
  name: 'ChartLineFormat',
  reads: {
    color: (target) => seriesOf(target).line ?? '#000000',
    lineStyle: (target) => seriesOf(target).lineStyle,
    weight: (target) => seriesOf(target).lineWeight
  },
  writes: {
    /** A line that was not drawn is drawn again in its new color. */
    color: (target, to) => {
      const { lineStyle } = seriesOf(target)
      change(target, {
        line: colorValue(to),
        lineStyle: lineStyle === 'None' ? 'Continuous' : lineStyle
      })
    },
    lineStyle: (target, to) => {
      change(target, { lineStyle: oneOf(to, lineStyles, 'The style of the line') })
    },
    weight: (target, to) => {
      change(target, { lineWeight: numberValue(to, 'The weight of the line') })
    }
  }
})

const formatObject = hostType<SeriesTarget>({
  name: 'ChartSeriesFormat',
  parts: { fill: (target) => fillObject(target), line: (target) => lineObject(target) }
})

function setCells(part: 'values' | 'labels') {
  return (target: SeriesTarget, args: unknown[]) => {
    change(target, { [part]: rangeArgument(target.session, target.sheetId, args[0]).area })
  }
}

const seriesObject = hostType<SeriesTarget>({
  name: 'ChartSeries',
  reads: {
    name: (target) => seriesOf(target).name,
    chartType: (target) => seriesOf(target).type,
    gapWidth: (target) => seriesOf(target).gapWidth,
    markerStyle: (target) => seriesOf(target).marker,
    markerSize: (target) => seriesOf(target).markerSize,
    markerBackgroundColor: (target) => seriesOf(target).markerFill ?? '#000000',
    markerForegroundColor: (target) => seriesOf(target).markerEdge ?? '#000000'
  },
  writes: {
    name: (target, to) => {
      change(target, { name: textValue(to, 'The name of the series') })
    },
    chartType: (target, to) => {
      change(target, { type: oneOf(to, types, 'The type of the series') })
    },
    gapWidth: (target, to) => {
      change(target, { gapWidth: numberValue(to, 'The gap between columns') })
    },
    markerStyle: (target, to) => {
      change(target, { marker: oneOf(to, markers, 'The style of the marker') })
    },
    markerSize: (target, to) => {
      change(target, { markerSize: numberValue(to, 'The size of the marker', 2) })
    },
    markerBackgroundColor: (target, to) => {
      change(target, { markerFill: colorValue(to) })
    },
    markerForegroundColor: (target, to) => {
      change(target, { markerEdge: colorValue(to) })
    }
  },
  parts: { format: (target) => formatObject(target) },
  calls: { setValues: setCells('values'), setXAxisValues: setCells('labels') }
})

function at(target: ChartTarget, index: number): HostObject {
  const one = { ...target, index }
  seriesOf(one)
  return seriesObject(one)
}

export const chartSeriesCollection = hostType<ChartTarget>({
  name: 'ChartSeriesCollection',
  reads: { count: (target) => chartOf(target).series.length },
  items: (target) => chartOf(target).series.map((_series, index) => at(target, index)),
  opens: {
    getItemAt: (target, args) => at(target, numberArgument(args, 0, 'The number of the series')),
    /** A new series is of the type of those before it. */
    add: (target, args) => {
      const { series } = chartOf(target)
      const name = textArgument(args, 0, 'The name of the series')
      changeChart(target, { series: [...series, newSeries(name, series[0]?.type ?? 'ColumnClustered')] })
      return at(target, series.length)
    }
  }
})
