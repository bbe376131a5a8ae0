/** A survey put into tables: columns, and rows of which each is known to be what it is. */
import type { Cell } from '../../../shared/cells'
import { columnOf, type Field } from '../../../shared/columns'
import { lengthOf } from '../../../src/inventory/lengthOf'
import type { SheetCells } from '../../../src/inventory/survey/sheetCells'
import type { DrawnSurvey, DrawnTree, Measured } from './drawnSurvey'

export const millimeters = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 } as const
export type Unit = keyof typeof millimeters

/** A column of a survey, or one that means nothing to the plan: its values come again and again. */
export interface ShapeColumn {
  readonly field: Field | null
  readonly of: 'tree' | 'limb'
  /** Without its unit. */
  readonly name: string
  readonly unit: Unit | null
  /** The name says the unit by itself. */
  readonly unitWithin: boolean
  readonly girth: boolean
  readonly values: readonly Cell[]
  /** Every so many cells are a text with a unit of their own: "18 cm" under inches. */
  readonly typed?: { readonly unit: Unit; readonly every: number }
}

export type RowKind = 'title' | 'header' | 'data' | 'blank' | 'note'

export interface ShapeRow {
  readonly kind: RowKind
  readonly cells: readonly Cell[]
  /** The place of the tree whose row it is. */
  readonly treeAt?: number
}

export interface ShapeSheet extends Pick<SheetCells, 'merges' | 'hiddenRows' | 'hiddenColumns'> {
  readonly name: string
  readonly rows: readonly ShapeRow[]
  /** The columns of a table with a limb in each row. */
  readonly columns?: readonly ShapeColumn[]
}

const names: Readonly<Partial<Record<Field, string>>> = {
  tree: 'Tree',
  trunk: 'Trunk dia',
  height: 'Height',
  crownBase: 'Crown base',
  limb: 'Limb',
  diameter: 'Limb dia',
  stem: 'Stem dia',
  origin: 'Origin',
  tip: 'Tip',
  lowestFoliage: 'Lowest foliage',
  live: 'Live or dead'
}

/** The columns of our own sample: our headers, each length with its unit. */
export function plainColumns({ units, fields }: DrawnSurvey): ShapeColumn[] {
  const [small, tall] = units.split('-') as [Unit, Unit]
  return fields.map((field) => {
    const length = lengthOf(field)
    return {
      field,
      of: columnOf(field).of,
      name: names[field] ?? columnOf(field).name,
      unit: length === 'diameter' ? small : length === 'height' ? tall : null,
      unitWithin: false,
      girth: false,
      values: []
    }
  })
}

export function headerOf({ name, unit, unitWithin }: ShapeColumn, withUnit = true): string {
  return unit === null || unitWithin || !withUnit ? name : `${name} (${unit})`
}

/** What a column says of a tree or limb. */
export function cellOf(column: ShapeColumn, measured: Measured, at: number): Cell {
  const { field, unit, girth, values, typed } = column
  if (field === null) return values[at % values.length] ?? null
  const value = measured[field]
  if (value === undefined || value === '') return null
  if (unit === null || typeof value === 'string') return value
  const length = value * (girth ? Math.PI : 1)
  if (typed !== undefined && at % typed.every === 0)
    return `${inText(inUnit(length, typed.unit))} ${typed.unit}`
  return inUnit(length, unit)
}

function inUnit(length: number, unit: Unit): number {
  return Number((length / millimeters[unit]).toPrecision(13))
}

/** A number in a text, where three decimals could be thousands. */
export function inText(value: Cell): string {
  return String(value).replace(/(?<=\.\d{3})$/, '0')
}

/** One row per limb, with its tree's columns in every row or in the first one. */
export function limbRows(
  columns: readonly ShapeColumn[],
  trees: readonly DrawnTree[],
  firstOnly: boolean
): ShapeRow[] {
  let limbAt = 0
  return trees.flatMap((tree, treeAt) =>
    tree.limbs.map((limb, row): ShapeRow => {
      const at = limbAt++
      const cells = columns.map((column) => {
        if (column.of === 'limb') return cellOf(column, limb, at)
        return firstOnly && row > 0 ? null : cellOf(column, tree.values, treeAt)
      })
      return { kind: 'data', cells, treeAt }
    })
  )
}

/** The survey as our own sample would have it. */
export function plainShape(survey: DrawnSurvey): ShapeSheet[] {
  const columns = plainColumns(survey)
  const header: ShapeRow = { kind: 'header', cells: columns.map((column) => headerOf(column)) }
  return [{ name: 'Survey', rows: [header, ...limbRows(columns, survey.trees, false)] }]
}

export function sheetsOf(shape: readonly ShapeSheet[]): SheetCells[] {
  return shape.map(({ name, rows, merges, hiddenRows, hiddenColumns }) => ({
    ...{ name, rows: rows.map(({ cells }) => cells), top: 0, left: 0 },
    ...(merges !== undefined && { merges }),
    ...(hiddenRows !== undefined && { hiddenRows }),
    ...(hiddenColumns !== undefined && { hiddenColumns })
  }))
}
