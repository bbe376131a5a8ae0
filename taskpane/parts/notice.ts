import type { Problem } from '../../shared/problems'
import { checkEntry, checkOf } from '../checks/checksSection'
import { el, fill } from './elements'
import { progressLine, type ProgressLine } from './progressLine'

/** The place above the result: progress while something runs, or why something could not be done. */
export class Notice {
  constructor(
    private readonly place: HTMLElement,
    private readonly goToCell: (cell: string) => void
  ) {}

  /** Shows progress with a cancel button, which gets the focus. */
  progress(control: AbortController): ProgressLine {
    const line = progressLine(() => {
      control.abort()
    })
    fill(this.place, line.element)
    line.cancel.focus()
    return line
  }

  /** Says what stood in the way, with the remedies; gives the same as one sentence to announce. */
  refuse(problems: readonly Problem[]): string {
    const head = el('h2', { tabindex: -1 }, 'This could not be done')
    const list = el(
      'ul',
      { class: 'check-list' },
      ...problems.map((found) => checkEntry(checkOf(found), this.goToCell))
    )
    fill(this.place, el('section', { class: 'refusal', 'aria-label': 'What went wrong' }, head, list))
    head.focus()
    return problems.map(({ message, remedy }) => `${message} ${remedy}`).join(' ')
  }

  /** A sentence that takes no focus, as the person is busy elsewhere. */
  say(sentence: string): void {
    fill(this.place, el('p', { class: 'aside notice-said' }, sentence))
  }

  /** Takes such a sentence away, and nothing else; whether there was one. */
  unsay(): boolean {
    const told = this.place.querySelector('.notice-said')
    told?.remove()
    return told !== null
  }

  clear(): void {
    fill(this.place)
  }
}
