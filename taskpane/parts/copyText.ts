import { el } from './elements'

/** The older way, for panes whose host keeps the clipboard from them: the selected text of a field. */
function copyFromField(text: string): boolean {
  const field = el('textarea', { class: 'unseen', readonly: true, tabindex: -1, 'aria-hidden': 'true' }, text)
  document.body.append(field)
  field.focus()
  field.select()
  try {
    return document.execCommand('copy')
  } catch {
    return false
  } finally {
    field.remove()
  }
}

/** Puts a text on the clipboard; false where the host of the pane lets it in neither way. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text)
    return true
  } catch {
    return copyFromField(text)
  }
}
