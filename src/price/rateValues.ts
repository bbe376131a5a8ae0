import { convertLength, systems } from '../../shared/units'
import { startValues, type RateName, type RateValues } from './rateBook'
import type { Rates } from './rates'

/** Twelve figures, so that a converted length comes back as it was typed. */
const text = (value: number): string => String(Number(value.toPrecision(12)))

/** The values of a Rates sheet from rates: the way back of `ratesFrom`. */
export function rateValues(rates: Rates): RateValues {
  const { diameter, height } = systems[rates.system]
  const { setUpMinutes: setUp, accessFactor: access, cutClasses, heightBands } = rates
  const values: RateValues = {
    ...startValues(rates.system),
    currency: rates.currency,
    minorDigits: text(rates.minorDigits),
    validityDays: text(rates.validityDays),
    crewPersons: text(rates.crewPersons),
    wage: rates.wage,
    burdenRate: rates.burdenRate,
    equipmentHour: rates.equipmentHour,
    dayHours: text(rates.dayHours),
    setUpOpen: text(setUp.open),
    setUpFenced: text(setUp.fenced),
    setUpNoMachine: text(setUp['no machine']),
    accessOpen: text(access.open),
    accessFenced: text(access.fenced),
    accessNoMachine: text(access['no machine']),
    brushPerMinute: text(rates.brushPerMinute),
    disposalPerWeight: rates.disposalPerWeight,
    loadVolume: text(rates.loadVolume),
    loadCharge: rates.loadCharge,
    mobilisation: rates.mobilisation,
    travelHours: text(rates.travelHours),
    contingencyRate: rates.contingencyRate,
    overheadRate: rates.overheadRate,
    profitKind: rates.profitKind,
    profitRate: rates.profitRate,
    minimumPerTree: rates.minimumPerTree,
    taxRate: rates.taxRate
  }
  cutClasses.slice(0, 5).forEach(({ upToMillimetres, minutes }, index) => {
    values[`cutMinutes${String(index + 1)}` as RateName] = text(minutes)
    if (index < 4)
      values[`cutLimit${String(index + 1)}` as RateName] = text(
        convertLength(upToMillimetres, 'mm', diameter)
      )
  })
  heightBands.slice(0, 4).forEach(({ upToMetres, factor }, index) => {
    values[`heightFactor${String(index + 1)}` as RateName] = text(factor)
    if (index < 3)
      values[`heightLimit${String(index + 1)}` as RateName] = text(convertLength(upToMetres, 'm', height))
  })
  return values
}
