import type { Area } from '../../shared/cells'
import { readDraftName, readOwnName } from '../sheets/ownSheets'

/** A sheet that may hold an inventory, and where it is filled. */
export interface FilledSheet {
  readonly name: string
  readonly hidden: boolean
  readonly used: Area
}

/** A rectangle of cells of a sheet. */
export interface SheetArea extends Area {
  sheet: string
}

/** What a look at addresses tells of a workbook. */
export interface BookView {
  /** The sheets in their order, without empty ones and without documents that were written from a plan. */
  readonly sheets: readonly FilledSheet[]
  /** The selected cells; null where several areas, or no cells such as a chart, are selected. */
  readonly selected: SheetArea | null
  /** How many areas are selected. */
  readonly areaCount: number
}

const measures = 'rowIndex,columnIndex,rowCount,columnCount'

function areaOf(range: Excel.Range): Area {
  return {
    row: range.rowIndex,
    column: range.columnIndex,
    rows: range.rowCount,
    columns: range.columnCount
  }
}

type Selected = Pick<BookView, 'selected' | 'areaCount'>

/** What is selected; no area where it is no cells. */
async function selectedCells(context: Excel.RequestContext): Promise<Selected> {
  const ranges = context.workbook.getSelectedRanges()
  ranges.load('areaCount')
  const range = ranges.areas.getItemAt(0)
  range.load(measures)
  range.worksheet.load('name')
  try {
    await context.sync()
  } catch (error) {
    if ((error as { code?: unknown }).code === 'InvalidSelection') return { selected: null, areaCount: 0 }
    throw error
  }
  const { areaCount } = ranges
  return {
    selected: areaCount > 1 ? null : { sheet: range.worksheet.name, ...areaOf(range) },
    areaCount
  }
}

/** The addresses of what is selected and of what is filled. No cell is read. */
export async function viewBook(context: Excel.RequestContext): Promise<BookView> {
  const selection = await selectedCells(context)
  const { workbook } = context
  workbook.worksheets.load('items/name,items/visibility')
  workbook.names.load('items/name,items/formula')
  await context.sync()

  const own = new Set(
    workbook.names.items.map((item) => {
      const formula = String(item.formula)
      return readOwnName(item.name, formula)?.sheetName ?? readDraftName(item.name, formula)
    })
  )
  const others = workbook.worksheets.items.filter(({ name }) => !own.has(name))
  const filled = others.map((sheet) => {
    const used = sheet.getUsedRangeOrNullObject(true)
    used.load(measures)
    return { sheet, used }
  })
  await context.sync()
  const sheets = filled.flatMap(({ sheet, used }) =>
    used.isNullObject
      ? []
      : [{ name: sheet.name, hidden: String(sheet.visibility) !== 'Visible', used: areaOf(used) }]
  )
  return { sheets, ...selection }
}
