/** The cells of one sheet in memory: only those that hold something. */
import type { Area, Cell } from '../../../shared/cells'
import { BookFault } from '../book'
import { shownText } from './shownText'
import { readTyped } from './typed'

interface StoredCell {
  value: Cell
  formula?: string
  numberFormat?: string
}

/** Gives the value of a formula; without one a formula cell holds an empty text. */
export type Calculate = (formula: string, row: number, column: number) => Cell

const columnsPerRow = 16_384

export class SparseCells {
  private readonly cells = new Map<number, StoredCell>()

  constructor(private readonly calculate: () => Calculate | null) {}

  read<T>(area: Area, choose: (cell: StoredCell | undefined) => T): T[][] {
    return Array.from({ length: area.rows }, (_, down) =>
      Array.from({ length: area.columns }, (__, across) =>
        choose(this.cells.get(key(area.row + down, area.column + across)))
      )
    )
  }

  values(area: Area): Cell[][] {
    return this.read(area, (cell) => cell?.value ?? null)
  }

  formulas(area: Area): Cell[][] {
    return this.read(area, (cell) => cell?.formula ?? cell?.value ?? null)
  }

  texts(area: Area): string[][] {
    return this.read(area, (cell) => shownText(cell?.value ?? null, cell?.numberFormat ?? 'General'))
  }

  numberFormats(area: Area): string[][] {
    return this.read(area, (cell) => cell?.numberFormat ?? 'General')
  }

  write(row: number, column: number, given: Cell): void {
    const place = key(row, column)
    const numberFormat = this.cells.get(place)?.numberFormat
    const now = readTyped(given, numberFormat ?? 'General')
    if ('formula' in now) {
      const value = this.calculate()?.(now.formula, row, column) ?? ''
      this.cells.set(place, { value, formula: now.formula, numberFormat })
    } else this.store(place, { value: now.value, numberFormat: numberFormat ?? now.numberFormat })
  }

  setNumberFormat(row: number, column: number, format: string): void {
    const place = key(row, column)
    const numberFormat = format === 'General' ? undefined : format
    this.store(place, { ...(this.cells.get(place) ?? { value: null }), numberFormat })
  }

  /** The cells of an area of another sheet, or of this one, in a place of its size. */
  copy(from: SparseCells, area: Area, place: Area): void {
    const copied = from.stored(area)
    this.clear(place)
    const [down, across] = [place.row - area.row, place.column - area.column]
    for (const { row, column, cell } of copied) {
      // A formula with references beside the cell would have to move them; a copy to another place is not needed.
      if (cell.formula !== undefined && (down !== 0 || across !== 0))
        throw new BookFault(
          'NotImplemented',
          'A formula can only be copied to the same place of another sheet.'
        )
      this.cells.set(key(row + down, column + across), { ...cell })
    }
  }

  private stored(area: Area): { row: number; column: number; cell: StoredCell }[] {
    return [...this.places(true)].flatMap(({ row, column }) => {
      const place = key(row, column)
      const cell = inside(place, area) ? this.cells.get(place) : undefined
      return cell === undefined ? [] : [{ row, column, cell }]
    })
  }

  clear(area: Area): void {
    for (const place of this.cells.keys()) if (inside(place, area)) this.cells.delete(place)
  }

  /** Places that hold a value or a formula, or with formats also those that only have a number format. */
  *places(withFormats: boolean): Generator<{ row: number; column: number }> {
    for (const [place, cell] of this.cells)
      if (withFormats || cell.value !== null)
        yield { row: Math.floor(place / columnsPerRow), column: place % columnsPerRow }
  }

  private store(place: number, cell: StoredCell): void {
    if (cell.value === null && cell.numberFormat === undefined && cell.formula === undefined)
      this.cells.delete(place)
    else this.cells.set(place, cell)
  }
}

function key(row: number, column: number): number {
  return row * columnsPerRow + column
}

function inside(place: number, area: Area): boolean {
  const row = Math.floor(place / columnsPerRow)
  const column = place % columnsPerRow
  return (
    row >= area.row &&
    row < area.row + area.rows &&
    column >= area.column &&
    column < area.column + area.columns
  )
}
