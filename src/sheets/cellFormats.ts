import { dateFormat } from '../../shared/words/dates'
import type { CutValue } from '../plan/cutColumns'
import type { Format } from './sheet'

/** How cells show figures; their values are already rounded where the rule of rounding asks for more than the nearest digit. */
export const cellFormats = {
  centered: { numberFormat: '0', align: 'center' },
  whole: { numberFormat: '0', align: 'right' },
  tenth: { numberFormat: '0.0', align: 'right' },
  hundredth: { numberFormat: '0.00', align: 'right' },
  /** Shares as sentences have them, to a tenth of a percent. */
  share: { numberFormat: '0.0%', align: 'right' },
  /** Ratios as a client reads them, and the axes of charts. */
  wholeShare: { numberFormat: '0%', align: 'right' },
  taxRate: { numberFormat: '0.00%', align: 'right' },
  factor: { numberFormat: '0.0000', align: 'right' },
  bearing: { numberFormat: '0"°"', align: 'right' },
  date: { numberFormat: dateFormat, align: 'left' }
} as const satisfies Record<string, Format>

/** How the values of a table of cuts look, by their kind. */
export const cutFormats: Record<CutValue, Format> = {
  text: { wrap: true },
  name: { bold: true, wrap: true },
  mark: { wrap: true, align: 'center' },
  count: cellFormats.centered,
  diameter: cellFormats.tenth,
  height: cellFormats.tenth,
  bearing: cellFormats.bearing,
  share: cellFormats.share,
  ratio: cellFormats.hundredth,
  points: cellFormats.whole
}
