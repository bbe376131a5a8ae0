/** Values, formulas, texts and number formats of the grid's cells. */
import type { ICellData, IObjectMatrixPrimitiveType, Nullable, Worksheet } from '@univerjs/core'
import { FormulaDataModel, SetRangeValuesMutation } from '@univerjs/preset-sheets-core'
import type { Area, Cell } from '../../../shared/cells'
import type { Book } from '../book'
import { growSheet } from './bounds'
import { cellValue, cellMatrix, richText, typedCell } from './cellData'
import { clippedToSheet, type GridContext } from './context'

type CellPart = Pick<
  Book,
  | 'usedArea'
  | 'values'
  | 'formulas'
  | 'texts'
  | 'numberFormats'
  | 'setValues'
  | 'setNumberFormats'
  | 'clear'
  | 'copyCells'
>

/** The area that holds values or formats; null on an empty sheet. Spilled cells count. */
function usedArea(context: GridContext, sheet: Worksheet, valuesOnly: boolean): Area | null {
  let [top, left, bottom, right] = [Infinity, Infinity, -1, -1]
  const stretch = (row: number, column: number) => {
    top = Math.min(top, row)
    left = Math.min(left, column)
    bottom = Math.max(bottom, row)
    right = Math.max(right, column)
  }
  sheet.getCellMatrix().forValue((row, column, cell: Nullable<ICellData>) => {
    const filled = cellValue(cell) !== null || Boolean(cell?.f ?? cell?.si)
    if (filled || (!valuesOnly && cell?.s)) stretch(row, column)
  })
  for (const [row, cells] of Object.entries(spilledCells(context, sheet) ?? {}))
    for (const column of Object.keys(cells ?? {})) stretch(Number(row), Number(column))
  return bottom < 0 ? null : { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 }
}

export function spilledCells(
  context: GridContext,
  sheet: Worksheet
): Nullable<IObjectMatrixPrimitiveType<Nullable<ICellData>>> {
  const all = context.injector.get(FormulaDataModel).getArrayFormulaCellData()
  return all[sheet.getUnitId()]?.[sheet.getSheetId()]
}

export function cellsOf(context: GridContext): CellPart {
  const read = <T>(
    sheetId: string,
    area: Area,
    empty: T,
    cell: (row: number, column: number) => T
  ): T[][] => {
    const inside = clippedToSheet(context.sheet(sheetId), area)
    return Array.from({ length: area.rows }, (_, row) =>
      Array.from({ length: area.columns }, (__, column) =>
        row < inside.rows && column < inside.columns ? cell(area.row + row, area.column + column) : empty
      )
    )
  }
  const write = (
    sheetId: string,
    area: Area,
    cell: (row: number, column: number) => ICellData,
    values: boolean
  ) => {
    growSheet(context, sheetId, area)
    context.writer.put(sheetId, area, cell, values)
  }
  const valueAt = (sheet: Worksheet) => {
    const spills = spilledCells(context, sheet)
    return (row: number, column: number): Cell =>
      cellValue(sheet.getCellRaw(row, column)) ?? cellValue(spills?.[row]?.[column])
  }
  return {
    usedArea: (sheetId, valuesOnly) => usedArea(context, context.sheet(sheetId), valuesOnly),
    values: (sheetId, area) => read<Cell>(sheetId, area, null, valueAt(context.sheet(sheetId))),
    formulas(sheetId, area) {
      const formulas = context.injector.get(FormulaDataModel)
      const value = valueAt(context.sheet(sheetId))
      const unit = context.workbook().getUnitId()
      return read<Cell>(
        sheetId,
        area,
        null,
        (row, column) => formulas.getFormulaStringByCell(row, column, sheetId, unit) ?? value(row, column)
      )
    },
    texts(sheetId, area) {
      const sheet = context.sheet(sheetId)
      return read(sheetId, area, '', (row, column) => {
        const shown = sheet.getCell(row, column)
        if (!shown) return ''
        return richText(shown) ?? String(shown.v ?? '')
      })
    },
    numberFormats(sheetId, area) {
      const sheet = context.sheet(sheetId)
      const styles = context.workbook().getStyles()
      return read(
        sheetId,
        area,
        'General',
        (row, column) => styles.getStyleByCell(sheet.getCellRaw(row, column))?.n?.pattern ?? 'General'
      )
    },
    setValues: (sheetId, area, values) =>
      write(sheetId, area, (row, column) => typedCell(values[row]?.[column] ?? null), true),
    setNumberFormats: (sheetId, area, formats) =>
      write(
        sheetId,
        area,
        (row, column) => {
          const pattern = formats[row]?.[column] ?? 'General'
          return { s: { n: pattern === 'General' ? null : { pattern } } }
        },
        false
      ),
    copyCells(from, area, to, place) {
      const source = context.sheet(from)
      const styles = context.workbook().getStyles()
      const formulas = context.injector.get(FormulaDataModel)
      const unit = context.workbook().getUnitId()
      growSheet(context, to, place)
      const copy = (row: number, column: number): ICellData => {
        const cell = source.getCellRaw(area.row + row, area.column + column)
        const f = formulas.getFormulaStringByCell(area.row + row, area.column + column, from, unit)
        const { v = null, t = null, p = null } = cell ?? {}
        // Formulas that follow each other share one: each gets its own text here.
        return { v, t, p, f, si: null, s: styles.getStyleByCell(cell) ?? null, custom: null }
      }
      context.mutate(SetRangeValuesMutation.id, to, { cellValue: cellMatrix(place, copy) })
      context.writer.fitRows(to, place)
    },
    clear(sheetId, area) {
      const inside = clippedToSheet(context.sheet(sheetId), area)
      if (inside.rows * inside.columns === 0) return
      const nothing = () => ({ v: null, t: null, f: null, si: null, p: null, s: null, custom: null })
      context.mutate(SetRangeValuesMutation.id, sheetId, { cellValue: cellMatrix(inside, nothing) })
    }
  }
}
