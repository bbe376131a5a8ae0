import { judgedOf, judgedWords } from '../../plan/judged'
import type { Cut, TreePlan, Visit } from '../../plan/plan'
import { fewLimbs, permanentLimbs, temporaryLimbs, temporaryWords } from '../../plan/scaffold/scaffoldWords'
import type { UnitSystem } from '../../../shared/units'
import { counted, plural } from '../../../shared/words/counts'
import { showHeight } from '../../../shared/words/lengths'
import { namedLimbs } from '../../../shared/words/lists'
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

const verbs = { reduce: 'Shorten', remove: 'Remove', raise: 'Take the hanging branches off' } as const

const kinds = ['reduce', 'remove', 'raise'] as const

/** Grown trees are not made over: their long limbs are shortened a little at the end. */
const isGrown = ({ stage }: TreePlan): boolean => stage === 'mature' || stage === 'old'

/** What is done, as a homeowner reads it; `one` where a single limb is meant. */
function endOf(purpose: Exclude<Purpose, 'dead'>, one: boolean, clearance: string, grown: boolean): string {
  switch (purpose) {
    case 'leader':
      if (grown)
        return `at the far end only, as ${one ? 'it is thick beside its' : 'they are thick beside their'} stem`
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

function does({ purpose, cuts }: PurposeGroup, kind: Cut['kind'], clearance: string, grown: boolean): string {
  const some = cuts.filter((cut) => cut.kind === kind)
  if (some.length === 0) return ''
  if (purpose === 'dead') return `Remove ${limbsOf(some, 'dead ')}.`
  return `${verbs[kind]} ${limbsOf(some)} ${endOf(purpose, some.length === 1, clearance, grown && kind === 'reduce')}.`
}

/** What a tree needs at a visit with cuts, in plain words. */
export function whatItNeeds(plan: TreePlan, system: UnitSystem, visit: Visit): string {
  const { clearance } = plan.tree
  const height = clearance === null ? '' : ` (${showHeight(clearance, system, 'at least')})`
  const acts: string[] = []
  for (const group of byPurpose(plan, visit.cuts))
    acts.push(...kinds.map((kind) => does(group, kind, height, isGrown(plan))))
  const live = visit.cuts.some((cut) => cut.live)
  const most = `No more than ${ceilingPercent(visit.allowedRemoval)} of the living leaves may come off.`
  return [...acts, live ? most : 'No living wood is cut.'].filter((text) => text !== '').join(' ')
}

function thickness({ limb, aspectRatio }: Cut): string {
  const name = `${capital(namedLimbs([limb]))} is`
  const bark =
    limb.bark === 'none'
      ? ''
      : `, with bark trapped in the union${limb.bark === 'full' ? ' all the way' : ''} (included bark)`
  if (aspectRatio === null) return `${name} of a thickness not measured${bark}.`
  if (aspectRatio > 1) return `${name} thicker than the stem beside it${bark}.`
  return `${name} ${wholePercent(aspectRatio)} as thick as the stem beside it${bark}.`
}

/** Why a group of cuts is made, one sentence from its most urgent limb. */
function because({ purpose, cuts }: PurposeGroup, grown: boolean): string {
  const [first] = inOrder(cuts, (a, b) => b.priority - a.priority)
  if (first === undefined) return ''
  switch (purpose) {
    case 'leader':
      return `${thickness(first)} ${grown ? 'A little less at its end slows it.' : 'Shortening slows it, so that one stem leads.'}`
    case 'clearance':
      return 'Leaves hang lower than the height you want kept clear.'
    case 'reach':
      return 'A low limb that grows to the top becomes too large to take off later without a big wound.'
    case 'end-weight':
      return 'Long limbs carry most of their leaves far out; a little is taken from the ends.'
    case 'dead':
      return 'Dead wood feeds the tree no more; taking it off costs the tree nothing.'
    case 'hurt':
      return 'A broken or rubbing limb stays an open wound while it is left as it is.'
    case 'temporary':
      return 'Low limbs that helped the trunk to thicken have done their work.'
    case 'spacing':
      return 'Limbs spaced along the trunk do not crowd each other as they thicken.'
  }
}

/** What no cut of this plan finishes, and when to look again. */
function later({ outcomes, visits, interval }: TreePlan): string {
  const limbs = outcomes
    .filter(({ outcome, isStem }) => outcome === 'wait' || (outcome === 'keep' && !isStem))
    .map(({ limb }) => limb)
  if (limbs.length === 0) return ''
  const last = visits.at(-1)
  const when = last === undefined ? 'at the next survey' : `in ${String(last.year + interval)}`
  const which = limbs.length > few ? counted(limbs.length, 'limb') : capital(namedLimbs(limbs))
  return `${which} will need another look: inspect ${when}.`
}

/** Why a tree is pruned at a visit, and what that leaves open. */
export function whyItNeeds(plan: TreePlan, visit: Visit): string {
  const parts = byPurpose(plan, visit.cuts).map((group) => because(group, isGrown(plan)))
  return [...parts, clearanceWords(plan), later(plan), scaffoldForClient(plan), notJudgedYet(plan)]
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

/** When the height that is to be kept clear is reached, where that is not at once. */
function clearanceWords({ clearance, visits }: TreePlan): string {
  if (clearance === null || clearance.reachedYear === visits[0]?.year) return ''
  return clearance.reachedYear === null
    ? 'The height you want kept clear is not reached by the visits that are planned.'
    : `The height you want kept clear is reached in ${String(clearance.reachedYear)}.`
}

/** Limbs of which nothing can be told to a client: no cut of them is planned, and none is ruled out. */
function notJudgedYet(plan: TreePlan): string {
  const judged = judgedOf(plan)
  if (judged === 'none')
    return 'Its limbs could not be judged from what was surveyed; they are to be surveyed again.'
  if (judged === 'some') return `${judgedWords(plan)}: to be surveyed again.`
  return ''
}
