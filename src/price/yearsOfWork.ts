import { Money, roundMoney } from '../../shared/money'
import { wholeUp } from '../formulas/boundary'
import type { YearOfWork } from './estimate'
import { crewHour, noneLeft, type RatesFor } from './rates'
import { shareOut } from './shareOut'

/** As much of a line as the shared costs need. */
export interface Worked {
  year: number
  crewHours: number
  brush: { chipVolume: number }
}

/** Hours and volumes are printed to a hundredth, and added in whole ones. */
const hundredths = (printed: number): number => Math.round(printed * 100)

/** Mobilization, travel and loads of each year of work. */
export function yearsOfWork(
  lines: readonly Worked[],
  rates: RatesFor<'year' | 'crew hour' | 'rounding'>
): YearOfWork[] {
  const {
    dayHours,
    loadVolume,
    loadCharge,
    mobilization,
    travelHours,
    minorDigits,
    ...more
  }: RatesFor<'year' | 'rounding'> = rates
  noneLeft(more)
  const years = [...new Set(lines.map(({ year }) => year))].sort((a, b) => a - b)
  const hour = crewHour(rates)
  const rounded = (amount: Money) => roundMoney(amount, minorDigits)
  return years.map((year) => {
    const own = lines.filter((line) => line.year === year)
    const crewHours = own.reduce((sum, line) => sum + hundredths(line.crewHours), 0) / 100
    const chipVolume = own.reduce((sum, { brush }) => sum + hundredths(brush.chipVolume), 0) / 100
    const crewDays = wholeUp(crewHours / dayHours)
    const loads = wholeUp(chipVolume / loadVolume)
    const trip = rounded(new Money(mobilization))
    const travel = rounded(hour.times(travelHours).times(crewDays))
    const loadCharges = rounded(new Money(loadCharge).times(loads))
    const shared = trip.plus(travel).plus(loadCharges)
    return { year, crewHours, crewDays, chipVolume, loads, mobilization: trip, travel, loadCharges, shared }
  })
}

/** What each line bears of its year's shared costs, by crew-hours; the shares of a year add up to them exactly. */
export function sharesOfYears(
  lines: readonly Worked[],
  years: readonly YearOfWork[],
  minorDigits: number
): Money[] {
  const unit = new Money(10).pow(-minorDigits)
  const shares = lines.map(() => new Money(0))
  for (const { year, shared } of years) {
    const places = lines.flatMap((line, index) => (line.year === year ? [index] : []))
    const weights = places.map((index) => hundredths(lines[index]?.crewHours ?? 0))
    const units = shareOut(shared.div(unit).toNumber(), weights)
    places.forEach((index, place) => (shares[index] = unit.times(units[place] ?? 0)))
  }
  return shares
}
