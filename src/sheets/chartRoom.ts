import type { Area } from '../../shared/cells'
import type { SheetDraft } from './draft'
import { pageBreaks, pageRoom, pointsBetween, standardRow } from './pageBreaks'
import type { PageSetup } from './sheet'

/** Empty rows for a chart of so many points in height; gives the first of them and how many. */
export function chartRows(draft: SheetDraft, points: number): Pick<Area, 'row' | 'rows'> {
  const rows = Math.ceil(points / standardRow)
  const row = draft.next
  for (let count = 0; count < rows; count++) draft.blank()
  draft.height(row, rows, standardRow)
  return { row, rows }
}

/**
 * The rows that begin a page, so that a block with charts is printed on one: the block's first row, unless everything
 * up to its end fits on the first page. How full the page before it would be is not computed, since over many pages the
 * computed height and the printed one drift apart. `to` is the row after the block's last.
 */
export function breaksForBlock(
  { heights, widths }: Pick<SheetDraft, 'heights' | 'widths'>,
  page: Pick<PageSetup, 'paper' | 'orientation' | 'columns'>,
  from: number,
  to: number
): number[] {
  if (from === to) return []
  return pointsBetween(heights, 0, to) > pageRoom(page, widths) ? [from] : []
}

/**
 * The breaks of such a block, and those that keep each part after it on one page, where it fits one. Computed from the
 * last break on, or on the first page, so that the computed height and the printed one do not drift apart. `parts` are
 * the rows they begin with.
 */
export function breaksForParts(
  { heights, widths, next }: Pick<SheetDraft, 'heights' | 'widths' | 'next'>,
  page: Pick<PageSetup, 'paper' | 'orientation' | 'columns' | 'titleRow'>,
  breaks: readonly number[],
  parts: readonly number[]
): number[] {
  const repeated = heights.find(({ row }) => row === page.titleRow)?.points ?? 0
  const marks = { starts: new Set(breaks), blocks: [...parts] }
  return pageBreaks(heights, next, marks, pageRoom(page, widths) - repeated)
}
