/** How cells look in the grid, in the words of the book: fonts, fills, edges, widths and heights. */
import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  VerticalAlign,
  WrapStrategy,
  type IStyleData,
  type Nullable
} from '@univerjs/core'
import type { Area } from '../../../shared/cells'
import type { Book, CellFormat } from '../book'
import { growSheet } from './bounds'
import { clippedToSheet, type GridContext } from './context'
import { standardFont, standardSize } from './standardSheet'

type LookPart = Pick<
  Book,
  | 'format'
  | 'setFormat'
  | 'columnWidth'
  | 'setColumnWidth'
  | 'rowHeight'
  | 'setRowHeight'
  | 'rowHidden'
  | 'columnHidden'
  | 'mergedAreas'
>

const horizontals = {
  General: null,
  Left: HorizontalAlign.LEFT,
  Center: HorizontalAlign.CENTER,
  Right: HorizontalAlign.RIGHT
}
const verticals = { Top: VerticalAlign.TOP, Center: VerticalAlign.MIDDLE, Bottom: VerticalAlign.BOTTOM }

function keyOf<T extends object>(table: T, value: unknown, otherwise: keyof T): keyof T {
  const found = (Object.keys(table) as (keyof T)[]).find((key) => table[key] === value)
  return found ?? otherwise
}

export function formatOf(style: Nullable<IStyleData>): CellFormat {
  return {
    bold: style?.bl === BooleanNumber.TRUE,
    italic: style?.it === BooleanNumber.TRUE,
    size: style?.fs ?? standardSize,
    fontName: style?.ff ?? standardFont,
    color: style?.cl?.rgb ?? '#000000',
    fill: style?.bg?.rgb ?? '#FFFFFF',
    horizontal: keyOf(horizontals, style?.ht ?? null, 'General'),
    vertical: keyOf(verticals, style?.vt, 'Bottom'),
    wrap: style?.tb === WrapStrategy.WRAP,
    bottomEdge: style?.bd?.b?.cl?.rgb ?? null
  }
}

/** The grid's style for the parts of a format that are named; null takes a part away. */
export function styleOf(format: Partial<CellFormat>): IStyleData {
  const style: IStyleData = {}
  const flag = (on: boolean | null) => (on === true ? BooleanNumber.TRUE : BooleanNumber.FALSE)
  if (format.bold !== undefined) style.bl = flag(format.bold)
  if (format.italic !== undefined) style.it = flag(format.italic)
  if (typeof format.size === 'number') style.fs = format.size
  if (typeof format.fontName === 'string') style.ff = format.fontName
  if (format.color !== undefined) style.cl = format.color === null ? null : { rgb: format.color }
  if (format.fill !== undefined) style.bg = !format.fill ? null : { rgb: format.fill }
  if (format.horizontal) style.ht = horizontals[format.horizontal]
  if (format.vertical) style.vt = verticals[format.vertical]
  if (format.wrap !== undefined) style.tb = format.wrap === true ? WrapStrategy.WRAP : WrapStrategy.OVERFLOW
  if (format.bottomEdge !== undefined)
    style.bd = {
      b: format.bottomEdge === null ? null : { s: BorderStyleTypes.THIN, cl: { rgb: format.bottomEdge } }
    }
  return style
}

const pixels = (points: number) => Math.round((points * 96) / 72)
const points = (pixelCount: number) => (pixelCount * 72) / 96

/** The parts that all the cells share; null where they differ. */
function common(formats: Iterable<CellFormat>): CellFormat {
  let shared: CellFormat | null = null
  for (const next of formats) {
    if (shared === null) shared = { ...next }
    else
      for (const key of Object.keys(shared) as (keyof CellFormat)[])
        if (shared[key] !== next[key]) Object.assign(shared, { [key]: null })
  }
  return shared ?? formatOf(null)
}

export function looksOf(context: GridContext): LookPart {
  function* formats(sheetId: string, area: Area): Iterable<CellFormat> {
    const sheet = context.sheet(sheetId)
    const styles = context.workbook().getStyles()
    const inside = clippedToSheet(sheet, area)
    for (let row = 0; row < inside.rows; row++)
      for (let column = 0; column < inside.columns; column++)
        yield formatOf(styles.getStyleByCell(sheet.getCellRaw(area.row + row, area.column + column)))
  }
  return {
    format: (sheetId, area) => common(formats(sheetId, area)),
    setFormat(sheetId, area, format) {
      const sheet = context.peek(sheetId)
      const style = styleOf(format)
      const whole = area.rows > sheet.getRowCount() || area.columns > sheet.getColumnCount()
      if (!whole) growSheet(context, sheetId, area)
      const inside = clippedToSheet(sheet, area)
      if (inside.rows * inside.columns === 0) return
      context.writer.put(sheetId, inside, () => ({ s: style }), false)
      if (format.wrap === true) context.writer.fitRows(sheetId, inside)
    },
    columnWidth: (sheetId, column) => points(context.sheet(sheetId).getColumnWidth(column)),
    setColumnWidth(sheetId, column, columns, width) {
      growSheet(context, sheetId, { row: 0, rows: 1, column, columns })
      context.writer.setSize(sheetId, 'widths', column, columns, pixels(width))
    },
    rowHeight: (sheetId, row) => points(context.sheet(sheetId).getRowHeight(row)),
    setRowHeight(sheetId, row, rows, height) {
      growSheet(context, sheetId, { row, rows, column: 0, columns: 1 })
      context.writer.setSize(sheetId, 'heights', row, rows, pixels(height))
    },
    rowHidden(sheetId, row) {
      const sheet = context.peek(sheetId)
      return row < sheet.getRowCount() && !sheet.getRowVisible(row)
    },
    columnHidden(sheetId, column) {
      const sheet = context.peek(sheetId)
      return column < sheet.getColumnCount() && !sheet.getColVisible(column)
    },
    mergedAreas: (sheetId) =>
      context
        .sheet(sheetId)
        .getMergeData()
        .map((range) => ({
          row: range.startRow,
          column: range.startColumn,
          rows: range.endRow - range.startRow + 1,
          columns: range.endColumn - range.startColumn + 1
        }))
  }
}
