import type { ShownDoses } from '../../src/plan/shownDoses'
import { el } from '../parts/elements'
import { panePercent } from '../parts/wording'

/** "18.3 % of 20 %". */
export function doseWords({ visit, allowed }: Pick<ShownDoses, 'visit' | 'allowed'>): string {
  return `${panePercent(visit)} of ${panePercent(allowed, 'at most')}`
}

/**
 * The dose of a visit against its allowance: a bar for the eye and the same in words. The full width is the
 * allowance, which is a ceiling and not a target.
 */
export function doseBar(doses: Pick<ShownDoses, 'visit' | 'allowed'>): HTMLElement {
  const { visit: dose, allowed } = doses
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
      allowed > 0 ? doseWords(doses) : 'no live wood this season'
    )
  )
}
