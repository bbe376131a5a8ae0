import type { CellStyle } from 'hucre'
import type { Format, SheetDescription } from '../documents/sheet'

const rgb = (color: string): { rgb: string } => ({ rgb: color.replace('#', '').toUpperCase() })

const vertical = { top: 'top', middle: 'center', bottom: 'bottom' } as const

/** A format as the file library names it. */
function styleOf(format: Format): CellStyle {
  const style: CellStyle = {}
  const { bold, italic, size, color, fill, align, wrap, numberFormat, underline } = format
  if (bold !== undefined || italic !== undefined || size !== undefined || color !== undefined)
    style.font = {
      name: 'Calibri',
      bold,
      italic,
      size: size ?? 11,
      color: color === undefined ? undefined : rgb(color)
    }
  if (fill !== undefined) style.fill = { type: 'pattern', pattern: 'solid', fgColor: rgb(fill) }
  if (align !== undefined || format.vertical !== undefined || wrap !== undefined)
    style.alignment = {
      horizontal: align,
      vertical: format.vertical === undefined ? undefined : vertical[format.vertical],
      wrapText: wrap
    }
  if (numberFormat !== undefined) style.numFmt = numberFormat
  if (underline !== undefined) style.border = { bottom: { style: 'thin', color: rgb(underline) } }
  return style
}

/** The look of every cell of a description, later formats over earlier ones; equal looks share one object. */
export class SheetStyles {
  private readonly cells: (Format | undefined)[][]
  private readonly merged = new Map<Format | undefined, Map<Format, Format>>()
  private readonly inner = new Map<Format, Format>()
  private readonly styles = new Map<Format, CellStyle>()

  constructor(description: SheetDescription) {
    this.cells = description.rows.map(() => [])
    for (const { area, format } of description.formats)
      for (let row = area.row; row < area.row + area.rows; row++) {
        const last = row === area.row + area.rows - 1
        this.addRow(row, area.column, area.columns, last ? format : this.withoutEdge(format))
      }
  }

  /** The format for all rows of an area but the last, which alone has the line below it. */
  private withoutEdge(format: Format): Format {
    if (format.underline === undefined) return format
    let inner = this.inner.get(format)
    if (inner === undefined) {
      inner = { ...format }
      delete inner.underline
      this.inner.set(format, inner)
    }
    return inner
  }

  private addRow(row: number, column: number, columns: number, format: Format): void {
    const cells = this.cells[row]
    if (cells === undefined) return
    for (let index = column; index < column + columns; index++) cells[index] = this.over(cells[index], format)
  }

  private over(below: Format | undefined, format: Format): Format {
    let known = this.merged.get(below)
    if (known === undefined) this.merged.set(below, (known = new Map<Format, Format>()))
    let both = known.get(format)
    if (both === undefined) known.set(format, (both = { ...below, ...format }))
    return both
  }

  /** The style of a cell, or undefined where it has none. */
  at(row: number, column: number): CellStyle | undefined {
    const format = this.cells[row]?.[column]
    if (format === undefined) return undefined
    let style = this.styles.get(format)
    if (style === undefined) this.styles.set(format, (style = styleOf(format)))
    return style
  }
}
