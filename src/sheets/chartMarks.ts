import type { ChartSeries } from './sheet'

const marks = ['circle', 'square', 'diamond', 'triangle'] as const

/** The shape that marks the points of a line. */
export type ChartMark = (typeof marks)[number]

/**
 * The mark of each series in order, null for columns: a shape of its own for each, so that lines can be told apart
 * without their colors. Filled, as not every spreadsheet program draws the edge of a hollow mark.
 */
export function chartMarks(series: readonly Pick<ChartSeries, 'drawn'>[]): (ChartMark | null)[] {
  let count = 0
  return series.map(({ drawn }) => (drawn === 'columns' ? null : (marks[count++ % marks.length] ?? 'circle')))
}

/** Sizes that both writers give a chart: points, and for the columns the gap between them in percent of a column. */
export const chartSizes = { text: 11, title: 13, line: 2.25, mark: 8, gap: 60 } as const

/** A chart of one series needs no legend: its title says what it shows. */
export const needsLegend = (series: readonly unknown[]): boolean => series.length > 1
