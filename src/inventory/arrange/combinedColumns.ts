import { isBlank, quoted, type Cell } from '../../../shared/cells'
import type { Field } from '../../../shared/columns'
import type { LengthUnit } from '../../../shared/units'
import { readHeaderText } from '../headers/headerText'
import { likelihoods } from '../headers/likelihood'
import { unitOf } from '../headers/measures'
import { coupleIn } from '../headers/twoThings'
import { lengthOf } from '../lengthOf'
import type { AnswerFor } from '../survey/answers'
import { lettersOf, ownLetters, type SheetCells } from '../survey/sheetCells'
import { placedAt, rearranged, type Placed } from './placed'

/** A sheet with columns parted whose header names several measures in the order in which their cells give them. */
export interface Combined {
  readonly sheet: SheetCells
  /** The headers that were parted, where they stand. */
  readonly parted: readonly {
    readonly row: number
    readonly column: number
    readonly text: string
    readonly parts: readonly string[]
  }[]
}

/** Rows in which names may stand, rows looked at below them, and the longest header looked at. */
const headRows = 60
const looked = 200
const longestHeader = 60

/** Measures that one header names at most. */
const mostParts = 6

/** Share of the filled cells that have to hold as many numbers as the header names measures; the others are refused. House judgment. */
const many = 0.3

/** How well the words of a part have to mean a length. House judgment. */
const likelyEnough = 0.4

const between = /\s*[/×*|;&+,]\s*|\s+[x–—-]\s+|(?<=\p{Lu})x(?=\p{Lu})|\s+(?:and|und|et|y|by|par|por)\s+/u

/** How well words name the one length that two parts of a header cannot both be. House judgment. */
const surely = 0.9

interface Length {
  readonly field: Field
  readonly score: number
}

/** The lengths that words may mean, likeliest first. */
function lengthsMeant(text: string): Length[] {
  return likelihoods(readHeaderText(text)).filter(
    ({ field, score }) => score >= likelyEnough && lengthOf(field) !== null
  )
}

/** A length for each part, no two the same; null where a part means none, or two are other words for one ("DBH / Trunk dia"). */
function lengthsOf(parts: readonly string[]): readonly Field[] | null {
  const said = parts.map((part) => [...readHeaderText(part).notions].sort().join(' '))
  // One measure in two languages.
  if (new Set(said).size < said.length) return null
  const taken = new Map<Field, number>()
  for (const part of parts) {
    const meant = lengthsMeant(part)
    const [best] = meant
    const free = meant.find(({ field }) => !taken.has(field))
    if (best === undefined || free === undefined) return null
    if (free !== best && Math.max(best.score, taken.get(best.field) ?? 0) >= surely) return null
    taken.set(free.field, free.score)
  }
  return [...taken.keys()]
}

const brackets = /[([{]([^)\]}]*)[)\]}]/g

