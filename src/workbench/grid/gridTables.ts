/** Tables of the grid. Excel's style names and switches are kept beside them and saved into the file. */
import { generateRandomId } from '@univerjs/core'
import {
  AddSheetTableMutation,
  DeleteSheetTableMutation,
  SetSheetTableMutation,
  TableManager
} from '@univerjs/preset-sheets-table'
import { sharedPart } from '../../../shared/cells'
import { BookFault, type Book, type TableInfo } from '../book'
import type { GridContext } from './context'
import { toArea, toRange } from './ranges'
import type { TableLooks } from './extras'
import { bandedTheme, plainTheme } from './tableThemes'

type TablePart = Pick<Book, 'tables' | 'addTable' | 'changeTable' | 'deleteTable'>

const standardLooks: TableLooks = { style: 'TableStyleMedium2', showFilter: true, banded: true }

export function themeFor(banded: boolean): string {
  return banded ? bandedTheme : plainTheme
}

/** Excel's rule: a letter, underscore or backslash first, then letters, digits, dots and underscores. */
const tableName = /^[\p{L}_\\][\p{L}\p{N}_.\\]*$/u

export function tablesOf(context: GridContext): TablePart {
  const manager = () => context.injector.get(TableManager)
  // The grid keeps the tables of a sheet that was deleted, for undo; a workbook has them no more.
  const list = (): TableInfo[] =>
    manager()
      .getTableList(context.workbook().getUnitId())
      .filter((table) => Boolean(context.workbook().getSheetBySheetId(table.subUnitId)))
      .map((table) => ({
        id: table.id,
        name: table.name,
        sheetId: table.subUnitId,
        area: toArea(table.range),
        ...(context.extras.tables.get(table.id) ?? standardLooks)
      }))
  const find = (id: string): TableInfo => {
    const found = list().find((table) => table.id === id)
    if (found === undefined) throw new BookFault('ItemNotFound', `There is no table ${id}.`)
    return found
  }
  const checkName = (name: string, but: string | null) => {
    if (!tableName.test(name))
      throw new BookFault('InvalidArgument', `“${name}” cannot be the name of a table.`)
    if (list().some((table) => table.id !== but && table.name.toLowerCase() === name.toLowerCase()))
      throw new BookFault('ItemAlreadyExists', `There is a table named ${name} already.`)
  }
  return {
    tables: list,
    addTable(sheetId, area, name) {
      const wanted = name === '' ? `Table${list().length + 1}` : name
      checkName(wanted, null)
      context.sheet(sheetId)
      if (list().some((table) => table.sheetId === sheetId && sharedPart(table.area, area) !== null))
        throw new BookFault('InvalidArgument', 'A table cannot overlap another table.')
      const tableId = generateRandomId()
      const range = toRange(area)
      const unit = context.workbook().getUnitId()
      const header = manager().getColumnHeader(unit, sheetId, range, 'Column')
      context.mutate(AddSheetTableMutation.id, sheetId, {
        tableId,
        name: wanted,
        range,
        header,
        options: { tableStyleId: themeFor(standardLooks.banded) }
      })
      context.extras.tables.set(tableId, { ...standardLooks })
      return find(tableId)
    },
    changeTable(id, change) {
      const table = find(id)
      if (change.name !== undefined && change.name !== table.name) {
        checkName(change.name, id)
        context.mutate(SetSheetTableMutation.id, table.sheetId, {
          tableId: id,
          config: { name: change.name }
        })
      }
      const { style, showFilter, banded } = { ...table, ...change }
      if (banded !== table.banded)
        context.mutate(SetSheetTableMutation.id, table.sheetId, {
          tableId: id,
          config: { theme: themeFor(banded) }
        })
      context.extras.tables.set(id, { style, showFilter, banded })
    },
    deleteTable(id) {
      const table = find(id)
      context.mutate(DeleteSheetTableMutation.id, table.sheetId, { tableId: id })
      context.extras.tables.delete(id)
    }
  }
}
