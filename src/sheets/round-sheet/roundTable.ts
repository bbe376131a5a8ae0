import { cellAddress } from '../../../shared/cells'
import { counted } from '../../../shared/words/counts'
import { hours as hoursText } from '../../../shared/words/figures'
import { rounded } from '../../../shared/words/rounding'
import { palette } from '../../../shared/palette'
import { cellFormats } from '../cellFormats'
import { cellsOf, headersOf, type Column } from '../columns'
import type { CrewDay } from '../crewDays'
import { looks } from '../looks'
import type { PrintedDraft } from '../printedDraft'
import { printedLines, printedPoints } from '../printedLines'
import type { Content, Formula } from '../sheet'
import type { RoundPlace } from './roundPlaces'
import type { WrittenLine } from './roundWords'
import { minutesOf, pointsPerCharacter } from './roundColumns'

/** Neighbors of a round that stand at one place on one day. */
interface Stretch {
  readonly place: RoundPlace<WrittenLine>
  readonly day: number
  readonly lines: WrittenLine[]
}

/** Rows, from 0, and what they add up to. */
interface Summed {
  readonly from: number
  readonly to: number
  readonly minutes: number
}

const dayLook = { bold: true, fill: palette.headerFill, underline: palette.ink } as const
const placeLook = { bold: true, color: palette.moss } as const
const unwrapped = { wrap: false } as const
const ruled = { underline: palette.rule } as const
const toWriteOn = { underline: palette.ink } as const

/** Points of a row with so many lines; closer than in a table for the desk, so that a street goes on a page. */
function tight(lines: number, size: number): number {
  return Math.ceil(2 * (lines * size * 1.22 + 0.25)) / 2
}

/** A round is a list of days; at each place of a day the lines stand below its name. */
export class RoundTable {
  constructor(
    private readonly draft: PrintedDraft,
    private readonly columns: readonly Column<WrittenLine>[]
  ) {}

  private get last(): number {
    return this.columns.length - 1
  }

  /** The row of headers, which is repeated at the head of each page. */
  headers(): number {
    const { draft, columns } = this
    const row = draft.line(
      columns.map(({ header }) => header),
      { ...looks.header, size: draft.size }
    )
    headersOf(columns).forEach(({ format }, at) => {
      if (format?.align !== undefined) draft.format(row, at, 1, 1, { align: format.align })
    })
    draft.height(row, 1, tight(2, draft.size))
    return row
  }

  private sum(parts: readonly Summed[]): Formula {
    const ranges = parts.map(({ from, to }) =>
      from === to
        ? cellAddress(from, this.last)
        : `${cellAddress(from, this.last)}:${cellAddress(to, this.last)}`
    )
    return { formula: `=SUM(${ranges.join(',')})`, value: totalOf(parts) }
  }

  /** A row that heads or closes lines: words at the left, their minutes at the right. */
  private band(text: string, parts: readonly Summed[] | null, look: object, points: number): number {
    const cells: Content[] = [text, ...Array<Content>(this.last - 1).fill(null)]
    cells.push(parts === null ? null : this.sum(parts))
    const row = this.draft.line(cells, look)
    this.draft.format(row, this.last, 1, 1, cellFormats.tenth)
    this.draft.height(row, 1, points)
    return row
  }

  /** Whether a text with nothing beside it runs over into the next column, and is not broken for it. */
  private runsOver(cells: readonly Content[], at: number): boolean {
    const { columns, draft } = this
    const cell = cells[at]
    const [own, next] = [columns[at], columns[at + 1]]
    if (typeof cell !== 'string' || cells[at + 1] !== null) return false
    if (own === undefined || next?.format?.wrap !== true) return false
    const points = printedPoints(cell, draft.size)
    return points > own.width * pointsPerCharacter && points <= (own.width + next.width) * pointsPerCharacter
  }

  /** Sets a row as high as its texts need. */
  private line(cells: Content[]): void {
    const { draft, columns, last } = this
    const row = draft.rows.push(cells) - 1
    draft.format(row, 0, 1, last + 1, ruled)
    let most = 1
    columns.forEach(({ format, width }, at) => {
      const cell = cells[at]
      if (format?.wrap !== true || typeof cell !== 'string') return
      if (this.runsOver(cells, at)) draft.format(row, at, 1, 1, unwrapped)
      else most = Math.max(most, printedLines(cell, width * pointsPerCharacter, draft.size, format.bold))
    })
    draft.height(row, 1, tight(most, draft.size))
  }

