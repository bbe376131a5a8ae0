/**
 * Charts of columns and lines in an .xlsx. The library writes one kind of chart at a time and no stored values: it makes
 * the room for a chart, which places and names it, and the room is filled after the file is packed.
 */
import type { SheetChart as LibraryChart } from 'hucre'
import JSZip from 'jszip'
import { absoluteRange, chartXml, type FileChart } from './chartXml'
import { fitAltText } from '../../sheets/typedText'
import type { BookSheet } from './fileBook'
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

/** The file with these parts in place of its own of the same names; the others stay packed as they are. */
async function withParts(file: Uint8Array, parts: ReadonlyMap<string, string>): Promise<Uint8Array> {
  const zip = await JSZip.loadAsync(file)
  // Pictures are packed already, and are stored in the file as they are.
  for (const picture of zip.file(/\.png$/)) picture.options.compression = 'STORE'
  for (const [name, contents] of parts) {
    const before = zip.file(name)
    if (before === null) throw new Error(`The file has no part ${name}.`)
    zip.file(name, contents, { date: before.date, createFolders: false })
  }
  return zip.generateAsync({ type: 'uint8array', compression: 'DEFLATE' })
}

/** The packed file with every room filled. */
export async function fillRooms(file: Uint8Array, sheets: readonly BookSheet[]): Promise<Uint8Array> {
  // The library numbers the charts of a workbook from 1, sheet by sheet; those kept of a sheet come before ours.
  const charts = sheets.flatMap(({ kept, charts = [] }) => [
    ...(kept?.charts ?? []).map(() => null),
    ...charts
  ])
  const parts = new Map<string, string>()
  charts.forEach((chart, index) => {
    if (chart !== null) parts.set(`xl/charts/chart${String(index + 1)}.xml`, chartXml(chart))
  })
  return parts.size === 0 ? file : withParts(file, parts)
}
