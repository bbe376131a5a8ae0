import { isBlank, type Cell } from '../../../shared/cells'
import { millimetersPer, unitFromWord, type LengthUnit } from '../../../shared/units'
import { takeApart } from '../../../shared/approximate'
import { fold } from './fold'

/** What stands below a header: counted once, asked by every field. */
export interface ColumnValues {
  readonly filled: number
  readonly blank: number
  /** Share of the filled cells that hold or begin with a number. */
  readonly numeric: number
  /** Share of the filled cells that read as words: letters and hardly a digit. */
  readonly wordy: number
  readonly distinct: number
  readonly longest: number
  /** Median of the numbers, or null. */
  readonly median: number | null
  readonly low: number | null
  readonly high: number | null
  /** Median of the numbers with a unit of their own, in mm, where most have one; otherwise null. */
  readonly ownMillimeters: number | null
  readonly texts: readonly string[]
  readonly integers: number
  /** Row by row; null where no number stands. */
  readonly numbers: readonly (number | null)[]
}

/** Rows that are looked at below a header. */
const sample = 200

const leadingNumber = /^(?:[<>~≈±+]|([-−]))?\s*[ø⌀]?\s*(\d[\d\s.,'’]*)/i

/** What is longer is no number with a word or a unit. */
const longestEstimate = 30

const someFigure = /[\d½¼¾⅛⅜⅝⅞⅓⅔]/

/** An estimate without its words: "ca. 9 m". */
function estimateIn(cell: string): string {
  const text = cell.trim()
  const mayBe = text.length <= longestEstimate && someFigure.test(text) && /^\p{L}/u.test(text)
  return mayBe ? (takeApart(text)?.texts[0] ?? text) : text
}

function numberOf(cell: Cell): number | null {
  if (typeof cell === 'number') return Number.isFinite(cell) ? cell : null
  const found = typeof cell === 'string' ? leadingNumber.exec(estimateIn(cell)) : null
  if (found?.[2] === undefined) return null
  const value = Number(
    found[2]
      .replace(/[\s'’]/g, '')
      .replace(/,(\d{1,2}|\d{4,})$/, '.$1')
      .replaceAll(',', '')
  )
  if (!Number.isFinite(value)) return null
  return found[1] === undefined ? value : -value
}

const unitBehind = /[\d½¼¾⅛⅜⅝⅞⅓⅔]\s*(\p{L}{1,11}\.?|["”″'’′])$/u

/** The unit that a cell names behind its number: "9.1 m", "4½\"", "1m30"; of feet and inches the feet; null where it names none. */
export function unitNamedIn(cell: Cell | undefined): LengthUnit | null {
  if (typeof cell !== 'string' || cell.length > longestEstimate || !someFigure.test(cell)) return null
  const text = cell.trim()
  if (/^\d+\s*m\s*\d\d$/i.test(text)) return 'm'
  if (/^\d+\s*(?:['′’]|ft\b|feet\b)\s*-?\s*\d/i.test(text)) return 'ft'
  return unitBehindNumber(text)
}

function unitBehindNumber(text: string): LengthUnit | null {
  const word = unitBehind.exec(text)?.[1]
  return word === undefined ? null : unitFromWord(word)
}

/** A number with its unit in mm: "149.86 mm", "18 cm"; null where it has none. */
function ownMillimetersOf(cell: Cell | undefined, value: number | null): number | null {
  if (value === null || typeof cell !== 'string') return null
  const unit = unitBehindNumber(cell.trim())
  return unit === null ? null : value * millimetersPer[unit]
}

function medianOf(sorted: readonly number[]): number | null {
  return sorted[Math.floor(sorted.length / 2)] ?? null
}

/** Stands for a value that is the same as above, or that was not measured. */
const nothing =
  /^(?:["″”'’]{1,2}|,,|d[o°º]\.?|dto\.?|ditto|dito|d(?:es)?gl\.?|[ií]dem|[ií]d\.|ebenso|↓|n\/?[am]\.?|nm|null|-+|-9+|\?+)$/i

export function columnValues(cells: readonly (Cell | undefined)[]): ColumnValues {
  const kept = cells.slice(0, sample)
  const filled = kept.filter((cell): cell is Cell => !isBlank(cell) && !nothing.test(String(cell).trim()))
  const inRows = kept.map((cell) =>
    cell === undefined || nothing.test(String(cell).trim()) ? null : numberOf(cell)
  )
  const numbers = inRows.filter((value) => value !== null)
  const sorted = [...numbers].sort((a, b) => a - b)
  const own = kept
    .flatMap((cell, at) => ownMillimetersOf(cell, inRows[at] ?? null) ?? [])
    .sort((a, b) => a - b)
  const texts = filled.map((cell) => fold(String(cell)).trim())
  const wordy = texts.filter((text) => /\p{L}{2}/u.test(text) && !/^[<>~≈±+-]?\s*\d/.test(text)).length
  const share = (count: number): number => (filled.length === 0 ? 0 : count / filled.length)
  return {
    filled: filled.length,
    blank: kept.length - filled.length,
    numeric: share(numbers.length),
    wordy: share(wordy),
    distinct: new Set(texts).size,
    longest: Math.max(0, ...texts.map((text) => text.length)),
    median: medianOf(sorted),
    low: sorted[0] ?? null,
    high: sorted.at(-1) ?? null,
    ownMillimeters: 2 * own.length > numbers.length ? medianOf(own) : null,
    texts,
    integers: share(numbers.filter(Number.isInteger).length),
    numbers: inRows
  }
}
