/**
 * Gathers what is written to cells and hands it to the grid in one step. The grid goes over the whole sheet at every
 * mutation, and a document of the add-in is written in hundreds of small pieces.
 */
import {
  BooleanNumber,
  type ICellData,
  type IRange,
  type IStyleData,
  type Nullable,
  type Worksheet
} from '@univerjs/core'
import {
  SetRangeValuesMutation,
  SetStyleCommand,
  SetWorksheetColWidthMutation,
  SetWorksheetRowHeightMutation,
  SetWorksheetRowIsAutoHeightMutation
} from '@univerjs/preset-sheets-core'
import type { Area } from '../../../shared/cells'
import type { Grid } from './univer'

/** As much of the grid's context as writing needs. */
export interface GridAccess {
  grid: Grid
  /** The sheet as the grid has it, for its size and its columns only. */
  peek(id: string): Worksheet
  /** Runs a mutation on one sheet, or on the workbook where no sheet is named. */
  mutate(mutation: string, sheetId: string | null, parameters: object): void
}

type Cells = Record<number, Record<number, ICellData>>

interface Pending {
  cells: Cells
  /** Whether values are among it, so that formulas have to be calculated. */
  values: boolean
  /** Rows in which a text was told to wrap. */
  wrapped: Area[]
  /** Heights of rows and widths of columns, in pixels. */
  heights: Record<number, number>
  widths: Record<number, number>
}

export interface Writer {
  /** Writes soon: before the next reading of the sheet, or when the caller has ended. */
  put(sheetId: string, area: Area, cell: (row: number, column: number) => ICellData, values: boolean): void
  /** Lets rows of wrapped text take the height they need, unless they were given one. */
  fitRows(sheetId: string, area: Area): void
  setSize(sheetId: string, what: 'heights' | 'widths', first: number, count: number, pixels: number): void
  flush(): void
}

const emptyPending = (): Pending => ({ cells: {}, values: false, wrapped: [], heights: {}, widths: {} })

/** The grid's ranges for the rows or columns of a table of sizes. */
function rangesOf(sizes: Record<number, number>): IRange[] {
  return Object.keys(sizes).map((key) => {
    const at = Number(key)
    return { startRow: at, endRow: at, startColumn: at, endColumn: at }
  })
}

function setSizes(context: GridAccess, sheetId: string, { heights, widths }: Pending): void {
  const rows = rangesOf(heights)
  const columns = rangesOf(widths)
  if (rows.length > 0) {
    const autoHeightInfo = BooleanNumber.FALSE
    context.mutate(SetWorksheetRowIsAutoHeightMutation.id, sheetId, { ranges: rows, autoHeightInfo })
    context.mutate(SetWorksheetRowHeightMutation.id, sheetId, { ranges: rows, rowHeight: heights })
  }
  if (columns.length > 0)
    context.mutate(SetWorksheetColWidthMutation.id, sheetId, { ranges: columns, colWidth: widths })
}

function mergedStyle(before: Nullable<IStyleData>, after: Nullable<IStyleData>): Nullable<IStyleData> {
  if (!before || !after) return after
  return { ...before, ...after, ...(before.bd && after.bd ? { bd: { ...before.bd, ...after.bd } } : {}) }
}

function merged(before: ICellData | undefined, after: ICellData): ICellData {
  if (before === undefined) return after
  if (after.s === undefined || before.s === undefined) return { ...before, ...after }
  return { ...before, ...after, s: mergedStyle(before.s as IStyleData, after.s as IStyleData) }
}

/** Runs of rows, from first to last, whose height nobody set. */
function freeRows(context: GridAccess, sheetId: string, areas: Area[]): [number, number][] {
  const rows = new Set(
    areas.flatMap(({ row, rows }) => Array.from({ length: rows }, (_, index) => row + index))
  )
  const manager = context.peek(sheetId).getRowManager()
  const runs: [number, number][] = []
  for (const row of [...rows].sort((a, b) => a - b)) {
    if (manager.getRow(row)?.ia === BooleanNumber.FALSE) continue
    const last = runs.at(-1)
    if (last?.[1] === row - 1) last[1] = row
    else runs.push([row, row])
  }
  return runs
}

export function createWriter(context: GridAccess): Writer {
  const pending = new Map<string, Pending>()
  let waiting: ReturnType<typeof setTimeout> | undefined

  const flush = () => {
    clearTimeout(waiting)
    waiting = undefined
    const all = [...pending]
    pending.clear()
    for (const [sheetId, part] of all) {
      const { cells, values, wrapped } = part
      const trigger = values ? undefined : SetStyleCommand.id
      if (Object.keys(cells).length > 0)
        context.mutate(SetRangeValuesMutation.id, sheetId, { cellValue: cells, trigger })
      setSizes(context, sheetId, part)
      const sheet = context.grid.api.getActiveWorkbook()?.getSheetBySheetId(sheetId)
      for (const [first, last] of freeRows(context, sheetId, wrapped))
        sheet?.setRowAutoHeight(first, last - first + 1)
    }
  }
  const of = (sheetId: string): Pending => {
    let found = pending.get(sheetId)
    if (found === undefined) pending.set(sheetId, (found = emptyPending()))
    waiting ??= setTimeout(flush)
    return found
  }
  return {
    put(sheetId, area, cell, values) {
      const into = of(sheetId)
      into.values ||= values
      for (let row = 0; row < area.rows; row++) {
        const line = (into.cells[area.row + row] ??= {})
        for (let column = 0; column < area.columns; column++) {
          const place = area.column + column
          line[place] = merged(line[place], cell(row, column))
        }
      }
    },
    fitRows: (sheetId, area) => of(sheetId).wrapped.push(area),
    setSize(sheetId, what, first, count, pixels) {
      const sizes = of(sheetId)[what]
      for (let at = first; at < first + count; at++) sizes[at] = pixels
    },
    flush
  }
}
