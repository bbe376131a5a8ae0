import { isBlank, type Cell } from '../../../shared/cells'
import type { Field } from '../../../shared/columns'
import { unitFromWord, type LengthUnit } from '../../../shared/units'
import { assignColumns, type ColumnMeaning } from '../headers/assign'
import type { HeadedColumn } from '../headers/headedColumn'
import { columnValues } from '../headers/columnValues'
import { readHeaderText } from '../headers/headerText'
import { likelyFields } from '../headers/likelihood'
import { columnGroups, type ColumnGroups } from './columnGroups'
import type { AnswerFor } from './answers'
import type { Counting } from './counters'
import { countFilled, lettersOf, ownLetters, type SheetCells } from './sheetCells'

/** Rows that name the columns of a table, and what each column came to. */
export interface HeaderRows {
  /** Row of the names within the sheet's cells; titles of groups may stand above it, units below. */
  readonly names: number
  readonly first: number
  readonly last: number
  readonly columns: readonly TableColumn[]
  /** Columns that repeat for each limb, or null. */
  readonly groups: ColumnGroups | null
  readonly total: number
}

/** The column that gives a field, or -1. */
export function columnHeaded({ columns }: Pick<HeaderRows, 'columns'>, field: Field): number {
  return columns.find(({ meaning }) => meaning.field === field)?.column ?? -1
}

export interface TableColumn {
  /** Column within the sheet's cells. */
  readonly column: number
  readonly name: string
  /** The title that the name needs to be understood, or an empty text. */
  readonly group: string
  /** The title above the column, whether it is needed or not. */
  readonly title: string
  readonly meaning: ColumnMeaning
  /** It was headed as the ids of limbs and holds the same words for several of a tree. */
  readonly areWordsOfLimbs?: true
}

/** The best score of a cell's words, remembered, as the same words stand in many rows. */
const remembered = new Map<string, { field: Field; score: number } | null>()

export function bestOf(text: string): { field: Field; score: number } | null {
  let known = remembered.get(text)
  if (known === undefined) {
    known = text.length > 60 ? null : (likelyFields(text)[0] ?? null)
    if (remembered.size > 5000) remembered.clear()
    remembered.set(text, known)
  }
  return known
}

