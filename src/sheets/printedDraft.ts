import { keepCompiled } from '../../shared/keepCompiled'
import { SheetDraft, type TableColumn } from './draft'
import { columnPoints, pageBreaks, pageRoom, pointsBetween, type PageMarks } from './pageBreaks'
import { looks } from './looks'
import { palette } from '../../shared/palette'
import type { Content, Format, PageSetup, SheetDescription } from './sheet'
import { pointsPerWidth, printedFold, printedLines, printedPoints } from './printedLines'
import { linesNeeded, pointsForLines } from './wrapping'

const plain: Format = {}
const bold: Format = { bold: true }
const wrapped: Format = { wrap: true }
const ruled: Format = { underline: palette.rule }
const atTop: Format = { vertical: 'top' }
const atBottom: Format = { vertical: 'bottom' }
const toLeft: Format = { align: 'left' }
const toWriteOn: Format = { underline: palette.ink }

/** Points kept free below the rows of a table for its row of sums. */
const sumsRoom = 26

function wrappedOf(columns: readonly TableColumn[]): number[] {
  const wrapping: number[] = []
  for (let index = 0; index < columns.length; index++)
    if (columns[index]?.format?.wrap === true) wrapping.push(index)
  return wrapping
}

const sizes = new Map<number, Format>()

/** The same object for the same size. */
function sized(size: number): Format {
  let look = sizes.get(size)
  if (look === undefined) sizes.set(size, (look = { size }))
  return look
}

/** Height in points of so many lines of running text, closer than in a table; `air` in all, above and below. */
function proseHeight(lines: number, size: number, air = 3): number {
  return Math.min(409, Math.ceil(lines * size * 1.28 + air))
}

/** A sheet that is read on paper: prose in lines that end at the page's edge, larger tables, boxes to tick, lines to sign. */
export class PrintedDraft extends SheetDraft {
  private readonly known = new Map<Format, Map<Format, Format>>()
  private readonly equals = new Map<string, Format>()
  private readonly pages: PageMarks = { starts: new Set(), blocks: [] }

  /** Columns that running text may fill; lines that are too long are hard to read. */
  measure: number

  /** Points between the lines of running text, beside what its size asks; lines are closer where it is below 0. */
  leading = 3

  /** The look of the body text. */
  body: Format

  /** The look of the whole sheet, which everything else is laid over. */
  private readonly base: Format

  /** `size` is that of the body text in points; headings have a color of their own. */
  constructor(
    widths: number[],
    public size: number,
    private readonly headings: string = palette.moss
  ) {
    super(widths)
    this.measure = widths.length
    this.base = this.body = this.shared({ ...looks.body, size })
  }

  override format(row: number, column: number, rows: number, columns: number, format: Format): void {
    if (format !== this.base) super.format(row, column, rows, columns, format)
  }

  override finish(
    rest: Omit<SheetDescription, 'rows' | 'formats' | 'tables' | 'heights' | 'widths' | 'pictures'>
  ): SheetDescription {
    const area = { row: 0, column: 0, rows: this.next, columns: this.widths.length }
    this.formats.unshift({ area, format: this.base })
    return super.finish(rest)
  }

  /** Points of the body text from here on. */
  resize(size: number): void {
    this.size = size
    this.body = this.shared({ ...looks.body, size })
  }

  /** A little air between two parts. */
  air(points = 8): void {
    this.blank()
    this.height(this.next - 1, 1, points)
  }

  /** What follows begins a page. */
  newPage(): void {
    this.pages.starts.add(this.next)
  }

  /** What follows, up to the next such mark, stays on one page where it fits. */
  keepTogether(): void {
    this.pages.blocks.push(this.next)
  }

  /** The page set-up with the rows that begin a page. */
  page(setup: PageSetup): PageSetup {
    const room = pageRoom(setup, this.widths)
    return { ...setup, breaks: pageBreaks(this.heights, this.next, this.pages, room) }
  }

  /** One look over another. Equal looks are one object, which keeps long sheets small and quick to write. */
  private over(below: Format, look: Format): Format {
    let over = this.known.get(below)
    if (over === undefined) this.known.set(below, (over = new Map<Format, Format>()))
    let format = over.get(look)
    if (format === undefined) over.set(look, (format = this.shared({ ...below, ...look })))
    return format
  }

  private shared(format: Format): Format {
    const key = JSON.stringify(format)
    const equal = this.equals.get(key)
    if (equal !== undefined) return equal
    this.equals.set(key, format)
    return format
  }

  /** A text in lines that fit from a column on, by the letters of the font, with so many points to spare. */
  private folded(text: string, column: number, look: Format, spare = 0): string[] {
    const points = columnPoints(...this.widths.slice(column, this.measure)) - spare
    return printedFold(text, points, look.size ?? this.size, look.bold === true)
  }

  /** A heading on as many lines as it needs; gives the row of the last. */
  heading(title: string, size = this.size + 3): number {
    const look = this.over(looks.section, { size, color: this.headings })
    const points = this.isClose ? Math.ceil(size * 1.45) : pointsForLines(1, size)
    for (const part of this.folded(title, 0, { ...bold, size }))
      this.height(this.line([part], look), 1, points)
    return this.next - 1
  }

  private get isClose(): boolean {
    return this.leading < 1
  }

