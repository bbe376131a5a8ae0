import { monthNames, showMonthDay } from '../../shared/words/dates'
import type { MonthDay } from './windows'

/** The days a visit may fall on, within a year. */
export interface Span {
  from: MonthDay
  to: MonthDay
  /** How the days are named: an ISO date or a month. */
  name: string
}

/** "15 April". */
export function showDay([month, day]: MonthDay): string {
  return showMonthDay(month, day)
}

const daysInMonth = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]

/**
 * When the visit falls: the month or the day asked for, otherwise the plan's date; any day of the year of the first visit where
 * that is another than the plan's.
 */
export function spanOf(
  answers: { visitMonth?: number; visitDate?: string },
  planDate: string,
  firstYear = Number(planDate.slice(0, 4))
): Span {
  const { visitMonth: month, visitDate } = answers
  if (month !== undefined)
    return { from: [month, 1], to: [month, daysInMonth[month - 1] ?? 31], name: monthNames[month - 1] ?? '' }
  if (visitDate === undefined && firstYear !== Number(planDate.slice(0, 4)))
    return { from: [1, 1], to: [12, 31], name: `${String(firstYear)}, no month given` }
  const date = visitDate ?? planDate
  const day: MonthDay = [Number(date.slice(5, 7)), Number(date.slice(8, 10))]
  return { from: day, to: day, name: date }
}

/** The place of a day among the days of a year, for comparing only. */
function place([month, day]: MonthDay): number {
  return month * 100 + day
}

/** Whether the days of one month lie within a window of the year, partly in it or outside. */
export function fallsIn(
  span: Pick<Span, 'from' | 'to'>,
  season: { from: MonthDay; to: MonthDay }
): 'within' | 'partly' | 'outside' {
  const start = place(season.from)
  const end = place(season.to)
  let days = 0
  let inside = 0
  for (let at = place(span.from); at <= place(span.to); at++) {
    days++
    // A window may run over the new year.
    if (start <= end ? at >= start && at <= end : at >= start || at <= end) inside++
  }
  return inside === 0 ? 'outside' : inside === days ? 'within' : 'partly'
}
