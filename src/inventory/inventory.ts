import { cellAddress } from '../../shared/cells'
import { columnOf, type Field, type LimbValues, type TreeValues } from '../../shared/columns'
import type { Place, Problem } from '../../shared/problems'
import type { LengthUnit, UnitSystem } from '../../shared/units'
import type { Confidence } from './headers/assign'

/**
 * One limb as it was surveyed: a value for every column of limbs in `shared/columns.ts`. Diameters in mm, heights in m,
 * shares 0 to 1; null where not measured, and never NaN, infinite or -0.
 */
export interface Limb extends LimbValues {
  /** Row within the block that was read, counted from 0 with the headers as row 0. */
  readonly row: number
  /** Why this row cannot be planned, or null. */
  readonly unplannable: string | null
}

/** One tree with its limbs: a value for every column of trees in `shared/columns.ts`. */
export interface Tree extends TreeValues {
  readonly row: number
  readonly limbs: readonly Limb[]
}

/** Which column of the block gives which field, in which unit. */
export interface ColumnMatch {
  readonly column: number
  readonly header: string
  readonly field: Field | null
  readonly unit: LengthUnit | null
  /** The header named the unit; otherwise it was assumed. */
  readonly unitNamed: boolean
  readonly percent: boolean
  /** The diameter is given as a girth, and is divided by π. */
  readonly girth: boolean
  /** How far the meaning can be relied on; "likely" is used and asked about once. */
  readonly confidence: Confidence | 'chosen'
  /** The next best meaning, or null. */
  readonly runnerUp: Field | null
}

/** A row that could not be planned, and why. */
export interface Unplanned {
  readonly tree: string
  /** The sheet's own row number, counted from 1 (a limb's and a tree's `row` count within the block, from 0). */
  readonly row: number
  /** Address of the row's first cell. */
  readonly cell: string
  readonly reason: string
  /** It is the row of a tree without limbs; otherwise it is a limb's. */
  readonly wholeTree?: true
}

/** What a block of cells says, once read: nothing is dropped, what could not be used stands in `problems`. */
export interface Inventory {
  readonly sheet: string
  /** Address of the whole block. */
  readonly address: string
  /** Row and column of the block's first cell in its sheet, from 0. */
  readonly top: number
  readonly left: number
  readonly matches: readonly ColumnMatch[]
  readonly system: UnitSystem
  readonly trees: readonly Tree[]
  readonly limbCount: number
  readonly unplanned: readonly Unplanned[]
  readonly problems: readonly Problem[]
}

/** An inventory to which rows that are not planned may still be added: while it is read, and in the copy of a plan. */
export interface UnplannedList extends Omit<Inventory, 'unplanned'> {
  readonly unplanned: Unplanned[]
}

/** An inventory while it is read. */
export interface OpenInventory extends UnplannedList {
  readonly trees: Tree[]
  limbCount: number
  readonly problems: Problem[]
}

/** What a person said of a column: of the one under that header, wherever it stands, or of the one with those letters. */
export interface ColumnAnswer {
  readonly header?: string
  readonly column?: string
  /** The sheet it holds for; every sheet where none is named. */
  readonly sheet?: string
  /** What the column gives; null where it is not to be used. */
  readonly field?: Field | null
  readonly unit?: LengthUnit
}

/** What a person may settle before reading: the meaning of columns and the system to assume. */

export interface ReadingChoices {
  system?: UnitSystem
  fields?: Record<number, Field | null>
  units?: Record<number, LengthUnit>
  answers?: readonly ColumnAnswer[]
  /** The only sheet to read. */
  sheet?: string
  /** Ids, as typed, of rows that are no trees. */
  noTrees?: readonly string[]
}

/** The choices that the pane offers under "Columns", by the position of the column. */
export type ColumnChoices = Required<Pick<ReadingChoices, 'system' | 'fields' | 'units'>>

/** The address of a field of a row; where the inventory has no such column, the row with the header that is missing. */
export function fieldAddress(inventory: Inventory, row: number, field: Field): string | Place {
  const match = inventory.matches.find((each) => each.field === field)
  if (match !== undefined)
    return cellAddress(inventory.top + row, inventory.left + match.column, inventory.sheet)
  const [number, { name }] = [inventory.top + row + 1, columnOf(field)]
  return {
    said: `row ${number}, no column “${name}”`,
    typeIn: `row ${number} of a new column headed “${name}”`,
    row: number,
    header: name
  }
}

/** Lists a row that is not planned. */
export function leaveUnplanned(
  inventory: UnplannedList,
  tree: string,
  row: number,
  reason: string,
  more: Pick<Unplanned, 'wholeTree'> = {}
): void {
  const cell = cellAddress(inventory.top + row, inventory.left, inventory.sheet)
  inventory.unplanned.push({ tree, row: inventory.top + row + 1, cell, reason, ...more })
}
