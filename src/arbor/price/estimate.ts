import type { Money } from '../../../shared/money'

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
  /** The printed price, rounded. */
  price: Money
  /** How the line came about, in one sentence. */
  basis: string
}

export interface Estimate {
  currency: string
  minorDigits: number
  taxRate: number
  lines: EstimateLine[]
  subtotal: Money
  tax: Money
  total: Money
  /** True while every rate is one of the invented defaults. */
  inventedRates: boolean
}
