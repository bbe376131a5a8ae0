import { judgedOf, judgedWords } from '../../plan/judged'
import { byUrgency, type Plan, type TreePlan } from '../../plan/plan'
import { plural } from '../../../shared/words/counts'
import { listed } from '../../../shared/words/lists'
import { visitsIn, type ChosenOffer } from '../offered'

function whyNot(plan: TreePlan): string {
  const judged = judgedOf(plan)
  if (judged === 'no limbs') return 'no limbs listed. Survey them, then specify.'
  if (judged === 'none') return 'limbs not judged. Survey them again, then specify.'
  if (plan.visits.some(({ visit, cuts }) => visit === 1 && cuts.length > 0))
    return 'work not in what is offered.'
  const left = judged === 'some' ? `; ${judgedWords(plan)}` : ''
  if (plan.visits.some(({ cuts }) => cuts.length > 0))
    return `work recommended for a later year and not in what is offered${left}.`
  if (plan.allowedRemoval <= 0) return `no live foliage to spare${left}.`
  return `no cut at present${left}.`
}

/** Trees that an offer has no visit to, one sentence per reason: nothing is specified for them. */
export function notSpecified(plan: Plan, offer: ChosenOffer): string[] {
  const offered = new Set(offer.lines.map(({ tree }) => tree))
  const whys = new Map<string, string[]>()
  for (const tree of byUrgency(plan)) {
    if (offered.has(tree.tree.id)) continue
    const why = whyNot(tree)
    const own = whys.get(why)
    if (own === undefined) whys.set(why, [tree.tree.id])
    else own.push(tree.tree.id)
  }
  return [...whys].map(([why, ids]) => `${plural(ids.length, 'Tree')} ${listed(ids)}: ${why}`)
}

/** The trees that an offer has a visit to, the most urgent first, with a test of which of their visits it has. */
export function specifiedTrees(
  plan: Plan,
  offer: ChosenOffer
): { tree: TreePlan; isOffered: (visit: number) => boolean }[] {
  const offered = visitsIn(offer)
  return byUrgency(plan).flatMap((tree) => {
    const isOffered = (visit: number) => offered(tree.tree.id, visit)
    return tree.visits.some(({ visit }) => isOffered(visit)) ? [{ tree, isOffered }] : []
  })
}
