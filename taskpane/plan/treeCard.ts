import type { Rules } from '../../shared/rules'
import type { TimingNote } from '../../src/season/timing'
import { judgedOf, judgedWords, noCutWords, notJudgedLimbs } from '../../src/plan/judged'
import { outcomeWords } from '../../src/plan/outcomeWords'
import type { LimbState, TreePlan, Visit } from '../../src/plan/plan'
import { priorityText, priorityWord } from '../../src/plan/priorityWords'
import {
  fewLimbs,
  permanenceWords,
  permanentLimbs,
  scaffoldLimb,
  temporaryLimbs,
  temporaryWords
} from '../../src/plan/scaffold/scaffoldWords'
import { shownDoses } from '../../src/plan/shownDoses'
import type { Weigh } from '../engine'
import { cutEntry, type CutSetting } from './cutEntry'
import { disclosure, type Disclosure } from '../parts/disclosure'
import { doseBar, doseWords } from './doseBar'
import { el, facts, type Child } from '../parts/elements'
import { forecast } from './forecast'
import { specificationCopy, type CopySetting } from './specificationCopy'
import { seasonOf } from './timingNote'
import { treeDrawing, type DrawingSetting } from './treeDrawing'
import { counted } from '../../shared/words/counts'
import { points, ratio } from '../../shared/words/figures'
import { capital, sentence } from '../../shared/words/sentences'
import { panePercent } from '../parts/wording'

/** What a card needs to know beyond the tree. */
export interface TreeSetting extends CutSetting, DrawingSetting, CopySetting {
  weigh: Weigh
  rules: Rules
  timing: readonly TimingNote[]
}

/** A tree as a card: closed, its urgency and dose; open, everything the plan says of it. */
export function treeCard(treePlan: TreePlan, setting: TreeSetting): Disclosure {
  const { tree, visits } = treePlan
  const first = visits[0]
  const doses = first === undefined ? { visit: 0, allowed: treePlan.allowedRemoval } : shownDoses(first)
  const judged = judgedWords(treePlan)
  const cuts = first === undefined ? '' : counted(first.cuts.length, 'cut')
  const counts = judgedOf(treePlan) === 'some' ? [cuts, judged] : [judged === '' ? cuts : judged]
  const line = [capital(treePlan.stage), `${treePlan.vigor} vigor`, ...counts].join(', ')
  return disclosure(
    'card',
    [
      el(
        'span',
        { class: 'card-title' },
        el('span', { class: 'card-name' }, `Tree ${tree.id}`),
        tree.species !== '' && el('span', { class: 'card-species' }, tree.species)
      ),
      el(
        'span',
        { class: 'card-urgency' },
        el('span', { class: 'card-urgency-word' }, ...urgencyWords(treePlan, setting.rules)),
        points(treePlan.urgency)
      ),
      el('span', { class: 'card-line' }, line),
      doseBar(doses)
    ],
    () => cardBody(treePlan, setting),
    'h3'
  )
}

/** “High” before the points, as the list says of what; “priority” where no limb could be judged. */
function urgencyWords(plan: TreePlan, rules: Rules): Child[] {
  const judged = judgedOf(plan)
  if (judged === 'no limbs' || judged === 'none') return ['priority ']
  return [el('span', { class: 'unseen' }, 'priority '), `${priorityWord(plan.urgency, rules)} `]
}

function cardBody(treePlan: TreePlan, whole: TreeSetting): Child[] {
  const { rules, system } = whole
  const setting: TreeSetting = {
    ...whole,
    weighed: (visit, limb) => whole.weigh.weighedFor(treePlan, visit, limb, { rules, system })
  }
  const [first, ...later] = treePlan.visits
  return [
    treeFacts(treePlan, setting.rules, first),
    treePlan.notJudged.length > 0 &&
      el('p', {}, `${capital(judgedWords(treePlan))}: ${notJudgedLimbs(treePlan)}. The checks say why.`),
    seasonOf(treePlan, setting.timing),
    first !== undefined && el('h4', {}, `Visit 1, ${first.year}`),
    treeDrawing(treePlan, first ?? null, setting),
    first !== undefined && el('div', { class: 'visit' }, ...visitBody(treePlan, first, setting)),
    certainty(treePlan, setting.rules, setting.weigh),
    ...later.map((visit) => laterVisit(treePlan, visit, setting)),
    remains(treePlan, setting.rules),
    ...forecast(treePlan, setting),
    specificationCopy(treePlan, setting)
  ]
}

/** Which first cuts would change if foliage shares are wrong by their usual error. */
function certainty(treePlan: TreePlan, rules: Rules, { confidenceOf }: Weigh): Child {
  if (treePlan.visits.length === 0 || judgedOf(treePlan) === 'none') return null
  const { error, changes } = confidenceOf(treePlan, rules)
  const words = `Foliage shares are known to ±${panePercent(error)}`
  if (changes.length === 0)
    return el('p', { class: 'aside' }, `${words}; within that, the first cuts stay as they are.`)
  return disclosure('more', [`${words}: what would change`], () => [
    el('ul', {}, ...changes.map((change) => el('li', {}, change)))
  ]).element
}

