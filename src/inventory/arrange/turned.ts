import { isBlank } from '../../../shared/cells'
import type { Field } from '../../../shared/columns'
import { fold } from '../headers/fold'
import { readHeaderText } from '../headers/headerText'
import type { SheetCells } from '../survey/sheetCells'
import { numberWord, treeWord } from '../survey/treeWords'
import { areLabels, namedField, widthOf } from './labels'
import { placedAt, rearranged, type Placed } from './placed'

/** Labels down the rows: a table turned on its side, with a record a column, or forms of labels and values. */
export interface Turned {
  readonly sheet: SheetCells
  /** Each label has one value. */
  readonly isForm: boolean
}

/** A label with what stands beside it. */
interface Entry {
  readonly label: Placed
  readonly values: readonly Placed[]
}

/** Rows of labels at most, and columns in which they may stand; more is no table on its side. House judgment. */
const mostRows = 3000
const labelColumns = 6
const mostLabels = 0.5
/** Share of the labels that may have something before them. House judgment. */
const fewBefore = 0.3

const inOneCell = /^(\p{L}[^:]{1,40}):\s*(\S.*)$/u

function textAt({ cell }: Placed): string {
  return String(cell ?? '')
    .replace(/:\s*$/, '')
    .trim()
}

/** "Tree: T1" in one cell, as a label and a value. */
function inside(placed: Placed): Entry | null {
  const found = typeof placed.cell === 'string' ? inOneCell.exec(placed.cell.trim()) : null
  if (found?.[1] === undefined || found[2] === undefined || namedField(found[1]) === null) return null
  return { label: { ...placed, cell: found[1].trim() }, values: [{ ...placed, cell: found[2] }] }
}

function filledIn(sheet: SheetCells, row: number): Placed[] {
  return (sheet.rows[row] ?? []).flatMap((cell, column) => (isBlank(cell) ? [] : [{ cell, row, column }]))
}

const isLabel = ({ cell }: Placed): boolean =>
  typeof cell === 'string' && /^\p{L}/u.test(cell) && (cell.trim().endsWith(':') || namedField(cell) !== null)

/** Whether the rows that hold more than a label and a value hold several of both. */
function areInPairs(rows: readonly (readonly Placed[])[]): boolean {
  const long = rows.filter((cells) => cells.length > 2 && cells.every((each) => inside(each) === null))
  return long.every(
    (cells) => cells.length % 2 === 0 && cells.every((each, at) => at % 2 === 1 || isLabel(each))
  )
}

function pairsOf(cells: readonly Placed[]): Entry[] {
  const found: Entry[] = []
  for (let at = 0; at < cells.length; at++) {
    const label = cells[at]
    if (label === undefined) continue
    const within = inside(label)
    const value = cells[at + 1]
    if (within !== null) found.push(within)
    else if (value !== undefined && !(typeof value.cell === 'string' && value.cell.trim().endsWith(':'))) {
      found.push({ label, values: [value] })
      at++
    }
  }
  return found
}

/** A label in the column of labels, and every cell to the right of it. */
function across(sheet: SheetCells, at: number, width: number): Entry[] {
  return sheet.rows.flatMap((cells, row): Entry[] => {
    if (cells.every(isBlank)) return []
    const label = placedAt(sheet, row, at)
    const values = Array.from({ length: width - at - 1 }, (_none, step) =>
      placedAt(sheet, row, at + 1 + step)
    )
    const isTitle = namedField(label.cell) === null && values.every(({ cell }) => isBlank(cell))
    return isTitle ? [] : [inside(label) ?? { label, values }]
  })
}

/** What numbers of trees look like, beside a label that says nothing known or none at all. */
const treeNumber = new RegExp(
  `^(?:${treeWord}\\s*(?:${numberWord})?\\s*)?[\\p{L}#-]{0,3}\\d{1,5}\\p{L}?$`,
  'iu'
)

/** The entry that numbers the trees of a table on its side without saying so: "Attribute, Tree 1, Tree 2". */
function unsaidNumbers(entries: readonly Entry[]): Entry | null {
  const [first] = entries
  if (first === undefined || entries.some(({ label }) => namedField(label.cell) === 'tree')) return null
  const known = entries.flatMap(({ label }, at) => (at > 0 && namedField(label.cell) !== null ? [at] : []))
  const texts = first.values.map(({ cell }) => String(cell ?? '').trim())
  const filled = texts.filter((text) => text !== '')
  const areNumbers =
    filled.length >= 2 &&
    filled.every((text) => treeNumber.test(text)) &&
    new Set(filled).size === filled.length &&
    entries.every(({ values }) => values.every(({ cell }, at) => isBlank(cell) || texts[at] !== ''))
  return known.length >= 2 && areNumbers && readHeaderText(textAt(first.label)).notions.size === 0
    ? first
    : null
}

