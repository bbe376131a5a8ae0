import { cellAddress, type CellBlock } from '../../shared/cells'
import { columnOf, type Field, type LimbValues, type TreeValues } from '../../shared/columns'
import type { Place, Problem } from '../../shared/problems'
import type { LengthUnit, UnitSystem } from '../../shared/units'
import type { Confidence } from './headers/assign'

/**
 * One limb as it was surveyed: a value for every column of limbs in `shared/columns.ts`. Diameters in mm, heights in m,
 * shares 0 to 1; null where not measured, and never NaN, infinite or -0.
 */
export interface Limb extends LimbValues {
  /** Row of the inventory, which `rowPlace` finds in its sheet. */
  readonly row: number
  /** Why this row cannot be planned, or null. */
  readonly unplannable: string | null
}

/** One tree with its limbs: a value for every column of trees in `shared/columns.ts`. */
export interface Tree extends TreeValues {
  readonly row: number
  /** Why none of its limbs can be judged, where a word that the plan rests on is not known; null otherwise. */
  readonly unplannable: string | null
  readonly limbs: readonly Limb[]
}

/** Which column of a sheet gives which field, in which unit. */
export interface ColumnMatch {
  readonly sheet: string
  /** The letters of the column in its sheet. */
  readonly letters: string
  /** The column within the block that was read. */
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
  /** The row of the inventory, as limbs and trees count it. */
  readonly at: number
  /** The sheet's own row number, counted from 1. */
  readonly row: number
  /** Address of the row's first cell. */
  readonly cell: string
  readonly reason: string
  /** It is the row of a tree without limbs; otherwise it is a limb's. */
  readonly wholeTree?: true
}

/** Rows of one sheet that were read with the same columns. */
export interface InventoryPart {
  readonly sheet: string
  /** Row and column of the first header in the sheet, from 0. */
  readonly top: number
  readonly left: number
  /** The inventory's number of the row with the headers, and how many rows follow it, that row included. */
  readonly first: number
  readonly count: number
  readonly matches: readonly ColumnMatch[]
  /** Where cells stand that were gathered from several places, as those of a form. */
  readonly placeOf?: CellBlock['placeOf']
}

/** A measurement that limbs need and no column gives, with columns without a use that may hold it, best first. */
export interface AskedField {
  readonly field: Field
  readonly columns: readonly ColumnMatch[]
}

/** What sheets say, once read: nothing is dropped, what could not be used stands in `problems`. */
export interface Inventory {
  /** The sheet of the first part. */
  readonly sheet: string
  /** Address of all that was read. */
  readonly address: string
  readonly parts: readonly InventoryPart[]
  readonly matches: readonly ColumnMatch[]
  readonly asked: readonly AskedField[]
  readonly system: UnitSystem
  readonly trees: readonly Tree[]
  readonly limbCount: number
  readonly unplanned: readonly Unplanned[]
  readonly problems: readonly Problem[]
}

/** An inventory while it is read. */
export interface OpenInventory extends Inventory {
  readonly trees: Tree[]
  limbCount: number
  readonly unplanned: Unplanned[]
  readonly problems: Problem[]
}

/**
 * What a person said of a column: of the one under that header, wherever it stands, or of the one with those letters; where
 * both are given, of the column with those letters as long as it has that header.
 */
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
  answers?: readonly ColumnAnswer[]
  /** The only sheet to read. */
  sheet?: string
  /** Ids, as typed, of rows that are no trees. */
  noTrees?: readonly string[]
}

/** The part that a row of the inventory stands in. */
export function partOf({ parts }: Pick<Inventory, 'parts'>, row: number): InventoryPart {
  const found = parts.find(({ first, count }) => row >= first && row < first + count) ?? parts[0]
  if (found === undefined) throw new Error('The inventory has no part')
  return found
}

/** Where a cell of a part stands in its sheet. */
export function cellPlace(part: InventoryPart, row: number, column: number): { row: number; column: number } {
  return part.placeOf?.(row, column) ?? { row: part.top + row, column: part.left + column }
}

function partAddress(part: InventoryPart, row: number, column: number): string {
  const place = cellPlace(part, row, column)
  return cellAddress(place.row, place.column, part.sheet)
}

/** Where a row of the inventory stands: its sheet, and its number there as a person counts it, from 1. */
export function rowPlace(
  inventory: Pick<Inventory, 'parts'>,
  row: number
): { sheet: string; number: number; cell: string } {
  const part = partOf(inventory, row)
  const { row: at, column } = cellPlace(part, row - part.first, 0)
  return { sheet: part.sheet, number: at + 1, cell: cellAddress(at, column, part.sheet) }
}

/** The rows of the inventory that a row of a sheet, counted from 1, holds: one, or one for each group of columns. */
export function rowsAt({ parts }: Pick<Inventory, 'parts'>, sheet: string, number: number): number[] {
  return parts.flatMap((part) => {
    if (part.sheet === sheet && part.placeOf !== undefined) return rearrangedRowsAt(part, number)
    const row = number - 1 - part.top
    return part.sheet === sheet && row >= 1 && row < part.count ? [part.first + row] : []
  })
}

/** Of rows that were rearranged, those of which a cell stands in that row of the sheet. */
function rearrangedRowsAt(part: InventoryPart, number: number): number[] {
  const rows = Array.from({ length: part.count - 1 }, (_none, at) => at + 1)
  const stands = (row: number, column: number): boolean => cellPlace(part, row, column).row === number - 1
  return rows
    .filter((row) => part.matches.some(({ column }) => stands(row, column)))
    .map((row) => part.first + row)
}

/** The address of a field of a row; where its sheet has no such column, the row with the header that is missing. */
export function fieldAddress(inventory: Inventory, row: number, field: Field): string | Place {
  const part = partOf(inventory, row)
  const match = part.matches.find((each) => each.field === field)
  if (match !== undefined) return partAddress(part, row - part.first, match.column)
  const [{ number }, { name }] = [rowPlace(inventory, row), columnOf(field)]
  return {
    said: `row ${number}, no column “${name}”`,
    typeIn: `row ${number} of a new column headed “${name}”`,
    row: number,
    header: name
  }
}

/** The address of the header of a field, in the first part that has it; an empty text where none has. */
export function headerAddress({ parts }: Pick<Inventory, 'parts'>, field: Field): string {
  for (const part of parts) {
    const match = part.matches.find((each) => each.field === field)
    if (match !== undefined) return partAddress(part, 0, match.column)
  }
  return ''
}

/** A row of the inventory that is not planned. */
export function unplannedRow(inventory: Inventory, tree: string, row: number, reason: string): Unplanned {
  const { number, cell } = rowPlace(inventory, row)
  return { tree, at: row, row: number, cell, reason }
}

/** Lists a row that is not planned. */
export function leaveUnplanned(inventory: OpenInventory, tree: string, row: number, reason: string): void {
  inventory.unplanned.push(unplannedRow(inventory, tree, row, reason))
}
