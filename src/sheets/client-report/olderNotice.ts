import { palette } from '../../../shared/palette'
import type { ChosenOffer } from '../../price/offers'
import { ageFormula, type Age } from '../basisStands'
import { looks } from '../looks'
import type { SheetDescription } from '../sheet'
import { totalStands } from '../totalStands'
import { columns } from './reportGrid'

const ofPrices = 'Priced as on the Estimate.'
const ofNumbers = 'The numbers it was made from still stand.'
const older = 'Rates changed since: older than the Estimate. Write it again.'

/**
 * The report tells at its head when a rate is changed on the Estimate that was written with it, or a number of the inventory or
 * of the Rules sheet: the only cell of it with a formula. Where those are gone, nothing is claimed.
 */
export function tellingIfOlder(
  report: SheetDescription,
  offer: ChosenOffer,
  { withEstimate, age }: { readonly withEstimate: boolean; readonly age: Age }
): SheetDescription {
  const priced = withEstimate && offer.lines.length > 0
  const stands = `IFERROR(${totalStands(offer, String(offer.minorDigits))},TRUE)`
  const all: Age = priced ? [[stands, older], ...age] : age
  if (all.length === 0) return report
  const same = priced ? ofPrices : ofNumbers
  const [[title = null] = [], ...rows] = report.rows
  const area = { row: 0, column: columns.trunk, rows: 1, columns: 1 }
  return {
    ...report,
    rows: [[title, null, { formula: ageFormula(all, same), value: same }], ...rows],
    formats: [...report.formats, { area, format: { ...looks.lead, size: 9, color: palette.umber } }]
  }
}
