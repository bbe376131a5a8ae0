import { append, el, freshId, type Child } from './elements'

export interface Disclosure {
  element: HTMLElement
  /** The button that opens and closes it. */
  toggle: HTMLButtonElement
  open(): void
}

/**
 * A button that opens what belongs to it. What it opens is built the first time, so that a list of thousands of cards
 * costs only its headings. With a heading level the button stands inside a heading and is found by heading navigation.
 */
export function disclosure(
  look: string,
  label: readonly Child[],
  build: () => readonly Child[],
  heading?: 'h2' | 'h3' | 'h4'
): Disclosure {
  const id = freshId('part')
  const body = el('div', { id, class: `${look}-body`, hidden: true })
  const toggle = el('button', { type: 'button', class: `${look}-toggle`, 'aria-expanded': 'false' }, ...label)
  toggle.setAttribute('aria-controls', id)
  let built = false
  const show = (open: boolean): void => {
    if (open && !built) {
      append(body, build())
      built = true
    }
    toggle.setAttribute('aria-expanded', String(open))
    body.hidden = !open
  }
  toggle.addEventListener('click', () => {
    show(toggle.getAttribute('aria-expanded') !== 'true')
  })
  const head = heading === undefined ? toggle : el(heading, { class: `${look}-head` }, toggle)
  return {
    element: el('div', { class: look }, head, body),
    toggle,
    open: () => {
      show(true)
    }
  }
}
