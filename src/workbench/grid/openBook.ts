/** Takes opened contents into the grid in place of the workbook that is open, and gathers them again for saving. */
import {
  generateRandomId,
  LocaleType,
  type ICellData,
  type IRange,
  type IWorksheetData,
  type Nullable
} from '@univerjs/core'
import { FormulaDataModel } from '@univerjs/preset-sheets-core'
import { AddSheetTableMutation, TableManager } from '@univerjs/preset-sheets-table'
import type { Book } from '../book'
import type { BookContents, Spill } from '../files/contents'
import { spilledCells } from './gridCells'
import type { GridContext } from './context'
import { toArea, toRange } from './ranges'
import { showConditionalFormat } from './gridConditionalFormats'
import type { Extras } from './extras'
import type { Grid } from './univer'
import { standardSheet } from './standardSheet'
import { themeFor } from './gridTables'
import { showRule } from './gridValidations'

/** Opens the workbook; the extras are refilled in place, since the book keeps hold of them. */
export function openContents(grid: Grid, extras: Extras, contents: BookContents): void {
  const before = grid.api.getActiveWorkbook()?.getId()
  grid.api.createWorkbook({
    id: generateRandomId(),
    name: contents.name,
    appVersion: '',
    locale: LocaleType.EN_US,
    styles: contents.styles,
    sheetOrder: contents.sheets.map((sheet) => sheet.id ?? ''),
    sheets: Object.fromEntries(
      contents.sheets.map((sheet) => [sheet.id ?? '', { ...standardSheet, ...sheet }])
    )
  })
  if (before !== undefined) grid.api.disposeUnit(before)
  Object.assign(extras, contents.extras)
}

/** What needs the grid's services: tables, names and rules, once the workbook stands. */
export function dressBook(context: GridContext, book: Book, contents: BookContents): void {
  const unit = context.workbook().getUnitId()
  for (const { id, name, sheetId, area, banded } of contents.tables) {
    const range = toRange(area)
    const header = context.injector.get(TableManager).getColumnHeader(unit, sheetId, range, 'Column')
    context.mutate(AddSheetTableMutation.id, sheetId, {
      tableId: id,
      name,
      range,
      header,
      options: { tableStyleId: themeFor(banded) }
    })
  }
  for (const name of contents.names) book.addName(name)
  for (const [sheetId, { validations }] of contents.extras.sheets)
    for (const validation of validations) showRule(context, sheetId, validation)
  for (const [sheetId, formats] of contents.conditionalFormats)
    for (const format of [...formats].reverse()) showConditionalFormat(context, sheetId, format)
  book.activateSheet(contents.activeSheet)
}

function spillsOf(context: GridContext, sheetId: string): Spill[] {
  const sheet = context.sheet(sheetId)
  const cells = spilledCells(context, sheet)
  const ranges =
    context.injector.get(FormulaDataModel).getArrayFormulaRange()[sheet.getUnitId()]?.[sheetId] ?? {}
  return Object.values(ranges).flatMap((line) =>
    Object.values<Nullable<IRange>>(line ?? {}).flatMap((range) => {
      if (!range) return []
      const around: Spill['cells'] = {}
      for (let row = range.startRow; row <= range.endRow; row++)
        for (let column = range.startColumn; column <= range.endColumn; column++) {
          const cell = cells?.[row]?.[column]
          const first = row === range.startRow && column === range.startColumn
          if (cell && !first) (around[row] ??= {})[column] = cell
        }
      return [{ area: toArea(range), cells: around }]
    })
  )
}

/** Shared formulas are written out cell by cell. */
function sheetData(context: GridContext, id: string): Partial<IWorksheetData> {
  const data = structuredClone(context.sheet(id).getSnapshot())
  const formulas = context.injector.get(FormulaDataModel)
  const unit = context.workbook().getUnitId()
  for (const [row, line] of Object.entries(data.cellData))
    for (const [column, cell] of Object.entries<Nullable<ICellData>>(line ?? {})) {
      if (!cell?.si) continue
      const formula = formulas.getFormulaStringByCell(Number(row), Number(column), id, unit)
      line[Number(column)] = { ...cell, si: null, ...(formula ? { f: formula } : {}) }
    }
  return data
}

export function gatherContents(context: GridContext, book: Book, name: string): BookContents {
  const ids = book.sheets().map((sheet) => sheet.id)
  return {
    name,
    sheets: ids.map((id) => sheetData(context, id)),
    styles: context.workbook().getSnapshot().styles,
    spills: new Map(ids.map((id) => [id, spillsOf(context, id)])),
    conditionalFormats: new Map(ids.map((id) => [id, book.conditionalFormats(id)])),
    tables: book.tables(),
    names: book.names(),
    extras: context.extras,
    activeSheet: book.activeSheet()
  }
}
