/** Follows what happens in the grid: selection, changed cells, changed sheets, and calculation coming to rest. */
import { ICommandService } from '@univerjs/core'
import {
  FormulaCalculationSessionService,
  IActiveDirtyManagerService,
  InsertColMutation,
  InsertRowMutation,
  InsertSheetMutation,
  MoveColsMutation,
  MoveRangeMutation,
  MoveRowsMutation,
  RemoveColMutation,
  RemoveRowMutation,
  RemoveSheetMutation,
  ReorderRangeMutation,
  SetFormulaCalculationStartMutation,
  SetRangeValuesMutation,
  SetStyleCommand,
  SetWorksheetActiveOperation,
  SetWorksheetNameMutation,
  SheetsSelectionsService
} from '@univerjs/preset-sheets-core'
import type { Area } from '../../../shared/cells'
import type { Book, BookEvent } from '../book'
import type { GridContext } from './context'

type FollowingPart = Pick<Book, 'on' | 'settled'>

/** What the grid's commands say of themselves, as far as it is of use here. */
interface Parameters {
  subUnitId?: string
  trigger?: string
  cellValue?: Record<number, Record<number, unknown>>
}

/** The smallest area around the cells of a sparse table. */
function around(cells: Record<number, Record<number, unknown>>): Area | undefined {
  const rows = Object.keys(cells).map(Number)
  let [left, right] = [Infinity, -1]
  for (const line of Object.values(cells))
    for (const column of Object.keys(line).map(Number)) {
      left = Math.min(left, column)
      right = Math.max(right, column)
    }
  if (right < 0) return undefined
  const top = rows.reduce((least, row) => Math.min(least, row))
  const bottom = rows.reduce((most, row) => Math.max(most, row))
  return { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 }
}

const changes = new Set<string>(
  [
    SetRangeValuesMutation,
    InsertRowMutation,
    InsertColMutation,
    RemoveRowMutation,
    RemoveColMutation,
    MoveRangeMutation,
    MoveRowsMutation,
    MoveColsMutation,
    ReorderRangeMutation
  ].map((mutation) => mutation.id)
)

const sheetChanges = new Set<string>(
  [InsertSheetMutation, RemoveSheetMutation, SetWorksheetNameMutation, SetWorksheetActiveOperation].map(
    (command) => command.id
  )
)

/** How long the grid may take to calculate before a caller goes on with what there is. */
const patience = 30000

export function followingOf(context: GridContext): FollowingPart {
  const commands = context.injector.get(ICommandService)
  const dirty = context.injector.get(IActiveDirtyManagerService)
  const session = context.injector.get(FormulaCalculationSessionService)
  const callbacks: Record<BookEvent, Set<(sheetId: string, changed?: Area) => void>> = {
    selection: new Set(),
    changed: new Set(),
    sheets: new Set()
  }
  const told = new Map<string, { event: BookEvent; sheetId: string; changed: Area | undefined }>()
  const waiting = new Set<() => void>()
  let asked = false
  let running = false

  /** Several changes within one step of the grid are told once. */
  const tell = (event: BookEvent, sheetId: string, changed?: Area) => {
    if (told.size === 0)
      queueMicrotask(() => {
        const all = [...told.values()]
        told.clear()
        for (const { event, sheetId, changed } of all)
          for (const callback of callbacks[event]) callback(sheetId, changed)
      })
    const key = `${event} ${sheetId}`
    told.set(key, { event, sheetId, changed: told.has(key) ? undefined : changed })
  }
  const rest = () => {
    if (asked || running) return
    for (const done of waiting) done()
    waiting.clear()
  }

  commands.onCommandExecuted((command, options) => {
    const { subUnitId: sheetId = '', trigger, cellValue } = (command.params ?? {}) as Parameters
    const ours = options?.onlyLocal !== true && trigger !== SetStyleCommand.id
    if (ours && dirty.get(command.id)) asked = true
    if (command.id === SetFormulaCalculationStartMutation.id) {
      asked = false
      running = true
    }
    if (ours && changes.has(command.id)) tell('changed', sheetId, cellValue && around(cellValue))
    if (sheetChanges.has(command.id)) tell('sheets', sheetId)
    if (command.id === SetWorksheetActiveOperation.id) tell('selection', sheetId)
  })
  session.state$.subscribe((state) => {
    if (!state.completed || !state.resultApplied) return
    running = false
    rest()
  })
  context.injector.get(SheetsSelectionsService).selectionChanged$.subscribe(() => {
    tell('selection', context.workbook().getActiveSheet()?.getSheetId() ?? '')
  })

  return {
    on(event, callback) {
      callbacks[event].add(callback)
      return () => callbacks[event].delete(callback)
    },
    settled: () =>
      new Promise((resolve) => {
        context.writer.flush()
        waiting.add(resolve)
        setTimeout(resolve, patience)
        rest()
      })
  }
}
