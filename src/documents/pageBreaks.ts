import type { PageSetup, RowHeight } from './sheet'

/** Rows that must begin a page, and rows where something begins that should stay on one page. */
export interface PageMarks {
  starts: Set<number>
  blocks: number[]
}

/** Points of a row without a height of its own. */
const standardRow = 15

/** Points across and down, ISO 216 and ANSI/ASME Y14.1 (from memory), and the writers' margins beside and above. */
const papers = { letter: [612, 792], a4: [595, 842] } as const
const margins = { beside: 0.7 * 72, above: 0.75 * 72 }

/**
 * Points of rows that a page holds, less a little for rounding. A sheet wider than the page is printed smaller, so that
 * more rows fit. Widths in characters: 7 pixels each and 5 a column, 96 to 72 points.
 */
export function pageRoom(
  { paper, orientation }: Pick<PageSetup, 'paper' | 'orientation'>,
  widths: number[]
): number {
  const [short, long] = papers[paper]
  const [across, down] = orientation === 'portrait' ? [short, long] : [long, short]
  const wide = widths.reduce((sum, width) => sum + (width * 7 + 5) * 0.75, 0)
  const scale = Math.min(1, (across - 2 * margins.beside) / wide)
  return (down - 2 * margins.above - 12) / scale
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
