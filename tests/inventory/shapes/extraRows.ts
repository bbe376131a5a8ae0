/** Rows that add nothing to what a table of limbs says: copies of a row, sums and means; and numbers typed with a comma. */
import fc from 'fast-check'
import type { Cell } from '../../../shared/cells'
import { inText, type ShapeColumn, type ShapeRow, type ShapeSheet } from './shape'

export interface ExtraRows {
  /** Rows of limbs that stand twice, the copy below its row or at the end. */
  readonly duplicates?: readonly { readonly row: number; readonly atEnd: boolean }[]
  /** The word that stands before a row of sums or means; null for sums without a word. */
  readonly total?: TotalWord
}

const words = ['Total', 'Sum', 'TOTAL:', 'Average', 'Mean', 'Summe', 'Moyenne', null, null, null] as const
type TotalWord = (typeof words)[number]

export const totalWords = fc.constantFrom<TotalWord>(...words)
export const duplicatePlaces = fc.array(fc.record({ row: fc.nat(30), atEnd: fc.boolean() }), {
  minLength: 1,
  maxLength: 2
})

/** Rows of limbs from which sums can be told. */
const enoughToSum = 4

function totalOf(
  columns: readonly ShapeColumn[],
  rows: readonly ShapeRow[],
  word: TotalWord
): ShapeRow | null {
  const isMean = word !== null && /average|mean|moyenne/i.test(word)
  const cells = columns.map(({ unit, of }, at): Cell => {
    const numbers = rows.flatMap(({ cells: each }) => (typeof each[at] === 'number' ? [each[at]] : []))
    if (unit === null || numbers.length === 0) return null
    const sum = numbers.reduce((all, number) => all + number, 0)
    return of === 'limb' || word !== null
      ? Number((isMean ? sum / numbers.length : sum).toPrecision(12))
      : null
  })
  if (word !== null) return { kind: 'note', cells: [word, ...cells.slice(1)] }
  const summed = cells.filter((cell) => cell !== null).length
  return rows.length < enoughToSum || summed < 3 ? null : { kind: 'note', cells }
}

/** Only below a table with a limb in each row. */
export function withExtraRows(sheet: ShapeSheet, { duplicates = [], total }: ExtraRows): ShapeSheet {
  const { columns } = sheet
  if (columns === undefined) return sheet
  const rows = [...sheet.rows]
  const data = rows.filter(({ kind }) => kind === 'data')
  const isTotaled = total !== undefined && duplicates.length === 0
  const sums = isTotaled ? totalOf(columns, data, total) : null
  for (const { row, atEnd } of duplicates) {
    const copied = data[row % data.length]!
    if (hasNoTree(columns, copied)) continue
    rows.splice(atEnd ? rows.length : rows.indexOf(copied) + 1, 0, { ...copied })
  }
  return { ...sheet, rows: sums === null ? rows : [...rows, sums] }
}

/** Its tree's columns stand on another row: a copy of it would be a limb of the tree before it. */
function hasNoTree(columns: readonly ShapeColumn[], { cells }: ShapeRow): boolean {
  return cells[columns.findIndex(({ field }) => field === 'tree')] === null
}

const typedLength = /^\d+\.\d+ (?:in|ft|cm|mm|m)$/

function withComma(cell: Cell): Cell {
  if (typeof cell === 'number') return Number.isInteger(cell) ? cell : inText(cell).replace('.', ',')
  return typeof cell === 'string' && typedLength.test(cell) ? cell.replace('.', ',') : cell
}

/** Decimal numbers as texts with a comma, as where a program of another language wrote them. */
export function withCommas(sheet: ShapeSheet): ShapeSheet {
  return { ...sheet, rows: sheet.rows.map((row) => ({ ...row, cells: row.cells.map(withComma) })) }
}
