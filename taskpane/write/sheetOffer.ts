import type { Problem } from '../../shared/problems'
import { documentBook, type UsersDocument } from '../../src/sheets/documentBook'
import { checkEntry, checkOf } from '../checks/checksSection'
import { button, el, fill } from '../parts/elements'

/** What the offer of a sheet needs beside the writing. */
export interface OfferSetting {
  /** Turns what went wrong into a problem with a remedy. */
  explain(error: unknown): Problem
  announce(sentence: string): void
  goToCell(cell: string): void
}

/** A sheet that a person will own: which it is, and how it is written. */
interface OfferedSheet {
  kind: UsersDocument
  /** Gives the name of the sheet. */
  write(): Promise<string | Problem>
}

/** A place with a button that writes a sheet where the workbook has none. */
export function sheetOffer(
  kind: UsersDocument,
  write: OfferedSheet['write'],
  setting: OfferSetting
): HTMLElement {
  const place = el('div', {})
  offer(place, { kind, write }, setting)
  return place
}

function offer(place: HTMLElement, sheet: OfferedSheet, setting: OfferSetting): void {
  const { title, about } = documentBook[sheet.kind]
  const write = button(`Write a ${title} sheet`, () => void begin(place, write, sheet, setting))
  fill(place, el('p', {}, about), el('div', { class: 'actions' }, write))
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
    place.prepend(el('ul', { class: 'check-list' }, checkEntry(checkOf(result), setting.goToCell)))
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
