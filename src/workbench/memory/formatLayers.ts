/** The looks of one sheet's cells, kept as layers in the order in which they were laid: a whole column costs one. */
import { sharedPart, type Area } from '../../../shared/cells'
import type { CellFormat } from '../book'
import { sheetColumns, sheetRows } from '../../../shared/a1Notation'

/** Excel's look of a new cell, from memory. */
const plain: CellFormat = {
  bold: false,
  italic: false,
  size: 11,
  fontName: 'Calibri',
  color: '#000000',
  fill: '#FFFFFF',
  horizontal: 'General',
  vertical: 'Bottom',
  wrap: false,
  bottomEdge: null
}

interface Layer {
  area: Area
  format: Partial<CellFormat>
}

export class FormatLayers {
  private layers: Layer[] = []

  /** A fill of null or "" is no fill, which Excel reads as white. */
  lay(area: Area, format: Partial<CellFormat>): void {
    const filled = format.fill === null || format.fill === '' ? { ...format, fill: plain.fill } : format
    this.layers.push({ area, format: filled })
  }

  /** What lies wholly in the area is forgotten, so that a sheet that is filled again and again does not grow. */
  clear(area: Area): void {
    this.layers = this.layers.filter((layer) => !within(layer.area, area))
    if (this.layers.length) this.layers.push({ area, format: plain })
  }

  /** The looks of an area of another sheet, or of this one, in a place of its size. */
  copy(from: FormatLayers, area: Area, place: Area): void {
    const [down, across] = [place.row - area.row, place.column - area.column]
    const copied = from.layers.flatMap((layer) => {
      const shared = sharedPart(layer.area, area)
      if (shared === null) return []
      return [{ ...layer, area: { ...shared, row: shared.row + down, column: shared.column + across } }]
    })
    this.clear(place)
    this.layers.push(...copied)
  }

  /** The look that all cells share; null in each property in which they differ. */
  read(area: Area): CellFormat {
    const touching = this.layers.filter((layer) => overlap(layer.area, area))
    const [first = plain, ...others] = distinctCells(area, touching).map((cell) => look(cell, touching))
    const differing = (Object.keys(plain) as (keyof CellFormat)[]).filter((property) =>
      others.some((other) => other[property] !== first[property])
    )
    return { ...first, ...Object.fromEntries(differing.map((property) => [property, null])) }
  }

  /** Areas that were given a look; whole rows and columns do not count as used. */
  *areas(): Generator<Area> {
    for (const { area, format } of this.layers)
      if (format !== plain && area.rows < sheetRows && area.columns < sheetColumns) yield area
  }
}

/** Whether two areas share a cell: asked for every layer of every cell that is read, so without making an object. */
function overlap(a: Area, b: Area): boolean {
  return (
    a.row < b.row + b.rows &&
    b.row < a.row + a.rows &&
    a.column < b.column + b.columns &&
    b.column < a.column + a.columns
  )
}

function within(inner: Area, outer: Area): boolean {
  return (
    inner.row >= outer.row &&
    inner.row + inner.rows <= outer.row + outer.rows &&
    inner.column >= outer.column &&
    inner.column + inner.columns <= outer.column + outer.columns
  )
}

function look(cell: Area, layers: Layer[]): CellFormat {
  const covering = layers.filter((layer) => overlap(layer.area, cell))
  return Object.assign({}, plain, ...covering.map(({ format }) => format)) as CellFormat
}

/** One cell for each patch that the layers' edges cut the area into. */
function distinctCells(area: Area, layers: Layer[]): Area[] {
  const rows = starts(area.row, area.rows, layers, ({ area: { row, rows: count } }) => [row, row + count])
  const columns = starts(area.column, area.columns, layers, ({ area: { column, columns: count } }) => [
    column,
    column + count
  ])
  return rows.flatMap((row) => columns.map((column) => ({ row, column, rows: 1, columns: 1 })))
}

function starts(first: number, count: number, layers: Layer[], edges: (layer: Layer) => number[]): number[] {
  const cuts = layers.flatMap(edges).filter((edge) => edge > first && edge < first + count)
  return [...new Set([first, ...cuts])]
}
