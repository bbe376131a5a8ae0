import type { Area } from '../../shared/cells'
import type { Merge } from '../inventory/survey/sheetCells'

/** Merges of an area, or null where Excel does not tell, as it has more than 512 of them. */
async function mergesAtOnce(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  { row, column, rows, columns }: Area
): Promise<Area[] | null> {
  const merged = sheet.getRangeByIndexes(row, column, rows, columns).getMergedAreasOrNullObject()
  merged.load('areaCount')
  try {
    await context.sync()
  } catch (error) {
    if (rows > 1 && error instanceof OfficeExtension.Error) return null
    throw error
  }
  if (merged.isNullObject) return []
  merged.areas.load('items/rowIndex,items/columnIndex,items/rowCount,items/columnCount')
  await context.sync()
  return merged.areas.items.map((each) => ({
    row: each.rowIndex,
    column: each.columnIndex,
    rows: each.rowCount,
    columns: each.columnCount
  }))
}

/**
 * Two halves put together: a merge over the line between them comes whole in each, or as a piece in each. `over` holds
 * those that lie on both rows beside the line.
 */
function joined(upper: readonly Area[], lower: readonly Area[], over: readonly Area[]): Area[] {
  const isOver = ({ column }: Area): boolean => over.some((each) => each.column === column)
  const ends = new Map(
    over.map(({ row, column }) => [
      column,
      Math.max(
        ...lower
          .filter((area) => area.column === column && area.row <= row + 1)
          .map((area) => area.row + area.rows)
      )
    ])
  )
  const line = (over[0]?.row ?? 0) + 1
  const above = upper.map((area) =>
    isOver(area) && area.row + area.rows >= line
      ? { ...area, rows: (ends.get(area.column) ?? area.row + area.rows) - area.row }
      : area
  )
  return [...above, ...lower.filter((area) => !isOver(area) || area.row > line)]
}

async function mergedAreas(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  area: Area
): Promise<Area[]> {
  const found = await mergesAtOnce(context, sheet, area)
  if (found !== null) return found
  const half = Math.ceil(area.rows / 2)
  const line = area.row + half
  const upper = await mergedAreas(context, sheet, { ...area, rows: half })
  const lower = await mergedAreas(context, sheet, { ...area, row: line, rows: area.rows - half })
  const beside = (await mergesAtOnce(context, sheet, { ...area, row: line - 1, rows: 2 })) ?? []
  const over = beside.filter(({ row, rows }) => row < line && row + rows > line)
  return joined(
    upper,
    lower,
    over.map((each) => ({ ...each, row: line - 1 }))
  )
}

/**
 * The merged cells of an area, counted in it from 0. They need ExcelApi 1.13; where it is missing, none are looked for. An
 * area with more merges than Excel tells at once is halved.
 */
export async function mergesIn(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  area: Area
): Promise<Merge[]> {
  if (!Office.context.requirements.isSetSupported('ExcelApi', '1.13')) return []
  const { row, column, rows, columns } = area
  return (await mergedAreas(context, sheet, { row, column, rows, columns })).map((each) => ({
    top: Math.max(0, each.row - row),
    left: Math.max(0, each.column - column),
    bottom: Math.min(rows, each.row - row + each.rows) - 1,
    right: Math.min(columns, each.column - column + each.columns) - 1
  }))
}
