import { isBlank, quoted } from '../../../shared/cells'
import type { Field } from '../../../shared/columns'
import { likelyFields } from '../headers/likelihood'
import type { SheetCells } from '../survey/sheetCells'
import type { SaidInLine } from '../survey/treeLine'
import { keyOf, saidIn } from './lineSizes'
import { placedAt, rearranged, type Placed } from './placed'

/** A sheet with the sizes that stand in the texts of one column in columns of their own. */
export interface MeasuredTexts {
  readonly sheet: SheetCells
  readonly row: number
  readonly column: number
  readonly text: string
  readonly example: string
}

/** Rows in which names may stand, and rows looked at below them. */
const headRows = 60
const looked = 200

/** Share of the texts that have to give two sizes. House judgment. */
const mostly = 0.6
const likelyEnough = 0.6
const longestText = 200

function saidOf(cell: unknown): readonly SaidInLine[] {
  return typeof cell === 'string' && cell.length <= longestText
    ? saidIn(cell.trim().replaceAll(';', ','))
    : []
}

/** Whether a text heads the trees of a list: their ids, or their kinds. */
function headsTrees(cell: unknown): boolean {
  if (typeof cell !== 'string') return false
  const [best] = likelyFields(cell)
  return (
    best !== undefined && (best.field === 'tree' || best.field === 'species') && best.score >= likelyEnough
  )
}

function columnIn({ rows }: SheetCells, names: number): number | undefined {
  const header = rows[names] ?? []
  if (!header.some(headsTrees)) return undefined
  return header.findIndex((name, column) => {
    if (typeof name !== 'string' || isBlank(name) || headsTrees(name)) return false
    const texts = rows.slice(names + 1, names + 1 + looked).flatMap((cells) => cells[column] ?? [])
    const several = texts.filter((text) => saidOf(text).length >= 2)
    return texts.length > 0 && several.length >= texts.length * mostly
  })
}

/** A list of trees whose sizes stand in texts ("12 in DBH, 35 ft tall") under a header that names none; null where it is none. */
export function withMeasuredTexts(sheet: SheetCells): MeasuredTexts | null {
  const last = Math.min(sheet.rows.length - 1, headRows)
  for (let names = 0; names < last; names++) {
    const column = columnIn(sheet, names)
    if (column !== undefined && column >= 0) return measured(sheet, names, column)
  }
  return null
}

function measured(sheet: SheetCells, names: number, column: number): MeasuredTexts | null {
  const said = sheet.rows.map((cells, row) => (row > names ? saidOf(cells[column]) : []))
  const fields = new Map<string, Field>(said.flat().map((each) => [keyOf(each), each.field]))
  // Two units of one field are two columns, of which one alone could be used.
  if (new Set(fields.values()).size < fields.size) return null
  const width = sheet.rows.reduce((most, row) => Math.max(most, row.length), 0)
  const keys = [...fields.keys()]
  const rows = sheet.rows.map((_cells, row) => [
    // What was read stands in its own columns, and is no column without a use.
    ...Array.from({ length: width }, (_none, at): Placed => {
      const placed = placedAt(sheet, row, at)
      return at === column && row >= names ? { ...placed, cell: null } : placed
    }),
    ...keys.map((key): Placed => {
      const value = said[row]?.find((each) => keyOf(each) === key)?.value ?? null
      return { cell: row === names ? key : value, row, column }
    })
  ])
  const example = sheet.rows[said.findIndex((each) => each.length > 0)]?.[column]
  return {
    sheet: {
      ...rearranged(sheet, rows),
      given: new Map(keys.map((key, at) => [width + at, fields.get(key) ?? 'trunk'] as const))
    },
    row: names,
    column,
    text: quoted(sheet.rows[names]?.[column]),
    example: quoted(example)
  }
}