  /** Text from a column on, in as many rows as it needs; `lead` stands in the first column of the first row. */
  prose(text: string, look: Format = plain, column = 0, lead: string | null = null): void {
    const full = this.over(this.body, look)
    const points = proseHeight(1, full.size ?? this.size, this.leading)
    const parts = this.folded(text, column, full)
    for (let index = 0; index < parts.length; index++) {
      const cells: Content[] = []
      for (let before = 0; before < column; before++) cells.push(null)
      cells.push(parts[index] ?? '')
      if (column > 0 && index === 0) cells[0] = lead
      this.height(this.line(cells, full), 1, points)
    }
    if (column > 0 && lead !== null) this.format(this.next - parts.length, 0, 1, 1, bold)
  }

  /** Labels and paragraphs that wrap in the second column, so that they can be edited in place. */
  clauses(clauses: readonly { label: string; lines: readonly string[] }[]): void {
    const room = this.widths[1] ?? 9
    const top = this.next
    for (const { label, lines } of clauses)
      for (let index = 0; index < lines.length; index++) {
        const text = lines[index] ?? ''
        const row = this.rows.push([index === 0 ? label : null, text]) - 1
        this.height(row, 1, proseHeight(linesNeeded(text, room, this.size), this.size))
      }
    const count = this.next - top
    this.format(top, 0, count, this.widths.length, this.over(this.body, atTop))
    this.format(top, 0, count, 1, bold)
    this.format(top, 1, count, 1, wrapped)
  }

  /** A label and what it says beside it; an empty answer leaves a line to write on. */
  entry(label: string, content: Content, column: number, look: Format = plain): void {
    if (typeof content === 'string' && content.trim() !== '') {
      this.prose(content, look, column, label)
      return
    }
    const cells: Content[] = [label, ...Array<null>(column - 1).fill(null), content === '' ? null : content]
    const row = this.line(cells, this.over(this.body, look))
    this.height(row, 1, pointsForLines(1, this.size + 2))
    this.format(row, 0, 1, 1, bold)
    if (content === '' || content === null) this.format(row, column, 1, 1, toWriteOn)
    else this.format(row, column, 1, 1, toLeft)
  }

  /** A sentence of a list; its further lines are set in. */
  bullet(text: string, look: Format = plain): void {
    const full = this.over(this.body, look)
    const lines = this.folded(text, 0, full, printedPoints('•  ', full.size ?? this.size))
    lines.forEach((part, index) => {
      const row = this.line([`${index === 0 ? '•  ' : '    '}${part}`], full)
      this.height(row, 1, proseHeight(1, full.size ?? this.size, this.leading))
    })
  }

  /** A box to tick and what is ticked. */
  tick(text: string, column = 1): void {
    this.prose(text, plain, column, '☐')
  }

  /** Labels, each with a line to write on after it; both in columns counted from 0. */
  toFill(places: readonly { label: string; at: number; from: number; columns: number }[]): void {
    const cells: Content[] = []
    for (const { label, at } of places) {
      while (cells.length < at) cells.push(null)
      cells.push(label)
    }
    const row = this.line(cells, this.over(this.body, atBottom))
    this.height(row, 1, this.isClose ? 24 : 27)
    for (const { from, columns } of places) this.format(row, from, 1, columns, toWriteOn)
  }

  /** Points that a row of a table takes for its wrapped columns. */
  private rowPoints(cells: readonly Content[], wrapping: readonly number[]): number {
    let most = 1
    for (const index of wrapping) {
      const cell = cells[index]
      if (typeof cell !== 'string') continue
      most = Math.max(
        most,
        printedLines(cell, (this.widths[index] ?? 9) * pointsPerWidth, this.size, index === 0)
      )
    }
    return pointsForLines(most, this.size)
  }

  /** A table in the size of the body; wrapped columns set the height of each row. Gives the row of the headers. */
  grid(columns: readonly TableColumn[], body: readonly Content[][], headerLines: number): number {
    const { size } = this
    const headerSize = size < 12 ? size - 1 : size
    const headers = columns.map(({ header }) => header)
    const top = this.line(headers, this.over(looks.header, sized(headerSize)))
    this.height(top, 1, pointsForLines(headerLines, headerSize))
    this.format(top + 1, 0, body.length, this.widths.length, this.body)
    this.columnLooks(columns, top, body.length)
    const wrapping = wrappedOf(columns)
    for (const cells of body) {
      const row = this.rows.push(cells) - 1
      this.height(row, 1, this.rowPoints(cells, wrapping))
      this.format(row, 0, 1, this.widths.length, ruled)
    }
    return top
  }

  /**
   * A table that begins on the page of `start` and runs over as many as it needs, its headers at the head of each; the end
   * of a page keeps room for a row of sums.
   */
  gridOverPages(
    columns: readonly TableColumn[],
    body: readonly Content[][],
    headerLines: number,
    page: Pick<PageSetup, 'paper' | 'orientation'>,
    start: number
  ): void {
    const wrapping = wrappedOf(columns)
    const room = pageRoom(page, this.widths) - pointsForLines(headerLines, this.size) - sumsRoom
    let left = room - pointsBetween(this.heights, start, this.next)
    let onPage: Content[][] = []
    for (const cells of body) {
      const points = this.rowPoints(cells, wrapping)
      if (points > left && onPage.length > 0) {
        this.grid(columns, onPage, headerLines)
        this.newPage()
        onPage = []
        left = room
      }
      onPage.push(cells)
      left -= points
    }
    this.grid(columns, onPage, headerLines)
  }
}

keepCompiled(new PrintedDraft([], 10))
