import type { Engine } from '../../taskpane/engine'
import { Pane } from '../../taskpane/pane'
import { FakeSurface, fakeEngine } from './fakeSurface'

/** Opens a pane over a stand-in spreadsheet and waits until it has looked at the selection. */
export async function openPane(
  surface = new FakeSurface(),
  engine: Engine = fakeEngine()
): Promise<{ pane: Pane; surface: FakeSurface; root: HTMLElement }> {
  Element.prototype.scrollIntoView = () => undefined
  const root = document.createElement('div')
  document.body.replaceChildren(root)
  const pane = new Pane(root, { surface, engine, today: () => '2031-03-02' })
  await pane.start()
  return { pane, surface, root }
}

/** The button, tab or link with this label, as a person reads it; throws where it is missing or hidden. */
export function press(root: ParentNode, label: string): HTMLButtonElement {
  const found = [...root.querySelectorAll('button')].find(
    (button) => button.textContent.startsWith(label) && button.closest('[hidden]') === null
  )
  if (found === undefined) throw new Error(`There is no button “${label}”.`)
  found.click()
  return found
}

/** Lets everything that was promised happen. */
export async function settle(): Promise<void> {
  for (let turn = 0; turn < 12; turn++) await new Promise((resolve) => setTimeout(resolve, 0))
}

/** What can be read, without what is folded away. */
export function readable(root: Element): string {
  const copy = root.cloneNode(true) as Element
  for (const hidden of copy.querySelectorAll('[hidden]')) hidden.remove()
  return (copy.textContent ?? '').replace(/\s+/g, ' ').trim()
}

/** What a screen reader was told last. */
export function announced(root: Element): string {
  return root.querySelector('[role=status]')?.textContent ?? ''
}
