import type { Rules } from '../../shared/rules'
import type { UnitSystem } from '../../shared/units'
import type { TreePlan, Visit } from '../../src/plan/plan'
import { el, freshId } from '../parts/elements'
import type { Drawings } from '../engine'
import { figure } from '../parts/figure'

export interface DrawingSetting {
  system: UnitSystem
  rules: Rules
  drawings(): Promise<Drawings>
}

type When = 'before' | 'after'

/** The tree in side view. At a visit a person goes back and forth between before and after, at one scale. */
export function treeDrawing(plan: TreePlan, visit: Visit | null, setting: DrawingSetting): HTMLElement {
  let when: When = 'before'
  const { system, rules } = setting
  const shown = figure(setting.drawings, ({ drawTree, fittingHeight }, width) => {
    const height = fittingHeight(plan, visit, { width, system, when, rules })
    return drawTree(plan, visit, { width, height, system, when, rules, palette: 'color' })
  })
  const choose = (wanted: When): void => {
    when = wanted
    shown.redraw()
  }
  const hasSides = visit !== null && visit.cuts.length > 0
  return el('div', { class: 'tree-drawing' }, hasSides && sides(plan, visit, choose), shown.element)
}

function sides({ tree }: TreePlan, { visit }: Visit, choose: (when: When) => void): HTMLElement {
  const name = freshId('side')
  const side = (when: When, words: string) => {
    const input = el('input', { type: 'radio', name, value: when, checked: when === 'before' })
    input.addEventListener('change', () => {
      choose(when)
    })
    return el('label', { class: 'side' }, input, words)
  }
  return el(
    'fieldset',
    { class: 'sides' },
    el('legend', { class: 'unseen' }, `Drawing of tree ${tree.id} at visit ${visit}`),
    side('before', 'Before'),
    side('after', 'After')
  )
}
