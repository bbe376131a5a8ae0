import type { Field } from '../../../shared/columns'
import { mayBeForeign } from '../headers/dictionary'
import { readHeaderText } from '../headers/headerText'
import { withField } from './columnsByUse'
import type { HeaderRows, TableColumn } from './headerRows'
import { plain } from './plain'
import type { SheetCells } from './sheetCells'

/** Rows looked at, and rows from which codes tell anything. House judgment. */
const looked = 400
const fewest = 3
/** Rows in a hundred that may say the same of their tree as the row above. House judgment. */
const mostAlike = 25

/** "Y-01", "WP 3", "12-1", "a7": letters with a number, or two numbers; no date and no lone number. */
const code = /^(?:\p{L}{1,5}[-–./# ]?\d{1,6}\p{L}?|\d{1,6}[-–./]\d{1,4}|\d{1,6}[-–./ ]?\p{L}{1,2})$/u

/** What tells one tree from the next. */
const ofTrees: readonly Field[] = ['species', 'trunk', 'height']

function isFree({ name, meaning }: TableColumn): boolean {
  if (meaning.field !== null && meaning.field !== 'site') return false
  return !readHeaderText(name).words.some(mayBeForeign)
}

/** Whether rows are trees: hardly one says the same of its tree as the row above. */
function areTrees(sheet: SheetCells, columns: readonly TableColumn[], rows: readonly number[]): boolean {
  const known = columns.filter(({ meaning: { field } }) => field !== null && ofTrees.includes(field))
  if (known.length < 2) return false
  const said = rows.map((row) => known.map(({ column }) => plain(sheet.rows[row]?.[column])).join('\n'))
  const alike = said.filter((text, at) => at > 0 && text === said[at - 1]).length
  return alike * 100 <= rows.length * mostAlike
}

/**
 * The trees' ids where no header names them and each row is a tree: the first column of codes that never come twice. It is used
 * and asked about.
 */
export function codesOfTrees(sheet: SheetCells, header: HeaderRows, data: readonly number[]): HeaderRows {
  const { columns } = header
  if (data.length < fewest || columns.some(({ meaning }) => meaning.field === 'tree')) return header
  const rows = data.slice(0, looked)
  if (!areTrees(sheet, columns, rows)) return header
  const at = columns.findIndex((each) => {
    if (!isFree(each)) return false
    const texts = rows.map((row) => plain(sheet.rows[row]?.[each.column]))
    return texts.every((text) => code.test(text)) && new Set(texts).size === texts.length
  })
  const runnerUp = columns[at]?.meaning.field ?? null
  if (at < 0) return header
  const named = withField(header, at, 'tree')
  return {
    ...named,
    columns: named.columns.map((column, index) =>
      index === at ? { ...column, meaning: { ...column.meaning, runnerUp } } : column
    )
  }
}
