/** What may stand inside an element; empty values are left out, so that a caller can write a condition in place. */
export type Child = Node | string | number | null | undefined | false

type Value = string | number | boolean | null | undefined | ((event: Event) => void)

export type Attributes = Record<string, Value>

function setAttribute(element: Element, name: string, value: Value): void {
  if (value === null || value === undefined || value === false) return
  if (typeof value === 'function') element.addEventListener(name.replace(/^on/, ''), value)
  else element.setAttribute(name, value === true ? '' : String(value))
}

/** Adds children at the end, leaving out the empty ones. */
export function append(element: Element, children: readonly Child[]): void {
  for (const child of children) {
    if (child === null || child === undefined || child === false) continue
    element.append(typeof child === 'number' ? String(child) : child)
  }
}

/**
 * An HTML element with its attributes and children. A function under a name such as `onclick` becomes a listener;
 * texts are always text, never markup.
 */
export function el<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: Child[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag)
  for (const [name, value] of Object.entries(attributes)) setAttribute(element, name, value)
  append(element, children)
  return element
}

/** Puts new children in the place of the old ones. */
export function fill(element: Element, ...children: Child[]): void {
  element.replaceChildren()
  append(element, children)
}

/** A real button. The kind names its look. */
export function button(
  label: string,
  onclick: () => void,
  kind: 'primary' | 'plain' | 'link' = 'plain',
  attributes: Attributes = {}
): HTMLButtonElement {
  return el('button', { type: 'button', class: `button button-${kind}`, onclick, ...attributes }, label)
}

/** A list of terms with their descriptions; empty values are left out. */
export function facts(pairs: readonly (readonly [string, Child])[]): HTMLDListElement {
  const list = el('dl', { class: 'facts' })
  for (const [term, value] of pairs) {
    if (value === null || value === undefined || value === false || value === '') continue
    list.append(el('div', {}, el('dt', {}, term), el('dd', {}, value)))
  }
  return list
}

let lastId = 0

/** An id that no other element of the page has. */
export function freshId(stem: string): string {
  lastId += 1
  return `${stem}-${lastId}`
}