function treeFacts(treePlan: TreePlan, rules: Rules, first?: Visit) {
  const { tree, leader, allowedRemoval, allowedBasis, liveCrownRatio } = treePlan
  const confirm = leader.confirm ? ' Confirm on site.' : ''
  const goal = ratio(rules.crownRatioGoal)
  const crown =
    liveCrownRatio === null
      ? 'not known: crown base or height is missing'
      : `${ratio(liveCrownRatio)}${first === undefined ? '' : `, ${ratio(first.liveCrownRatioAfter)} after visit 1`} (goal ${goal})`
  return facts([
    ['Leader', `${leader.name}. ${sentence(leader.reason)}${confirm}`],
    [
      'Allowed removal',
      `${panePercent(allowedRemoval, 'at most')}: ${allowedBasis}. A ceiling, not a target.`
    ],
    ['Live-crown ratio', crown],
    [
      'Lower two-thirds',
      first !== undefined &&
        `${panePercent(first.lowerFoliageBefore)} of the foliage, ${panePercent(first.lowerFoliageAfter)} after visit 1`
    ],
    ...scaffoldFacts(treePlan),
    ['Zone', tree.zone],
    ['Location', tree.site],
    ['Tree notes', tree.notes]
  ])
}

/** Which limbs stay, which go and by when; or why none are chosen. */
function scaffoldFacts(treePlan: TreePlan): [string, string][] {
  const { scaffold } = treePlan
  if (scaffold === null) return []
  const permanent = permanentLimbs(treePlan)
  const temporary = temporaryLimbs(treePlan)
  const told = [
    permanent.length > 0 ? `${capital(fewLimbs(permanent))}.` : '',
    scaffold.withheld ?? (permanent.length === 0 ? 'None of the limbs listed can be one yet.' : '')
  ]
  return [
    ['Permanent limbs', told.filter((text) => text !== '').join(' ')],
    ['Temporary limbs', temporary.length === 0 ? '' : `${capital(temporaryWords(temporary))}.`]
  ]
}

/** The cuts of a visit by priority, then the limbs that are left alone, with the reason. */
function visitBody(treePlan: TreePlan, visit: Visit, setting: CutSetting): Child[] {
  const { tree } = treePlan
  const { cuts } = visit
  const kept = visit.limbs.filter(({ decision }) => decision === 'retain' || decision === 'hold')
  return [
    cuts.length === 0
      ? el('p', {}, `${noCutWords(treePlan)}.`)
      : el('ol', { class: 'cuts' }, ...cuts.map((cut) => cutEntry({ tree, visit, cut }, setting))),
    kept.length > 0 &&
      disclosure('more', [`${counted(kept.length, 'limb')} not cut, with reasons`], () => [
        el('ul', { class: 'kept' }, ...kept.map((state) => keptLimb(treePlan, state, visit, setting)))
      ]).element
  ]
}

/** A limb that is left: what was weighed for it where it has a claim, otherwise why it is kept. */
function keptLimb(
  treePlan: TreePlan,
  state: LimbState,
  { visit }: Visit,
  { rules, weighed }: CutSetting
): HTMLElement {
  const found = scaffoldLimb(treePlan, state.limb)
  const lasting = found === null || found.permanence === null ? '' : ` ${capital(permanenceWords(found))}.`
  const decided = state.decision === 'hold' ? 'Hold' : 'Retain'
  const refused = weighed?.(visit, state.limb) ?? []
  const why = refused.length > 0 ? refused.join(' ') : sentence(state.reason)
  return el(
    'li',
    {},
    el('strong', {}, `${decided} limb ${state.limb.id}.`),
    ` ${capital(state.standing)}, priority ${priorityText(state.priority, rules)}. ${why}${lasting}`
  )
}

function laterVisit(treePlan: TreePlan, visit: Visit, setting: TreeSetting): HTMLElement {
  const { cuts } = visit
  return disclosure(
    'later',
    [
      `Visit ${visit.visit}, ${visit.year}`,
      el('span', { class: 'later-line' }, `${counted(cuts.length, 'cut')}, ${doseWords(shownDoses(visit))}`)
    ],
    () => [
      el('p', { class: 'aside' }, 'A forecast: measure again at that visit.'),
      treeDrawing(treePlan, visit, setting),
      ...visitBody(treePlan, visit, setting)
    ],
    'h4'
  ).element
}

function remains(treePlan: TreePlan, rules: Rules): Child {
  const { outcomes, visits } = treePlan
  if (visits.length === 0 || judgedOf(treePlan) === 'none') return null
  const cleared = points(rules.clearedBelow)
  if (outcomes.length === 0)
    return el('p', { class: 'remains' }, `No limb had a priority over ${cleared} at the survey.`)
  return el(
    'div',
    { class: 'remains' },
    el('h4', {}, 'How every limb ends'),
    el(
      'ul',
      {},
      ...outcomes.map((outcome) => el('li', {}, `Limb ${outcome.limb.id}: ${outcomeWords(outcome)}`))
    )
  )
}
