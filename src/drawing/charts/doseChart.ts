import type { TreePlan } from '../../plan/plan'
import { emptyChart, type ChartOptions } from './chartFrame'
import { columnShapes } from './columnChart'
import { percent } from '../../../shared/words/percent'
import { doseOfAllowed, doseWords } from '../doseBar'
import type { Drawing } from '../shapes'

/** Dose against allowance, one column per visit: filled by the dose, framed by the allowance, which is a ceiling. */
export function doseChart(plan: TreePlan, options: ChartOptions): Drawing {
  const title = `Tree ${plan.tree.id}: foliage removed against allowance by visit`
  if (plan.visits.length === 0) return emptyChart(options, title, 'No visit is planned for this tree.')
  const columns = plan.visits.map((visit) => ({
    labels: [`Visit ${visit.visit}`, String(visit.year)],
    value: visit.dose,
    text: visit.allowedRemoval > 0 ? doseOfAllowed(visit) : 'no live wood',
    ceiling: visit.allowedRemoval
  }))
  const words = plan.visits.map((visit) => `visit ${visit.visit}, ${visit.year}: ${doseWords(visit)}`)
  return {
    ...options,
    title,
    alt: `${title}. Columns filled by the foliage removed, framed by the allowance: ${words.join('; ')}.`,
    shapes: columnShapes(options, title, columns, (share) => percent(share))
  }
}
