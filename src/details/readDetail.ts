import { isErrorText, type Cell } from '../../shared/cells'
import { dayOf, readSerial } from '../../shared/dates'
import { detailEntry, type DetailKind, type DetailName, type JobDetails, type Paper } from './detailsBook'

/** Most characters of a detail, so that letterheads and feet of pages stay legible. */
export const mostCharacters: Readonly<Record<DetailKind, number>> = {
  text: 200,
  long: 2000,
  mail: 200,
  day: 40,
  year: 40,
  paper: 40,
  picture: 400
}

const [earliest, latest] = [1901, 2200]

/** What has to be typed for a kind, as part of a sentence. */
export function wantedOf(kind: DetailKind): string {
  if (kind === 'mail') return 'a mail address such as office@example.com'
  if (kind === 'day') return 'a day such as 2026-03-31'
  if (kind === 'year') return `a year such as 2027, from ${String(earliest)} to ${String(latest)}`
  if (kind === 'paper') return 'letter or A4'
  if (kind === 'picture') return 'the name of a picture file such as logo.png'
  return `a text of at most ${String(mostCharacters[kind])} characters`
}

function isoDay(cell: Cell): string | null {
  const serial = readSerial(cell)
  if (serial === null) return null
  const { year, month, day } = dayOf(serial)
  return [String(year).padStart(4, '0'), String(month).padStart(2, '0'), String(day).padStart(2, '0')].join(
    '-'
  )
}

/** A text on one line, without spaces around it. */
function textOf(cell: Cell, kind: DetailKind): string | null {
  if (typeof cell === 'boolean' || isErrorText(cell)) return null
  const text = String(cell ?? '')
    .replace(/\s+/g, ' ')
    .trim()
  if (text.length > mostCharacters[kind]) return null
  return kind === 'mail' && !/^[^\s@,;]+@[^\s@,;]+\.[^\s@,;.]+$/.test(text) ? null : text
}

function yearOf(cell: Cell): number | null {
  if (typeof cell === 'boolean') return null
  const text = String(cell ?? '').trim()
  const year = /^\d{4}$/.test(text) ? Number(text) : NaN
  return year >= earliest && year <= latest ? year : null
}

function paperOf(cell: Cell): Paper | null {
  const text = String(cell ?? '')
    .trim()
    .toLowerCase()
  if (text === 'letter' || text === 'us letter') return 'letter'
  return text.replace(/\s/g, '') === 'a4' ? 'a4' : null
}

/** A detail as it is typed: a picture by its name. */
export type Typed<Name extends DetailName> = Name extends 'logo' ? string : JobDetails[Name]

/** The value of a detail that is not blank, or null where it cannot be used. */
export function readDetail<Name extends DetailName>(name: Name, cell: Cell): Typed<Name> | null {
  const { kind } = detailEntry(name)
  const read = { day: isoDay, year: yearOf, paper: paperOf }
  const value = kind === 'day' || kind === 'year' || kind === 'paper' ? read[kind](cell) : textOf(cell, kind)
  return value as Typed<Name> | null
}
