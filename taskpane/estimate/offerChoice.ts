import type { Estimate } from '../../src/price/estimate'
import { firstVisit, firstVisits, someTrees, wholeProgram, type ChosenOffer } from '../../src/price/offers'
import { readBudget } from '../../src/price/readBudget'
import { withinBudget } from '../../src/price/withinBudget'
import { readTrees } from '../../src/price/readTrees'
import { button, el, freshId } from '../parts/elements'
import { counted } from '../../shared/words/counts'

type Kind = ChosenOffer['kind']

const kinds: readonly (readonly [Kind, string, string])[] = [
  ['first visit', 'First visit', 'to every tree that needs one now; later visits are a forecast'],
  ['some trees', 'Some trees', 'their first visit, with the trip shared by them alone'],
  ['within budget', 'Within a budget', 'the first visits that do most for the trees'],
  ['whole program', 'Whole program', 'every visit that is planned, bought now']
]

/** What a person types to choose: a budget, or the ids of trees. */
type TypedKind = 'within budget' | 'some trees'

/** What the client may order, as buttons to choose from. It keeps the choice while the pane is open. */
export class OfferChoice {
  private kind: Kind = 'first visit'
  private readonly typed: Record<TypedKind, string> = { 'within budget': '', 'some trees': '' }
  /** What was last asked for, as it was typed; null before the first. */
  private readonly asked: Record<TypedKind, string | null> = { 'within budget': null, 'some trees': null }
  private known: { estimate: Estimate; kind: Kind; asked: string | null; offer: ChosenOffer } | null = null

  /** Tells the line beside the documents that the choice is another. */
  private told: () => void = () => undefined

  /** What is offered, or a sentence that says why what was typed cannot be used; null while nothing was asked for. */
  offerFor(estimate: Estimate): ChosenOffer | string | null {
    const { kind, known } = this
    const asked = kind === 'within budget' || kind === 'some trees' ? this.asked[kind] : ''
    if (asked === null) return null
    if (known?.estimate === estimate && known.kind === kind && known.asked === asked) return known.offer
    const offer = offerAsked(kind, asked, estimate)
    if (typeof offer !== 'string') this.known = { estimate, kind, asked, offer }
    return offer
  }

  /** What the documents offer: the choice, or the first visit as long as nothing else is settled. */
  chosenFor(estimate: Estimate): ChosenOffer {
    const offer = this.offerFor(estimate)
    return offer === null || typeof offer === 'string' ? firstVisit(estimate) : offer
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
    if (offer === null || typeof offer === 'string') {
      const what = this.kind === 'some trees' ? 'No trees are' : 'No budget is'
      return `${what} settled under Estimate, so the documents offer the first visit.`
    }
    const name = kinds.find(([kind]) => kind === offer.kind)?.[1] ?? ''
    const visits = `${String(offer.lines.length)} of ${counted(estimate.lines.length, 'visit')}`
    return `The documents offer, as chosen under Estimate: ${name.toLowerCase()}, ${visits}.`
  }

  /** The choice as radio buttons with the fields that they need; `changed` is called after each change. */
  element(estimate: Estimate, changed: () => void): HTMLElement {
    const name = freshId('offer')
    const fields: Record<TypedKind, HTMLElement> = {
      'some trees': this.field(
        'some trees',
        'Trees, with commas between them',
        'Show these trees',
        estimate,
        changed
      ),
      'within budget': this.field(
        'within budget',
        `Budget (${estimate.currency}, tax included)`,
        'Show what fits',
        estimate,
        changed
      )
    }
    const choose = (kind: Kind): void => {
      this.kind = kind
      for (const typed of ['some trees', 'within budget'] as const) fields[typed].hidden = kind !== typed
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
      fields['some trees'],
      fields['within budget']
    )
  }

  private field(
    kind: TypedKind,
    label: string,
    action: string,
    estimate: Estimate,
    changed: () => void
  ): HTMLElement {
    const id = freshId('offered')
    const wrongId = freshId('offered')
    const input = el('input', {
      id,
      type: 'text',
      ...(kind === 'within budget' ? { inputmode: 'decimal' } : {}),
      autocomplete: 'off',
      value: this.typed[kind],
      'aria-describedby': wrongId
    })
    const wrong = el('p', { id: wrongId, class: 'check-remedy' })
    const ask = (): void => {
      this.asked[kind] = input.value
      const offer = this.offerFor(estimate)
      wrong.textContent = typeof offer === 'string' ? offer : ''
      input.setAttribute('aria-invalid', String(typeof offer === 'string'))
      this.told()
      changed()
      if (typeof offer === 'string') input.focus()
    }
    input.addEventListener('input', () => {
      this.typed[kind] = input.value
    })
    input.addEventListener('keydown', ({ key }) => {
      if (key === 'Enter') ask()
    })
    return el(
      'div',
      { hidden: this.kind !== kind },
      el('div', { class: 'field' }, el('label', { for: id }, label), input, wrong),
      el('div', { class: 'actions' }, button(action, ask))
    )
  }
}

/** The offer of a kind, or a sentence that says what is wrong with what was typed for it. */
function offerAsked(kind: Kind, asked: string, estimate: Estimate): ChosenOffer | string {
  if (kind === 'whole program') return wholeProgram(estimate)
  if (kind === 'first visit') return firstVisit(estimate)
  if (kind === 'some trees') {
    const trees = readTrees(
      asked,
      firstVisits(estimate).map(({ tree }) => tree)
    )
    return typeof trees === 'string' ? trees : someTrees(estimate, trees)
  }
  const budget = readBudget(asked, estimate)
  return typeof budget === 'string' ? budget : withinBudget(estimate, budget)
}
