import { palette } from '../../../shared/palette'
import type { ChosenOffer } from '../../price/offers'
import { looks } from '../looks'
import type { SheetDescription } from '../sheet'
import { totalStands } from '../totalStands'
import { columns } from './reportGrid'

const same = 'Priced as on the Estimate.'
const older = 'Rates changed since: older than the Estimate. Write it again.'

/**
 * A report that is written together with its Estimate tells at its head when a rate is changed there afterward: the only cell
 * of it with a formula. Where the Estimate is gone, nothing is claimed.
 */
export function tellingIfOlder(report: SheetDescription, offer: ChosenOffer): SheetDescription {
  if (offer.lines.length === 0) return report
  const formula = `=IFERROR(IF(${totalStands(offer, String(offer.minorDigits))},"${same}","${older}"),"${same}")`
  const [[title = null] = [], ...rows] = report.rows
  const area = { row: 0, column: columns.trunk, rows: 1, columns: 1 }
  return {
    ...report,
    rows: [[title, null, { formula, value: same }], ...rows],
    formats: [...report.formats, { area, format: { ...looks.lead, size: 9, color: palette.umber } }]
  }
}
