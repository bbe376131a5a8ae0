import { SheetDraft, type TableColumn } from './draft'
import { pageBreaks, pageRoom, type PageMarks } from './pageBreaks'
import { looks, palette } from './palette'
import type { Content, Format, PageSetup } from './sheet'
import { foldText, linesNeeded, pointsForLines } from './wrapping'

/** Characters of body text that go on one character of column width at ten points; an estimate, fonts differ. */
const charactersPerWidth = 1.28

const bold: Format = { bold: true }
const wrapped: Format = { wrap: true }
const ruled: Format = { underline: palette.rule }
const toWriteOn: Format = { underline: palette.ink }

/** Height in points of so many lines of running text, closer than in a table. */
function proseHeight(lines: number, size: number): number {
  return Math.min(409, Math.ceil(lines * size * 1.28 + 3))
}

/** A sheet that is read on paper: prose in lines that end at the page's edge, larger tables, boxes to tick, lines to sign. */
export class PrintedDraft extends SheetDraft {
  private readonly known = new Map<string, Format>()
  private readonly pages: PageMarks = { starts: new Set(), blocks: [] }

  /** Columns that running text may fill; lines that are too long are hard to read. */
  measure: number

  /** `size` is that of the body text in points; headings have a colour of their own. */
  constructor(
    widths: number[],
    public size: number,
    private readonly headings: string = palette.moss
  ) {
    super(widths)
    this.measure = widths.length
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

  get body(): Format {
    return this.over(looks.body, { size: this.size })
  }

  /** One look over another. Equal looks are one object, which keeps long sheets small and quick to write. */
  private over(below: Format, look: Format): Format {
    const format = { ...below, ...look }
    const key = JSON.stringify(format)
    const known = this.known.get(key)
    if (known !== undefined) return known
    this.known.set(key, format)
    return format
  }

  /** Characters that fit from a column on; bold text is a little wider. */
  private room(column: number, columns: number, look: Format): number {
    const width = this.widths.slice(column, column + columns).reduce((sum, each) => sum + each + 0.7, 0)
    const tight = look.bold === true ? 0.92 : 1
    return Math.max(12, Math.floor((width * charactersPerWidth * tight * 10) / (look.size ?? this.size)))
  }

  heading(title: string, size = this.size + 3): number {
    const row = this.line([title], this.over(looks.section, { size, color: this.headings }))
    this.height(row, 1, pointsForLines(1, size))
    return row
  }

  /** Text from a column on, in as many rows as it needs; `lead` stands in the first column of the first row. */
  prose(text: string, look: Format = {}, column = 0, lead: string | null = null): void {
    const full = this.over(this.body, look)
    foldText(text, this.room(column, this.measure - column, full)).forEach((part, index) => {
      const cells: Content[] = Array<null>(column).fill(null)
      if (column > 0 && index === 0) cells[0] = lead
      const row = this.line([...cells, part], full)
      this.height(row, 1, proseHeight(1, full.size ?? this.size))
      if (column > 0 && index === 0) this.format(row, 0, 1, 1, bold)
    })
  }

  /** A label and a paragraph that wraps in the second column, so that it can be edited in place. */
  clause(label: string | null, text: string): void {
    const row = this.line([label, text], this.over(this.body, { vertical: 'top' }))
    this.format(row, 0, 1, 1, bold)
    this.format(row, 1, 1, 1, wrapped)
    const lines = linesNeeded(text, ((this.widths[1] ?? 9) * 10.4) / this.size)
    this.height(row, 1, proseHeight(lines, this.size))
  }

  /** A label and what it says beside it; an empty answer leaves a line to write on. */
  entry(label: string, content: Content, column: number, look: Format = {}): void {
    if (typeof content === 'string' && content.trim() !== '') {
      this.prose(content, look, column, label)
      return
    }
    const cells: Content[] = [label, ...Array<null>(column - 1).fill(null), content === '' ? null : content]
    const row = this.line(cells, this.over(this.body, look))
    this.height(row, 1, pointsForLines(1, this.size + 2))
    this.format(row, 0, 1, 1, bold)
    if (content === '' || content === null) this.format(row, column, 1, 1, toWriteOn)
    else this.format(row, column, 1, 1, { align: 'left' })
  }

  /** A sentence of a list; its further lines are set in. */
  bullet(text: string, look: Format = {}): void {
    const full = this.over(this.body, look)
    const lines = foldText(text, this.room(0, this.measure, full) - 4)
    lines.forEach((part, index) => {
      const row = this.line([`${index === 0 ? '•  ' : '    '}${part}`], full)
      this.height(row, 1, proseHeight(1, full.size ?? this.size))
    })
  }

  /** A box to tick and what is ticked. */
  tick(text: string, column = 1): void {
    this.prose(text, {}, column, '☐')
  }

  /** Labels, each with a line to write on after it; both in columns counted from 0. */
  toFill(places: readonly { label: string; at: number; from: number; columns: number }[]): void {
    const cells: Content[] = []
    for (const { label, at } of places) cells[at] = label
    const row = this.line(
      Array.from(cells, (cell) => cell ?? null),
      this.over(this.body, { vertical: 'bottom' })
    )
    this.height(row, 1, 27)
    for (const { from, columns } of places) this.format(row, from, 1, columns, toWriteOn)
  }

  /** A table in the size of the body; wrapped columns set the height of each row. Gives the row of the headers. */
  grid(columns: readonly TableColumn[], body: readonly Content[][], headerLines: number): number {
    const { size } = this
    const headerSize = size < 12 ? size - 1 : size
    const headers = columns.map(({ header }) => header)
    const top = this.line(headers, this.over(looks.header, { size: headerSize }))
    this.height(top, 1, pointsForLines(headerLines, headerSize))
    this.format(top + 1, 0, body.length, this.widths.length, this.body)
    columns.forEach(({ format }, index) => {
      if (format === undefined) return
      this.format(top + 1, index, body.length, 1, format)
      if (format.align !== undefined) this.format(top, index, 1, 1, { align: format.align })
    })
    for (const cells of body) {
      const row = this.rows.push(cells) - 1
      const lines = columns.map(({ format }, index) =>
        format?.wrap === true
          ? linesNeeded(cells[index] ?? null, ((this.widths[index] ?? 9) * 10.4) / size)
          : 1
      )
      this.height(row, 1, pointsForLines(Math.max(1, ...lines), size))
      this.format(row, 0, 1, this.widths.length, ruled)
    }
    return top
  }
}
