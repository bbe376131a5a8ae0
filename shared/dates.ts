import type { Cell } from './cells'

/**
 * Spreadsheet date serials: days counted so that 61 is 1 March 1900. Earlier serials are ambiguous (the spreadsheet
 * counts a 29 February 1900 that did not exist), so they are not dates here. The last is 31 December 9999.
 */
export const firstSerial = 61
export const lastSerial = 2958465

/** A whole number from the first to the last of these is a year, on every surface, and never a serial of 1905. */
const firstYear = 1900
const lastYear = 2200

/** A day of the calendar, months counted from 1; month and day are null where only the year is known. */
export interface CalendarDate {
  readonly year: number
  readonly month: number | null
  readonly day: number | null
}

const dayMilliseconds = 86_400_000
const epoch = Date.UTC(1899, 11, 30)

/** The serial of a calendar day, months counted from 1; NaN outside the range or where there is no such day. */
export function serialOf(year: number, month: number, day: number): number {
  const moment = new Date(Date.UTC(year, month - 1, day))
  if (moment.getUTCFullYear() !== year || moment.getUTCMonth() !== month - 1 || moment.getUTCDate() !== day)
    return NaN
  const serial = (moment.getTime() - epoch) / dayMilliseconds
  return serial >= firstSerial && serial <= lastSerial ? serial : NaN
}

/** The calendar day of a serial; a time of day is dropped. */
export function dayOf(serial: number): { year: number; month: number; day: number } {
  const moment = new Date(epoch + Math.floor(serial) * dayMilliseconds)
  return { year: moment.getUTCFullYear(), month: moment.getUTCMonth() + 1, day: moment.getUTCDate() }
}

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec']
const monthWord = '(jan|feb|mar|apr|may|jun|jul|aug|sept?|oct|nov|dec)[a-z]*\\.?'

type Parts = readonly (string | undefined)[]

/** How a full date is typed, and which of its parts are year, month and day. A time of day behind it is dropped. */
const fullDates: readonly (readonly [RegExp, (parts: Parts) => Parts])[] = [
  [/^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ]\d.*)?$/i, ([, year, month, day]) => [year, month, day]],
  [/^(\d{1,2})\.\s?(\d{1,2})\.\s?(\d{4})(?: \d.*)?$/, ([, day, month, year]) => [year, month, day]],
  [
    new RegExp(`^(\\d{1,2})[. -]+${monthWord}[, -]+(\\d{4})$`, 'i'),
    ([, day, month, year]) => [year, month, day]
  ],
  [
    new RegExp(`^${monthWord}[ -]+(\\d{1,2}),?[ -]+(\\d{4})$`, 'i'),
    ([, month, day, year]) => [year, month, day]
  ]
]

/** With slashes or hyphens which part is the month differs by country: only the year is taken. */
const countryOrder = /^(\d{1,2})([/-])(\d{1,2})\2(\d{4})(?: \d.*)?$/

function monthNumber(text: string): number {
  return /^\d+$/.test(text) ? Number(text) : months.indexOf(text.slice(0, 3).toLowerCase()) + 1
}

function isYear(value: number): boolean {
  return Number.isInteger(value) && value >= firstYear && value <= lastYear
}

function yearAlone(year: number): CalendarDate | null {
  return isYear(year) ? { year, month: null, day: null } : null
}

function dateOfNumber(value: number): CalendarDate | null {
  if (isYear(value)) return yearAlone(value)
  return value >= firstSerial && value < lastSerial + 1 ? dayOf(value) : null
}

function dateOfText(text: string): CalendarDate | null {
  if (/^\d{4}$/.test(text)) return yearAlone(Number(text))
  if (/^\d{5,7}(\.\d+)?$/.test(text)) return dateOfNumber(Number(text))
  for (const [pattern, parts] of fullDates) {
    const found = pattern.exec(text)
    if (found === null) continue
    const [year = '', month = '', day = ''] = parts(found)
    const date = { year: Number(year), month: monthNumber(month), day: Number(day) }
    return Number.isNaN(serialOf(date.year, date.month, date.day)) ? null : date
  }
  const country = countryOrder.exec(text)
  if (country !== null) {
    const [first, second] = [Number(country[1]), Number(country[3])]
    const possible =
      Math.min(first, second) >= 1 && Math.min(first, second) <= 12 && Math.max(first, second) <= 31
    return possible ? yearAlone(Number(country[4])) : null
  }
  const year = /^(\d{4})[-/.]|[-/. ](\d{4})$/.exec(text)
  return year === null ? null : yearAlone(Number(year[1] ?? year[2]))
}

/**
 * The date in a cell, or null: a spreadsheet's serial number, a year, or a text such as 2024-03-31, 31.03.2024,
 * 31 Mar 2024, March 2024 or 3/31/2024 (whose year alone is certain).
 */
export function readDate(cell: Cell): CalendarDate | null {
  if (typeof cell === 'number') return dateOfNumber(cell)
  return typeof cell === 'string' ? dateOfText(cell.trim()) : null
}

/** The serial of the day in a cell, with its time of day where the cell holds a number; null where no day is known. */
export function readSerial(cell: Cell): number | null {
  const date = readDate(cell)
  if (date === null || date.month === null || date.day === null) return null
  if (typeof cell === 'number') return cell
  return /^\d+\.?\d*$/.test(String(cell).trim()) ? Number(cell) : serialOf(date.year, date.month, date.day)
}

/** The year of the date in a cell, or null. A serial of the years up to 1905 is more likely a slip than a date. */
export function readYear(cell: Cell): number | null {
  if (typeof cell === 'number' && cell < firstYear) return null
  const date = readDate(cell)
  return date !== null && isYear(date.year) ? date.year : null
}

const dateTexts: readonly RegExp[] = [
  /^\d{4}[-/.]\d{1,2}[-/.]\d{1,2}([T ]\d.*)?$/i,
  /^\d{1,2}[-/.]\s?\d{1,2}[-/.]\s?\d{4}( \d.*)?$/,
  new RegExp(`^\\d{1,2}[. -]*${monthWord}([, -]*\\d{2,4})?$`, 'i'),
  new RegExp(`^${monthWord}[ -]+\\d{1,4}(,?[ -]+\\d{4})?$`, 'i')
]

/** A text that only a date looks like: "2026-03-01", or "3-Feb", which spreadsheets make of a typed 2-3. */
export function looksLikeDate(text: string): boolean {
  const trimmed = text.trim()
  return dateTexts.some((pattern) => pattern.test(trimmed))
}
