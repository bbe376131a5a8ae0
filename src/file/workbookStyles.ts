import type { Area } from '../../shared/cells'
import type { Format, SheetDescription } from '../sheets/sheet'
import { fileRgb, type FileStyle } from './file-library/fileStyle'

const vertical = { top: 'top', middle: 'center', bottom: 'bottom' } as const

/** A format as a file names it. */
function styleOf(format: Format): FileStyle {
  const style: FileStyle = {}
  const { bold, italic, size, color, fill, align, wrap, numberFormat, underline } = format
  if (bold !== undefined || italic !== undefined || size !== undefined || color !== undefined)
    style.font = {
      name: 'Calibri',
      bold,
      italic,
      size: size ?? 11,
      color: color === undefined ? undefined : fileRgb(color)
    }
  if (fill !== undefined) style.fill = { type: 'pattern', pattern: 'solid', fgColor: fileRgb(fill) }
  if (align !== undefined || format.vertical !== undefined || wrap !== undefined)
    style.alignment = {
      horizontal: align,
      vertical: format.vertical === undefined ? undefined : vertical[format.vertical],
      wrapText: wrap
    }
  if (numberFormat !== undefined) style.numFmt = numberFormat
  if (underline !== undefined) style.border = { bottom: { style: 'thin', color: fileRgb(underline) } }
  return style
}

/** How a cell looks; cells that look alike share one. */
export interface CellLook {
  style: FileStyle | undefined
  /** Whether it can be seen on a blank cell. */
  shows: boolean
}

interface Layer extends CellLook {
  format: Format
  /** What comes of laying a format over this one. */
  over: Map<Format, Layer>
}

const showsBlank = ({ fill, underline }: Format): boolean => fill !== undefined || underline !== undefined

/** The looks of the cells of a row from the left; rows that look alike share one. */
export interface RowLook {
  looks: readonly CellLook[]
}

interface RowLayers extends RowLook {
  looks: readonly Layer[]
  /** What comes of laying a format over some of the columns. */
  over: Map<Format, Map<string, RowLayers>>
}

/** How the rows of a description look, later formats over earlier ones. */
export class SheetLooks {
  private readonly bare: Layer = { format: {}, style: undefined, shows: false, over: new Map() }
  private readonly rows: RowLayers[]
  private readonly inner = new Map<Format, Format>()
  private readonly equals = new Map<string, Layer>()

  constructor({ rows, widths, formats }: Pick<SheetDescription, 'rows' | 'widths' | 'formats'>) {
    const blank: RowLayers = { looks: widths.map(() => this.bare), over: new Map() }
    this.rows = rows.map(() => blank)
    for (const { area, format } of formats) {
      const columns = `${String(area.column)} ${String(area.columns)}`
      const inner = this.withoutEdge(format)
      const last = area.row + area.rows - 1
      for (let row = area.row; row <= last; row++) {
        const below = this.rows[row]
        if (below !== undefined)
          this.rows[row] = this.laid(below, columns, area, row === last ? format : inner)
      }
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

  private laid(below: RowLayers, columns: string, area: Area, format: Format): RowLayers {
    let known = below.over.get(format)
    if (known === undefined) below.over.set(format, (known = new Map<string, RowLayers>()))
    let row = known.get(columns)
    if (row === undefined) {
      const within = (at: number) => at >= area.column && at < area.column + area.columns
      const looks = below.looks.map((look, at) => (within(at) ? this.over(look, format) : look))
      known.set(columns, (row = { looks, over: new Map() }))
    }
    return row
  }

  private over(below: Layer, format: Format): Layer {
    const known = below.over.get(format)
    if (known !== undefined) return known
    const both = { ...below.format, ...format }
    const key = JSON.stringify(Object.entries(both).sort(([a], [b]) => (a < b ? -1 : 1)))
    let layer = this.equals.get(key)
    if (layer === undefined) {
      layer = { format: both, style: styleOf(both), shows: showsBlank(both), over: new Map() }
      this.equals.set(key, layer)
    }
    below.over.set(format, layer)
    return layer
  }

  row(row: number): RowLook {
    return this.rows[row] ?? { looks: [] }
  }
}
