import type { UnitSystem } from '../../shared/units'
import { counted } from '../../shared/words/counts'
import { showDiameter, showHeight } from '../../shared/words/lengths'
import { percent } from '../../shared/words/percent'
import type { Cut, TreePlan, Visit } from '../plan/plan'
import { shownDose } from '../plan/shownDoses'
import { numberedCuts, type NumberedCut } from './form/limbsAtVisit'

function before({ cut }: NumberedCut, system: UnitSystem): string {
  const large = cut.needsReason ? ', large: needs a written reason' : cut.marked ? ', large cut' : ''
  if (cut.kind === 'remove')
    return `${cut.limb.id}: remove${cut.live ? '' : ', dead'}${sizeOf(cut, system)}${large}`
  if (cut.kind === 'raise')
    return `${cut.limb.id}: raise to ${showHeight(cut.cutHeight ?? 0, system, 'at least')}, hanging side branches`
  if (cut.count > 1)
    return `${cut.limb.id}: reduce the outer part, ${counted(cut.count, 'small cut')}${tipOf(cut, system)}`
  if (cut.cutDiameter === null) return `${cut.limb.id}: reduce, measure then`
  return `${cut.limb.id}: reduce${placeOf(cut, system)}, cut ${showDiameter(cut.cutDiameter, system)}${tipOf(cut, system)}${large}`
}

function sizeOf({ cutDiameter }: Cut, system: UnitSystem): string {
  return cutDiameter === null ? '' : `, ${showDiameter(cutDiameter, system)}`
}

function placeOf({ cutHeight, distance }: Cut, system: UnitSystem): string {
  if (distance !== null) return ` ${showHeight(distance, system)} out from the union`
  return cutHeight === null ? ', height to judge on site' : ` at ${showHeight(cutHeight, system)}`
}

function tipOf({ tipAfter }: Cut, system: UnitSystem): string {
  return tipAfter === null ? '' : `, tip to ${showHeight(tipAfter, system, 'at most')}`
}

function after({ cut }: NumberedCut, visit: Visit, system: UnitSystem): string {
  const dose = cut.live ? `, ${percent(shownDose(visit, cut))} of the foliage` : ''
  if (cut.kind === 'raise') return `${cut.limb.id}: raised${dose}`
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

/** "Before", "After the visit of 2026": a caption where the tree is named beside the picture. */
export function shortCaption(visit: Visit | null, when: 'before' | 'after'): string {
  if (visit === null) return 'As surveyed'
  return when === 'before' ? 'Before' : `After, ${String(visit.year)}`
}
