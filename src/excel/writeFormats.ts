import type { Area } from '../../shared/cells'
import { columnPoints } from '../sheets/pageBreaks'
import type { Format, SheetDescription } from '../sheets/sheet'

const horizontal = { left: 'Left', center: 'Center', right: 'Right' } as const
const vertical = { top: 'Top', middle: 'Center', bottom: 'Bottom' } as const

function applyFormat(sheet: Excel.Worksheet, area: Area, format: Format): void {
  const range = sheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns)
  const { font, fill } = range.format
  if (format.bold !== undefined) font.bold = format.bold
  if (format.italic !== undefined) font.italic = format.italic
  if (format.size !== undefined) font.size = format.size
  if (format.color !== undefined) font.color = format.color
  if (format.fill !== undefined) fill.color = format.fill
  if (format.align !== undefined) range.format.horizontalAlignment = horizontal[format.align]
  if (format.vertical !== undefined) range.format.verticalAlignment = vertical[format.vertical]
  if (format.wrap !== undefined) range.format.wrapText = format.wrap
  // One value alone stands for every cell of the range.
  if (format.numberFormat !== undefined) range.numberFormat = format.numberFormat as never
  if (format.underline === undefined) return
  const last = sheet.getRangeByIndexes(area.row + area.rows - 1, area.column, 1, area.columns)
  const edge = last.format.borders.getItem('EdgeBottom')
  edge.style = 'Continuous'
  edge.color = format.underline
}

/** The looks of the cells, each as a step that one request may hold some hundreds of. */
export function formatSteps(sheet: Excel.Worksheet, { formats }: SheetDescription): (() => void)[] {
  return formats.map(({ area, format }) => () => {
    applyFormat(sheet, area, format)
  })
}

/** The widths of columns and the heights of rows, which no copy of cells takes along. */
export function sizeSteps(sheet: Excel.Worksheet, { widths, heights }: SheetDescription): (() => void)[] {
  return [
    ...widths.map((width, column) => () => {
      sheet.getRangeByIndexes(0, column, 1, 1).format.columnWidth = columnPoints(width)
    }),
    ...heights.map(({ row, rows, points }) => () => {
      sheet.getRangeByIndexes(row, 0, rows, 1).format.rowHeight = points
    })
  ]
}
