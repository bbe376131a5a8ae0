import type { Limb } from '../../src/inventory/inventory'
import type { LimbState, TreePlan } from '../../src/plan/plan'
import { el, freshId, type Child } from '../parts/elements'
import { figure } from '../parts/figure'
import type { DrawingSetting } from './treeDrawing'
import { points } from '../../shared/words/figures'

const chartHeight = 220

/** Limbs whose ratio can be followed, most urgent first. */
function followed({ visits }: TreePlan): LimbState[] {
  const states = visits[0]?.limbs ?? []
  return states
    .filter(({ limb }) => limb.diameter !== null && !limb.dead)
    .sort((a, b) => b.priority - a.priority)
}

/** How the aspect ratio of a limb goes on with the planned cuts and without any, and the dose of each visit. */
export function forecast(plan: TreePlan, { drawings, rules }: DrawingSetting): Child[] {
  const limbs = followed(plan)
  let limb: Limb | undefined = limbs[0]?.limb
  if (limb === undefined) return []
  const ratio = figure(drawings, ({ ratioChart }, width) =>
    ratioChart(plan, {
      width,
      height: chartHeight,
      palette: 'color',
      rules,
      ...(limb === undefined ? {} : { limb })
    })
  )
  const choice = limbChoice(limbs, (chosen) => {
    limb = chosen
    ratio.redraw()
  })
  const dose = figure(drawings, ({ doseChart }, width) =>
    doseChart(plan, { width, height: chartHeight, palette: 'color' })
  )
  return [
    el('h4', {}, 'With and without pruning'),
    el(
      'p',
      { class: 'aside' },
      'By the growth rules of the plan, and no more certain than these: measure again at each visit.'
    ),
    limbs.length > 1 && choice,
    ratio.element,
    plan.visits.length > 1 && dose.element
  ]
}

function limbChoice(limbs: readonly LimbState[], choose: (limb: Limb | undefined) => void): HTMLElement {
  const id = freshId('followed')
  const field = el(
    'select',
    { id },
    ...limbs.map(({ limb, priority }, index) =>
      el('option', { value: index }, `Limb ${limb.id}, priority ${points(priority)}`)
    )
  )
  field.addEventListener('change', () => {
    choose(limbs[Number(field.value)]?.limb)
  })
  return el('div', { class: 'field' }, el('label', { for: id }, 'Limb shown in the chart'), field)
}