/** The measures that a header names one after the other, as headers of their own; null where it names one or something else. */
export function measuresNamed(header: string): readonly string[] | null {
  if (header.length > longestHeader || !between.test(header)) return null
  const inner = [...header.matchAll(brackets)].map((found) => found[1] ?? '')
  for (const text of inner) {
    const parts = partsNamed(text)
    if (parts !== null) return parts.names
  }
  const said = header.replace(/^\p{L}+\s*[:=]\s*/u, '')
  // "Dia (in), ht (ft)": the brackets are those of the parts.
  const whole = said.split(outside).map((part) => part.trim())
  const named = whole.filter((part) => /[([{]/.test(part)).length
  if (named > 1) return whole.length === named && lengthsOf(whole) !== null ? whole : null
  const bare = partsNamed(said.replace(brackets, ' '))
  if (bare === null || (bare.names.length === 2 && coupleIn(header) !== null)) return null
  const units = unitsFor(bare.fields, inner)
  return bare.names.map((part, at) => (units[at] ? `${part} (${units[at]})` : part))
}

/** The sign between two parts, outside brackets. */
const outside = new RegExp(`(?:${between.source})(?![^([{]*[)\\]}])`, 'u')

function partsNamed(
  text: string
): { readonly names: readonly string[]; readonly fields: readonly Field[] } | null {
  const names = text.split(between).map((part) => part.trim())
  if (names.length < 2 || names.length > mostParts) return null
  const fields = lengthsOf(names)
  return fields === null ? null : { names, fields }
}

/** The units in brackets behind the names: one for each, one for all of a kind, or one for each kind. */
function unitsFor(fields: readonly Field[], inner: readonly string[]): (LengthUnit | null)[] {
  const lists = inner.map((text) => text.split(between).map((word) => unitOf(word.trim().toLowerCase())))
  const units = lists.find((list) => list.every((unit) => unit !== null))
  if (units === undefined) return fields.map(() => null)
  if (units.length === fields.length) return units
  const kinds = [...new Set(fields.map(lengthOf))]
  return units.length === kinds.length
    ? fields.map((field) => units[kinds.indexOf(lengthOf(field))] ?? null)
    : fields.map(() => null)
}

const signs = [
  /\s*[×*]\s*|(?<=[\d"″”'′’.\p{L}\s])\s*x\s*(?=\d)/u,
  /\s*[|;]\s*/,
  /\s*\/\s*/,
  /\s*&\s*|\s*\+\s*/,
  /,\s+/,
  /\s+[-–—]\s+/,
  /\s*[-–—]\s*/,
  /\s+/
]
const longestPart = 16

/** The parts of a cell that holds so many numbers, each with its unit; null where it does not. */
export function partsOfCell(cell: Cell | undefined, count: number): readonly string[] | null {
  if (typeof cell !== 'string' || cell.length > longestPart * count) return null
  for (const sign of signs) {
    const parts = cell.trim().split(sign)
    if (parts.length === count && parts.every((part) => /\d/.test(part) && part.length <= longestPart))
      return parts
  }
  return null
}

interface Found {
  readonly column: number
  readonly parts: readonly string[]
}

function combinedIn(sheet: SheetCells, row: number, answerFor: AnswerFor): Found[] {
  return (sheet.rows[row] ?? []).flatMap((cell, column): Found[] => {
    if (typeof cell !== 'string') return []
    const parts = measuresNamed(cell)
    if (parts === null) return []
    // What a person chose for the column holds for it as it stands.
    if (answerFor(sheet.name, ownLetters(sheet, lettersOf(sheet, row, column)), cell.trim()) !== undefined)
      return []
    const cells = sheet.rows.slice(row + 1, row + 1 + looked).map((cells) => cells[column])
    const filled = cells.filter((each) => !isBlank(each) && /\d/.test(String(each)))
    const whole = filled.filter((each) => partsOfCell(each, parts.length) !== null)
    return filled.length > 0 && whole.length >= filled.length * many ? [{ column, parts }] : []
  })
}

/**
 * A cell that does not hold as many numbers as its header names: what it holds cannot be told apart, so that each part is
 * refused with its text; a word such as "n/a" is that of all.
 */
export function notParted(cell: Cell, count: number): Cell {
  return isBlank(cell) || !/\d/.test(String(cell)) ? cell : `${quoted(cell)}${' / ?'.repeat(count - 1)}`
}

/** The sheet with such columns parted ("Dims (dia x ht)" above `12 in x 35 ft`); null where it has none. */
export function withCombinedColumns(sheet: SheetCells, answerFor: AnswerFor): Combined | null {
  const last = Math.min(sheet.rows.length - 1, headRows)
  for (let names = 0; names < last; names++) {
    const found = combinedIn(sheet, names, answerFor)
    if (found.length > 0) return combined(sheet, names, found)
  }
  return null
}

function combined(sheet: SheetCells, names: number, found: readonly Found[]): Combined {
  const width = sheet.rows.reduce((most, row) => Math.max(most, row.length), 0)
  const places = Array.from({ length: width }, (_none, column) => column).flatMap((column) => {
    const parts = found.find((each) => each.column === column)?.parts
    return parts === undefined
      ? [{ column, part: -1, parts: [] }]
      : parts.map((_name, part) => ({ column, part, parts }))
  })
  const rows = sheet.rows.map((_cells, row) =>
    places.map(({ column, part, parts }): Placed => {
      const placed = placedAt(sheet, row, column)
      if (part < 0) return placed
      if (row === names) return { ...placed, cell: parts[part] ?? null }
      if (row < names) return part === 0 ? placed : { ...placed, cell: null }
      const cells = partsOfCell(placed.cell, parts.length)
      return {
        ...placed,
        cell: cells === null ? notParted(placed.cell, parts.length) : (cells[part] ?? null)
      }
    })
  )
  const { says } = sheet
  return {
    sheet: {
      ...rearranged(sheet, rows),
      ...(says === undefined
        ? {}
        : { says: (name: string, column: number) => says(name, places[column]?.column ?? column) })
    },
    parted: found.map(({ column, parts }) => ({
      row: names,
      column,
      text: quoted(sheet.rows[names]?.[column]),
      parts
    }))
  }
}