/** Another record begins where the label of a tree or a limb comes again; where none is there, with the first label. */
function records(entries: readonly Entry[]): Entry[][] {
  const fields = entries.map(({ label }) => namedField(label.cell))
  const [first] = entries
  const marks: readonly (Field | null | undefined)[] = ['tree', 'limb']
  const named = fields.some((field) => marks.includes(field))
  const found: Entry[][] = []
  // A tree begins a record although its label is not in the last one, which told of a second limb.
  const trees = new Set<string>()
  let met = new Set<string>()
  entries.forEach((entry, at) => {
    const text = fold(textAt(entry.label))
    const begins = named ? marks.includes(fields[at]) : text === fold(textAt(first?.label ?? entry.label))
    if (found.length === 0 || (begins && (met.has(text) || trees.has(text)))) {
      found.push([])
      met = new Set()
    }
    met.add(text)
    if (fields[at] === 'tree') trees.add(text)
    found.at(-1)?.push(entry)
  })
  return found
}

/** The names of all records, each once as often as one record has it. */
function namesOf(all: readonly (readonly Entry[])[]): { readonly keys: string[]; readonly names: Placed[] } {
  const keys: string[] = []
  const names: Placed[] = []
  for (const record of all) {
    for (const [key, { label }] of keyed(record)) {
      if (keys.includes(key)) continue
      keys.push(key)
      names.push({ ...label, cell: textAt(label) })
    }
  }
  return { keys, names }
}

function keyed(record: readonly Entry[]): Map<string, Entry> {
  const found = new Map<string, Entry>()
  for (const entry of record) {
    let key = fold(textAt(entry.label))
    while (found.has(key)) key += ' again'
    found.set(key, entry)
  }
  return found
}

function rowsOf(record: readonly Entry[], keys: readonly string[], names: readonly Placed[]): Placed[][] {
  const own = keyed(record)
  const filled = record.flatMap(({ values }) => values.map(({ cell }, at) => (isBlank(cell) ? 0 : at + 1)))
  const first = record[0]?.label ?? { cell: null, row: 0, column: 0 }
  return Array.from({ length: Math.max(0, ...filled) }, (_none, at) =>
    keys.map((key, column): Placed => {
      const entry = own.get(key)
      const { row } = entry?.label ?? first
      return entry?.values[at] ?? { cell: null, row, column: (names[column]?.column ?? 0) + 1 + at }
    })
  )
}

/** Whether most labels have something before them, of which a table on its side does not tell. */
function standBehind(rows: SheetCells['rows'], column: number): boolean {
  const labels = rows.filter((cells) => namedField(cells[column]) !== null)
  const behind = labels.filter((cells) => cells.slice(0, column).some((cell) => !isBlank(cell)))
  return behind.length > labels.length * fewBefore
}

/**
 * The sheet with its labels as names of columns and a record a row; null where labels do not stand below each other. Labels
 * that come again begin another record, which is put below the others.
 */
export function turned(sheet: SheetCells): Turned | null {
  const { rows } = sheet
  if (rows.length > mostRows) return null
  const filled = rows.map((_cells, row) => filledIn(sheet, row))
  const isForm = areInPairs(filled)
  const width = widthOf(rows, mostRows)
  const labels = Array.from({ length: Math.min(width, labelColumns) }, (_none, column) => column)
  const areThere = (column: number): boolean =>
    areLabels(
      rows.map((cells) => cells[column]),
      mostLabels
    ) && !standBehind(rows, column)
  const at = isForm ? 0 : (labels.find(areThere) ?? -1)
  if (at < 0) return null
  const entries = isForm ? filled.flatMap(pairsOf) : across(sheet, at, width)
  if (
    !areLabels(
      entries.map(({ label }) => textAt(label)),
      mostLabels
    )
  )
    return null
  const all = records(entries)
  const { keys, names } = namesOf(all)
  const numbers = isForm || all.length > 1 ? null : unsaidNumbers(entries)
  const place = numbers === null ? -1 : keys.indexOf(fold(textAt(numbers.label)))
  const said = names.map((name, at) => (at === place && name.cell === '' ? { ...name, cell: 'Tree' } : name))
  const sideways = rearranged(sheet, [said, ...all.flatMap((record) => rowsOf(record, keys, names))])
  return {
    sheet: place < 0 ? sideways : { ...sideways, given: new Map([[place, 'tree']]) },
    isForm
  }
}
