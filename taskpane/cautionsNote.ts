import { cautions } from '../src/sheets/cautions'
import { disclosure } from './parts/disclosure'
import { el } from './parts/elements'

/** The cautions in three lines, for places where the whole list is one press away. */
const inShort =
  'Not a tree risk assessment and no promise of safety: a qualified arborist on site decides. ' +
  'Power lines: stop and call. Never work alone aloft.'

function list(): HTMLElement {
  return el('ul', {}, ...cautions.map((sentence) => el('li', {}, sentence)))
}

/** The cautions in full. */
export function cautionsList(): HTMLElement {
  return el(
    'section',
    { class: 'cautions', 'aria-label': 'Cautions' },
    el('h2', { class: 'cautions-head' }, 'Before anyone cuts'),
    list()
  )
}

/** The cautions in short, with the full list one press away. */
export function cautionsNote(): HTMLElement {
  return el(
    'aside',
    { class: 'cautions cautions-short', 'aria-label': 'Cautions' },
    el('p', {}, inShort),
    disclosure('more', ['All cautions'], () => [list()]).element
  )
}
