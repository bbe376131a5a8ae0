import type { Cover } from '../../src/sheets/client-report/clientReport'
import type { PlanDocument } from '../../src/sheets/describeDocuments'
import { el, freshId } from '../parts/elements'

/** What the person chose to write, and whose job it is, as the client report and the work order say. */
export interface Choice {
  kinds: ReadonlySet<PlanDocument>
  cover: Pick<Cover, 'client' | 'site' | 'preparedBy'>
}

const offers: readonly (readonly [PlanDocument, string, string])[] = [
  ['cut-plan', 'Cut plan', 'every cut, every visit, every check'],
  ['estimate', 'Estimate', 'hours and prices, with formulas'],
  ['client-report', 'Client report', 'plain words, prices by year, approval'],
  ['work-order', 'Work order', 'by crew day, large type, boxes to tick'],
  ['specification', 'Specification', 'text for a contract, tree by tree']
]

const fields = [
  ['client', 'Client'],
  ['site', 'Site'],
  ['preparedBy', 'Prepared by']
] as const

/** The documents to write, as boxes to tick. It keeps what was ticked and typed while the pane is open. */
export class DocumentChoice implements Choice {
  readonly kinds = new Set<PlanDocument>(['cut-plan', 'estimate'])
  readonly cover = { client: '', site: '', preparedBy: '' }

  element(): HTMLElement {
    const cover = this.coverFields()
    const boxes = offers.map(([kind, name, about]) => this.box(kind, name, about, cover))
    return el(
      'div',
      {},
      el('fieldset', { class: 'ticks' }, el('legend', {}, 'Sheets to write'), ...boxes),
      cover
    )
  }

  private box(kind: PlanDocument, name: string, about: string, cover: HTMLElement): HTMLElement {
    const id = freshId('write')
    const input = el('input', { id, type: 'checkbox', checked: this.kinds.has(kind) })
    input.addEventListener('change', () => {
      if (input.checked) this.kinds.add(kind)
      else this.kinds.delete(kind)
      cover.hidden = !this.isNamed()
    })
    return el('div', { class: 'tick' }, input, el('label', { for: id }, el('strong', {}, name), ` ${about}`))
  }

  /** The client report and the work order say whose job it is. */
  private isNamed(): boolean {
    return this.kinds.has('client-report') || this.kinds.has('work-order')
  }

  private coverFields(): HTMLElement {
    const inputs = fields.map(([key, label]) => {
      const id = freshId('cover')
      const input = el('input', { id, type: 'text', autocomplete: 'off', value: this.cover[key] })
      input.addEventListener('input', () => {
        this.cover[key] = input.value
      })
      return el('div', { class: 'field' }, el('label', { for: id }, label), input)
    })
    const hint = 'Left empty, a line to write on is printed in its place.'
    return el(
      'fieldset',
      { class: 'cover', hidden: !this.isNamed() },
      el('legend', {}, 'For the client report and the work order'),
      el('p', { class: 'aside' }, hint),
      ...inputs
    )
  }
}
