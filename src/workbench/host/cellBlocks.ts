/** Blocks of cells on their way in and out, as the Excel API wants them. */
import { type Area, type Cell, isErrorText } from '../../../shared/cells'
import { invalidArgument } from './faults'
import { BookFault } from '../book'

/** Beyond this many cells a read gives null and a write is refused. */
export const mostCells = 5_000_000

/** Empty cells are read as empty texts. */
export function asRead(block: Cell[][]): Cell[][] {
  return block.map((row) => row.map((cell) => cell ?? ''))
}

export function valueType(cell: Cell): string {
  if (cell === null || cell === '') return 'Empty'
  if (typeof cell === 'number') return 'Double'
  if (typeof cell === 'boolean') return 'Boolean'
  return isErrorText(cell) ? 'Error' : 'String'
}

/** A block of the area's own shape; one value alone stands for all cells. Null leaves a cell as it is. */
export function asWritten<T>(
  given: unknown,
  area: Area,
  accepts: (value: unknown) => value is T
): (T | null)[][] {
  if (area.rows * area.columns > mostCells)
    throw new BookFault('OperationCellsExceedLimit', 'These are more cells than one operation may change.')
  const block = Array.isArray(given) ? (given as unknown[]) : filled(given, area)
  if (block.length !== area.rows) throw shapeFault(area)
  return block.map((row) => {
    if (!Array.isArray(row) || row.length !== area.columns) throw shapeFault(area)
    return row.map((value: unknown) => {
      if (value === null || accepts(value)) return value
      throw invalidArgument('A cell was given something that is neither text, number, true, false nor null.')
    })
  })
}

function filled(value: unknown, { rows, columns }: Area): unknown[][] {
  return Array.from({ length: rows }, () => Array.from({ length: columns }, () => value))
}

function shapeFault({ rows, columns }: Area) {
  return invalidArgument(`The block given is not of the range's shape, ${rows} by ${columns}.`)
}

export function isCell(value: unknown): value is Exclude<Cell, null> {
  return ['string', 'boolean'].includes(typeof value) || (typeof value === 'number' && Number.isFinite(value))
}

export function isText(value: unknown): value is string {
  return typeof value === 'string'
}

/** Hands over the block, in pieces that leave out the cells given as null. */
export function withoutGaps<T>(
  block: (T | null)[][],
  area: Area,
  write: (area: Area, block: T[][]) => void
): void {
  if (block.every((row) => row.every((value) => value !== null))) {
    write(area, block as T[][])
    return
  }
  block.forEach((row, down) => {
    for (const run of runs(row))
      write({ row: area.row + down, column: area.column + run.start, rows: 1, columns: run.values.length }, [
        run.values
      ])
  })
}

function runs<T>(row: (T | null)[]): { start: number; values: T[] }[] {
  const found: { start: number; values: T[] }[] = []
  row.forEach((value, index) => {
    if (value === null) return
    const last = found.at(-1)
    if (last && last.start + last.values.length === index) last.values.push(value)
    else found.push({ start: index, values: [value] })
  })
  return found
}
