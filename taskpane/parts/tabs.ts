import { el, freshId } from './elements'

export interface Section {
  name: string
  label: string
  /** A number shown behind the label, and the words it is read out with. */
  badge?: { number: number; words: string }
  /** Built the first time the section is shown. */
  build: () => HTMLElement
}

export interface Tabs {
  element: HTMLElement
  show(name: string, focus?: boolean): void
}

/** Sections behind a row of tabs: one tab stop, arrow keys, Home and End move between them. */
export function tabs(label: string, sections: readonly Section[], first: string): Tabs {
  const row = el('div', { class: 'tabs', role: 'tablist', 'aria-label': label })
  const parts = sections.map((section) => {
    const id = freshId('section')
    const tab = el(
      'button',
      { type: 'button', class: 'tab', role: 'tab', id: `${id}-tab`, 'aria-controls': id },
      section.label
    )
    if (section.badge !== undefined) {
      tab.append(
        el('span', { class: 'tab-badge', 'aria-hidden': 'true' }, section.badge.number),
        el('span', { class: 'unseen' }, `, ${section.badge.words}`)
      )
    }
    const panel = el('div', {
      class: 'panel',
      role: 'tabpanel',
      id,
      'aria-labelledby': `${id}-tab`,
      tabindex: 0,
      hidden: true
    })
    row.append(tab)
    return { section, tab, panel }
  })

  const show = (name: string, focus = false): void => {
    for (const { section, tab, panel } of parts) {
      const shown = section.name === name
      tab.setAttribute('aria-selected', String(shown))
      tab.tabIndex = shown ? 0 : -1
      if (shown && panel.childNodes.length === 0) panel.append(section.build())
      panel.hidden = !shown
      if (shown && focus) tab.focus()
    }
  }
  const step = (by: number, from: number): void => {
    const next = parts[(from + by + parts.length) % parts.length]
    if (next !== undefined) show(next.section.name, true)
  }
  parts.forEach(({ section, tab }, index) => {
    tab.addEventListener('click', () => {
      show(section.name)
    })
    tab.addEventListener('keydown', (event) => {
      if (event.key === 'ArrowRight') step(1, index)
      else if (event.key === 'ArrowLeft') step(-1, index)
      else if (event.key === 'Home') step(0, 0)
      else if (event.key === 'End') step(-1, 0)
      else return
      event.preventDefault()
    })
  })
  show(first)
  return { element: el('div', { class: 'tabbed' }, row, ...parts.map(({ panel }) => panel)), show }
}
