import { defaultRules, type Rules } from '../../shared/rules'
import { atLeast, atMost, inOrder, isOver, isUnder } from '../formulas/boundary'
import type { Limb, Tree } from '../inventory/inventory'
import { treeProblem, type Findings, type SurveyedTree } from './checkTree'
import type { LeaderChoice } from './plan'
import { leaderMerit } from '../formulas/priority'
import { ratioAsSurveyed } from './unionStem'

/** The leader chosen, and what is told of the choice. */
export interface LeaderFound extends Pick<Findings, 'problems'> {
  readonly leader: LeaderChoice
  /** Stems are too close to call. */
  readonly inDoubt?: boolean
}

/**
 * Which stem is kept as the leader. A row marked as leader wins, unless it is dead or broken: then the best of the
 * stems that reach the top quarter is proposed. Where no row is marked, the best of the stems that reach the top quarter and
 * have no stem beside them is proposed; where there are none and two listed limbs are each other's stem, the better of them; where the trunk goes on unlisted, the trunk is. A proposal is always to be confirmed on
 * site, and says so where the candidates are close: no published weights exist (common practice, no source).
 */
export function chooseLeader(surveyed: SurveyedTree, rules: Rules = defaultRules): LeaderFound {
  const marked = surveyed.tree.limbs.filter(isMarkedLeader)
  const [first] = marked
  if (first === undefined) return unmarkedLeader(surveyed, rules)
  const others = marked.slice(1)
  const twice = others.map((other) =>
    treeProblem(surveyed, 'leader-twice', other.row, 'role', { limb: first.id })
  )
  if (first.dead || first.broken) {
    const { leader, problems } = lostLeader(surveyed, first, rules)
    return { leader, problems: [...twice, ...problems] }
  }
  const reason = 'marked as leader in the inventory'
  return { leader: { limb: first, name: first.id, reason, confirm: false, lost: null }, problems: twice }
}

function isMarkedLeader({ role }: Limb): boolean {
  return role === 'leader'
}

/** The marked leader is dead or broken: the best of the others takes over, if one reaches high enough. */
function lostLeader(surveyed: SurveyedTree, lost: Limb, rules: Rules): LeaderFound {
  const what = lost.dead ? 'dead' : 'broken'
  const ranked = rank(
    highStems(surveyed.tree, rules).filter((limb) => limb !== lost),
    rules
  )
  const heir = ranked[0]
  const value =
    heir === undefined ? 'no listed limb reaches high enough to take over' : `limb ${heir.id} is proposed`
  const facts = { limb: lost.id, what, value }
  const reason =
    heir === undefined
      ? `marked as leader, but ${what}: decide on site which stem takes over`
      : `the marked leader ${lost.id} is ${what}; ${whyBest(ranked, rules)}`
  const limb = heir ?? lost
  return {
    leader: { limb, name: limb.id, reason, confirm: true, lost },
    problems: [treeProblem(surveyed, 'leader-lost', lost.row, lost.dead ? 'live' : 'broken', facts)]
  }
}

function unmarkedLeader(surveyed: SurveyedTree, rules: Rules): LeaderFound {
  const { tree } = surveyed
  const high = highStems(tree, rules)
  const candidates = withoutStem(tree, high)
  const ranked = rank(candidates.length > 0 ? candidates : unionMembers(high), rules)
  const best = ranked[0] ?? null
  if (best === null && high.length > 0 && tree.limbs.every(({ stem }) => stem === null))
    return unknownLeader(surveyed, high, rules)
  const value = best === null ? 'the trunk above the highest union' : `limb ${best.id}`
  const [listed] = tree.limbs
  const problems =
    listed === undefined ? [] : [treeProblem(surveyed, 'leader-assumed', listed.row, 'role', { value })]
  if (best !== null) {
    const reason = `no row is marked; ${whyBest(ranked, rules)}`
    const leader = { limb: best, name: best.id, reason, confirm: true, lost: null }
    const [, second] = ranked
    if (second === undefined || !isClose(ranked, rules)) return { leader, problems }
    const doubt = treeProblem(surveyed, 'leader-close', best.row, 'role', { limb: best.id, other: second.id })
    return { leader, problems: [...problems, doubt], inDoubt: true }
  }
  const overtaken = tree.limbs.some((limb) => atLeast(ratioAsSurveyed(tree, limb) ?? 0, 1))
  const reason = 'no row is marked; the trunk goes on above the listed limbs'
  return { leader: { limb: null, name: 'trunk', reason, confirm: overtaken, lost: null }, problems }
}

/** As many candidates as a question names. */
const mostNamed = 3

/**
 * No stem diameter tells whether the trunk goes on above the listed limbs: those that reach the top are named, the likeliest leader
 * first by what is known of them; limbs that are marked as permanent or temporary only where there are no others.
 */
