import type { Estimate } from '../../src/price/estimate'
import { thisVisit, wholeProgram, withinBudget, type BudgetOffer, type Offer } from '../../src/price/offers'
import { readBudget } from '../../src/price/readBudget'
import type { ChosenOffer } from '../../src/sheets/offered'
import { button, el, freshId } from '../parts/elements'
import { counted } from '../../shared/words/counts'

type Kind = Offer['kind']

const kinds: readonly (readonly [Kind, string, string])[] = [
  ['whole program', 'Whole program', 'every visit that is planned'],
  ['this visit', 'First visit only', 'one visit to every tree'],
  ['within budget', 'Within a budget', 'the visits that relieve most priority']
]

/** What the client may order, as buttons to choose from. It keeps the choice while the pane is open. */
export class OfferChoice {
  private kind: Kind = 'whole program'
  private typed = ''
  /** The budget that was last asked for, as it was typed; null before the first. */
  private asked: string | null = null
  private known: { estimate: Estimate; asked: string; offer: BudgetOffer } | null = null

  /** Tells the line beside the documents that the choice is another. */
  private told: () => void = () => undefined

  /** What is offered, or a sentence that says why a budget cannot be used; null while none was asked for. */
  offerFor(estimate: Estimate): Offer | BudgetOffer | string | null {
    if (this.kind === 'this visit') return thisVisit(estimate)
    if (this.kind === 'whole program') return wholeProgram(estimate)
    if (this.asked === null) return null
    const { asked, known } = this
    if (known?.estimate === estimate && known.asked === asked) return known.offer
    const budget = readBudget(asked, estimate.minorDigits)
    if (typeof budget === 'string') return budget
    const offer = withinBudget(estimate, budget)
    this.known = { estimate, asked, offer }
    return offer
  }

  /** What the documents offer: the choice, or the whole program as long as no budget is settled. */
  chosenFor(estimate: Estimate): ChosenOffer {
    const offer = this.offerFor(estimate)
    return offer === null || typeof offer === 'string' ? wholeProgram(estimate) : offer
  }

  /** What the documents offer, as a line for whoever is about to write them; it follows the choice. */
  line(estimate: Estimate): HTMLElement {
    const line = el('p', { class: 'aside' })
    this.told = () => {
      line.textContent = this.words(estimate)
    }
    this.told()
    return line
  }

  private words(estimate: Estimate): string {
    const offer = this.offerFor(estimate)
    if (offer === null || typeof offer === 'string')
      return 'No budget is settled under Estimate, so the documents offer the whole program.'
    const name = kinds.find(([kind]) => kind === offer.kind)?.[1] ?? ''
    const visits = `${String(offer.lines.length)} of ${counted(estimate.lines.length, 'visit')}`
    return `The documents offer, as chosen under Estimate: ${name.toLowerCase()}, ${visits}.`
  }

  /** The choice as radio buttons with the field of the budget; `changed` is called after each change. */
  element(estimate: Estimate, changed: () => void): HTMLElement {
    const name = freshId('offer')
    const budget = this.budgetField(estimate, changed)
    const choose = (kind: Kind): void => {
      this.kind = kind
      budget.hidden = kind !== 'within budget'
      this.told()
      changed()
    }
    const radios = kinds.map(([kind, label, about]) => {
      const id = freshId('offer')
      const input = el('input', { id, type: 'radio', name, checked: this.kind === kind })
      input.addEventListener('change', () => {
        choose(kind)
      })
      return el(
        'div',
        { class: 'tick' },
        input,
        el('label', { for: id }, el('strong', {}, label), ` ${about}`)
      )
    })
    return el(
      'div',
      {},
      el('fieldset', { class: 'ticks' }, el('legend', {}, 'What to order'), ...radios),
      budget
    )
  }

  private budgetField(estimate: Estimate, changed: () => void): HTMLElement {
    const id = freshId('budget')
    const wrongId = freshId('budget')
    const input = el('input', {
      id,
      type: 'text',
      inputmode: 'decimal',
      autocomplete: 'off',
      value: this.typed,
      'aria-describedby': wrongId
    })
    const wrong = el('p', { id: wrongId, class: 'check-remedy' })
    const ask = (): void => {
      this.asked = input.value
      const offer = this.offerFor(estimate)
      wrong.textContent = typeof offer === 'string' ? offer : ''
      input.setAttribute('aria-invalid', String(typeof offer === 'string'))
      this.told()
      changed()
      if (typeof offer === 'string') input.focus()
    }
    input.addEventListener('input', () => {
      this.typed = input.value
    })
    input.addEventListener('keydown', ({ key }) => {
      if (key === 'Enter') ask()
    })
    return el(
      'div',
      { hidden: this.kind !== 'within budget' },
      el(
        'div',
        { class: 'field' },
        el('label', { for: id }, `Budget (${estimate.currency}, tax included)`),
        input,
        wrong
      ),
      el('div', { class: 'actions' }, button('Show what fits', ask))
    )
  }
}
