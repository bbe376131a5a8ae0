import { defaultRules, type Rules } from '../../shared/rules'
import type { UnitSystem } from '../../shared/units'
import { counted } from '../../shared/words/counts'
import { foliagePart } from '../../shared/words/foliageParts'
import { showDiameter, showHeight } from '../../shared/words/lengths'
import { cutText } from '../../src/plan/cutCells'
import type { CutRow } from '../../src/plan/cutColumns'
import type { Limb } from '../../src/inventory/inventory'
import type { Cut } from '../../src/plan/plan'
import { priorityText } from '../../src/plan/priorityWords'
import { disclosure } from '../parts/disclosure'
import { el, facts, type Child } from '../parts/elements'
import { capital, sentence } from '../../shared/words/sentences'
import { panePercent, unbroken } from '../parts/wording'

/** What a cut entry needs to know beyond the cut. */
export interface CutSetting {
  system: UnitSystem
  /** The rules of the plan; the defaults where they are left out. */
  rules?: Rules
  /** Why this cut and not more, a sentence each. */
  weighed?(visit: number, limb: Limb): readonly string[]
  /** Selects the limb's row in the sheet. */
  goToRow(row: number): void
}

/** What the climber does, in one or two sentences. */
export function instruction(cut: Cut, system: UnitSystem): string {
  if (cut.kind === 'remove') {
    const base = cut.cutDiameter === null ? '' : `; ${showDiameter(cut.cutDiameter, system)} at the base`
    return `Remove at the collar${cut.live ? '' : ' (dead wood)'}${base}.`
  }
  if (cut.kind === 'raise')
    return `Take off the side branches that hang below ${showHeight(cut.cutHeight ?? 0, system, 'at least')}.`
  if (cut.cutDiameter === null)
    return cut.obligation === 'broken'
      ? 'Cut back to sound wood below the break.'
      : 'Reduce to a live lateral. A forecast: measure then where to cut.'
  const where = placeOf(cut, system)
  const lateral =
    cut.lateralMin === null
      ? ''
      : ` Leave a live lateral of at least ${showDiameter(cut.lateralMin, system, 'at least')}.`
  const tip =
    cut.tipAfter === null
      ? ''
      : ` Keep all other ends of this limb below ${showHeight(cut.tipAfter, system, 'at most')}.`
  if (cut.count > 1)
    return `Make ${counted(cut.count, 'cut')} of at most ${showDiameter(cut.cutDiameter, system)} over the outer part.${lateral}${tip}`
  return `Cut where the limb is ${showDiameter(cut.cutDiameter, system)}${where}.${lateral}${tip}`
}

function placeOf({ cutHeight, distance }: Cut, system: UnitSystem): string {
  if (distance !== null) return `, about ${showHeight(distance, system)} out from its union`
  return cutHeight === null ? '' : `, about ${showHeight(cutHeight, system)} above ground`
}

/** How much foliage the cut takes, with the error that any single limb carries. */
function amount(row: CutRow, system: UnitSystem, rules: Rules): string {
  const { cut } = row
  if (!cut.live) return 'dead wood, no live foliage'
  const error = panePercent(rules.foliageError)
  const part = cut.kind === 'remove' ? 'all' : foliagePart(cut.share)
  return `${part} of the limb, ${unbroken(cutText('dose', row, system))} of the tree (±${error})`
}

function priorityChange(row: CutRow, rules: Rules): Child {
  const { kind, priority, nextPriority } = row.cut
  const now = priorityText(priority, rules)
  return kind === 'remove' ? `${now}, then none` : `${now}, then ${priorityText(nextPriority, rules)}`
}

function ratioChange(row: CutRow, system: UnitSystem): string {
  const ratio = cutText('ratio', row, system)
  if (ratio === '' || row.cut.standing === null) return 'not measured'
  const now = `${ratio}, ${row.cut.standing}`
  const next = cutText('nextRatio', row, system)
  return next === '' ? now : `${now}; ${next} by the next visit`
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
export function cutEntry(row: CutRow, setting: CutSetting): HTMLElement {
  const { system, goToRow, rules = defaultRules } = setting
  const { cut, visit } = row
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
      ['Takes', amount(row, system, rules)],
      ['Aspect ratio', ratioChange(row, system)],
      ['Priority', priorityChange(row, rules)]
    ]),
    el('p', { class: 'cut-why' }, sentence(cut.reason)),
    cut.live &&
      disclosure('more', ['Why this and not more'], () => {
        const weighed = setting.weighed?.(visit.visit, cut.limb) ?? []
        return [
          weighed.length > 0 && el('ul', {}, ...weighed.map((words) => el('li', {}, words))),
          el('p', { class: 'source' }, `Source: ${cut.source}`)
        ]
      }).element
  )
}
