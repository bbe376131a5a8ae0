import { Money, roundMoney } from '../../shared/money'
import type { UnitSystem } from '../../shared/units'
import { rateEntry, rateNames, startValues, type RateName, type RateValues, type rateBook } from './rateBook'
import type { RatePlace, RateUse } from './rateEntry'
import { rateKinds, type DecodedKind, type RateKind } from './rateKinds'

/** Minutes for one cut up to a diameter, at ground level. */
export interface CutClass {
  upToMillimeters: number
  minutes: number
}

/** How much longer a cut takes up to a height. */
export interface HeightBand {
  upToMeters: number
  factor: number
}

type Book = typeof rateBook

/** A choice is one of its words; any other rate is what its kind is decoded to. */
type Decoded<Entry extends { kind: RateKind; choices: readonly string[] }> = Entry['kind'] extends 'choice'
  ? Entry['choices'][number]
  : DecodedKind<Entry['kind']>

/** The key of `Rates` under which each rate stands. */
type Keys = {
  [Name in RateName]: Book[Name] extends { place: RatePlace } ? Book[Name]['place'][0] : Name
}

/** The rates that stand under one key by the access of the tree. */
type ByAccess<Key extends RatePlace[0]> = {
  readonly [
    Name in RateName as Book[Name] extends { place: readonly [Key, infer Access extends string] }
      ? Access
      : never
  ]: number
}

/**
 * What a business charges with: every rate of the book, decoded. Money and shares are text, so that they stay exact;
 * diameters are in mm, heights in m; brush is in lb and yd³, or in kg and m³, by the system.
 */
export type Rates = {
  readonly [Name in RateName as Name extends Keys[Name] ? Name : never]: Decoded<Book[Name]>
} & {
  readonly system: UnitSystem
  readonly setUpMinutes: ByAccess<'setUpMinutes'>
  readonly accessFactor: ByAccess<'accessFactor'>
  /** By rising diameter; the last one has no limit. */
  readonly cutClasses: readonly CutClass[]
  /** By rising height; the last one has no limit. */
  readonly heightBands: readonly HeightBand[]
  /** The rates that nobody has put in: they hold an invented value. */
  readonly invented: readonly RateName[]
  /** What the Rates sheet says of the rates that were changed on the Estimate instead. */
  readonly changedHere?: Partial<RateValues>
}

type NameFor<Use extends RateUse> = {
  [Name in RateName]: Book[Name]['use'] extends Use ? Name : never
}[RateName]

/** The rates that go into one part of the arithmetic. */
export type RatesFor<Use extends RateUse> = Pick<Rates, Keys[NameFor<Use>] & keyof Rates>

/**
 * Does not compile where one of the rates of a part is left over, which is to say never used: a part takes its rates
 * apart by name and hands what remains to this.
 */
export function noneLeft(_rates: Record<string, never>): void {
  // The compiler has done the work; at run time the rates of the other parts remain.
}

type Nested = Record<string | number, unknown>

/** Where a rate stands in `Rates`: under its own name unless its entry says otherwise. */
function placeOf(name: RateName): readonly (string | number)[] {
  return rateEntry(name).place ?? [name]
}

function put(whole: Nested, [key = '', ...inner]: readonly (string | number)[], value: unknown): void {
  if (inner.length === 0) whole[key] = value
  else put((whole[key] ??= typeof inner[0] === 'number' ? [] : {}) as Nested, inner, value)
}

function at(whole: unknown, place: readonly (string | number)[]): unknown {
  return place.reduce((part, key) => (part as Nested)[key], whole)
}

/** The largest class of cut and the highest band have no limit on the sheet. */
function unlimited<Step extends object>(steps: readonly Step[], limit: keyof Step): Step[] {
  return steps.map((step) => (limit in step ? step : { ...step, [limit]: Infinity }))
}

/** Rates from the values of a Rates sheet; `invented` names those that still hold what we made up. */
export function ratesFrom(values: RateValues, system: UnitSystem, invented: readonly RateName[]): Rates {
  const whole: Nested = { system, invented }
  for (const name of rateNames)
    put(whole, placeOf(name), rateKinds[rateEntry(name).kind].decode(values[name], system))
  const rates = whole as unknown as Rates
  return {
    ...rates,
    cutClasses: unlimited(rates.cutClasses, 'upToMillimeters'),
    heightBands: unlimited(rates.heightBands, 'upToMeters')
  }
}

/** The values of a Rates sheet from rates: the way back of `ratesFrom`. */
export function rateValues(rates: Rates): RateValues {
  const values: Partial<RateValues> = {}
  for (const name of rateNames) {
    const { encode } = rateKinds[rateEntry(name).kind] as {
      encode: (value: unknown, system: UnitSystem) => string
    }
    values[name] = encode(at(rates, placeOf(name)), rates.system)
  }
  return values as RateValues
}

/**
 * The rates an estimate starts with, round in the units of the system. Every one of them is invented, so that the
 * arithmetic shows; a business puts in its own.
 */
export const inventedRatesIn: Record<UnitSystem, Rates> = {
  'in-ft': ratesFrom(startValues('in-ft'), 'in-ft', rateNames),
  'cm-m': ratesFrom(startValues('cm-m'), 'cm-m', rateNames)
}

/** The invented rates in centimeters, meters and kilograms. */
export const inventedRates: Rates = inventedRatesIn['cm-m']

/** Cost of the whole crew with its equipment for an hour, as it is printed: persons × wage × (1 + burden) + equipment. */
export function crewHour(rates: RatesFor<'crew hour' | 'rounding'>): Money {
  const { crewPersons, wage, burdenRate, equipmentHour, minorDigits, ...more } = rates
  noneLeft(more)
  const wages = new Money(wage).times(crewPersons).times(new Money(burdenRate).plus(1))
  return roundMoney(wages.plus(equipmentHour), minorDigits)
}
