/** The selection of the grid. Whole rows and columns are as long as Excel's. */
import { ICommandService, RANGE_TYPE, type IRange } from '@univerjs/core'
import {
  ScrollToCellCommand,
  SetSelectionsOperation,
  SheetsSelectionsService
} from '@univerjs/preset-sheets-core'
import type { Area } from '../../../shared/cells'
import type { Book } from '../book'
import { sheetColumns, sheetRows } from '../../../shared/a1Notation'
import { growSheet } from './bounds'
import type { GridContext } from './context'
import { toArea, toRange } from './ranges'

type SelectionPart = Pick<Book, 'selection' | 'select'>

export function selectedArea(range: Readonly<IRange>): Area {
  const area = toArea(range)
  const type = range.rangeType
  if (type === RANGE_TYPE.COLUMN || type === RANGE_TYPE.ALL || Number.isNaN(area.rows))
    Object.assign(area, { row: 0, rows: sheetRows })
  if (type === RANGE_TYPE.ROW || type === RANGE_TYPE.ALL || Number.isNaN(area.columns))
    Object.assign(area, { column: 0, columns: sheetColumns })
  return area
}

function rangeToSelect(area: Area, rowCount: number, columnCount: number): IRange {
  const wholeColumns = area.rows >= sheetRows
  const wholeRows = area.columns >= sheetColumns
  const range = toRange({
    ...area,
    rows: wholeColumns ? rowCount : area.rows,
    columns: wholeRows ? columnCount : area.columns
  })
  if (wholeColumns && wholeRows) range.rangeType = RANGE_TYPE.ALL
  else if (wholeColumns) range.rangeType = RANGE_TYPE.COLUMN
  else range.rangeType = wholeRows ? RANGE_TYPE.ROW : RANGE_TYPE.NORMAL
  return range
}

export function selectionOf(context: GridContext, activate: (id: string) => void): SelectionPart {
  return {
    selection() {
      const sheetId = context.workbook().getActiveSheet()?.getSheetId() ?? ''
      const chosen = context.injector.get(SheetsSelectionsService).getCurrentSelections()
      const areas = chosen.map(({ range }) => selectedArea(range))
      return { sheetId, areas: areas.length > 0 ? areas : [{ row: 0, column: 0, rows: 1, columns: 1 }] }
    },
    select(sheetId, area) {
      const sheet = context.sheet(sheetId)
      if (area.rows < sheetRows && area.columns < sheetColumns) growSheet(context, sheetId, area)
      if (context.workbook().getActiveSheet()?.getSheetId() !== sheetId) activate(sheetId)
      const range = rangeToSelect(area, sheet.getRowCount(), sheet.getColumnCount())
      const { startRow, startColumn } = range
      const first = { startRow, endRow: startRow, startColumn, endColumn: startColumn }
      const primary = {
        ...first,
        actualRow: startRow,
        actualColumn: startColumn,
        isMerged: false,
        isMergedMainCell: false
      }
      context.mutate(SetSelectionsOperation.id, sheetId, { selections: [{ range, primary, style: null }] })
      context.injector.get(ICommandService).syncExecuteCommand(ScrollToCellCommand.id, { range: first })
    }
  }
}
