/** Values between the grid's formula engine and the cell functions, as Excel hands them over. */
import type { Nullable } from '@univerjs/core'
import {
  ArrayValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject
} from '@univerjs/preset-sheets-core'
import { CellError } from './calling'

function toPlain(value: Nullable<BaseValueObject>): unknown {
  if (value === null || value === undefined || value.isNull()) return null
  if (value.isError()) return (value as ErrorValueObject).getErrorType()
  return value.getValue()
}

/** Every parameter as rows of cells, as Excel hands a parameter of type any[][]. */
export function toRows(value: BaseValueObject): unknown[][] {
  if (!value.isArray()) return [[toPlain(value)]]
  const array = value as ArrayValueObject
  const rows = Array.from({ length: array.getRowCount() }, () => new Array<unknown>(array.getColumnCount()))
  for (const [index, row] of rows.entries())
    for (let column = 0; column < row.length; column++) row[column] = toPlain(array.get(index, column))
  return rows
}

function fromPlain(value: unknown): BaseValueObject {
  if (value === null || value === undefined) return NumberValueObject.create(0)
  if (typeof value === 'number')
    return Number.isFinite(value) ? NumberValueObject.create(value) : ErrorValueObject.create(ErrorType.NUM)
  if (typeof value === 'boolean') return BooleanValueObject.create(value)
  if (value instanceof CellError) return ErrorValueObject.create(value.code as ErrorType)
  return StringValueObject.create(String(value))
}

export function fromResult(result: unknown): BaseValueObject {
  if (!Array.isArray(result)) return fromPlain(result)
  const rows = result as unknown[][]
  const columns = rows.reduce((most, row) => Math.max(most, row.length), 1)
  if (rows.length <= 1 && columns === 1) return fromPlain(rows[0]?.[0] ?? '')
  return ArrayValueObject.create({
    calculateValueList: rows.map((row) => Array.from({ length: columns }, (_, i) => fromPlain(row[i] ?? ''))),
    rowCount: rows.length,
    columnCount: columns,
    unitId: '',
    sheetId: '',
    row: -1,
    column: -1
  })
}
