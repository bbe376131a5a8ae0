import { chartMarks } from '../sheets/chartMarks'
import type { Content, SheetDescription } from '../sheets/sheet'
import type { FileChart } from './file-library/chartXml'

function shown(content: Content): string | number | null {
  if (typeof content === 'boolean') return content ? 'TRUE' : 'FALSE'
  if (typeof content !== 'object' || content === null) return content
  return 'date' in content ? content.date : content.value
}

/** The charts of a description, as a file draws them. */
export function chartsOf({ charts = [], rows }: SheetDescription, sheet: string): FileChart[] {
  const cellAt = (row: number, column: number) => shown(rows[row]?.[column] ?? null)
  return charts.map(({ labels, series, ...chart }) => {
    const marks = chartMarks(series)
    const all = series.map((each, index) => ({ ...each, labels, mark: marks[index] ?? null }))
    return { ...chart, series: all, sheet, cellAt }
  })
}
