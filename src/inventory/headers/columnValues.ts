import { isBlank, type Cell } from '../../../shared/cells'
import { readChoice, type ChoiceName } from '../../../shared/choices'
import type { Reads } from '../../../shared/columnKinds'
import { columnOf, type Field } from '../../../shared/columns'
import { millimetresPer, type LengthUnit } from '../../../shared/units'
import { fold } from './headerText'

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
  readonly texts: readonly string[]
  readonly integers: number
}

/** Rows that are looked at below a header. */
const sample = 200

const leadingNumber = /^[<>~≈±+-]?\s*[ø⌀]?\s*(\d[\d\s.,'’]*)/i

function numberOf(cell: Cell): number | null {
  if (typeof cell === 'number') return Number.isFinite(cell) ? cell : null
  const found = typeof cell === 'string' ? leadingNumber.exec(cell.trim()) : null
  if (found?.[1] === undefined) return null
  const value = Number(found[1].replace(/[\s'’]/g, '').replace(/,(\d{1,2})$/, '.$1').replaceAll(',', ''))
  return Number.isFinite(value) ? value : null
}

export function columnValues(cells: readonly (Cell | undefined)[]): ColumnValues {
  const kept = cells.slice(0, sample)
  const filled = kept.filter((cell): cell is Cell => !isBlank(cell))
  const numbers = filled.map(numberOf).filter((value) => value !== null)
  const sorted = [...numbers].sort((a, b) => a - b)
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
    median: sorted[Math.floor(sorted.length / 2)] ?? null,
    low: sorted[0] ?? null,
    high: sorted.at(-1) ?? null,
    texts,
    integers: share(numbers.filter(Number.isInteger).length)
  }
}

/** Millimetres within which a median of a field is ordinary (house limits, generous). */
const ordinary: Partial<Record<Field, readonly [number, number]>> = {
  trunk: [8, 3000],
  caliper: [8, 400],
  diameter: [3, 1500],
  diameter2: [3, 1500],
  stem: [5, 3000],
  stemBelow: [5, 3000],
  lateral: [2, 800],
  cut: [2, 1000],
  height: [600, 90_000],
  crownBase: [100, 40_000],
  spread: [200, 50_000],
  clearance: [1000, 15_000],
  matureHeight: [1500, 110_000],
  origin: [50, 60_000],
  tip: [200, 90_000],
  length: [100, 40_000],
  lowestFoliage: [50, 60_000],
  lateralHeight: [50, 60_000]
}

function fitsLength(values: ColumnValues, field: Field, unit: LengthUnit | null): number {
  if (values.numeric < 0.35) return 0.25
  const range = ordinary[field]
  if (range === undefined || values.median === null) return 1
  const units: readonly LengthUnit[] = unit === null ? ['in', 'cm', 'mm', 'ft', 'm'] : [unit]
  const fits = units.some((each) => {
    const millimetres = (values.median ?? 0) * millimetresPer[each]
    return millimetres >= range[0] && millimetres <= range[1]
  })
  return (fits ? 1 : 0.6) * (values.numeric < 0.6 ? 0.85 : 1)
}

function fitsChoice(values: ColumnValues, choice: ChoiceName): number {
  const read = values.texts.filter((text) => readChoice(choice, text) !== null).length / values.filled
  if (read >= 0.7) return 1.2
  if (read >= 0.4) return 1
  return values.wordy > 0.5 || read > 0 ? 0.7 : 0.45
}

function fits(values: ColumnValues, field: Field, reads: Reads<unknown>, unit: LengthUnit | null): number {
  switch (reads.kind) {
    case 'diameter':
    case 'stems':
    case 'height':
    case 'positive height':
      return fitsLength(values, field, unit)
    case 'growth':
      return Math.max(fitsChoice(values, 'growth'), values.numeric > 0.6 ? 0.95 : 0)
    case 'share':
      return values.numeric < 0.4 || (values.high ?? 0) > 100 ? 0.3 : 1
    case 'degrees':
      return fitsDegrees(values, reads.limit ?? 360)
    case 'bearing':
      return values.texts.every((text) => compassPoint.test(text)) ? 1.2 : fitsDegrees(values, 360)
    case 'side':
      return values.numeric > 0.8 && (values.high ?? 0) <= 45 ? 0.5 : 1
    case 'year':
      return values.texts.filter((text) => /\d{4}|\d[./-]\d/.test(text)).length >= values.filled * 0.6 ? 1.05 : 0.35
    case 'choice':
    case 'flag':
    case 'dead':
      return fitsChoice(values, reads.choice ?? 'flag')
    case 'text':
      return fitsText(values, field)
  }
}

const compassPoint = /^[neswo]{1,3}$|^(?:north|south|east|west)/

function fitsDegrees(values: ColumnValues, limit: number): number {
  return values.numeric > 0.6 && (values.high ?? 0) <= limit ? 1 : 0.4
}

function fitsText(values: ColumnValues, field: Field): number {
  if (field === 'species') return values.wordy > 0.6 ? 1.05 : 0.3
  if (field === 'site' || field === 'notes' || field === 'treeNotes') return values.numeric > 0.95 && field !== 'site' ? 0.6 : 1
  if (field === 'tree' || field === 'limb') {
    if (values.longest > 40) return 0.5
    const decimals = values.numeric > 0.6 && values.integers < 0.7
    return decimals ? 0.3 : 1
  }
  return 1
}

/** How well what stands below a header fits a field: above 1 where it speaks for it, below 1 where against. */
export function fitOf(values: ColumnValues, field: Field, unit: LengthUnit | null): number {
  if (values.filled === 0) return 0.9
  return fits(values, field, columnOf(field).reads, unit)
}
