import { isBlank, type Cell } from '../../../shared/cells'
import { columnOf, type Field } from '../../../shared/columns'
import { likelyFields } from '../headers/likelihood'
import { lengthOf } from '../lengthOf'
import { filledIn, type SheetCells } from './sheetCells'
import { saidInLine } from './treeLine'
import { numberWord, treeWord } from './treeWords'

/** A label with its value, such as "Tree no: 12". */
export interface LabeledValue {
  readonly field: Field
  readonly label: string
  readonly value: Cell
  readonly row: number
  readonly column: number
}

/** Letters of a label at most; how well its words have to mean a field, and rows that a form has at most. House judgment. */
const longestLabel = 80
const likelyEnough = 0.8
const formRows = 30

/** The field of a tree that a label names, or null: above the table of limbs "Haut." is the height of the tree. */
function labelField(text: string): Field | null {
  const ofTree = likelyFields(text).find(({ field }) => columnOf(field).of === 'tree')
  return ofTree !== undefined && ofTree.score >= likelyEnough ? ofTree.field : null
}

/** Whether a row belongs above a table: blank, one line of text, or labels with their values. */
function standsAbove(cells: readonly Cell[]): boolean {
  const filled = filledIn(cells)
  const [first] = filled
  if (first === undefined) return true
  const text = cells[first]
  if (typeof text !== 'string') return false
  if (filled.length === 1) return true
  const label = text.replace(/:\s*$/, '').trim()
  return filled.length % 2 === 0 && (/:\s*$/.test(text) || labelField(label) !== null)
}

/** The first row of what stands above a table, up to the table before it. */
export function headStart(sheet: SheetCells, first: number, from: number): number {
  let row = first
  while (row > from && first - row < formRows && standsAbove(sheet.rows[row - 1] ?? [])) row--
  return row
}

/** A tree and its number in one cell: "Tree 12", "Baum Nr. 3", also with more behind a dash or comma. */
const namedTree = new RegExp(
  `^(?:\\p{L}{3,12}\\s+(?!.*\\b(?:19|20)\\d\\d\\b))?(${treeWord})\\.?\\s+(?:(?:${numberWord}|tag|id)\\s*)?([\\p{L}-]{0,3}\\d[\\p{L}\\d-]*)(?:\\s*([-–,:(].*|(?<=\\s)\\p{L}.*))?$`,
  'iu'
)

/** Labels of the tree with their values, beside or in one cell, between two rows. */
export function labeledValues(sheet: SheetCells, from: number, to: number): LabeledValue[] {
  const found = labelsIn(sheet, from, to)
  // Words where measurements should stand say what is measured: a key of the columns, and no form.
  const wordy = found.filter(
    ({ field, value }) => lengthOf(field) !== null && !/\d|[½¼¾]/.test(String(value))
  )
  const measures = found.filter(({ field }) => lengthOf(field) !== null)
  return wordy.length > 0 && wordy.length === measures.length ? [] : found
}

function labelsIn(sheet: SheetCells, from: number, to: number): LabeledValue[] {
  const found: LabeledValue[] = []
  for (let row = Math.max(from, to - formRows); row < to; row++) {
    const cells = sheet.rows[row] ?? []
    for (let column = 0; column < cells.length; column++) {
      const cell = cells[column]
      if (typeof cell !== 'string' || cell.length > longestLabel) continue
      const within = /^([^:]{2,60}):\s*(\S[\s\S]*)$/.exec(cell.trim()) ?? namedTree.exec(cell.trim())
      const label = (within?.[1] ?? cell).replace(/:\s*$/, '').trim()
      const field = labelField(label)
      if (field === null) continue
      let at = column
      let value: Cell = within?.[2] ?? null
      if (value === null) {
        at = cells.findIndex((other, place) => place > column && !isBlank(other))
        value = cells[at] ?? null
        // The next label is no value.
        if (at < 0 || (typeof value === 'string' && /:\s*$/.test(value))) continue
      }
      if (found.some((other) => other.field === field)) continue
      found.push({ field, label, value, row, column: at })
      const rest = field === 'tree' && at === column ? namedTree.exec(cell.trim())?.[3] : undefined
      for (const said of rest === undefined ? [] : saidInLine(rest))
        if (!found.some((other) => other.field === said.field)) found.push({ ...said, row, column })
      column = at
    }
  }
  return found
}
