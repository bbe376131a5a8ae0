import { judgedOf, judgedWords, notJudgedLimbs } from '../../plan/judged'
import type { Cut, TreePlan, Visit } from '../../plan/plan'
import type { UnitSystem } from '../../../shared/units'
import { counted } from '../../../shared/words/counts'
import { whole } from '../../../shared/words/figures'
import { showDiameter, showHeight } from '../../../shared/words/lengths'
import { listed, namedLimbs } from '../../../shared/words/lists'
import { ceilingPercent, percent, wholePercent } from '../../../shared/words/percent'
import { capital, closed } from '../../../shared/words/sentences'
import { fewLimbs, permanentLimbs, temporaryLimbs, temporaryWords } from '../../plan/scaffold/scaffoldWords'
import { shownDoses } from '../../plan/shownDoses'
import { treeTitle } from '../../plan/treeTitle'
import { byPurpose, type PurposeGroup } from '../purposes'
import type { Clause } from './specificationGeneral'

/** The specification of one tree. */
export interface TreeSpecification {
  tree: string
  title: string
  clauses: Clause[]
}

function objective({ purpose, cuts }: PurposeGroup, { tree, leader }: TreePlan, system: UnitSystem): string {
  const limbs = namedLimbs(cuts.map(({ limb }) => limb))
  switch (purpose) {
    case 'leader':
      return `keep ${leader.limb === null ? 'the trunk' : `limb ${leader.limb.id}`} as the one leader by subordinating ${limbs}`
    case 'clearance':
      // A limb that is shortened still hangs where it hung: its removal is staged.
      return `${cuts.some(({ kind }) => kind === 'reduce') ? 'work in stages toward' : 'gain'} the clearance of ${showHeight(tree.clearance ?? 0, system, 'at least')} at ${limbs}`
    case 'reach':
      return `hold back ${limbs}, which ${cuts.length === 1 ? 'starts low and reaches' : 'start low and reach'} high`
    case 'end-weight':
      return `lessen the end weight of ${limbs}`
    case 'dead':
      return `remove dead wood (${limbs})`
    case 'hurt':
      return `correct broken or rubbing wood (${limbs})`
    case 'temporary':
      return `end the temporary ${limbs}`
    case 'spacing':
      return `space the permanent limbs (${limbs})`
  }
}

function one(cut: Cut, system: UnitSystem): string {
  const { limb } = cut
  const bearing = limb.bearing === null ? '' : `, bearing ${whole(limb.bearing)}°`
  const origin = limb.origin === null ? '' : `, at ${showHeight(limb.origin, system)} above ground`
  if (cut.kind === 'raise')
    return `Limb ${limb.id}${bearing}: hanging side branches removed up to ${showHeight(cut.cutHeight ?? 0, system, 'at least')}.`
  const across =
    cut.cutDiameter === null ? 'size to be measured then' : `${showDiameter(cut.cutDiameter, system)} across`
  if (cut.kind === 'remove')
    return `Limb ${limb.id}${bearing}: removal cut${cut.live ? '' : ' of dead wood'}, ${across}${origin}.`
  const lateral =
    cut.lateralMin === null
      ? ''
      : `, to a lateral of at least ${showDiameter(cut.lateralMin, system, 'at least')}`
  const height = placeOf(cut, system)
  const what = cut.count > 1 ? `${String(cut.count)} reduction cuts over the outer part` : 'reduction cut'
  const tip =
    cut.tipAfter === null
      ? ''
      : `; all other ends of the limb below ${showHeight(cut.tipAfter, system, 'at most')}`
  return `Limb ${limb.id}${bearing}: ${what}, ${across}${height}${lateral}${tip}.`
}

function placeOf({ cutHeight, distance }: Cut, system: UnitSystem): string {
  if (distance !== null) return ` ${showHeight(distance, system)} out from the union`
  return cutHeight === null ? '' : ` at ${showHeight(cutHeight, system)} above ground`
}

function kinds(cuts: readonly Cut[]): string {
  const reduce = cuts.filter(({ kind }) => kind === 'reduce').length
  const raised = cuts.filter(({ kind }) => kind === 'raise').length
  const remove = cuts.length - reduce - raised
  return listed([
    ...(reduce > 0 ? [counted(reduce, 'reduction cut')] : []),
    ...(remove > 0 ? [counted(remove, 'removal cut')] : []),
    ...(raised > 0 ? [counted(raised, 'limb raised', 'limbs raised')] : [])
  ])
}

function cutsOf(visit: Visit, system: UnitSystem): string[] {
  const sizes = visit.cuts.flatMap(({ cutDiameter }) => cutDiameter ?? [])
  return [
    `${capital(kinds(visit.cuts))}${rangeOf(sizes, system)}.`,
    ...visit.cuts.map((cut) => one(cut, system))
  ]
}

function rangeOf(sizes: readonly number[], system: UnitSystem): string {
  if (sizes.length === 0) return ''
  const [least, most] = [Math.min(...sizes), Math.max(...sizes)].map((size) => showDiameter(size, system))
  return least === most ? `, ${String(most)} across` : `, ${String(least)} to ${String(most)} across`
}

