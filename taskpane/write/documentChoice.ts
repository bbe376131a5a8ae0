import { documentBook, planDocuments, type PlanDocument } from '../../src/sheets/documentBook'
import { el, freshId } from '../parts/elements'

/** The documents to write, as boxes to tick. It keeps what was ticked while the pane is open. */
export class DocumentChoice {
  readonly kinds = new Set(planDocuments.filter((kind) => documentBook[kind].ticked))

  element(): HTMLElement {
    const boxes = planDocuments.map((kind) => this.box(kind))
    return el('fieldset', { class: 'ticks' }, el('legend', {}, 'Sheets to write'), ...boxes)
  }

  private box(kind: PlanDocument): HTMLElement {
    const { title, about } = documentBook[kind]
    const id = freshId('write')
    const input = el('input', { id, type: 'checkbox', checked: this.kinds.has(kind) })
    input.addEventListener('change', () => {
      if (input.checked) this.kinds.add(kind)
      else this.kinds.delete(kind)
    })
    return el('div', { class: 'tick' }, input, el('label', { for: id }, el('strong', {}, title), ` ${about}`))
  }
}
