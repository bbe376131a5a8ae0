import { version } from '../shared/version'
import { cautionsList } from './cautionsNote'
import { button, el } from './parts/elements'
import { inventoryNeeds } from './inventoryNeeds'

/** The standing parts of the pane; everything else changes inside them. */
export interface Frame {
  words: HTMLElement
  hint: HTMLElement
  plan: HTMLButtonElement
  /** Offers to plan again what was written into this workbook before. */
  again: HTMLElement
  /** Progress, or why something could not be done. */
  notice: HTMLElement
  /** The result, once there is one. */
  stage: HTMLElement
  /** What the inventory has to hold, for the first time. */
  needs: HTMLElement
  /** The cautions in full, until the result brings its own. */
  cautions: HTMLElement
  /** Read out politely. */
  status: HTMLElement
  /** The selected row's card. */
  dock: HTMLElement
}

/** Builds the standing parts. */
export function buildFrame(root: HTMLElement, onPlan: () => void): Frame {
  const words = el('p', { class: 'selection-words' })
  const hint = el('p', { class: 'selection-hint' })
  const plan = button('Plan inventory', onPlan, 'primary')
  const again = el('div', { class: 'again', hidden: true })
  const notice = el('div', { class: 'notice-place' })
  const stage = el('div', { class: 'stage' })
  const needs = inventoryNeeds()
  const cautions = cautionsList()
  const status = el('p', { class: 'unseen', role: 'status', 'aria-live': 'polite' })
  const dock = el('aside', { class: 'limb-card', 'aria-label': 'Selected row', hidden: true })
  root.replaceChildren(
    el(
      'header',
      { class: 'masthead' },
      el('h1', {}, 'Limbwright'),
      el('p', { class: 'masthead-version' }, version)
    ),
    el(
      'main',
      {},
      el(
        'section',
        { class: 'selection', 'aria-label': 'Inventory' },
        el('h2', { class: 'selection-head' }, 'Inventory'),
        words,
        hint,
        el('div', { class: 'actions' }, plan),
        again
      ),
      notice,
      stage,
      needs,
      cautions
    ),
    status,
    dock
  )
  return { words, hint, plan, again, notice, stage, needs, cautions, status, dock }
}
