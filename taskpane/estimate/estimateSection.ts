import type { Estimate } from '../../src/price/estimate'
import { firstVisit } from '../../src/price/offers'
import { howToRead } from '../../src/sheets/cautions'
import { el, fill } from '../parts/elements'
import type { Drawings } from '../engine'
import { figure } from '../parts/figure'
import type { OfferChoice } from './offerChoice'
import { offerView, offerWords } from './offerView'
import type { Planned } from '../planning'
import { ratesNote, type RatesSetting } from './ratesNote'

export interface EstimateSetting extends RatesSetting {
  offer: OfferChoice
  drawings(): Promise<Drawings>
}

/** By which rates the plan is priced, what of it may be ordered, and the lines and totals of that. */
export function estimateSection(planned: Planned, setting: EstimateSetting): HTMLElement {
  const { estimate } = planned
  const { lines } = estimate
  const rates = ratesNote(planned, setting)
  if (lines.length === 0) return el('div', {}, rates, ...offerView(firstVisit(estimate)))
  const place = el('div', { class: 'offered' })
  const show = (): void => {
    const offer = setting.offer.offerFor(estimate)
    if (offer === null || typeof offer === 'string')
      fill(place, el('p', { class: 'aside' }, 'Type it, and the visits and their price stand here.'))
    else fill(place, ...offerView(offer))
  }
  const choose = (): void => {
    show()
    const offer = setting.offer.offerFor(estimate)
    setting.announce(offer === null || typeof offer === 'string' ? (offer ?? '') : offerWords(offer))
  }
  show()
  const several = lines.some(({ visit }) => visit > 1)
  return el(
    'div',
    {},
    rates,
    several && priceFigure(estimate, setting.drawings),
    setting.offer.element(estimate, choose),
    place,
    several && el('p', { class: 'aside' }, howToRead[1])
  )
}

/** Where there is one visit only, its total says as much as a column. */
function priceFigure(estimate: Estimate, drawings: () => Promise<Drawings>): HTMLElement {
  return figure(drawings, ({ priceChart }, width) =>
    priceChart(estimate, { width, height: 220, palette: 'color' })
  ).element
}
