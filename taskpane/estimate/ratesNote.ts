import type { Problem } from '../../shared/problems'
import { listed } from '../../shared/words/lists'
import { rateEntry, type RateName } from '../../src/price/rateBook'
import { inventedRatesNotice } from '../../src/sheets/cautions'
import { disclosure } from '../parts/disclosure'
import { el } from '../parts/elements'
import type { Planned } from '../planning'
import { sheetOffer, type OfferSetting } from '../write/sheetOffer'

/** What the note needs to write a Rates sheet where there is none. */
export interface RatesSetting extends OfferSetting {
  writeRates(): Promise<string | Problem>
}

/** By which rates the plan was priced, and how many of them nobody has put in yet. */
export function ratesNote({ estimate, ratesSheet }: Planned, setting: RatesSetting): HTMLElement {
  const { inventedCount, rateCount, inventedRates, rates } = estimate
  const line = inventedRates
    ? `Rates: ${inventedCount} of ${rateCount} still invented`
    : `Rates: all ${rateCount} are yours`
  const changed = Object.keys(rates.changedHere ?? {}) as RateName[]
  const note = disclosure('more', [line], () => {
    if (ratesSheet === null) return [sheetOffer('rates', () => setting.writeRates(), setting)]
    const from = `From the sheet ${ratesSheet.sheet}, which is yours to change. A value that is right as it stands counts as yours once it says yes beside it.`
    return [
      el('p', {}, from),
      inventedRates && el('p', { class: 'aside' }, 'Still invented:'),
      inventedRates && el('ul', {}, ...rates.invented.map((name) => el('li', {}, rateEntry(name).name)))
    ]
  })
  const changedLine =
    changed.length > 0 &&
    el(
      'p',
      { class: 'aside' },
      `As changed on the Estimate: ${listed(changed.map((name) => rateEntry(name).name))}. Type them into the Rates sheet to keep them for other jobs.`
    )
  return el(
    'div',
    {},
    inventedRates && el('p', { class: 'notice' }, inventedRatesNotice),
    changedLine,
    note.element
  )
}
