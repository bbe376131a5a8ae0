import type { UnitSystem } from '../../shared/units'
import { showDiameter, showHeight } from '../../shared/words/lengths'
import { percent } from '../../shared/words/percent'
import type { TreePlan, Visit } from '../plan/plan'
import { shownDose } from '../plan/shownDoses'
import { numberedCuts, type NumberedCut } from './form/limbsAtVisit'

function before({ cut }: NumberedCut, system: UnitSystem): string {
  const large = cut.needsReason ? ', large: needs a written reason' : cut.marked ? ', large cut' : ''
  if (cut.kind === 'remove')
    return `${cut.limb.id}: remove${cut.live ? '' : ', dead'}, ${showDiameter(cut.cutDiameter, system)}${large}`
  const where =
    cut.cutHeight === null ? ', height to judge on site' : ` at ${showHeight(cut.cutHeight, system)}`
  const tip = cut.tipAfter === null ? '' : `, tip to ${showHeight(cut.tipAfter, system, 'at most')}`
  return `${cut.limb.id}: reduce${where}, cut ${showDiameter(cut.cutDiameter, system)}${tip}${large}`
}

function after({ cut }: NumberedCut, visit: Visit, system: UnitSystem): string {
  const dose = cut.live ? `, dose ${percent(shownDose(visit, cut))}` : ''
  if (cut.kind === 'remove') return `${cut.limb.id}: removed${cut.live ? dose : ', was dead'}`
  const tip = cut.tipAfter === null ? '' : ` to a tip of ${showHeight(cut.tipAfter, system, 'at most')}`
  return `${cut.limb.id}: reduced${tip}${dose}`
}

export interface CutLine {
  number: number
  text: string
}

/** One line per cut: what to do before the visit, what was done after it. */
export function cutLines(visit: Visit, when: 'before' | 'after', system: UnitSystem): CutLine[] {
  return numberedCuts(visit).map((each) => ({
    number: each.number,
    text: when === 'before' ? before(each, system) : after(each, visit, system)
  }))
}

/** "Tree T01, before visit 1, 2026". */
export function captionOf(plan: TreePlan, visit: Visit | null, when: 'before' | 'after'): string {
  const tree = `Tree ${plan.tree.id}`
  return visit === null ? `${tree}, as surveyed` : `${tree}, ${when} visit ${visit.visit}, ${visit.year}`
}
