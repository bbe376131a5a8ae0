import { locale } from './locale'
import { wholeUnits, type Limit } from './rounding'

/** Texts kept of each kind of figure: a plan of thousands of trees needs the same few over and over. */
const mostKept = 4000

/** A kind of figure: how many decimals it has at least and at most, whether thousands are set apart, and what stands around it. */
export class Figure {
  private readonly format: Intl.NumberFormat
  private readonly perWhole: number
  // As long as it gets: filled here and there it would become a table of its keys, which is looked up slowly.
  private readonly kept = new Array<string | undefined>(mostKept)

  constructor(
    least: number,
    most: number,
    grouped = false,
    private readonly after = '',
    private readonly before = ''
  ) {
    this.perWhole = 10 ** most
    this.format = new Intl.NumberFormat(locale, {
      minimumFractionDigits: least,
      maximumFractionDigits: most,
      useGrouping: grouped
    })
  }

  of(value: number, limit?: Limit): string {
    const units = wholeUnits(value, this.perWhole, limit)
    if (!(units >= 0 && units < mostKept)) return this.text(units)
    return (this.kept[units] ??= this.text(units))
  }

  private text(units: number): string {
    return this.before + this.format.format(units / this.perWhole) + this.after
  }
}

const wholes = new Figure(0, 0)
const groups = new Figure(0, 0, true)
const fixedTenths = new Figure(1, 1)
const shortTenths = new Figure(0, 1)
const fixedHundredths = new Figure(2, 2)
const shortHundredths = new Figure(0, 2)
const shortThousandths = new Figure(0, 3)
const groupedThousandths = new Figure(0, 3, true)
const shortTenThousandths = new Figure(0, 4)

/** A whole number without groups: 41.6 gives "42". */
export const whole = (value: number): string => wholes.of(value)

/** A whole number with its thousands set apart: 3400 gives "3,400". */
export const grouped = (value: number): string => groups.of(value)

/** One decimal, also where it is 0, for columns of figures: 7 gives "7.0". */
export const fixedTenth = (value: number, limit?: Limit): string => fixedTenths.of(value, limit)

/** At most one decimal: 7.25 gives "7.3", 7 gives "7". */
export const tenth = (value: number, limit?: Limit): string => shortTenths.of(value, limit)

/** At most two decimals. */
export const hundredth = (value: number): string => shortHundredths.of(value)

/** At most three decimals. */
export const thousandth = (value: number): string => shortThousandths.of(value)

/** A quantity with its thousands set apart and at most three decimals: 12500 gives "12,500". */
export const quantity = (value: number): string => groupedThousandths.of(value)

/** A rule's value: at most four decimals. */
export const tenThousandth = (value: number): string => shortTenThousandths.of(value)

/** An aspect ratio or a live crown ratio: 0.6 gives "0.60". */
export const ratio = (value: number): string => fixedHundredths.of(value)

/** Crew-hours: 1.5 gives "1.50". */
export const hours = (value: number): string => fixedHundredths.of(value)

/** A priority: whole points. */
export const points = (value: number): string => wholes.of(value)
