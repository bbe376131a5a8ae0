import { defaultRules } from '../../shared/rules'
import { byUrgency, type Plan, type TreePlan } from '../../src/plan/plan'
import { howToRead } from '../../src/sheets/cautions'
import { cautionsNote } from '../cautionsNote'
import { staleWords } from '../fresh/changes'
import { disclosure, type Disclosure } from '../parts/disclosure'
import { el, fill, freshId } from '../parts/elements'
import type { Drawings, Weigh } from '../engine'
import { longList } from '../parts/longList'
import type { CopySetting } from './specificationCopy'
import { closedWindows } from './timingNote'
import { treeCard } from './treeCard'
import { counted } from '../../shared/words/counts'

/** Lists of this many trees get a field to find one. */
const findFrom = 12

export interface PlanSection {
  element: HTMLElement
  /** Opens a tree's card and moves there. */
  openTree(id: string): void
  /** Marks the trees whose cells changed since the plan was made. */
  mark(trees: ReadonlySet<string> | 'all'): void
}

/** What the section needs beside the plan. */
export interface PlanSetting extends CopySetting {
  goToRow(row: number): void
  drawings(): Promise<Drawings>
  weigh: Weigh
}

/** The trees most urgent first, each a card that opens. */
export function planSection(plan: Plan, setting: PlanSetting): PlanSection {
  const trees = byUrgency(plan)
  const { rules = defaultRules, timing = [] } = plan
  const place = el('div', { class: 'cards' })
  const cards = new Map<string, Disclosure>()
  let stale: ReadonlySet<string> | 'all' = new Set()
  const markCard = (id: string, { element }: Disclosure): void => {
    const isStale = stale === 'all' || stale.has(id)
    if (element.classList.toggle('is-stale', isStale)) element.dataset.stale = staleWords
    else delete element.dataset.stale
  }
  const show = (shown: readonly TreePlan[]): void => {
    cards.clear()
    const list = el('div', { class: 'card-list' })
    const card = (treePlan: TreePlan): HTMLElement => {
      const built = treeCard(treePlan, { ...setting, system: plan.system, rules, timing })
      cards.set(treePlan.tree.id, built)
      markCard(treePlan.tree.id, built)
      return built.element
    }
    fill(place, shown.length === 0 && el('p', {}, 'No tree matches.'), longList(list, shown, 'trees', card))
  }
  show(trees)
  const find = finder(trees, show)
  return {
    element: el(
      'div',
      {},
      closedWindows(plan),
      cautionsNote(),
      disclosure('more', ['How to read the numbers'], () => [
        el('ul', {}, ...howToRead.map((words) => el('li', {}, words)))
      ]).element,
      trees.length === 0 && el('p', {}, 'No tree could be planned. The checks say why.'),
      trees.length > 0 &&
        el('p', { class: 'aside' }, 'Most urgent first, by the highest priority of a limb.'),
      trees.length >= findFrom && find.element,
      place
    ),
    mark: (trees) => {
      stale = trees
      for (const [id, card] of cards) markCard(id, card)
    },
    openTree: (id) => {
      if (!cards.has(id)) {
        find.clear()
        show(trees.filter(({ tree }) => tree.id === id).concat(trees.filter(({ tree }) => tree.id !== id)))
      }
      const card = cards.get(id)
      card?.open()
      card?.toggle.focus()
      card?.toggle.scrollIntoView({ block: 'start' })
    }
  }
}

function finder(trees: readonly TreePlan[], show: (shown: readonly TreePlan[]) => void) {
  const id = freshId('find')
  const found = el('p', { class: 'aside', 'aria-live': 'polite' })
  const field = el('input', { id, type: 'search', autocomplete: 'off', spellcheck: 'false' })
  field.addEventListener('input', () => {
    const wanted = field.value.trim().toLowerCase()
    const shown = wanted === '' ? trees : trees.filter((treePlan) => matches(treePlan, wanted))
    found.textContent = wanted === '' ? '' : `${counted(shown.length, 'tree')} found.`
    show(shown)
  })
  return {
    element: el('div', { class: 'field' }, el('label', { for: id }, 'Find a tree'), field, found),
    clear: () => {
      field.value = ''
      found.textContent = ''
    }
  }
}

function matches({ tree }: TreePlan, wanted: string): boolean {
  return [tree.id, tree.species, tree.zone, tree.site].some((text) => text.toLowerCase().includes(wanted))
}
