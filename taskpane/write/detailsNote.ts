import type { Problem } from '../../shared/problems'
import { detailEntry, detailNames } from '../../src/details/detailsBook'
import { disclosure } from '../parts/disclosure'
import { el } from '../parts/elements'
import type { Planned } from '../planning'
import { sheetOffer, type OfferSetting } from './sheetOffer'

/** What the note needs to write a Job details sheet where the inventory has none. */
export interface DetailsSetting extends OfferSetting {
  writeDetails(): Promise<string | Problem>
}

/** Whose job it is, as every document says at its head and at the foot of its pages, and what is still to fill by hand. */
export function detailsNote({ details, detailsSheet }: Planned, setting: DetailsSetting): HTMLElement {
  const whose = [details.client, details.site].filter((text) => text !== '').join(', ')
  const line =
    detailsSheet === null
      ? 'Job details: none, lines to fill by hand'
      : `Job details: ${whose === '' ? 'no client named' : whose}`
  const blank = detailNames.filter((name) => details[name] === '').map((name) => detailEntry(name).name)
  return disclosure('more', [line], () => {
    if (detailsSheet === null) return [sheetOffer('job-details', () => setting.writeDetails(), setting)]
    const from = `From the sheet ${detailsSheet.sheet}, which is yours to change.`
    return [
      el('p', {}, from),
      blank.length > 0 && el('p', { class: 'aside' }, `Still blank: ${blank.join(', ')}.`)
    ]
  }).element
}
