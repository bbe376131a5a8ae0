import type { Access } from '../../shared/choices'
import type { UnitSystem } from '../../shared/units'
import type { RateKind } from './rateKinds'

/**
 * The part of the arithmetic that a rate goes into. Each part takes its rates as `RatesFor` and has to use every one of
 * them, or it does not compile.
 */
export type RateUse =
  /** Minutes of a visit: set-up, cuts, brush. */
  | 'minutes'
  /** Cost of the crew for an hour. */
  | 'crew hour'
  /** What a year of work costs beside the trees: trips, days, loads. */
  | 'year'
  /** What a visit costs beside the crew. */
  | 'visit'
  /** By what disposal is paid, of a visit and of a year. */
  | 'disposal'
  /** What a trip is charged at least. */
  | 'trip'
  /** From the cost of a visit to its price. */
  | 'price'
  /** Of every printed amount. */
  | 'rounding'
  /** Of the estimate as a whole: tax, currency, how long it holds. */
  | 'estimate'
  /** The range of what is forecast. */
  | 'forecast'

/** Where a rate stands in `Rates`, if not under its own name. Steps count from 0. */
export type RatePlace =
  | readonly ['setUpMinutes' | 'accessFactor', Access]
  | readonly ['cutClasses', number, 'upToMillimeters' | 'minutes']
  | readonly ['heightBands', number, 'upToMeters' | 'factor']

/** What a rate's entry states beside its words and its range. */
export interface RateDuties {
  use: RateUse
  /**
   * The name of its yellow cell on the Estimate, which the formulas there call it by; null where the sheet holds only
   * what follows from it, such as minutes.
   */
  cell: string | null
  place?: RatePlace
  /** So small that it is shown with more decimals on the Estimate. */
  fine?: true
  choices?: readonly string[]
  note?: string
}

/** One rate of the business: what it is called, what it may be, and the invented value it starts with. */
export interface RateEntry extends RateDuties {
  group: string
  name: string
  kind: RateKind
  /** By unit system; an amount of money is in the currency of the sheet. */
  unit: Record<UnitSystem, string>
  start: Record<UnitSystem, string>
  low: number
  high: number
  choices: readonly string[]
  note: string
}

type Both = string | readonly [inches: string, centimeters: string]

const by = (text: Both): Record<UnitSystem, string> =>
  typeof text === 'string' ? { 'in-ft': text, 'cm-m': text } : { 'in-ft': text[0], 'cm-m': text[1] }

/** Keeps the literal types that the compiler checks: the kind and the duties. */
export function rate<const Kind extends RateKind, const Duties extends RateDuties>(
  group: string,
  name: string,
  kind: Kind,
  unit: Both,
  start: Both,
  [low, high]: readonly [number, number],
  duties: Duties
): Omit<RateEntry, 'kind' | keyof Duties> & { kind: Kind } & Duties {
  return { choices: [], note: '', group, name, kind, unit: by(unit), start: by(start), low, high, ...duties }
}
