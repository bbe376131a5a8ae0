import { counted, plural } from '../../../shared/words/counts'
import { listed } from '../../../shared/words/lists'
import { judgedOf, judgedWords } from '../../plan/judged'
import { byUrgency, type Plan, type TreePlan } from '../../plan/plan'
import type { CrewDay } from '../crewDays'
import type { PrintedDraft } from '../printedDraft'
import type { Stop } from './workOrderDays'

/** Trees whose limbs are counted one by one; of more, the cut plan tells them. */
const mostNamed = 12

/**
 * Limbs that could not be planned, one sentence per tree: they are there, though nothing is ordered for them. Trees of which
 * no limb was judged are named as such.
 */
function unreadWords({ unplanned, trees }: Plan): string[] {
  const named = new Set(trees.filter((tree) => judgedOf(tree) === 'none').map(({ tree }) => tree.id))
  const counts = new Map<string, number>()
  for (const { tree, wholeTree } of unplanned)
    if (tree !== '' && !named.has(tree) && wholeTree !== true) counts.set(tree, (counts.get(tree) ?? 0) + 1)
  const words = [...counts]
    .slice(0, mostNamed)
    .map(
      ([tree, count]) =>
        `Tree ${tree}: ${counted(count, 'limb')} could not be planned as written. Leave ${plural(count, 'it', 'them')} and survey again.`
    )
  const more = counts.size - words.length
  if (more > 0)
    words.push(`Limbs of ${counted(more, 'more tree')} could not be planned as written: leave them.`)
  return words
}

function whyNotOrdered(plan: TreePlan, year: number): string {
  const judged = judgedOf(plan)
  if (judged === 'no limbs') return 'no limbs listed; survey them, then plan again.'
  if (judged === 'none') return 'limbs not judged; survey them again, then plan again.'
  if (plan.visits.some((visit) => visit.year === year && visit.cuts.length > 0))
    return 'work not in what was ordered.'
  const left = judged === 'some' ? `; ${judgedWords(plan)}` : ''
  return `no cut is planned in ${String(year)}${left}.`
}

/** Why nobody is sent anywhere. */
export function nothingOrdered({ trees }: Plan, year: number): string {
  const judged = trees.map(judgedOf)
  return judged.length > 0 && judged.every((each) => each === 'none')
    ? 'Limbs not judged, so nothing is ordered.'
    : `No cut is planned in ${String(year)}, so nothing is ordered.`
}

/** Trees that this order does not send anybody to, and why. */
export function addOthers(
  draft: PrintedDraft,
  plan: Plan,
  year: number,
  days: readonly CrewDay<Stop>[]
): void {
  const ordered = new Set(days.flatMap(({ stops }) => stops.map(({ tree }) => tree)))
  const others = byUrgency(plan).filter((tree) => !ordered.has(tree))
  const unread = unreadWords(plan)
  if (others.length === 0 && unread.length === 0) return
  draft.air()
  draft.heading('Not in this order: leave these trees', draft.size + 2)
  const whys = new Map<string, string[]>()
  for (const tree of others) {
    const why = whyNotOrdered(tree, year)
    const ids = whys.get(why)
    if (ids === undefined) whys.set(why, [tree.tree.id])
    else ids.push(tree.tree.id)
  }
  for (const [why, ids] of whys) draft.bullet(`${plural(ids.length, 'Tree')} ${listed(ids)}: ${why}`)
  for (const text of unread) draft.bullet(text)
}
