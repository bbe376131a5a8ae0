import type { SheetDraft } from './draft'
import { pageBreaks, pageRoom } from './pageBreaks'
import type { Area, PageSetup } from './sheet'

/** Points of a row in the room of a chart. */
const rowPoints = 15

/** Empty rows for a chart of so many points in height; gives the first of them and how many. */
export function chartRows(draft: SheetDraft, points: number): Pick<Area, 'row' | 'rows'> {
  const rows = Math.ceil(points / rowPoints)
  const row = draft.next
  for (let count = 0; count < rows; count++) draft.blank()
  draft.height(row, rows, rowPoints)
  return { row, rows }
}

/**
 * The rows that begin a page, so that a block with a chart is printed on one. Where the block fits on the page that the
 * rows before it leave unfinished, there are none. `from` and `to` are the block's first row and the row after its last.
 */
export function breaksForBlock(
  { heights, widths }: Pick<SheetDraft, 'heights' | 'widths'>,
  page: Pick<PageSetup, 'paper' | 'orientation' | 'titleRow'>,
  from: number,
  to: number
): number[] {
  const title = heights.find(({ row, rows }) => {
    return page.titleRow !== null && row <= page.titleRow && page.titleRow < row + rows
  })
  const room = pageRoom(page, widths) - (title?.points ?? 0)
  return pageBreaks(heights, to, { starts: new Set(), blocks: [from] }, room)
}
