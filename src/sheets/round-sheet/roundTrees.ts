import { defaultRules } from '../../../shared/rules'
import { showDiameter } from '../../../shared/words/lengths'
import { judgedOf, judgedWords } from '../../plan/judged'
import type { Cut, Plan, TreePlan, Visit } from '../../plan/plan'
import type { TimedStop } from '../crewDays'
import { inOrder } from '../inOrder'
import type { ChosenOffer } from '../offered'
import { notDone } from './notDone'
import { reachOfAll, type Reach, type Reaching } from './reach'

/** A tree of the round. */
export interface RoundLine extends TimedStop {
  readonly tree: TreePlan
  readonly visit: Visit
  /** All cuts of the visit: those that must be made first, in each part the worst first. */
  readonly cuts: readonly Cut[]
  readonly reach: Exclude<Reach, 'beyond'>
  /** One of them must be made. */
  readonly must: boolean
  /** The highest priority among them. */
  readonly worst: number
}

/** Why a tree is not on the round, and of what kind the reason is. */
export interface NotOnRound {
  readonly tree: TreePlan
  readonly list: 'elsewhere' | 'not judged' | 'look' | 'nothing'
  readonly why: string
}

/** Every tree of a plan once: on the round, or in one of the lists beside it. */
export interface DividedTrees {
  readonly lines: readonly RoundLine[]
  readonly others: readonly NotOnRound[]
}

/** The round is that of the first visit: later ones are a forecast, to be measured again. */
const firstVisit = 1

const worstFirst = (cuts: readonly Cut[]): readonly Cut[] =>
  inOrder(cuts, (a, b) => Number(b.must) - Number(a.must))

/** The year of the next visit: the next one that is planned with cuts, otherwise that in which the tree is looked at again. */
function nextYear({ visits, interval }: TreePlan, surveyYear: number): number {
  const planned = visits.find(({ visit, cuts }) => visit > firstVisit && cuts.length > 0)
  return planned?.year ?? surveyYear + interval
}

function withoutCuts(tree: TreePlan, surveyYear: number): NotOnRound {
  const judged = judgedOf(tree)
  if (judged !== 'all') {
    const why = judged === 'some' ? `${judgedWords(tree)}, no cut of the others` : judgedWords(tree)
    return { tree, list: 'not judged', why }
  }
  const waiting = notDone(tree)
  return waiting === null
    ? { tree, list: 'nothing', why: `next visit ${String(nextYear(tree, surveyYear))}` }
    : { tree, list: 'look', why: waiting }
}

/** What the whole plan says to each of its trees. */
interface RoundTerms {
  readonly plan: Plan
  readonly reaching: Reaching
  readonly reasonedCut: number
  readonly surveyYear: number
  /** Crew-hours of the first visits that are offered. */
  readonly hours: ReadonlyMap<string, number>
}

function placed(tree: TreePlan, terms: RoundTerms): RoundLine | NotOnRound {
  const { plan, reaching, surveyYear } = terms
  const visit = tree.visits.find((each) => each.visit === firstVisit)
  if (visit === undefined || visit.cuts.length === 0) return withoutCuts(tree, surveyYear)
  const hours = terms.hours.get(tree.tree.id)
  if (hours === undefined) return { tree, list: 'elsewhere', why: 'work not in what was ordered' }
  const reach = reachOfAll(visit.cuts, reaching)
  if (reach === 'beyond') return { tree, list: 'elsewhere', why: 'ladder or climb: see work order' }
  if (visit.cuts.some(({ needsReason }) => needsReason)) {
    const size = showDiameter(terms.reasonedCut, plan.system)
    return {
      tree,
      list: 'elsewhere',
      why: `a cut over ${size} needs a written reason first: see work order`
    }
  }
  return {
    tree,
    visit,
    cuts: worstFirst(visit.cuts),
    reach,
    must: visit.cuts.some(({ must }) => must),
    worst: visit.cuts.reduce((most, { priority }) => Math.max(most, priority), 0),
    hours
  }
}

/** Divides the trees of a plan, in the inventory's order, by what is offered; hours are those of its lines. */
export function divideTrees(plan: Plan, offer: ChosenOffer): DividedTrees {
  const lines: RoundLine[] = []
  const others: NotOnRound[] = []
  const { rules = defaultRules } = plan
  const terms: RoundTerms = {
    plan,
    reaching: { rules, rates: offer.rates },
    reasonedCut: rules.reasonedCut,
    surveyYear: Number(plan.date.slice(0, 4)),
    hours: new Map(
      offer.lines.filter(({ visit }) => visit === firstVisit).map(({ tree, crewHours }) => [tree, crewHours])
    )
  }
  for (const tree of plan.trees) {
    const found = placed(tree, terms)
    if ('list' in found) others.push(found)
    else lines.push(found)
  }
  return { lines, others }
}
