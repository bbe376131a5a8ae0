import type { Problem } from '../../shared/problems'
import { checkEntry } from '../checks/checksSection'
import { button, el, fill } from '../parts/elements'

/** What the offer of a sheet needs beside the writing. */
export interface OfferSetting {
  /** Turns what went wrong into a problem with a remedy. */
  explain(error: unknown): Problem
  announce(sentence: string): void
  goToCell(cell: string): void
}

/** A sheet that a person will own: what its button says, what it is for, and how it is written. */
export interface OfferedSheet {
  label: string
  why: string
  /** Gives the name of the sheet. */
  write(): Promise<string | Problem>
}

/** A place with a button that writes a sheet where the workbook has none. */
export function sheetOffer(sheet: OfferedSheet, setting: OfferSetting): HTMLElement {
  const place = el('div', {})
  offer(place, sheet, setting)
  return place
}

function offer(place: HTMLElement, sheet: OfferedSheet, setting: OfferSetting): void {
  const write = button(sheet.label, () => void begin(place, write, sheet, setting))
  fill(place, el('p', {}, sheet.why), el('div', { class: 'actions' }, write))
}

async function begin(
  place: HTMLElement,
  write: HTMLButtonElement,
  sheet: OfferedSheet,
  setting: OfferSetting
): Promise<void> {
  write.disabled = true
  let result: string | Problem
  try {
    result = await sheet.write()
  } catch (error) {
    result = setting.explain(error)
  }
  if (typeof result !== 'string') {
    offer(place, sheet, setting)
    place.prepend(el('ul', { class: 'check-list' }, checkEntry(result, setting.goToCell)))
    setting.announce(`${result.message} ${result.remedy}`)
    place.querySelector<HTMLElement>('.actions .button')?.focus()
    return
  }
  const done = `Written: the sheet ${result}. It is yours: change it, then press Plan again.`
  const line = el('p', { class: 'done', tabindex: -1 }, done)
  fill(place, line)
  setting.announce(done)
  line.focus()
}
