import type { Problem } from '../../shared/problems'
import type { Money } from '../../shared/money'
import type { Rates } from './rates'

/** What one visit to one tree takes and costs. */
export interface EstimateLine {
  tree: string
  visit: number
  year: number
  cuts: number
  /**
   * Persons who set up and cut: the whole crew, or one where every cut can be made with a pole from the ground. The
   * others work elsewhere meanwhile.
   */
  persons: number
  byPole: boolean
  /** Minutes by part: set-up with the way from the tree before, and cutting of these persons, brush of the whole crew. */
  minutes: { setUp: number; cutting: number; brush: number }
  accessFactor: number
  /** Hours of the whole crew: minutes by the persons' part of the crew, times the site factor. */
  crewHours: number
  /** Green weight of what comes off, kg. */
  brushKilograms: number
  brush: BrushOfLine
  money: MoneyOfLine
  /** The printed price, rounded. */
  price: Money
  /** Priority relieved: priority now less priority at the next visit, summed over the visit's cuts. */
  relief: number
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
}

/** The printed amounts that make up a line's price, each rounded. */
export interface MoneyOfLine {
  /** Crew and equipment for the hours. */
  crew: Money
  disposal: Money
  /** Its share of the trip's mobilization, travel and loads. */
  shared: Money
  /** The sum of the three. */
  cost: Money
  /** The cost with contingency, overhead and profit, at least the least charge for a tree. */
  charged: Money
  /** Its share of what the trip falls short of the least charge for a trip; the price is both together. */
  topUp: Money
}

/** A trip: the work of a year. What it costs beside the trees is shared over them by crew-hours. */
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
  /** What its lines are charged before the least charge for a trip. */
  charged: Money
  /** What lifts that to the least charge for a trip; 0 where it is reached. */
  topUp: Money
}

/** Work that is priced together: its lines, the trips they are made in, and their sums. */
export interface PricedWork {
  readonly lines: readonly EstimateLine[]
  readonly years: readonly YearOfWork[]
  readonly subtotal: Money
  readonly tax: Money
  readonly total: Money
}

/** By what, in what currency and until when something is priced. */
export interface PriceBasis {
  readonly currency: string
  readonly minorDigits: number
  readonly taxRate: number
  /** Rates used. */
  readonly rates: Rates
  /** The last day it holds, ISO. */
  readonly validUntil: string
  /** True while any rate is still one of the invented defaults. */
  readonly inventedRates: boolean
  /** How many of the rates are still invented, and how many there are. */
  readonly inventedCount: number
  readonly rateCount: number
  /** What was wrong with the Rates sheet; the rates it is about are the invented ones. */
  readonly rateProblems?: readonly Problem[]
}

/**
 * What a tree without limbs may come to, by its trunk: no cut is planned on it, so it is never part of a sum that is
 * offered or signed. Before tax and without trips.
 */
export interface BudgetFigure {
  readonly tree: string
  /** Inches. */
  readonly trunk: number
  /** Outside the trunks that the published slopes were found on. */
  readonly outside: boolean
  readonly price: Money
  /** How it came about, as a line that is part of no trip. */
  readonly work: EstimateLine
}

/** Every visit of a plan, priced. What of it is offered to a client is an `Offer`. */
export interface Estimate extends PriceBasis, PricedWork {
  /** Trees without limbs, in the inventory's order. */
  readonly budgetFigures: readonly BudgetFigure[]
}
