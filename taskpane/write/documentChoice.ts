import type { Cover } from '../../src/sheets/client-report/clientReport'
import { documentBook, isMadeFrom, planDocuments, type PlanDocument } from '../../src/sheets/documentBook'
import { listed } from '../../shared/words/lists'
import { el, freshId } from '../parts/elements'

/** What the person chose to write, and whose job it is, as the documents for client and crew say. */
export interface Choice {
  kinds: ReadonlySet<PlanDocument>
  cover: Pick<Cover, 'client' | 'site' | 'preparedBy'>
}

/** The documents that say whose job it is. */
const named = listed(
  planDocuments
    .filter((kind) => isMadeFrom(kind, 'cover'))
    .map((kind) => `the ${documentBook[kind].title.toLowerCase()}`)
)

const fields = [
  ['client', 'Client'],
  ['site', 'Site'],
  ['preparedBy', 'Prepared by']
] as const

/** The documents to write, as boxes to tick. It keeps what was ticked and typed while the pane is open. */
export class DocumentChoice implements Choice {
  readonly kinds = new Set(planDocuments.filter((kind) => documentBook[kind].ticked))
  readonly cover = { client: '', site: '', preparedBy: '' }

  element(): HTMLElement {
    const cover = this.coverFields()
    const boxes = planDocuments.map((kind) => this.box(kind, cover))
    return el(
      'div',
      {},
      el('fieldset', { class: 'ticks' }, el('legend', {}, 'Sheets to write'), ...boxes),
      cover
    )
  }

  private box(kind: PlanDocument, cover: HTMLElement): HTMLElement {
    const { title, about } = documentBook[kind]
    const id = freshId('write')
    const input = el('input', { id, type: 'checkbox', checked: this.kinds.has(kind) })
    input.addEventListener('change', () => {
      if (input.checked) this.kinds.add(kind)
      else this.kinds.delete(kind)
      cover.hidden = !this.isNamed()
    })
    return el('div', { class: 'tick' }, input, el('label', { for: id }, el('strong', {}, title), ` ${about}`))
  }

  /** Some of what is ticked says whose job it is. */
  private isNamed(): boolean {
    return [...this.kinds].some((kind) => isMadeFrom(kind, 'cover'))
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
      el('legend', {}, `For ${named}`),
      el('p', { class: 'aside' }, hint),
      ...inputs
    )
  }
}