  private lines(lines: readonly WrittenLine[]): Summed {
    const { draft, columns } = this
    const from = draft.next
    columns.forEach(({ format }, at) => {
      if (format !== undefined) draft.format(from, at, lines.length, 1, format)
    })
    for (const line of lines) this.line(cellsOf(columns, line))
    return { from, to: draft.next - 1, minutes: minutesTogether(lines) }
  }

  /** The days with their places and trees, each with the sum of its minutes; gives the rows of the days. */
  days(
    days: readonly CrewDay<WrittenLine>[],
    places: readonly RoundPlace<WrittenLine>[],
    productiveHours: number
  ): void {
    const { draft } = this
    const stretches = stretchesOf(days, places)
    const seen = new Map<RoundPlace<WrittenLine>, Summed[]>()
    const dayRows: Summed[] = []
    days.forEach((day, at) => {
      const dayRow = this.band('', null, dayLook, tight(1, draft.size) + 6)
      const parts = stretches.filter((each) => each.day === at).map((each) => this.stretch(each, seen))
      const text = `Day ${String(at + 1)}: ${counted(day.stops.length, 'tree')}, ${hoursText(day.hours)} of ${String(productiveHours)} crew-hours`
      const cells = draft.rows[dayRow] as Content[]
      cells[0] = text + tooLong(day.hours, productiveHours)
      cells[this.last] = this.sum(parts)
      this.toFill(dayRow)
      dayRows.push({ from: dayRow, to: dayRow, minutes: totalOf(parts) })
    })
    const trees = days.reduce((sum, { stops }) => sum + stops.length, 0)
    if (days.length > 1)
      this.band(
        `All ${counted(days.length, 'day')}: ${counted(trees, 'tree')}`,
        dayRows,
        dayLook,
        tight(1, draft.size) + 2
      )
  }

  /** Room for the date and the names of the crew on the row of a day. */
  private toFill(row: number): void {
    const { draft, last } = this
    const label = last - 3
    ;(draft.rows[row] as Content[])[label] = 'Date, crew'
    draft.format(row, label, 1, 1, { align: 'right', bold: false })
    draft.format(row, label + 1, 1, 1, toWriteOn)
  }

  private stretch({ place, lines }: Stretch, seen: Map<RoundPlace<WrittenLine>, Summed[]>): Summed {
    const { draft } = this
    const points = tight(1, draft.size) + 1
    const earlier = seen.get(place) ?? []
    const words = earlier.length === 0 ? place.name : `${place.name}, continued`
    const row = this.band(`${words}: ${counted(lines.length, 'tree')}`, null, placeLook, points)
    const own = this.lines(lines)
    ;(draft.rows[row] as Content[])[this.last] = this.sum([own])
    const part: Summed = { from: row, to: row, minutes: own.minutes }
    const parts = [...earlier, part]
    seen.set(place, parts)
    const isEnd = lines.at(-1) === place.lines.at(-1)
    if (isEnd && parts.length > 1)
      this.band(
        `${place.name}, all ${counted(parts.length, 'day')}: ${counted(place.lines.length, 'tree')}`,
        parts,
        placeLook,
        points
      )
    return part
  }
}

const totalOf = (parts: readonly Summed[]): number =>
  rounded(
    parts.reduce((sum, { minutes }) => sum + minutes, 0),
    1
  )

function minutesTogether(lines: readonly WrittenLine[]): number {
  return rounded(
    lines.reduce((sum, { hours }) => sum + minutesOf(hours), 0),
    1
  )
}

/** A single tree may take longer than a day. */
function tooLong(hours: number, productiveHours: number): string {
  const taken = Math.ceil(hours / productiveHours - 1e-9)
  return taken > 1 ? `, longer than a day: plan ${counted(taken, 'day')}` : ''
}

function stretchesOf(
  days: readonly CrewDay<WrittenLine>[],
  places: readonly RoundPlace<WrittenLine>[]
): Stretch[] {
  const placeOf = new Map(places.flatMap((place) => place.lines.map((line) => [line, place] as const)))
  const stretches: Stretch[] = []
  days.forEach(({ stops }, day) => {
    for (const line of stops) {
      const place = placeOf.get(line)
      if (place === undefined) throw new Error('A tree of the round stands at no place.')
      const open = stretches.at(-1)
      if (open?.day === day && open.place === place) open.lines.push(line)
      else stretches.push({ place, day, lines: [line] })
    }
  })
  return stretches
}
