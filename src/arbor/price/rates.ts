import type { Access } from '../../../shared/choices'

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

/** What a business charges with. Money as text, so that it stays exact. */
export interface Rates {
  currency: string
  minorDigits: number
  /** Cost of the whole crew for an hour, wages with burden. */
  crewHour: string
  /** Cost of the crew's equipment for an hour. */
  equipmentHour: string
  setUpMinutes: Record<Access, number>
  accessFactor: Record<Access, number>
  cutClasses: readonly CutClass[]
  heightBands: readonly HeightBand[]
  /** Green brush that the crew drags, chips and loads, kg a minute. */
  brushKilogramsPerMinute: number
  /** Cost of disposal for a kilogram of green brush. */
  disposalPerKilogram: string
  overheadRate: string
  marginRate: string
  /** Least charge for a tree at a visit. */
  minimumPerTree: string
  taxRate: string
  /** True while nobody has put in rates of their own. */
  invented: boolean
}

/**
 * The rates the estimate starts with. They are invented, so that the arithmetic shows; a business puts in its own.
 * The access factors are common practice, no source.
 */
export const inventedRates: Rates = {
  currency: 'USD',
  minorDigits: 2,
  crewHour: '118.00',
  equipmentHour: '34.00',
  setUpMinutes: { open: 8, fenced: 12, 'no machine': 18 },
  accessFactor: { open: 1, fenced: 1.15, 'no machine': 1.35 },
  cutClasses: [
    { upToMillimetres: 25, minutes: 1.5 },
    { upToMillimetres: 50, minutes: 3 },
    { upToMillimetres: 100, minutes: 7 },
    { upToMillimetres: 150, minutes: 14 },
    { upToMillimetres: Infinity, minutes: 25 }
  ],
  heightBands: [
    { upToMetres: 3, factor: 1 },
    { upToMetres: 6, factor: 1.3 },
    { upToMetres: 12, factor: 1.7 },
    { upToMetres: Infinity, factor: 2.2 }
  ],
  brushKilogramsPerMinute: 9,
  disposalPerKilogram: '0.06',
  overheadRate: '0.18',
  marginRate: '0.15',
  minimumPerTree: '60.00',
  taxRate: '0',
  invented: true
}
