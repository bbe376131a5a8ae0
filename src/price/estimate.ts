import type { Problem } from '../../shared/problems'
import type { Money } from '../../shared/money'
import type { Rates } from './rates'

/** What one visit to one tree takes and costs. */
export interface EstimateLine {
  tree: string
  visit: number
  year: number
  cuts: number
  /** Minutes by part; crewHours is their sum with the site factor, in hours. */
  minutes: { setUp: number; cutting: number; brush: number }
  accessFactor: number
  crewHours: number
  /** Green weight of what comes off, kg. */
  brushKilograms: number
  brush: BrushOfLine
  money: MoneyOfLine
  /** The printed price, rounded. */
  price: Money
  /**
   * Priority relieved: priority now less priority at the next visit, summed over the visit's cuts. Null where the tree
   * has no limbs listed and there is nothing to sum.
   */
  relief: number | null
  /** How the line came about, in one sentence. */
  basis: string
}

/** Brush in the units of the rates: lb and yd³, or kg and m³. */
export interface BrushOfLine {
  /** Whole units, as printed. */
  weight: number
  /** To a hundredth, as printed, so that the lines add up to what stands below them. */
  looseVolume: number
  chipVolume: number
  /** The brush minutes follow from this weight; otherwise from the trunk. */
  byWeight: boolean
}

/** The printed amounts that make up a line's cost, each rounded. */
export interface MoneyOfLine {
  /** Crew and equipment for the hours. */
  crew: Money
  disposal: Money
  /** Its share of the year's mobilization, travel and loads. */
  shared: Money
  /** The sum of the three. */
  cost: Money
}

/** What a year of work costs beside the trees, shared over them by crew-hours. */
export interface YearOfWork {
  year: number
  crewHours: number
  crewDays: number
  chipVolume: number
  loads: number
  mobilization: Money
  travel: Money
  loadCharges: Money
  /** The sum of the three, and of the shares on the year's lines. */
  shared: Money
}

export interface Estimate {
  currency: string
  minorDigits: number
  taxRate: number
  lines: EstimateLine[]
  years: YearOfWork[]
  subtotal: Money
  tax: Money
  total: Money
  /** Rates used. */
  rates: Rates
  /** The last day it holds, ISO. */
  validUntil: string
  /** True while any rate is still one of the invented defaults. */
  inventedRates: boolean
  /** How many of the rates are still invented, and how many there are. */
  inventedCount: number
  rateCount: number
  /** What was wrong with the Rates sheet; the rates it is about are the invented ones. */
  rateProblems?: readonly Problem[]
}