function unknownLeader(surveyed: SurveyedTree, high: readonly Limb[], rules: Rules): LeaderFound {
  const open = high.filter(({ role }) => role !== 'temporary' && role !== 'permanent')
  const ids = rank(open.length > 0 ? open : high, rules).map(({ id }) => id)
  const value = ids.slice(0, mostNamed).join(', then ')
  const row = surveyed.tree.limbs[0]?.row ?? surveyed.tree.row
  const reason = `no row is marked, and no stem diameter tells whether the trunk goes on above the listed limbs; of those that reach the top the likeliest leader is ${value}`
  return {
    leader: { limb: null, name: 'trunk', reason, confirm: true, lost: null },
    problems: [treeProblem(surveyed, 'leader-unknown', row, 'role', { name: value })]
  }
}

/** What speaks for the best, and a plain statement where the next is close. */
function whyBest(ranked: readonly Limb[], rules: Rules): string {
  const [best, next] = ranked
  if (best === undefined) return ''
  if (next === undefined) return `limb ${best.id} is the only stem that reaches the top quarter`
  const words = strengths(best, next)
  if (isClose(ranked, rules))
    return `limbs ${best.id} and ${next.id} are too close to call${words === '' ? '' : ` (${best.id} is ${words})`}: decide on site`
  return `of ${ranked.length} stems ${best.id} is ${words === '' ? 'the better on the whole' : words}, weighed in the order upright, thick, tall, free of included bark`
}

/** The first two of several stems are too close to call. */
function isClose(ranked: readonly Limb[], rules: Rules): boolean {
  const [first = 0, second = 0] = meritsOf(ranked, rules)
  return isUnder(first - second, rules.leaderClose)
}

function strengths(best: Limb, next: Limb): string {
  const words: string[] = []
  if (best.angle !== null && next.angle !== null && isUnder(best.angle, next.angle))
    words.push('more upright')
  if (isOver(best.diameter ?? 0, next.diameter ?? 0)) words.push('thicker')
  if (isOver(best.tip ?? 0, next.tip ?? 0)) words.push('taller')
  if (best.bark === 'none' && next.bark !== 'none') words.push('free of included bark')
  return words.join(', ')
}

/** Live stems on the trunk that reach the top quarter of the tree. */
function highStems(tree: Tree, rules: Rules): Limb[] {
  const top = rules.leaderReach * (tree.height ?? Infinity)
  const high: Limb[] = []
  for (const limb of tree.limbs) {
    const { dead, broken, parent, diameter, tip } = limb
    if (!dead && !broken && parent === null && diameter !== null && atLeast(tip ?? 0, top)) high.push(limb)
  }
  return high
}

/**
 * High stems for which no stem is given, as they may be the trunk themselves: none thinner than the stem of a limb that
 * starts higher.
 */
function withoutStem(tree: Tree, high: readonly Limb[]): Limb[] {
  return high.filter(
    (limb) => limb.stem === null && limb.unplannable === null && limb.origin !== null && carries(limb, tree)
  )
}

function carries({ diameter, origin }: Limb, { limbs }: Tree): boolean {
  return limbs.every(
    ({ stem, parent, origin: other }) =>
      stem === null ||
      parent !== null ||
      isUnder(other ?? 0, origin ?? 0) ||
      atMost(stem, diameter ?? 0) ||
      alike(stem, diameter ?? 0)
  )
}

/** Two listed limbs that are each other's stem make up the whole union: there is no further trunk. */
function unionMembers(high: readonly Limb[]): Limb[] {
  return high.length < 2 ? [] : high.filter((limb) => hasItsStem(limb, high))
}

function hasItsStem(limb: Limb, stems: readonly Limb[]): boolean {
  if (limb.stem === null) return false
  for (const other of stems) if (other !== limb && areEachOthersStem(limb, other)) return true
  return false
}

/** Within a tenth of each other: the same stem, measured twice. */
function alike(a: number, b: number): boolean {
  return atMost(Math.abs(a - b), 0.1 * Math.max(a, b))
}

function areEachOthersStem(a: Limb, b: Limb): boolean {
  if (a.diameter === null || b.diameter === null || a.stem === null || b.stem === null) return false
  if (!alike(a.stem, b.diameter) || !alike(b.stem, a.diameter)) return false
  const apart = Math.abs((a.origin ?? 0) - (b.origin ?? 0)) * 1000
  return atMost(apart, Math.max(a.stem, b.stem))
}

/** Merit of each stem among the others, 0 to 10; a lean that was not measured counts as halfway. */
function meritsOf(stems: readonly Limb[], rules: Rules): number[] {
  const thickest = Math.max(...stems.map((limb) => limb.diameter ?? 0))
  const tallest = Math.max(...stems.map((limb) => limb.tip ?? 0))
  return stems.map(({ diameter, angle, tip, bark }) =>
    leaderMerit(
      { diameter: diameter ?? 0, lean: angle ?? 45, height: tip ?? 0, bark },
      thickest,
      tallest,
      rules
    )
  )
}

/** The better leader first. */
function rank(stems: readonly Limb[], rules: Rules): Limb[] {
  if (stems.length < 2) return [...stems]
  const merits = meritsOf(stems, rules)
  return stems
    .map((limb, at) => ({ limb, merit: merits[at] ?? 0 }))
    .sort((a, b) => inOrder(b.merit, a.merit) || a.limb.row - b.limb.row)
    .map(({ limb }) => limb)
}
