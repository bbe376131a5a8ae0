import { keepCompiled } from '../../shared/keepCompiled'
import type { Area } from '../../shared/cells'
import { readSerial } from '../../shared/dates'
import { cellFormats } from './cellFormats'
import { looks } from './looks'
import type { Content, Format, RowHeight, SheetDescription, SheetPicture, SheetTable } from './sheet'
import { ColumnLines, pointsForLines } from './wrapping'

/** A column of a table: its header, its look and whether long text wraps. */
export interface TableColumn {
  header: string
  format?: Format
}

/** How many of the last looks are searched for one to carry on. */
const looksBack = 6

const bold: Format = { bold: true }

const alignments = {
  left: { align: 'left' },
  center: { align: 'center' },
  right: { align: 'right' }
} as const satisfies Record<string, Format>

interface Run {
  from: number
  count: number
  look: Format
}

/** The neighbors that share a look. */
function runs(columns: readonly TableColumn[], lookOf: (format: Format) => Format | undefined): Run[] {
  const found: Run[] = []
  columns.forEach(({ format }, at) => {
    const look = format === undefined ? undefined : lookOf(format)
    if (look === undefined) return
    const last = found.at(-1)
    if (last !== undefined && last.look === look && last.from + last.count === at) last.count += 1
    else found.push({ from: at, count: 1, look })
  })
  return found
}

/** The same columns stand in many tables of a sheet. */
const knownRuns = new WeakMap<readonly TableColumn[], { body: Run[]; header: Run[] }>()

function runsOf(columns: readonly TableColumn[]): { body: Run[]; header: Run[] } {
  let found = knownRuns.get(columns)
  if (found === undefined) {
    const body = runs(columns, (format) => format)
    const header = runs(columns, ({ align }) => (align === undefined ? undefined : alignments[align]))
    knownRuns.set(columns, (found = { body, header }))
  }
  return found
}

/** A sheet being set from top to bottom: lines of text, tables, and the formats that go with them. */
export class SheetDraft {
  readonly rows: Content[][] = []
  readonly formats: SheetDescription['formats'] = []
  readonly tables: SheetTable[] = []
  readonly heights: RowHeight[] = []
  readonly pictures: SheetPicture[] = []

  constructor(readonly widths: number[]) {}

  /** The row that comes next, from 0. */
  get next(): number {
    return this.rows.length
  }

  /** A look over cells. Where the same look ends right above, it is carried on, which keeps long sheets short. */
  format(row: number, column: number, rows: number, columns: number, format: Format): void {
    if (rows <= 0 || columns <= 0) return
    const above = this.endingAt(row, column, columns, format)
    if (above === null) this.formats.push({ area: { row, column, rows, columns }, format })
    else above.rows += rows
  }

  /** The area of the same look and columns that ends above a row, if no later look reaches below it. */
  private endingAt(row: number, column: number, columns: number, format: Format): Area | null {
    const { formats } = this
    // A line is drawn along the bottom of its area: each area has its own.
    if (format.underline !== undefined) return null
    for (let at = formats.length - 1; at >= Math.max(0, formats.length - looksBack); at--) {
      const { area, format: look } = formats[at] as SheetDescription['formats'][number]
      const end = area.row + area.rows
      if (end > row) return null
      if (end === row && look === format && area.column === column && area.columns === columns) return area
    }
    return null
  }

  /** A row of cells from the first column on, in one look across the whole width. */
  line(cells: Content[], format: Format): number {
    const row = this.rows.push(cells) - 1
    this.format(row, 0, 1, this.widths.length, format)
    return row
  }

  title(text: string): void {
    this.height(this.line([text], looks.title), 1, 30)
  }

  /** A label and, in the next column, what it says: a sentence that runs to the right. */
  labeled(label: string, content: Content, look: Format = looks.lead): number {
    const row = this.line([label, content], look)
    this.format(row, 0, 1, 1, bold)
    return row
  }

  /** The day the document is made for. */
  dated(isoDate: string): void {
    const row = this.labeled('Made for', { date: readSerial(isoDate) ?? 0 })
    this.format(row, 1, 1, 1, cellFormats.date)
  }

  blank(): void {
    this.rows.push([])
  }

  section(title: string): void {
    this.blank()
    this.height(this.line([title], looks.section), 1, 20)
  }

  height(row: number, rows: number, points: number): void {
    const last = this.heights.at(-1)
    if (last !== undefined && last.row + last.rows === row && last.points === points) last.rows += rows
    else this.heights.push({ row, rows, points })
  }

  /** Headers and rows; wrapped columns set the height of each row. Gives the row of the headers. */
  table(columns: TableColumn[], body: Content[][], headerLines = 1, headerSize = 9): number {
    const top = this.line(
      columns.map((column) => column.header),
      {}
    )
    this.format(top, 0, 1, this.widths.length, looks.header)
    if (headerSize !== looks.header.size) this.format(top, 0, 1, this.widths.length, { size: headerSize })
    this.height(top, 1, pointsForLines(headerLines, headerSize))
    this.format(top + 1, 0, body.length, this.widths.length, looks.body)
    this.columnLooks(columns, top, body.length)
    const wrapped = columns.flatMap((column, index) => (column.format?.wrap === true ? [index] : []))
    const lines = wrapped.map(
      (index) => new ColumnLines(this.widths[index] ?? 9, columns[index]?.format?.bold === true)
    )
    for (const cells of body) {
      const row = this.rows.push(cells) - 1
      let most = 1
      for (let at = 0; at < wrapped.length; at++)
        most = Math.max(most, lines[at]?.of(cells[wrapped[at] ?? 0] ?? null) ?? 1)
      this.height(row, 1, pointsForLines(most, 10))
    }
    if (body.length > 0) this.format(top + body.length, 0, 1, this.widths.length, looks.groupEnd)
    return top
  }

  /** The look of each column below its header, and its alignment in the header; neighbors that share one get it at once. */
  protected columnLooks(columns: readonly TableColumn[], top: number, rows: number): void {
    const { body, header } = runsOf(columns)
    for (const { from, count, look } of body) this.format(top + 1, from, rows, count, look)
    for (const { from, count, look } of header) this.format(top, from, 1, count, look)
  }

  finish(
    rest: Omit<SheetDescription, 'rows' | 'formats' | 'tables' | 'heights' | 'widths' | 'pictures'>
  ): SheetDescription {
    const { rows, formats, tables, heights, widths, pictures } = this
    return { ...rest, rows, formats, tables, heights, widths, ...(pictures.length === 0 ? {} : { pictures }) }
  }
}

keepCompiled(new SheetDraft([]))
