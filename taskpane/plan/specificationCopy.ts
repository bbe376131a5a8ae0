import type { TreePlan } from '../../src/plan/plan'
import { copyText } from '../parts/copyText'
import { button, el, fill, freshId } from '../parts/elements'

/** What copying a specification needs beside the tree. */
export interface CopySetting {
  /** The specification of one tree as text, with what holds for every tree and the cautions. */
  specificationOf(tree: TreePlan): Promise<string>
  announce(sentence: string): void
}

const failed = 'The specification could not be made. Close the pane and open it again, then plan again.'
const closed = 'The spreadsheet keeps the clipboard from the pane. The text is selected: copy it from here.'

/** A button that puts the tree's specification on the clipboard; where that is closed, the text stands here to be copied. */
export function specificationCopy(tree: TreePlan, setting: CopySetting): HTMLElement {
  const place = el('div', {})
  const say = (sentence: string, ...below: HTMLElement[]): void => {
    fill(place, el('p', { class: 'aside' }, sentence), ...below)
    setting.announce(sentence)
  }
  const copy = async (): Promise<void> => {
    let text: string
    try {
      text = await setting.specificationOf(tree)
    } catch {
      say(failed)
      return
    }
    const copied = await copyText(text)
    start.focus()
    if (copied) say(`The specification of tree ${tree.tree.id} is copied: paste it where you need it.`)
    else {
      const field = textField(text)
      say(closed, field.element)
      field.select()
    }
  }
  const start = button('Copy specification', () => void copy())
  return el('div', {}, el('div', { class: 'actions' }, start), place)
}

function textField(text: string): { element: HTMLElement; select(): void } {
  const id = freshId('specification')
  const field = el('textarea', { id, readonly: true, rows: 8 }, text)
  return {
    element: el('div', { class: 'field' }, el('label', { for: id }, 'Specification'), field),
    select: () => {
      field.focus()
      field.select()
    }
  }
}
