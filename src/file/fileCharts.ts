import type { SheetChart as LibraryChart, WriteOptions } from 'hucre'
import { writeXlsx } from 'hucre/xlsx'
import JSZip from 'jszip'
import { absoluteRange, chartXml, type FileChart } from './chartXml'

/** A chart that the library makes room for, and what is put into that room. */
interface DrawnChart extends LibraryChart {
  drawn: FileChart
}

/** A chart as the library takes it, which places and names it; its contents are ours. */
export function drawnChart(chart: FileChart): LibraryChart {
  const { area, title, alt, series, sheet } = chart
  const drawn: DrawnChart = {
    drawn: chart,
    type: series.some((each) => each.drawn === 'columns') ? 'column' : 'line',
    title,
    altText: alt,
    anchor: {
      from: { row: area.row, col: area.column },
      to: { row: area.row + area.rows, col: area.column + area.columns }
    },
    series: series.map(({ name, values }) => ({ name, values: absoluteRange(sheet, values) }))
  }
  return drawn
}

const isDrawn = (chart: LibraryChart): chart is DrawnChart => 'drawn' in chart

/** The file with these parts in place of its own of the same names; the others stay packed as they are. */
async function withParts(file: Uint8Array, parts: ReadonlyMap<string, string>): Promise<Uint8Array> {
  const zip = await JSZip.loadAsync(file)
  for (const [name, contents] of parts) {
    const before = zip.file(name)
    if (before === null) throw new Error(`The file has no part ${name}.`)
    zip.file(name, contents, { date: before.date })
  }
  return zip.generateAsync({ type: 'uint8array', compression: 'DEFLATE' })
}

/** An .xlsx as the library writes it, with the charts that combine columns and lines as we write them. */
export async function writeWithCharts(options: WriteOptions): Promise<Uint8Array> {
  const file = await writeXlsx(options)
  // The library numbers the charts of a workbook from 1, sheet by sheet.
  const charts = options.sheets.flatMap((sheet) => sheet.charts ?? [])
  const parts = new Map<string, string>()
  charts.forEach((chart, index) => {
    if (isDrawn(chart)) parts.set(`xl/charts/chart${String(index + 1)}.xml`, chartXml(chart.drawn))
  })
  return parts.size === 0 ? file : withParts(file, parts)
}
