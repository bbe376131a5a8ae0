import { hundredths } from '../../price/hundredths'
import type { EstimateLine, YearOfWork } from '../../price/estimate'
import type { Offer } from '../../price/offers'
import type { Part, Working } from './estimateColumns'
import { orderKey } from './estimateFormulas'

/** A trip on the sheet of workings; budget figures are worked in one that costs nothing. */
export interface WorkingTrip {
  readonly number: number
  readonly name: string
  readonly trip: YearOfWork | null
  /** Places of its lines among all, from 0. */
  readonly places: readonly number[]
}

/** Everything that is calculated on the sheet of workings: offered lines, then those of the forecast, then budget figures. */
export interface WorkingLines {
  readonly lines: readonly EstimateLine[]
  readonly trips: readonly WorkingTrip[]
  /** Where each kind begins among the lines. */
  readonly forecastFrom: number
  readonly figuresFrom: number
}

/** The lines of an offer with what belongs to it, each in its trip. */
export function workingLines({ lines, years, forecast, budgetFigures }: Offer): WorkingLines {
  const expected = forecast?.lines ?? []
  const figures = budgetFigures.map(({ work }) => work)
  const [forecastFrom, figuresFrom] = [lines.length, lines.length + expected.length]
  const all = [...lines, ...expected, ...figures]
  const placesOf = (from: number, to: number, year?: number) =>
    all.flatMap((line, at) =>
      at >= from && at < to && (year === undefined || line.year === year) ? [at] : []
    )
  const trips: WorkingTrip[] = []
  const add = (name: string, trip: YearOfWork | null, places: number[]) =>
    trips.push({ number: trips.length + 1, name, trip, places })
  for (const trip of years) add('Offered', trip, placesOf(0, forecastFrom, trip.year))
  for (const trip of forecast?.years ?? [])
    add('Forecast', trip, placesOf(forecastFrom, figuresFrom, trip.year))
  if (figures.length > 0) add('Budget figures', null, placesOf(figuresFrom, all.length))
  return { lines: all, trips, forecastFrom, figuresFrom }
}

/** Higher than any order key: nothing is left to give out. */
const nobody = 1e16

/** A sum that a trip shares out: in smallest units, what whole quotas leave, and the least key that gets one of these. */
export interface SharedSum {
  readonly units: number
  readonly left: number
  readonly threshold: number
}

function shareOf(
  { lines }: WorkingLines,
  { number, places }: WorkingTrip,
  units: number,
  firstRow: number
): { parts: Part[]; sum: SharedSum } {
  const weights = places.map((at) => hundredths(lines[at]?.crewHours ?? 0))
  const all = weights.reduce((sum, weight) => sum + weight, 0)
  const parts = weights.map((weight, index): Part => {
    // Where no line takes time, all count the same, as in the formulas.
    const [own, whole] = all > 0 ? [weight, all] : [1, weights.length]
    const quota = units * own
    const share = Math.floor(quota / whole)
    return { units: share, order: orderKey(number, quota - share * whole, firstRow + (places[index] ?? 0)) }
  })
  const left = units - parts.reduce((sum, part) => sum + part.units, 0)
  const keys = parts.map(({ order }) => order).sort((a, b) => b - a)
  return { parts, sum: { units, left, threshold: keys[left - 1] ?? nobody } }
}

/** What stands in the working columns of the lines and of the trips, as the formulas make it. `firstRow` is the sheet's. */
export function workingOf(
  working: WorkingLines,
  minorDigits: number,
  firstRow: number
): { ofLines: Working[]; ofTrips: { shared: SharedSum; topUp: SharedSum }[] } {
  const ofLines: Working[] = []
  const ofTrips = working.trips.map((trip) => {
    const units = (part: 'shared' | 'topUp') =>
      trip.trip === null ? 0 : Math.round(trip.trip[part].times(10 ** minorDigits).toNumber())
    const shared = shareOf(working, trip, units('shared'), firstRow)
    const topUp = shareOf(working, trip, units('topUp'), firstRow)
    trip.places.forEach((at, index) => {
      const none = { units: 0, order: 0 }
      ofLines[at] = {
        trip: trip.number,
        shared: shared.parts[index] ?? none,
        topUp: topUp.parts[index] ?? none
      }
    })
    return { shared: shared.sum, topUp: topUp.sum }
  })
  return { ofLines, ofTrips }
}
