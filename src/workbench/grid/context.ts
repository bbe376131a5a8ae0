/**
 * What every part of the grid's book needs: the open workbook, its sheets by id, and a way to run the grid's mutations.
 * A mutation writes a whole range in one step where the grid's own commands take one step per cell.
 */
import {
  ICommandService,
  IUniverInstanceService,
  UniverInstanceType,
  type Injector,
  type Workbook,
  type Worksheet
} from '@univerjs/core'
import type { Area } from '../../../shared/cells'
import { BookFault } from '../book'
import type { Extras } from './extras'
import type { Grid } from './univer'
import { createWriter, type GridAccess, type Writer } from './writer'

export interface GridContext extends GridAccess {
  extras: Extras
  injector: Injector
  writer: Writer
  workbook(): Workbook
  /** The sheet with everything written to it so far. */
  sheet(id: string): Worksheet
}

export function createContext(grid: Grid, extras: Extras): GridContext {
  const injector = grid.univer.__getInjector()
  const instances = injector.get(IUniverInstanceService)
  const commands = injector.get(ICommandService)
  const workbook = () => {
    const open = instances.getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET)
    if (!open) throw new BookFault('GeneralException', 'No workbook is open.')
    return open
  }
  const peek = (id: string) => {
    const found = workbook().getSheetBySheetId(id)
    if (!found) throw new BookFault('ItemNotFound', `There is no sheet ${id}.`)
    return found
  }
  const context: Omit<GridContext, 'writer'> = {
    grid,
    extras,
    injector,
    workbook,
    peek,
    sheet(id) {
      writer.flush()
      return peek(id)
    },
    mutate(mutation, sheetId, parameters) {
      const place = { unitId: workbook().getUnitId(), ...(sheetId === null ? {} : { subUnitId: sheetId }) }
      if (!commands.syncExecuteCommand(mutation, { ...place, ...parameters }))
        throw new BookFault('GeneralException', `The grid refused ${mutation}.`)
    }
  }
  const writer = createWriter(context)
  return Object.assign(context, { writer })
}

/** The part of an area that lies within the sheet's rows and columns as they are now. */
export function clippedToSheet(sheet: Worksheet, area: Area): Area {
  const row = Math.min(area.row, sheet.getRowCount())
  const column = Math.min(area.column, sheet.getColumnCount())
  return {
    row,
    column,
    rows: Math.max(0, Math.min(area.row + area.rows, sheet.getRowCount()) - row),
    columns: Math.max(0, Math.min(area.column + area.columns, sheet.getColumnCount()) - column)
  }
}
