import { hundredths } from './hundredths'
import { Money, roundMoney, sumPrinted } from '../../shared/money'
import { wholeUp } from '../formulas/boundary'
import type { EstimateLine, YearOfWork } from './estimate'
import { crewHour, noneLeft, type RatesFor } from './rates'
import { shareOut } from './shareOut'

/** As much of a line as the shared costs need. */
export interface Worked {
  year: number
  crewHours: number
  brush: { chipVolume: number }
}

/** A trip before it is known what its lines are charged. */
export type Trip = Omit<YearOfWork, 'charged' | 'topUp'>

/** Mobilization, travel and loads of each year of work. */
export function yearsOfWork(
  lines: readonly Worked[],
  rates: RatesFor<'year' | 'disposal' | 'crew hour' | 'rounding'>
): Trip[] {
  const {
    dayHours,
    loadVolume,
    loadCharge,
    mobilization,
    travelHours,
    disposalKind,
    minorDigits,
    ...more
  }: RatesFor<'year' | 'disposal' | 'rounding'> = rates
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
    const loadCharges = rounded(new Money(disposalKind === 'load' ? loadCharge : 0).times(loads))
    const shared = trip.plus(travel).plus(loadCharges)
    return { year, crewHours, crewDays, chipVolume, loads, mobilization: trip, travel, loadCharges, shared }
  })
}

/** What each trip falls short of its least charge by the charges of its lines. */
export function tripsToLeast(
  lines: readonly EstimateLine[],
  trips: readonly Trip[],
  rates: RatesFor<'trip' | 'rounding'>
): YearOfWork[] {
  const { minimumPerTrip, minorDigits, ...more }: RatesFor<'trip' | 'rounding'> = rates
  noneLeft(more)
  const least = roundMoney(new Money(minimumPerTrip), minorDigits)
  return trips.map((trip) => {
    const own = lines.filter(({ year }) => year === trip.year)
    const charged = sumPrinted(own, ({ price }) => price, minorDigits)
    return { ...trip, charged, topUp: Money.max(0, least.minus(charged)) }
  })
}

/** What each line bears of its trip's shared costs, by crew-hours; the shares of a trip add up to them exactly. */
export function sharesOfYears<Each extends Trip>(
  lines: readonly Worked[],
  years: readonly Each[],
  minorDigits: number,
  of: (year: Each) => Money = ({ shared }) => shared
): Money[] {
  const unit = new Money(10).pow(-minorDigits)
  const shares = lines.map(() => new Money(0))
  for (const each of years) {
    if (of(each).isZero()) continue
    const places = lines.flatMap((line, index) => (line.year === each.year ? [index] : []))
    const weights = places.map((index) => hundredths(lines[index]?.crewHours ?? 0))
    const units = shareOut(of(each).div(unit).toNumber(), weights)
    places.forEach((index, place) => (shares[index] = unit.times(units[place] ?? 0)))
  }
  return shares
}
