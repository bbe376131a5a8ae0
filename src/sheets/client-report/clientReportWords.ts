import { judgedOf, judgedWords } from '../../plan/judged'
import type { Cut, TreePlan } from '../../plan/plan'
import { fewLimbs, permanentLimbs, temporaryLimbs, temporaryWords } from '../../plan/scaffold/scaffoldWords'
import type { UnitSystem } from '../../../shared/units'
import { counted, plural } from '../../../shared/words/counts'
import { showHeight } from '../../../shared/words/lengths'
import { listed, namedLimbs } from '../../../shared/words/lists'
import { ceilingPercent, wholePercent } from '../../../shared/words/percent'
import { capital } from '../../../shared/words/sentences'
import { byPurpose, type Purpose, type PurposeGroup } from '../purposes'
import { inOrder } from '../inOrder'

const few = 4

/** The limbs of some cuts by name where they are few: "limbs B and C", otherwise "9 limbs". */
function limbsOf(cuts: readonly Cut[], kind = ''): string {
  if (cuts.length > few) return counted(cuts.length, `${kind}limb`)
  return `${kind}${namedLimbs(cuts.map(({ limb }) => limb))}`
}

const verbs = { reduce: 'Shorten', remove: 'Remove', raise: 'Raise' } as const

const kinds = ['reduce', 'remove', 'raise'] as const

/** What is done, as a homeowner reads it; `one` where a single limb is meant. */
function endOf(purpose: Exclude<Purpose, 'dead'>, one: boolean, clearance: string): string {
  switch (purpose) {
    case 'leader':
      return `that ${one ? 'competes' : 'compete'} with the leader (the main stem)`
    case 'clearance':
      return `over the space to be kept clear${clearance}`
    case 'reach':
      return `that ${one ? 'starts low and grows' : 'start low and grow'} up into the top`
    case 'end-weight':
      return 'at the far end only, to lessen the weight there'
    case 'hurt':
      return one ? 'that is broken or rubs' : 'that are broken or rub'
    case 'temporary':
      return 'meant from the start to stay a few years only'
    case 'spacing':
      return 'to make room between the limbs that stay'
  }
}

function does({ purpose, cuts }: PurposeGroup, kind: Cut['kind'], clearance: string): string {
  const some = cuts.filter((cut) => cut.kind === kind)
  if (some.length === 0) return ''
  if (purpose === 'dead') return `Remove ${limbsOf(some, 'dead ')}.`
  return `${verbs[kind]} ${limbsOf(some)} ${endOf(purpose, some.length === 1, clearance)}.`
}

/** What a tree needs at its first visit with cuts, in plain words. */
export function whatItNeeds(plan: TreePlan, system: UnitSystem): string {
  const visit = plan.visits.find(({ cuts }) => cuts.length > 0)
  if (visit === undefined) return judgedOf(plan) === 'none' ? 'Not judged yet.' : 'No cut now.'
  const { clearance } = plan.tree
  const height = clearance === null ? '' : ` (${showHeight(clearance, system, 'at least')})`
  const acts: string[] = []
  for (const group of byPurpose(plan, visit.cuts))
    acts.push(...kinds.map((kind) => does(group, kind, height)))
  const live = visit.cuts.some((cut) => cut.live)
  const most = `No more than ${ceilingPercent(visit.allowedRemoval)} of the living leaves may come off.`
  return [...acts, live ? most : 'No living wood is cut.'].filter((text) => text !== '').join(' ')
}

function thickness({ limb, aspectRatio }: Cut): string {
  const name = `${capital(namedLimbs([limb]))} is`
  const bark =
    limb.bark === 'none'
      ? ''
      : `, with bark pressed into the joint${limb.bark === 'full' ? ' all the way' : ''}`
  if (aspectRatio === null) return `${name} of a thickness not measured${bark}.`
  if (aspectRatio > 1) return `${name} thicker than the stem beside it${bark}.`
  return `${name} ${wholePercent(aspectRatio)} as thick as the stem beside it${bark}.`
}