const figure = /^[<>~≈±+-]?\s*[\d.,]+\s*(?:%|\p{L}{1,2}\.?|["'″′])?$/u

/** Whether a row holds more than one number for two texts, by the kinds of its cells alone: most rows of data do. */
function holdsNumbers(row: readonly Cell[]): boolean {
  let texts = 0
  let others = 0
  for (const cell of row)
    if (typeof cell === 'string') texts++
    else if (typeof cell === 'number' || typeof cell === 'boolean') others++
  return others > texts / 2
}

/** Whether a row may name columns: mostly words, three or more of them known as fields. */
export function mayNameColumns(row: readonly Cell[]): boolean {
  if (holdsNumbers(row)) return false
  let texts = 0
  let others = 0
  for (const cell of row) {
    if (isBlank(cell)) continue
    if (typeof cell === 'string' && !figure.test(cell.trim())) texts++
    else others++
  }
  if (texts < 2 || others > texts / 2) return false
  const fields = new Set<Field>()
  for (const cell of row) {
    const best = typeof cell === 'string' ? bestOf(cell) : null
    if (best !== null && best.score >= 0.55) fields.add(best.field)
  }
  // A row of data holds words that are also columns' (live, limb, thick), but numbers with them.
  if (others > 0 && fields.size < (texts + others) * 0.6) return false
  return fields.size >= 3 || (fields.size === 2 && texts + others <= 3)
}

/** Share of the texts of a row of units that are some, where other words stand among them. House judgment. */
const mostlyUnits = 0.6

/** A row of nothing but units ("in", "ft", "%", "y/n"), which stands under the names. */
export function unitsIn(row: readonly Cell[] | undefined): (LengthUnit | null)[] | null {
  const filled = (row ?? []).filter((cell) => !isBlank(cell))
  const unit = (cell: Cell | undefined): LengthUnit | null =>
    typeof cell === 'string' ? unitFromWord(cell.replace(/[()[\]]/g, '').trim()) : null
  const marks =
    /^[([]?(?:%|°|deg|y\/n|yes\/no|j\/n|o\/n|s\/n|no\.?|text|class|date|-|–|kg|lb|#|id|n[°º]|nr\.?|[$€£]|usd|eur|code)[)\]]?$/i
  const units = filled.filter((cell) => unit(cell) !== null)
  const known = filled.filter(
    (cell) => unit(cell) !== null || (typeof cell === 'string' && marks.test(cell.trim()))
  )
  const mostly = units.length >= 3 && units.length >= filled.length * mostlyUnits
  const isUnits = units.length >= 1 && known.length === filled.length
  return isUnits || (mostly && filled.every((cell) => typeof cell === 'string'))
    ? (row ?? []).map(unit)
    : null
}

/**
 * The names with those of a second row put in: a header over several columns ("Limb diameter") and below it what each of
 * them is ("1st", "2nd"). Null where the row below the names holds anything else.
 */
function lowerNames(sheet: SheetCells, names: number): readonly Cell[] | null {
  const [upper = [], lower = []] = [sheet.rows[names], sheet.rows[names + 1]]
  const filled = lower.flatMap((cell, column) => (isBlank(cell) ? [] : [column]))
  const named = upper.filter((cell) => !isBlank(cell)).length
  const words = filled.every(
    (column) => typeof lower[column] === 'string' && !/^[\d.,]+$/.test(lower[column])
  )
  const beside = filled.some((column) => isBlank(upper[column]) && column > 0)
  const few = filled.length < named || isUnderTitles(upper, lower)
  if (filled.length < 2 || !few || !words || !beside || unitsIn(lower) !== null) return null
  // Every name below has a name above it, its own or one that reaches over it from the left.
  let over = ''
  const joined: Cell[] = []
  for (let column = 0; column < Math.max(upper.length, lower.length); column++) {
    const own = upper[column]
    if (!isBlank(own)) over = String(own).trim()
    const under = lower[column]
    joined.push(isBlank(under) ? (own ?? null) : `${over} ${String(under).trim()}`.trim())
  }
  return joined
}

/**
 * Whether the names below are those of groups alone, as in a printed form: each stands under a title that reaches over several
 * of them, and names of the upper row have nothing below them.
 */
function isUnderTitles(upper: readonly Cell[], lower: readonly Cell[]): boolean {
  let under = 0
  let alone = 0
  const counts: number[] = []
  for (let column = 0; column < Math.max(upper.length, lower.length); column++) {
    const isName = !isBlank(lower[column])
    if (!isBlank(upper[column])) {
      if (under > 0) counts.push(under)
      under = isName ? 1 : 0
      if (!isName) alone++
    } else if (isName) under++
  }
  if (under > 0) counts.push(under)
  return alone >= 2 && counts.length > 0 && counts.every((count) => count >= 2) && mayNameColumns(lower)
}

/** Whether a lone title stands over the columns of limbs, right of those of the tree: "Limb 1", "Limbs". */
function isOverLimbs(cells: readonly Cell[], column: number, names: readonly Cell[]): boolean {
  const title = readHeaderText(String(cells[column]))
  const only = title.words.every(({ meanings, text }) => meanings.includes('limb') || /^\d*$/.test(text))
  return only && title.notions.has('limb') && names.slice(0, column).some((cell) => !isBlank(cell))
}

/** Titles of groups, carried to the right over blanks or merges until the next title. */
function groupTitles(sheet: SheetCells, row: number, names: readonly Cell[]): string[] | null {
  const cells = sheet.rows[row]
  if (cells === undefined) return null
  const filled = cells.flatMap((cell, column) => (isBlank(cell) ? [] : [column]))
  if (
    filled.length === 0 ||
    filled.some((column) => typeof cells[column] !== 'string' && typeof cells[column] !== 'number')
  )
    return null
  const width = names.length
  const different = new Set(filled.map((column) => cells[column]))
  if (different.size > Math.max(1, names.filter((cell) => !isBlank(cell)).length * 0.75)) return null
  const merged = (sheet.merges ?? []).filter(({ top, bottom }) => top <= row && bottom >= row)
  // One title over the whole width names the sheet, not a group; with merges, only what is merged is a group.
  if (filled.length === 1 && merged.length === 0 && !isOverLimbs(cells, filled[0] ?? 0, names)) return null
  const titles: string[] = Array<string>(width).fill('')
  let title = ''
  for (let column = 0; column < width; column++) {
    const own = cells[column]
    if (!isBlank(own)) title = String(own).trim()
    const merge = merged.find(({ left, right }) => column >= left && column <= right)
    if (merge !== undefined && merge.right - merge.left + 1 >= width - 1) continue
    titles[column] = merge !== undefined ? String(cells[merge.left] ?? '').trim() : title
  }
  return titles
}

/** The rows whose values tell what a column holds, and what a person said of columns. */
interface Below {
  readonly namesAt: number
  readonly from: number
  readonly to: number
  readonly answerFor: AnswerFor
}

function headed(
  sheet: SheetCells,
  names: readonly Cell[],
  titles: readonly string[] | null,
  units: readonly (LengthUnit | null)[] | null,
  { namesAt, from, to, answerFor }: Below
): { columns: HeadedColumn[]; at: number[] } {
  const at: number[] = []
  const columns: HeadedColumn[] = []
  // A line of text between the rows says nothing of its column.
  const rows: (readonly Cell[])[] = []
  for (let row = from; row < to && rows.length < 200; row++) {
    const cells = sheet.rows[row] ?? []
    if (names.length < 3 || countFilled(cells) > 1) rows.push(cells)
  }
  names.forEach((cell, column) => {
    const name = isBlank(cell) ? '' : String(cell).trim()
    const title = titles?.[column] ?? ''
    if (name === '' && title === '') return
    at.push(column)
    const below: (Cell | undefined)[] = []
    for (const row of rows) below.push(row[column])
    const header = title === '' ? name : `${title} ${name}`
    const letters = ownLetters(sheet, lettersOf(sheet, namesAt, column))
    const answer = answerFor(sheet.name, letters, name, header)
    columns.push({
      header: (name === '' ? null : sheet.says?.(name, column)) ?? header,
      unit: answer?.unit ?? units?.[column] ?? null,
      values: columnValues(below),
      answered: answer?.field === undefined ? sheet.given?.get(column) : answer.field
    })
  })
  return { columns, at }
}

/** The same groups, counted in the columns of the sheet. */
function placed({ common, groups, counting }: ColumnGroups, at: readonly number[]): ColumnGroups {
  const place = (index: number): number => at[index] ?? -1
  return {
    counting,
    common: common.map(place),
    groups: groups.map(({ title, columns }) => ({ title, columns: columns.map(place) }))
  }
}

/** The tree's columns and those of the first group are assigned together; the other groups mean the same. */
function assignGrouped(
  columns: readonly HeadedColumn[],
  { common, groups, counting }: ColumnGroups
): ColumnMeaning[] {
  const first = groups[0]?.columns ?? []
  const asked = [...common, ...first.filter((at) => at >= 0)]
  const meanings = assignColumns(
    asked.flatMap((at) => {
      const column = columns[at]
      if (column === undefined) return []
      return first.includes(at) ? [{ ...column, header: ofLimb(column.header, counting) }] : [column]
    })
  )
  const found = new Map(asked.map((at, index) => [at, meanings[index]]))
  return columns.map((column, at) => {
    const own = found.get(at)
    if (own !== undefined) return own
    const group = groups.find((each) => each.columns.includes(at))
    const like = first[group?.columns.indexOf(at) ?? -1] ?? -1
    return found.get(like) ?? { ...noMeaning, text: readHeaderText(column.header) }
  })
}

/** What a column without a header comes to. */
export const noMeaning: ColumnMeaning = {
  field: null,
  score: 0,
  confidence: 'unsure',
  runnerUp: null,
  text: readHeaderText(''),
  unit: null,
  girth: false,
  unused: null
}

/** "Limb 1 Dia" speaks of a limb's diameter; what counts is no second reading. A title without a word is a limb's. */
function ofLimb(header: string, counting: Counting | null): string {
  const text = counting?.(header)?.rest ?? header
  return readHeaderText(text).notions.has('limb') ? text : `limb ${text}`
}

/** What is measured of a limb, and what is told of it once in a row that is about one limb. */
const measures: ReadonlySet<Field | null> = new Set([
  'diameter',
  'stem',
  'stemBelow',
  'origin',
  'tip',
  'length'
])
const ofOneLimb: ReadonlySet<Field | null> = new Set([...measures, 'limb'])

/**
 * The meanings of the columns where groups are limbs: each has two measures or more, and no column beside them tells of a
 * single limb. Where each has three or more, a column beside them that only may do so (a length, or a longitude) is left.
 */
function ofLimbs(
  { common, groups }: ColumnGroups,
  meanings: readonly ColumnMeaning[]
): readonly ColumnMeaning[] | null {
  const fieldAt = (at: number): Field | null => meanings[at]?.field ?? null
  const own = (groups[0]?.columns ?? []).filter((at) => at >= 0 && measures.has(fieldAt(at)))
  if (own.length < 2) return null
  const beside = common.filter((at) => ofOneLimb.has(fieldAt(at)))
  if (beside.length === 0) return meanings
  const mayBe = (at: number) => measures.has(fieldAt(at)) && meanings[at]?.confidence !== 'sure'
  if (own.length < 3 || !beside.every(mayBe)) return null
  return meanings.map((meaning, at) => (beside.includes(at) ? { ...meaning, field: null } : meaning))
}

/** The meanings of the columns by groups where those are limbs, and one by one where not. */
function assigned(columns: readonly HeadedColumn[]): {
  meanings: readonly ColumnMeaning[]
  groups: ColumnGroups | null
} {
  for (const groups of columnGroups(columns.map(({ header }) => header))) {
    const meanings = ofLimbs(groups, assignGrouped(columns, groups))
    if (meanings !== null) return { meanings, groups }
  }
  return { meanings: assignColumns(columns), groups: null }
}

const year = /(?<!\d)(?:19|20)\d{2}(?!\d)/

/** The names without titles and with them; where the titles are years, the names alone do not tell columns apart. */
function proposedTitles(titles: readonly string[] | null): (readonly string[] | null)[] {
  if (titles === null) return [null]
  const years = new Set(titles.flatMap((title) => year.exec(title)?.[0] ?? []))
  return years.size >= 2 ? [titles] : [null, titles]
}

/** What the names in a row come to, with the titles above and the units below where that is the better reading. */
export function readHeaderRows(
  sheet: SheetCells,
  names: number,
  end: number,
  answerFor: AnswerFor
): HeaderRows | null {
  const upper = sheet.rows[names]
  if (upper === undefined) return null
  const lower = lowerNames(sheet, names)
  const row = lower ?? upper
  const below = names + (lower === null ? 1 : 2)
  const units = unitsIn(sheet.rows[below])
  const from = below + (units === null ? 0 : 1)
  const titles = names > 0 ? groupTitles(sheet, names - 1, row) : null
  const proposals = proposedTitles(titles).map((each) => {
    const { columns, at } = headed(sheet, row, each, units, { namesAt: names, from, to: end, answerFor })
    const { meanings, groups } = assigned(columns)
    const total = meanings.reduce((sum, { field, score }) => sum + (field === null ? 0 : score), 0)
    return { titles: each, at, meanings, groups: groups && placed(groups, at), total }
  })
  const best = proposals.reduce((a, b) => (b.total > a.total + 0.05 ? b : a))
  return {
    names,
    first: best.titles === null ? names : names - 1,
    last: from - 1,
    columns: best.at.flatMap((column, index): TableColumn[] => {
      const meaning = best.meanings[index]
      const name = isBlank(row[column]) ? '' : String(row[column]).trim()
      const [group, title] = [best.titles?.[column] ?? '', titles?.[column] ?? '']
      return meaning === undefined ? [] : [{ column, name, group, title, meaning }]
    }),
    groups: best.groups,
    total: best.total
  }
}
