/**
 * WorksheetFreezePanes of the Excel API. Rows and columns together are frozen with freezeAt; freezeRows and
 * freezeColumns replace each other, which was not compared with Excel.
 */
import { invalidArgument } from './faults'
import { hostType } from './hostObject'
import { rangeObject } from './range'
import { rangeArgument } from './rangeTarget'
import { writable, type SheetTarget } from './session'
import { sheetColumns, sheetRows } from '../../../shared/a1Notation'

function freeze({ session, sheetId }: SheetTarget, rows: number, columns: number): void {
  writable(session, sheetId).freeze(sheetId, rows, columns)
}

/** The API's default of one row or column arrives as null. */
function count(given: unknown): number {
  if (given === null || given === undefined) return 1
  if (typeof given !== 'number' || !Number.isInteger(given) || given < 1)
    throw invalidArgument('The number of rows or columns to freeze is not 1 or more.')
  return given
}

function location(target: SheetTarget) {
  const { rows, columns } = target.session.book.frozen(target.sheetId)
  if (rows === 0 && columns === 0) return null
  const area = { row: 0, column: 0, rows: rows || sheetRows, columns: columns || sheetColumns }
  return rangeObject({ ...target, area })
}

export const freezePanesObject = hostType<SheetTarget>({
  name: 'WorksheetFreezePanes',
  opens: { getLocationOrNullObject: location },
  calls: {
    freezeRows: (target, args) => {
      freeze(target, count(args[0]), 0)
    },
    freezeColumns: (target, args) => {
      freeze(target, 0, count(args[0]))
    },
    freezeAt: (target, args) => {
      const { area } = rangeArgument(target.session, target.sheetId, args[0])
      if (area.row + area.column > 0) throw invalidArgument('The frozen range begins at the first cell.')
      freeze(
        target,
        area.rows === sheetRows ? 0 : area.rows,
        area.columns === sheetColumns ? 0 : area.columns
      )
    },
    unfreeze: (target) => {
      freeze(target, 0, 0)
    }
  }
})
