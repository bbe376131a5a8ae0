import type { Cell } from '../../../shared/cells'
import type { Field } from '../../../shared/columns'
import type { LengthUnit } from '../../../shared/units'
import type { ColumnMeaning } from '../headers/assign'
import type { SheetCells } from './sheetCells'

/** Where a cell of the survey stands in the workbook; rows and columns of the sheet, from 0. */
export interface Place {
  readonly sheet: string
  readonly row: number
  readonly column: number
}

/** A column of the survey: what it means, and where its header stands. */
export interface SurveyColumn {
  readonly field: Field | null
  readonly header: string
  readonly unit: LengthUnit | null
  readonly percent: boolean
  readonly girth: boolean
  readonly meaning: ColumnMeaning
  readonly place: Place
}

/** A cell of the survey before it is put in its column: which sheet, row and column it is taken from. */
interface Source {
  readonly sheet: SheetCells
  readonly row: number
  readonly column: number
}

/**
 * One table of limbs and trees, however many blocks of however many sheets it was put together from. Every cell knows its
 * place, so that a problem names the cell that a person has to correct.
 */
export class SurveyTable {
  readonly columns: SurveyColumn[] = []
  private readonly rows: (Source | null)[][] = []

  addColumn(column: SurveyColumn): number {
    return this.columns.push(column) - 1
  }

  /** Adds a row by its sources, column by column. */
  addRow(sources: readonly (Source | null)[]): void {
    this.rows.push([...sources])
  }

  get height(): number {
    return this.rows.length
  }

  cell(row: number, column: number): Cell {
    const source = this.rows[row]?.[column]
    return source == null ? null : (source.sheet.rows[source.row]?.[source.column] ?? null)
  }

  place(row: number, column: number): Place | null {
    const source = this.rows[row]?.[column] ?? this.rows[row]?.find((each) => each !== null)
    if (source == null) return null
    const { sheet } = source
    return { sheet: sheet.name, row: sheet.top + source.row, column: sheet.left + source.column }
  }
}

export function sourceOf(sheet: SheetCells, row: number, column: number): Source {
  return { sheet, row, column }
}
export type { Source }
