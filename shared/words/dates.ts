import { dayOf } from '../dates'
import { locale } from './locale'

/** How cells show a date: the year first, as no other order is read two ways. */
export const dateFormat = 'yyyy-mm-dd'

/** The names of the months, January first. */
export const monthNames: readonly string[] = Array.from({ length: 12 }, (_, month) =>
  new Intl.DateTimeFormat(locale, { month: 'long', timeZone: 'UTC' }).format(Date.UTC(2000, month, 1))
)

/** A day of any year, months counted from 1: "15 April". */
export function showMonthDay(month: number, day: number): string {
  return `${String(day)} ${monthNames[month - 1] ?? ''}`
}

/** A date as sentences have it, as cells show it: 46082 and a moment of that day both give "2026-03-01". */
export function showDate(day: number | Date): string {
  if (typeof day !== 'number') return day.toISOString().slice(0, 10)
  const { year, month, day: date } = dayOf(day)
  return [String(year), String(month).padStart(2, '0'), String(date).padStart(2, '0')].join('-')
}
