import { el } from '../parts/elements'
import { percent } from '../parts/wording'

/**
 * The dose of a visit against its allowance: a bar for the eye and the same in words. The full width is the
 * allowance, which is a ceiling and not a target.
 */
export function doseBar(dose: number, allowed: number): HTMLElement {
  const fill = el('span', { class: 'dose-fill' })
  const share = allowed > 0 ? Math.min(1, dose / allowed) : 0
  fill.style.setProperty('inline-size', `${(share * 100).toFixed(1)}%`)
  return el(
    'div',
    { class: 'dose' },
    el('span', { class: 'dose-bar', 'aria-hidden': 'true' }, fill),
    el(
      'span',
      { class: 'dose-words' },
      el('span', { class: 'unseen' }, 'Foliage taken: '),
      allowed > 0 ? `${percent(dose)} of ${percent(allowed)}` : 'no live wood this season'
    )
  )
}
