import type { PageSetup, RowHeight } from './sheet'

/** Rows that must begin a page, and rows where something begins that should stay on one page. */
export interface PageMarks {
  starts: Set<number>
  blocks: number[]
}

/** Points of a row without a height of its own. */
export const standardRow = 15

/** Points across and down, ISO 216 and ANSI/ASME Y14.1 (from memory). */
const papers = { letter: [612, 792], a4: [595, 842] } as const

/** Points of paper left free on either side, above and below; two lines at the foot of a page need 54. */
const margins = {
  usual: { beside: 36, above: 54, below: 54 },
  narrow: { beside: 28, above: 30, below: 43 }
} as const

/** The margins of a page, the usual ones unless it says otherwise. */
export function marginsOf({ margins: kind = 'usual' }: Pick<PageSetup, 'margins'>): {
  readonly beside: number
  readonly above: number
  readonly below: number
} {
  return margins[kind]
}

/**
 * How much wider than computed columns may come out: 7 pixels a character on a screen, but 0.507 em of the standard font,
 * 11 points, where a program goes by the letters themselves (measured in LibreOffice).
 */
export const widerColumns = 1.07

/**
 * The same on a machine without the standard font, whose fallback has digits of 0.636 em (measured in LibreOffice with
 * DejaVu Sans). Columns that are a page wide with this to spare are printed on one page everywhere, at their full size.
 */
const widestColumns = 1.34

/** Width in points of columns of so many characters of the standard font: 7 pixels each and 5 a column, 96 to 72. */
export function columnPoints(...characters: readonly number[]): number {
  return characters.reduce((sum, width) => sum + (width * 7 + 5) * 0.75, 0)
}

/** Whether a sheet is printed at a scale, and not as wide as its page. */
export function isScaled({ breaks = [], fitsWidth }: PageSetup): boolean {
  return breaks.length > 0 && fitsWidth !== true
}

type Paper = Pick<PageSetup, 'paper' | 'orientation' | 'columns' | 'margins'>

/** The characters that so many columns may have together to stay on one page across in any font. */
export function columnsInAnyFont(page: Paper, columns: number): number {
  return (pageAcross(page) / widestColumns / 0.75 - 5 * columns) / 7
}

function pointsOf({ paper, orientation }: Paper): { across: number; down: number } {
  const [short, long] = papers[paper]
  return orientation === 'portrait' ? { across: short, down: long } : { across: long, down: short }
}

/**
 * The scale in whole percent, at most 100, at which the columns are one page across in every program. A sheet with page breaks of its own is printed at a scale,
 * since Excel passes over such breaks where it is told to fit a page (from memory).
 */
export function pageScale(page: Paper, widths: readonly number[]): number {
  const wide = columnPoints(...widths.slice(0, page.columns))
  const room = pageAcross(page)
  return Math.min(100, Math.floor((100 * room) / (widerColumns * wide)))
}

/** Points of rows that a page holds, less a little for rounding. */
export function pageRoom(page: Paper, widths: readonly number[]): number {
  return (
    (pointsOf(page).down - marginsOf(page).above - marginsOf(page).below - 12) /
    (pageScale(page, widths) / 100)
  )
}

/** Points across a page between its margins. */
export function pageAcross(page: Paper): number {
  return pointsOf(page).across - 2 * marginsOf(page).beside
}

/** Pages that rows take where each ends when it is full, a row of headers at the head of every page after its own. */
export function pagesTaken(
  heights: readonly RowHeight[],
  count: number,
  titleRow: number,
  room: number
): number {
  const points = heightsOf(heights, count)
  const repeated = points[titleRow] ?? 0
  let pages = 1
  let used = 0
  points.forEach((height, row) => {
    if (used + height > room) {
      pages += 1
      used = row > titleRow ? repeated : 0
    }
    used += height
  })
  return pages
}

/** Points of the rows from one up to another, the second not included. */
export function pointsBetween(heights: readonly RowHeight[], from: number, to: number): number {
  let points = Math.max(0, to - from) * standardRow
  for (const { row, rows, points: height } of heights) {
    const count = Math.min(row + rows, to) - Math.max(row, from)
    if (count > 0) points += count * (height - standardRow)
  }
  return points
}

function heightsOf(heights: readonly RowHeight[], count: number): Float64Array {
  const points = new Float64Array(count).fill(standardRow)
  for (const { row, rows, points: height } of heights) points.fill(height, row, row + rows)
  return points
}

/** The points from each block up to where the next one, or a page, begins. */
function lengthsOf(points: Float64Array, { starts, blocks }: PageMarks): Map<number, number> {
  const ends = [...starts, ...blocks, points.length].sort((a, b) => a - b)
  const lengths = new Map<number, number>()
  let at = 0
  for (const start of blocks) {
    while ((ends[at] ?? points.length) <= start && at < ends.length) at++
    const end = ends[at] ?? points.length
    let length = 0
    for (let row = start; row < end; row++) length += points[row] ?? 0
    lengths.set(start, length)
  }
  return lengths
}

/**
 * The rows that begin a page: those that must, and each block that would run over the end of a page though it fits on a
 * fresh one. A block longer than a page runs on.
 */
export function pageBreaks(
  heights: readonly RowHeight[],
  count: number,
  marks: PageMarks,
  room: number
): number[] {
  const points = heightsOf(heights, count)
  const lengths = lengthsOf(points, marks)
  const breaks: number[] = []
  let used = 0
  points.forEach((height, row) => {
    const length = lengths.get(row) ?? 0
    const runsOver = used > 0 && length <= room && used + length > room
    if (row > 0 && (marks.starts.has(row) || runsOver)) {
      breaks.push(row)
      used = 0
    } else if (used + height > room) used = 0
    used += height
  })
  return breaks
}
