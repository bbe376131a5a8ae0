import type { Access, LifeStage } from '../../shared/choices'
import { refuse, type Refusal } from '../../shared/refusal'
import { defaultRules, visitInterval, type Rules } from '../../shared/rules'
import { dayOf, serialOf } from '../../shared/dates'
import { atMost } from './boundary'

/** What a crew's time is computed from: set-up and access, and the minutes of a cut by its size and height. */
export interface CrewTimes {
  /** Minutes before the first cut at a tree, the way from the tree before included. */
  readonly setUpMinutes: Readonly<Record<Access, number>>
  /** Factor on all the minutes. */
  readonly accessFactor: Readonly<Record<Access, number>>
  /** Minutes of one cut at ground level up to a diameter, smallest first. */
  readonly cutClasses: readonly { readonly upToMillimeters: number; readonly minutes: number }[]
  /** How much longer a cut takes up to a height, lowest first. */
  readonly heightBands: readonly { readonly upToMeters: number; readonly factor: number }[]
}

/**
 * What CREWHOURS computes with: the metric start values of the Rates sheet, set-up and way together, to be replaced by a business's own.
 *
 * Source: the minutes are invented; the access factors are common practice, no source. tests/price holds them to the
 * rate book.
 */
export const inventedCrewTimes: CrewTimes = {
  setUpMinutes: { open: 8, fenced: 12, 'no machine': 18 },
  accessFactor: { open: 1, fenced: 1.15, 'no machine': 1.35 },
  cutClasses: [
    { upToMillimeters: 25, minutes: 1.5 },
    { upToMillimeters: 50, minutes: 3 },
    { upToMillimeters: 100, minutes: 7 },
    { upToMillimeters: 150, minutes: 14 },
    { upToMillimeters: Infinity, minutes: 25 }
  ],
  heightBands: [
    { upToMeters: 3, factor: 1 },
    { upToMeters: 6, factor: 1.3 },
    { upToMeters: 12, factor: 1.7 },
    { upToMeters: Infinity, factor: 2.2 }
  ]
}

/** Minutes of one cut by its diameter class and height band; a limit belongs to the smaller one. Diameter in mm, height in m. */
export function cutMinutes(
  diameter: number,
  height: number,
  times: Pick<CrewTimes, 'cutClasses' | 'heightBands'> = inventedCrewTimes
): number {
  const size = times.cutClasses.find(({ upToMillimeters }) => atMost(diameter, upToMillimeters))
  const band = times.heightBands.find(({ upToMeters }) => atMost(height, upToMeters))
  return (size?.minutes ?? 0) * (band?.factor ?? 1)
}

/** Hours of a crew from its minutes at a tree, times the site factor. */
export function hoursOnSite(minutes: number, accessFactor: number): number {
  return (minutes * accessFactor) / 60
}

/** Hours to a hundredth, as they are printed and priced. */
export function printedHours(hours: number): number {
  return Math.round(hours * 100 + 1e-9) / 100
}

/**
 * Crew-hours for a tree: set-up by access and the cuts by size and height, times the access factor. Diameters in mm,
 * heights in m. Brush is not in it. The times are the business's own; the defaults are invented.
 */
export function crewHours(
  cuts: readonly { diameter: number; height: number }[],
  access: Access = 'open',
  times: CrewTimes = inventedCrewTimes
): number {
  let minutes = times.setUpMinutes[access]
  for (const { diameter, height } of cuts) minutes += cutMinutes(diameter, height, times)
  return hoursOnSite(minutes, times.accessFactor[access])
}

/**
 * The day of the next visit: the last visit's plus the interval of the life stage in years, as date serials. A last
 * visit on 29 February comes round on 28 February.
 *
 * Source: the intervals in the rule book, each with its source.
 */
export function nextVisit(
  lastVisit: number,
  stage: LifeStage,
  rules: Rules = defaultRules
): number | Refusal {
  const { year, month, day } = dayOf(lastVisit)
  const next = year + visitInterval(rules, stage)
  const exact = serialOf(next, month, day)
  const serial = Number.isNaN(exact) && month === 2 && day === 29 ? serialOf(next, 2, 28) : exact
  return Number.isNaN(serial)
    ? refuse('The next visit falls after the last date a spreadsheet knows: check the last visit.')
    : serial
}
