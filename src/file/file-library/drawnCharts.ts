/**
 * Charts of columns and lines in an .xlsx. The library writes one kind of chart at a time and no stored values: it makes
 * the room for a chart, which places and names it, and the room is filled after the file is packed.
 */
import type { SheetChart as LibraryChart } from 'hucre'
import { absoluteRange, chartXml, type FileChart } from './chartXml'
import { fitAltText } from '../../sheets/typedText'
import type { BookSheet } from './fileBook'
import type { Parts } from './packedParts'
import { possibleText } from './xmlText'

/** A chart as the library takes it: its place, its words and its cells; what it looks like is ours. */
export function roomFor({ area, title, alt, series, sheet }: FileChart): LibraryChart {
  return {
    type: series.some((each) => each.drawn === 'columns') ? 'column' : 'line',
    title: possibleText(title),
    altText: possibleText(fitAltText(alt)),
    anchor: {
      from: { row: area.row, col: area.column },
      to: { row: area.row + area.rows, col: area.column + area.columns }
    },
    series: series.map(({ name, values }) => ({ name, values: absoluteRange(sheet, values) }))
  }
}

/** What fills the rooms for charts of a packed file. */
export function chartParts(sheets: readonly BookSheet[]): Parts {
  // The library numbers the charts of a workbook from 1, sheet by sheet; those kept of a sheet come before ours.
  const charts = sheets.flatMap(({ kept, charts = [] }) => [
    ...(kept?.charts ?? []).map(() => null),
    ...charts
  ])
  const parts = new Map<string, string>()
  charts.forEach((chart, index) => {
    if (chart !== null) parts.set(`xl/charts/chart${String(index + 1)}.xml`, chartXml(chart))
  })
  return parts
}
