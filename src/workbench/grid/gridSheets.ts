/** The sheets of the grid: adding, naming, showing, freezing, and what a sheet keeps for itself. */
import { BooleanNumber, generateRandomId, mergeWorksheetSnapshotWithDefault } from '@univerjs/core'
import {
  IFunctionService,
  InsertSheetMutation,
  RemoveSheetMutation,
  SetFrozenMutation,
  SetTabColorMutation,
  SetWorksheetHideMutation,
  SetWorksheetActiveOperation,
  SetWorksheetNameCommand,
  ToggleGridlinesMutation
} from '@univerjs/preset-sheets-core'
import { BookFault, type Book, type SheetInfo } from '../book'
import { forgetConditionalFormats } from './gridConditionalFormats'
import type { GridContext } from './context'
import { extrasOf } from './extras'
import { standardSheet } from './standardSheet'

type SheetPart = Pick<
  Book,
  | 'sheets'
  | 'addSheet'
  | 'deleteSheet'
  | 'renameSheet'
  | 'activeSheet'
  | 'activateSheet'
  | 'isProtected'
  | 'freeze'
  | 'frozen'
  | 'gridlines'
  | 'setGridlines'
  | 'tabColor'
  | 'setTabColor'
  | 'hideSheet'
>

/** Excel's rules for the name of a sheet. */
function checkName(context: GridContext, name: string, but: string | null): void {
  if (name === '' || name.length > 31 || /[\\/?*[\]:]/.test(name) || /^'|'$/.test(name))
    throw new BookFault('InvalidArgument', `“${name}” cannot be the name of a sheet.`)
  const taken = context
    .workbook()
    .getSheets()
    .some((sheet) => sheet.getSheetId() !== but && sheet.getName().toLowerCase() === name.toLowerCase())
  if (taken) throw new BookFault('ItemAlreadyExists', `There is a sheet named ${name} already.`)
}

/**
 * The grid keeps every formula of a workbook as it once understood it, names looked up. After a sheet got another name,
 * those with names in them would still look for the old one, so they are forgotten here. This helps a sheet of a few
 * formulas; the several hundred of an Estimate still come to #VALUE! when they are recalculated after a renaming, which is why
 * the add-in writes a sheet under the name that it keeps.
 */
function forgetFormulas({ injector, workbook }: GridContext): void {
  injector.get(IFunctionService).deleteFormulaAstCacheKey(workbook().getUnitId())
}

export function sheetsOf(context: GridContext): SheetPart {
  const info = (id: string): SheetInfo => {
    const sheet = context.peek(id)
    return { id, name: sheet.getName(), visible: sheet.isSheetHidden() !== BooleanNumber.TRUE }
  }
  const activate = (id: string) => {
    context.sheet(id)
    context.mutate(SetWorksheetActiveOperation.id, id, {})
  }
  return {
    sheets: () =>
      context
        .workbook()
        .getSheets()
        .map((sheet) => info(sheet.getSheetId())),
    addSheet(name) {
      checkName(context, name, null)
      const sheet = mergeWorksheetSnapshotWithDefault({
        ...standardSheet,
        id: generateRandomId(),
        name,
        rowCount: 100,
        columnCount: 26
      })
      const index = context.workbook().getSheets().length
      context.mutate(InsertSheetMutation.id, null, { sheet, index })
      return info(sheet.id)
    },
    deleteSheet(id) {
      const others = context
        .workbook()
        .getSheets()
        .filter((sheet) => sheet.getSheetId() !== id)
      const next = others.find((sheet) => sheet.isSheetHidden() !== BooleanNumber.TRUE)
      if (next === undefined) throw new BookFault('InvalidOperation', 'A workbook keeps one visible sheet.')
      context.sheet(id)
      if (context.workbook().getActiveSheet()?.getSheetId() === id) activate(next.getSheetId())
      forgetConditionalFormats(context, id)
      context.mutate(RemoveSheetMutation.id, id, { subUnitName: info(id).name })
      context.extras.sheets.delete(id)
    },
    renameSheet(id, name) {
      checkName(context, name, id)
      context.mutate(SetWorksheetNameCommand.id, id, { name })
      forgetFormulas(context)
    },
    activeSheet: () => context.workbook().getActiveSheet()?.getSheetId() ?? '',
    activateSheet: activate,
    isProtected: (id) => id !== null && extrasOf(context.extras, id).protected,
    freeze(id, rows, columns) {
      context.mutate(SetFrozenMutation.id, id, {
        startRow: rows > 0 ? rows : -1,
        startColumn: columns > 0 ? columns : -1,
        ySplit: rows,
        xSplit: columns
      })
    },
    frozen(id) {
      const { ySplit, xSplit } = context.sheet(id).getFreeze()
      return { rows: ySplit, columns: xSplit }
    },
    gridlines: (id) => context.sheet(id).getConfig().showGridlines !== BooleanNumber.FALSE,
    setGridlines: (id, shown) =>
      context.mutate(ToggleGridlinesMutation.id, id, {
        showGridlines: shown ? BooleanNumber.TRUE : BooleanNumber.FALSE
      }),
    tabColor: (id) => context.sheet(id).getConfig().tabColor ?? '',
    setTabColor: (id, color) => context.mutate(SetTabColorMutation.id, id, { color }),
    hideSheet: (id, hidden = true) =>
      context.mutate(SetWorksheetHideMutation.id, id, {
        hidden: hidden ? BooleanNumber.TRUE : BooleanNumber.FALSE
      })
  }
}
