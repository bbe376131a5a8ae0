import { button, el, freshId } from './elements'
import type { Progress } from '../planning'
import { grouped } from '../../shared/words/figures'

export interface ProgressLine {
  element: HTMLElement
  cancel: HTMLButtonElement
  show(progress: Progress): void
}

/** What is being done, how far it is, and a button that stops it. */
export function progressLine(onCancel: () => void): ProgressLine {
  const id = freshId('progress')
  const words = el('label', { for: id, class: 'progress-words' }, 'Starting')
  const bar = el('progress', { id, class: 'progress-bar', max: 1 })
  const cancel = button('Cancel', () => {
    cancel.disabled = true
    onCancel()
  })
  return {
    element: el('div', { class: 'progress' }, words, bar, el('div', { class: 'actions' }, cancel)),
    cancel,
    show: ({ doing, done, total }) => {
      words.textContent = total > 0 ? `${doing}: ${grouped(done)} of ${grouped(total)}` : doing
      if (total > 0) {
        bar.max = total
        bar.value = Math.min(done, total)
      } else bar.removeAttribute('value')
    }
  }
}
