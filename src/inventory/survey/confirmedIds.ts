import { columnOf, type Field } from '../../../shared/columns'
import { readHeaderText } from '../headers/headerText'
import { mayBeForeign } from '../headers/dictionary'
import type { HeaderRows, TableColumn } from './headerRows'
import { plain } from './plain'
import type { SheetCells } from './sheetCells'

/** Rows looked at. House judgment. */
const looked = 400

/** Tree columns that have to agree with the ids. House judgment. */
const enough = 2

/** Whether each id stands for one tree: its rows say the same, and rows of one tree after another bear one id. */
function standForTrees(ids: readonly string[], known: readonly (readonly string[])[]): boolean {
  const first = new Map<string, number>()
  return ids.every((id, at) => {
    if (id === '') return false
    const before = first.get(id)
    if (before === undefined) {
      first.set(id, at)
      return at === 0 || known.some((cells) => cells[at] !== cells[at - 1])
    }
    return known.every((cells) => (cells[at] ?? '') === '' || cells[at] === cells[before])
  })
}

/** Whether another column without a meaning could be the id as well. */
function hasRival(columns: readonly TableColumn[], tree: TableColumn): boolean {
  return columns.some(
    ({ column, name, meaning }) =>
      column !== tree.column &&
      meaning.field === null &&
      (meaning.runnerUp === 'tree' || readHeaderText(name).notions.has('id')) &&
      !readHeaderText(name).words.some(mayBeForeign)
  )
}

/**
 * A bare "No." or "ID" that is likely the tree's is surely so, and not asked about, where its values stand for the trees of the
 * table in every row and no other column could be meant.
 */
export function confirmedIds(sheet: SheetCells, header: HeaderRows, data: readonly number[]): HeaderRows {
  const { columns } = header
  const tree = columns.find(({ meaning }) => meaning.field === 'tree')
  if (tree === undefined || tree.meaning.confidence !== 'likely' || header.groups !== null) return header
  if (tree.name === '' || readHeaderText(tree.name).unknown.length > 0) return header
  if (data.length < 2 || hasRival(columns, tree)) return header
  const of = columns.filter(({ meaning: { field } }) => isOfTree(field))
  const rows = data.slice(0, looked)
  const texts = ({ column }: TableColumn): string[] => rows.map((row) => plain(sheet.rows[row]?.[column]))
  if (of.length < enough || !standForTrees(texts(tree), of.map(texts))) return header
  const meaning = { ...tree.meaning, confidence: 'sure' as const }
  return { ...header, columns: columns.map((each) => (each === tree ? { ...each, meaning } : each)) }
}

function isOfTree(field: Field | null): boolean {
  return field !== null && field !== 'tree' && field !== 'treeNotes' && columnOf(field).of === 'tree'
}
