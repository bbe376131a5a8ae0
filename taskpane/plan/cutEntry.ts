import { defaultRules, type Rules } from '../../shared/rules'
import { showDiameter, showHeight, type UnitSystem } from '../../shared/units'
import type { Cut } from '../../src/plan/plan'
import { disclosure } from '../parts/disclosure'
import { el, facts, type Child } from '../parts/elements'
import { capital, percent, points, ratio, sentence } from '../parts/wording'

/** What a cut entry needs to know beyond the cut. */
export interface CutSetting {
  system: UnitSystem
  /** The rules of the plan; the defaults where they are left out. */
  rules?: Rules
  /** Selects the limb's row in the sheet. */
  goToRow(row: number): void
}

/** What the climber does, in one or two sentences. */
export function instruction(cut: Cut, system: UnitSystem): string {
  if (cut.kind === 'remove') {
    return `Remove at the collar${cut.live ? '' : ' (dead wood)'}; ${showDiameter(cut.cutDiameter, system)} at the base.`
  }
  const where = cut.cutHeight === null ? '' : `, about ${showHeight(cut.cutHeight, system)} above ground`
  const lateral =
    cut.lateralMin === null
      ? ''
      : ` Leave a live lateral of at least ${showDiameter(cut.lateralMin, system)}.`
  const tip =
    cut.tipAfter === null
      ? ''
      : ` Keep all other ends of this limb below ${showHeight(cut.tipAfter, system)}.`
  return `Cut where the limb is ${showDiameter(cut.cutDiameter, system)}${where}.${lateral}${tip}`
}

/** How much foliage the cut takes, with the error that any single limb carries. */
function amount(cut: Cut, rules: Rules): string {
  if (!cut.live) return 'dead wood, no live foliage'
  const error = percent(rules.foliageError)
  return `${percent(cut.share)} of the limb, ${percent(cut.dose)} of the tree (±${error})`
}

function priorityChange(cut: Cut): Child {
  const now = points(cut.priority)
  return cut.kind === 'remove' ? `${now}, then none` : `${now}, then ${points(cut.nextPriority)}`
}

function ratioChange(cut: Cut): string {
  if (cut.aspectRatio === null || cut.standing === null) return 'not measured'
  const now = `${ratio(cut.aspectRatio)}, ${cut.standing}`
  const next = cut.projectedAspectRatio
  return next === null ? now : `${now}; ${ratio(next)} by the next visit`
}

function marks(cut: Cut, system: UnitSystem, rules: Rules): Child {
  if (cut.needsReason) {
    return el(
      'p',
      { class: 'mark' },
      `Cut over ${showDiameter(rules.reasonedCut, system)}: write down the reason. Precut so that the bark does not tear.`
    )
  }
  if (!cut.marked) return null
  return el(
    'p',
    { class: 'mark' },
    `Cut over ${showDiameter(rules.markedCut, system)}: precut so that the bark does not tear.`
  )
}

/** One cut of a visit: what to do first, then why, then what was refused. */
export function cutEntry(cut: Cut, { system, goToRow, rules = defaultRules }: CutSetting): HTMLElement {
  const go = el(
    'button',
    {
      type: 'button',
      class: 'button button-link',
      onclick: () => {
        goToRow(cut.limb.row)
      }
    },
    'Go to row',
    el('span', { class: 'unseen' }, ` of limb ${cut.limb.id}`)
  )
  return el(
    'li',
    { class: `cut cut-${cut.kind}` },
    el(
      'div',
      { class: 'cut-head' },
      el('h5', {}, el('span', { class: 'cut-kind' }, capital(cut.kind)), ` limb ${cut.limb.id}`),
      go
    ),
    el('p', { class: 'cut-do' }, instruction(cut, system)),
    marks(cut, system, rules),
    facts([
      ['Takes', amount(cut, rules)],
      ['Aspect ratio', ratioChange(cut)],
      ['Priority', priorityChange(cut)]
    ]),
    el('p', { class: 'cut-why' }, sentence(cut.reason)),
    cut.refused.length > 0 &&
      disclosure('more', ['What was weighed'], () => [
        el('ul', {}, ...cut.refused.map((words) => el('li', {}, sentence(words)))),
        el('p', { class: 'source' }, `Source: ${cut.source}`)
      ]).element
  )
}
