import type { Access } from '../../shared/choices'
import { Money, roundMoney } from '../../shared/money'
import { convertLength, systems, type UnitSystem } from '../../shared/units'
import { rateNames, startValues, type RateName, type RateValues } from './rateBook'

/** Minutes for one cut up to a diameter, at ground level. */
export interface CutClass {
  upToMillimetres: number
  minutes: number
}

/** How much longer a cut takes up to a height. */
export interface HeightBand {
  upToMetres: number
  factor: number
}

/** What a business charges with. Money and shares as text, so that they stay exact. */
export interface Rates {
  /** lb and yd³, or kg and m³: the units of brush below. */
  system: UnitSystem
  currency: string
  minorDigits: number
  validityDays: number
  crewPersons: number
  wage: string
  burdenRate: string
  /** Cost of the crew's equipment for an hour. */
  equipmentHour: string
  /** Productive hours of a crew day. */
  dayHours: number
  setUpMinutes: Record<Access, number>
  accessFactor: Record<Access, number>
  cutClasses: readonly CutClass[]
  heightBands: readonly HeightBand[]
  /** Green brush that the crew drags, chips and loads, lb or kg a minute. */
  brushPerMinute: number
  /** Cost of disposal for a lb or kg of green brush. */
  disposalPerWeight: string
  /** Chips in a full load, yd³ or m³, and what its disposal costs. */
  loadVolume: number
  loadCharge: string
  /** Cost of coming to the job, once in each year of work, and the crew's travel a day. */
  mobilisation: string
  travelHours: number
  contingencyRate: string
  overheadRate: string
  profitKind: 'margin' | 'markup'
  /** Below 1 where it is a margin. */
  profitRate: string
  /** Least charge for a tree at a visit. */
  minimumPerTree: string
  taxRate: string
  /** The rates that nobody has put in: they hold an invented value. */
  invented: readonly RateName[]
}

/** Rates from the values of a Rates sheet; `invented` names those that still hold what we made up. */
export function ratesFrom(values: RateValues, system: UnitSystem, invented: readonly RateName[]): Rates {
  const { diameter, height } = systems[system]
  const number = (name: RateName) => Number(values[name])
  const across = (name: RateName) => convertLength(number(name), diameter, 'mm')
  const up = (name: RateName) => convertLength(number(name), height, 'm')
  return {
    system,
    currency: values.currency,
    minorDigits: number('minorDigits'),
    validityDays: number('validityDays'),
    crewPersons: number('crewPersons'),
    wage: values.wage,
    burdenRate: values.burdenRate,
    equipmentHour: values.equipmentHour,
    dayHours: number('dayHours'),
    setUpMinutes: {
      open: number('setUpOpen'),
      fenced: number('setUpFenced'),
      'no machine': number('setUpNoMachine')
    },
    accessFactor: {
      open: number('accessOpen'),
      fenced: number('accessFenced'),
      'no machine': number('accessNoMachine')
    },
    cutClasses: [
      { upToMillimetres: across('cutLimit1'), minutes: number('cutMinutes1') },
      { upToMillimetres: across('cutLimit2'), minutes: number('cutMinutes2') },
      { upToMillimetres: across('cutLimit3'), minutes: number('cutMinutes3') },
      { upToMillimetres: across('cutLimit4'), minutes: number('cutMinutes4') },
      { upToMillimetres: Infinity, minutes: number('cutMinutes5') }
    ],
    heightBands: [
      { upToMetres: up('heightLimit1'), factor: number('heightFactor1') },
      { upToMetres: up('heightLimit2'), factor: number('heightFactor2') },
      { upToMetres: up('heightLimit3'), factor: number('heightFactor3') },
      { upToMetres: Infinity, factor: number('heightFactor4') }
    ],
    brushPerMinute: number('brushPerMinute'),
    disposalPerWeight: values.disposalPerWeight,
    loadVolume: number('loadVolume'),
    loadCharge: values.loadCharge,
    mobilisation: values.mobilisation,
    travelHours: number('travelHours'),
    contingencyRate: values.contingencyRate,
    overheadRate: values.overheadRate,
    profitKind: values.profitKind === 'markup' ? 'markup' : 'margin',
    profitRate: values.profitRate,
    minimumPerTree: values.minimumPerTree,
    taxRate: values.taxRate,
    invented
  }
}

/**
 * The rates an estimate starts with, round in the units of the system. Every one of them is invented, so that the
 * arithmetic shows; a business puts in its own.
 */
export const inventedRatesIn: Record<UnitSystem, Rates> = {
  'in-ft': ratesFrom(startValues('in-ft'), 'in-ft', rateNames),
  'cm-m': ratesFrom(startValues('cm-m'), 'cm-m', rateNames)
}

/** The invented rates in centimetres, metres and kilograms. */
export const inventedRates: Rates = inventedRatesIn['cm-m']

/** Cost of the whole crew with its equipment for an hour, as it is printed: persons × wage × (1 + burden) + equipment. */
export function crewHour(rates: Rates): Money {
  const wages = new Money(rates.wage).times(rates.crewPersons).times(new Money(rates.burdenRate).plus(1))
  return roundMoney(wages.plus(rates.equipmentHour), rates.minorDigits)
}
