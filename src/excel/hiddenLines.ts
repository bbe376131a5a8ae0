import type { Area } from '../../shared/cells'

type Axis = 'rows' | 'columns'

/**
 * The rows or columns of an area that are hidden or filtered out, counted in the area from 0, found by halving it wherever
 * they differ. Null where they are so scattered that it takes more pieces than `mostPieces`.
 */
export async function hiddenLines(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  area: Area,
  axis: Axis,
  mostPieces = 2_000
): Promise<Set<number> | null> {
  const hidden = new Set<number>()
  let pieces = [{ from: 0, count: area[axis] }]
  while (pieces.length > 0) {
    if (pieces.length > mostPieces) return null
    const ranges = pieces.map(({ from, count }) =>
      axis === 'rows'
        ? sheet.getRangeByIndexes(area.row + from, area.column, count, 1)
        : sheet.getRangeByIndexes(area.row, area.column + from, 1, count)
    )
    const member = axis === 'rows' ? 'rowHidden' : 'columnHidden'
    for (const range of ranges) range.load(member)
    await context.sync()
    const next: typeof pieces = []
    pieces.forEach(({ from, count }, index) => {
      const state = ranges[index]?.[member] as boolean | null
      if (state === true) for (let line = from; line < from + count; line++) hidden.add(line)
      if (state !== null) return
      const half = Math.ceil(count / 2)
      next.push({ from, count: half }, { from: from + half, count: count - half })
    })
    pieces = next
  }
  return hidden
}
