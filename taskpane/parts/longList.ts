import { el } from './elements'
import { grouped } from '../../shared/words/figures'

/** Entries shown at once; thousands of trees would otherwise make the pane slow. */
export const shownAtOnce = 50

/**
 * Shows the first 50 entries and a button for the next 50. Focus moves to the first new entry, which a press of the
 * button would otherwise lose.
 */
export function longList<T>(
  list: HTMLElement,
  items: readonly T[],
  what: string,
  build: (item: T) => HTMLElement
): HTMLElement {
  const more = el('button', { type: 'button', class: 'button button-plain more-entries' })
  let shown = 0
  const showNext = (): HTMLElement | null => {
    const entries = items.slice(shown, shown + shownAtOnce).map(build)
    list.append(...entries)
    shown += entries.length
    const left = items.length - shown
    more.hidden = left === 0
    more.textContent = `Show ${grouped(Math.min(left, shownAtOnce))} more of ${grouped(left)} ${what}`
    return entries[0] ?? null
  }
  more.addEventListener('click', () => {
    const firstNew = showNext()
    firstNew?.querySelector<HTMLElement>('button, a, select')?.focus()
  })
  showNext()
  return el('div', { class: 'long-list' }, list, more)
}