/** A visit that is recommended and not bought is named by its year alone. */
function notOffered(visits: readonly Visit[]): string[] {
  if (visits.length === 0) return []
  return [`Recommended for ${listed(visits.map(({ year }) => String(year)))}, not part of this work.`]
}

function laterVisits(visits: readonly Visit[], system: UnitSystem): string[] {
  if (visits.length === 0) return []
  const later = visits.map((visit) => {
    let largest = 0
    for (const { work } of visit.cuts) largest = Math.max(largest, work.diameter)
    return `${String(visit.year)}: ${kinds(visit.cuts)} up to ${showDiameter(largest, system)} across, not more than ${ceilingPercent(visit.allowedRemoval)} of the foliage.`
  })
  return [...later, 'A forecast: the tree is measured and specified again before each of them.']
}

function uncut(plan: TreePlan): string {
  const judged = judgedOf(plan)
  if (judged === 'no limbs') return 'None specified: its limbs are not listed. Survey them, then specify.'
  if (judged === 'none') return 'None specified: its limbs were not judged. Survey them again, then specify.'
  if (plan.allowedRemoval <= 0) return `None: ${closed(`no live foliage to spare (${plan.allowedBasis})`)}`
  return 'None at present.'
}

/** Limbs that nothing is specified for, as nothing could be told of them. */
function notJudged(plan: TreePlan): Clause[] {
  if (judgedOf(plan) !== 'some') return []
  const limbs = `${judgedWords(plan)} (${notJudgedLimbs(plan)})`
  return [
    {
      label: 'Not judged',
      lines: [`${limbs}: left as they are, and measured again before they are specified.`]
    }
  ]
}

/** Which limbs stay and which go in time, where that is known. */
function scaffoldOf(plan: TreePlan): Clause[] {
  const permanent = permanentLimbs(plan)
  const temporary = temporaryLimbs(plan)
  const lines = [
    ...(permanent.length > 0 ? [`${capital(fewLimbs(permanent))}: permanent, not to be removed.`] : []),
    ...(temporary.length > 0 ? [`Temporary, to be removed in time: ${temporaryWords(temporary)}.`] : [])
  ]
  return lines.length === 0 ? [] : [{ label: 'Permanent limbs', lines }]
}

function leaderOf({ leader }: TreePlan): string {
  const name = leader.limb === null ? 'The trunk' : `Limb ${leader.limb.id}`
  return `${name}: ${closed(leader.reason)}${leader.confirm ? ' To be confirmed on site before the first cut.' : ''}`
}

/** What the rest of the crown keeps: where its live foliage starts, and where that stands in the tree's height. */
function crownAfter(visit: Visit, system: UnitSystem): string {
  const base = showHeight(visit.crownBaseAfter, system)
  return `the live crown still starts at ${base} and makes up ${wholePercent(visit.liveCrownRatioAfter)} of the tree’s height afterward.`
}

/** The most live foliage that may go; where the cuts named are of dead wood only, none may, as the work order says. */
function amountOf({ allowedBasis }: TreePlan, visit: Visit): string {
  if (!visit.cuts.some(({ live }) => live)) return 'Dead wood only: no live wood is cut at this visit.'
  const { allowed, visit: taken } = shownDoses(visit)
  return `Not more than ${percent(allowed)} of the live foliage of the tree (${allowedBasis}); the cuts named take about ${percent(taken)}, known to ±30 % for a single limb.`
}

/**
 * Objective, parts, cuts, amount and interval of one tree. Lengths in the units of the system. What is specified is what
 * is offered; all visits unless it is told which.
 */
export function specifyTree(
  plan: TreePlan,
  system: UnitSystem,
  isOffered: (visit: number) => boolean = () => true
): TreeSpecification {
  const title = treeTitle(plan.tree)
  const cut = plan.visits.filter(({ cuts }) => cuts.length > 0)
  const [first, ...later] = cut.filter(({ visit }) => isOffered(visit))
  const others = cut.filter(({ visit }) => !isOffered(visit))
  if (first === undefined)
    return {
      tree: plan.tree.id,
      title,
      clauses: [{ label: 'Work', lines: [uncut(plan)] }, ...scaffoldOf(plan), ...notJudged(plan)]
    }
  const groups = byPurpose(plan, first.cuts)
  const clauses: Clause[] = [
    {
      label: 'Objective',
      lines: [`${capital(groups.map((group) => objective(group, plan, system)).join('; '))}.`]
    },
    { label: 'Leader kept', lines: [leaderOf(plan)] },
    ...scaffoldOf(plan),
    {
      label: 'Parts treated',
      lines: [`${capital(namedLimbs(first.cuts.map(({ limb }) => limb)))} only; ${crownAfter(first, system)}`]
    },
    { label: `Cuts, ${String(first.year)}`, lines: cutsOf(first, system) },
    { label: 'Amount', lines: [amountOf(plan, first)] },
    ...notJudged(plan)
  ]
  clauses.push({
    label: 'Interval',
    lines:
      later.length + others.length === 0
        ? [`No later visit is planned. Look at the tree again after ${counted(plan.interval, 'year')}.`]
        : [...laterVisits(later, system), ...notOffered(others)]
  })
  return { tree: plan.tree.id, title, clauses }
}
