import { isBlank, quoted } from '../../../shared/cells'
import { problem, type Problem } from '../../../shared/problems'
import { columnHeaded } from './headerRows'
import type { SurveyTable } from './surveyTable'
import { tableAddress } from './tableAddress'
import { shownId, treeKey } from './treeKeys'

/** Share of the limbs whose tree has to be found, and of values that have to be found in the other column. House judgment. */
const mostly = 0.5
const nearlyAll = 0.8

/** The tree of each row of a table, by its row within the sheet. */
export type JoinedRows = ReadonlyMap<number, string>

function textAt({ sheet }: SurveyTable, row: number, column: number): string {
  const cell = sheet.rows[row]?.[column]
  return isBlank(cell) ? '' : shownId(String(cell))
}

function idColumn({ header }: SurveyTable): number {
  return columnHeaded(header, 'tree')
}

interface Column {
  readonly column: number
  readonly name: string
  readonly texts: readonly string[]
}

/** Columns whose cells may name a tree: no measurements, mostly filled. */
function keyColumns(table: SurveyTable): Column[] {
  return table.header.columns.flatMap(({ column, name, meaning }): Column[] => {
    if (meaning.field !== null && meaning.field !== 'parent' && meaning.field !== 'tree') return []
    const texts = table.rows.map((row) => treeKey(textAt(table, row, column)))
    const filled = texts.filter((text) => text !== '').length
    return filled >= table.rows.length * nearlyAll ? [{ column, name, texts }] : []
  })
}

/** The last run of digits of an id, without zeros before it: what "T-01" and "1" share. */
function digitsOf(id: string): string {
  return /(\d+)\D*$/.exec(id)?.[1]?.replace(/^0+(?=\d)/, '') ?? ''
}

/** Trees by the digits of their ids, where those tell them apart. */
function byDigits(ids: readonly string[]): Map<string, string> | null {
  const found = new Map(ids.map((id) => [digitsOf(id), id]))
  return found.size === ids.length && !found.has('') ? found : null
}

/** The rows of limbs that find their tree by a column of the trees' table other than its ids. */
function bySharedValues(
  trees: SurveyTable,
  limbs: SurveyTable
): { rows: Map<number, string>; names: string } | null {
  const idAt = idColumn(trees)
  for (const one of keyColumns(trees)) {
    if (new Set(one.texts).size !== one.texts.length) continue
    const tree = new Map(one.texts.map((text, at) => [text, textAt(trees, trees.rows[at] ?? -1, idAt)]))
    for (const other of keyColumns(limbs)) {
      // A list of one tree shares too little to tell by, unless the columns bear the same name.
      if (one.texts.length < 2 && one.name.toLowerCase() !== other.name.toLowerCase()) continue
      const found = other.texts.filter((text) => tree.has(text)).length
      // Values that never come twice number the limbs themselves.
      if (found < other.texts.length * nearlyAll || new Set(other.texts).size === other.texts.length) continue
      const rows = new Map(
        limbs.rows.flatMap((row, at) => [[row, tree.get(other.texts[at] ?? '') ?? ''] as const])
      )
      return { rows, names: `“${quoted(other.name)}” and “${quoted(one.name)}”` }
    }
  }
  return null
}

/** The column of limbs without ids of their trees that holds those of the listed trees, by its place among the headers; or -1. */
export function columnOfTrees(limbs: SurveyTable, lists: readonly SurveyTable[]): number {
  if (limbs.of !== 'limbs' || idColumn(limbs) >= 0) return -1
  const ids = lists.flatMap((list) => list.rows.map((row) => treeKey(textAt(list, row, idColumn(list)))))
  const known = new Set(ids.filter((id) => id !== ''))
  const found = keyColumns(limbs).find(({ texts }) => {
    const met = texts.filter((text) => known.has(text)).length
    return met >= texts.length * nearlyAll && new Set(texts).size < texts.length
  })
  return limbs.header.columns.findIndex(({ column }) => column === found?.column)
}

/**
 * Where the ids of a table of limbs hardly name trees of the table of trees: what joins them all the same, by another
 * column that both have, or by the numbers in their ids.
 */
export function joinedRows(
  tables: readonly SurveyTable[],
  problems: Problem[]
): Map<SurveyTable, JoinedRows> {
  const joined = new Map<SurveyTable, JoinedRows>()
  const lists = tables.filter((table) => table.of === 'trees' && idColumn(table) >= 0)
  const [trees] = lists
  if (trees === undefined) return joined
  const ids = lists.flatMap((list) => list.rows.map((row) => textAt(list, row, idColumn(list))))
  const known = new Set(ids.map(treeKey))
  for (const limbs of tables) {
    if (limbs.of !== 'limbs') continue
    const own = idColumn(limbs)
    const names = own < 0 ? [] : limbs.rows.map((row) => textAt(limbs, row, own))
    const met = names.filter((id) => known.has(treeKey(id))).length
    if (names.length > 0 && met >= names.length * mostly) continue
    const shared = bySharedValues(trees, limbs)
    if (shared !== null) {
      joined.set(limbs, shared.rows)
      problems.push(problem('joined-by', tableAddress(limbs), { columns: shared.names }))
      continue
    }
    const digits = byDigits(ids)
    const rows = new Map(
      limbs.rows.flatMap((row, at) => {
        const tree = digits?.get(digitsOf(names[at] ?? ''))
        return tree === undefined ? [] : [[row, tree] as const]
      })
    )
    if (names.length === 0 || rows.size < limbs.rows.length * nearlyAll) continue
    joined.set(limbs, rows)
    const [first] = names
    problems.push(
      problem('joined-by-number', tableAddress(limbs), {
        one: quoted(first ?? ''),
        other: quoted(digits?.get(digitsOf(first ?? '')) ?? '')
      })
    )
  }
  return joined
}