/** Why a group of cuts is made, one sentence from its most urgent limb. */
function because({ purpose, cuts }: PurposeGroup): string {
  const [first] = inOrder(cuts, (a, b) => b.priority - a.priority)
  if (first === undefined) return ''
  switch (purpose) {
    case 'leader':
      return `${thickness(first)} Shortening slows it, so that one stem leads.`
    case 'clearance':
      return 'Leaves hang lower than the height you want kept clear.'
    case 'reach':
      return 'A low limb that grows to the top becomes too large to take off later without a big wound.'
    case 'end-weight':
      return 'Long limbs carry most of their leaves far out; a little is taken from the ends.'
    case 'dead':
      return 'Dead wood no longer feeds the tree.'
    case 'hurt':
      return 'A broken or rubbing limb stays an open wound while it is left as it is.'
    case 'temporary':
      return 'Low limbs that helped the trunk to thicken have done their work.'
    case 'spacing':
      return 'Limbs spaced along the trunk do not crowd each other as they thicken.'
  }
}

function later({ outcomes }: TreePlan): string {
  const limbs = outcomes
    .filter(({ outcome, isStem }) => outcome === 'wait' || (outcome === 'keep' && !isStem))
    .map(({ limb }) => limb)
  if (limbs.length === 0) return ''
  const [stays, needs] = limbs.length === 1 ? ['is', 'needs'] : ['are', 'need']
  if (limbs.length > few)
    return `${counted(limbs.length, 'limb')} ${stays} not settled by these visits and ${needs} another look.`
  return `${capital(namedLimbs(limbs))} ${stays} not settled by these visits and ${needs} another look.`
}

/** Why a tree is pruned, or why it is not. */
export function whyItNeeds(plan: TreePlan): string {
  const visit = plan.visits.find(({ cuts }) => cuts.length > 0)
  const parts = visit === undefined ? [whyUncut(plan)] : byPurpose(plan, visit.cuts).map(because)
  return [...parts, later(plan), scaffoldForClient(plan), notJudgedYet(plan)]
    .filter((text) => text !== '')
    .join(' ')
}

/** Which limbs are to stay for good, and which go in time. */
function scaffoldForClient(plan: TreePlan): string {
  const permanent = permanentLimbs(plan)
  const temporary = temporaryLimbs(plan)
  const stay =
    permanent.length === 0
      ? ''
      : `${capital(fewLimbs(permanent))} ${plural(permanent.length, 'is', 'are')} to stay for good.`
  const go = temporary.length === 0 ? '' : `Temporary limbs go in time: ${temporaryWords(temporary)}.`
  return [stay, go].filter((text) => text !== '').join(' ')
}

function whyUncut(plan: TreePlan): string {
  const judged = judgedOf(plan)
  if (judged === 'no limbs') return 'Its limbs have not been measured yet, so no cut can be chosen.'
  if (judged === 'none') return ''
  if (plan.allowedRemoval <= 0) return 'It has no living leaves to spare this season.'
  if (later(plan) !== '') return ''
  return judged === 'some'
    ? 'None of the limbs that were judged needs a cut now.'
    : 'None of its limbs needs a cut now.'
}

/** Limbs of which nothing can be told to a client: no cut of them is planned, and none is ruled out. */
function notJudgedYet(plan: TreePlan): string {
  const judged = judgedOf(plan)
  if (judged === 'none')
    return 'Its limbs could not be judged from what was surveyed; they are to be surveyed again.'
  if (judged === 'some') return `${judgedWords(plan)}: to be surveyed again.`
  return ''
}

/** The years in which a tree is pruned, "In 2026, 2029 and 2032.", and which of them are offered where not all are. */
export function whenItIs(plan: TreePlan, offered: (visit: number) => boolean): string {
  const now: string[] = []
  const later: string[] = []
  for (const { cuts, visit, year } of plan.visits)
    if (cuts.length > 0) (offered(visit) ? now : later).push(String(year))
  if (now.length === 0)
    return later.length === 0 ? '' : `Recommended for ${listed(later)}, not in this offer.`
  if (later.length === 0) return `In ${listed(now)}.`
  return `Offered for ${listed(now)}; recommended again for ${listed(later)}.`
}
