import { problem, type Problem } from '../../shared/problems'
import { defaultRules, type Rules } from '../../shared/rules'
import { fieldAddress, type Inventory, type Limb, type Tree } from '../inventory/inventory'
import type { LeaderChoice } from './plan'
import { leaderMerit } from '../formulas/priority'
import { ratioAsSurveyed } from './unionStem'

/**
 * Which stem is kept as the leader. A row marked as leader wins, unless it is dead or broken: then the best of the
 * stems that reach the top quarter is proposed. Where no row is marked and two listed limbs are each other's stem, the
 * better of them is proposed; where the trunk goes on unlisted, the trunk is. A proposal is always to be confirmed on
 * site, and says so where the candidates are close: no published weights exist (common practice, no source).
 */
export function chooseLeader(
  inventory: Inventory,
  tree: Tree,
  problems: Problem[],
  rules: Rules = defaultRules
): LeaderChoice {
  const marked = tree.limbs.filter((limb) => limb.role === 'leader')
  const first = marked[0]
  if (first === undefined) return unmarkedLeader(inventory, tree, problems, rules)
  for (const other of marked.slice(1)) {
    const at = fieldAddress(inventory, other.row, 'role')
    problems.push(problem('leader-twice', at, { tree: tree.id, limb: first.id }))
  }
  if (!first.dead && !first.broken)
    return {
      limb: first,
      name: first.id,
      reason: 'marked as leader in the inventory',
      confirm: false,
      lost: null
    }
  return lostLeader(inventory, tree, first, problems, rules)
}

/** The marked leader is dead or broken: the best of the others takes over, if one reaches high enough. */
function lostLeader(
  inventory: Inventory,
  tree: Tree,
  lost: Limb,
  problems: Problem[],
  rules: Rules
): LeaderChoice {
  const what = lost.dead ? 'dead' : 'broken'
  const ranked = rank(
    highStems(tree, rules).filter((limb) => limb !== lost),
    rules
  )
  const heir = ranked[0]
  const value =
    heir === undefined ? 'no listed limb reaches high enough to take over' : `limb ${heir.id} is proposed`
  const at = fieldAddress(inventory, lost.row, lost.dead ? 'live' : 'broken')
  problems.push(problem('leader-lost', at, { tree: tree.id, limb: lost.id, what, value }))
  if (heir === undefined)
    return {
      limb: lost,
      name: lost.id,
      reason: `marked as leader, but ${what}: decide on site which stem takes over`,
      confirm: true,
      lost
    }
  return {
    limb: heir,
    name: heir.id,
    reason: `the marked leader ${lost.id} is ${what}; ${whyBest(ranked, rules)}`,
    confirm: true,
    lost
  }
}

function unmarkedLeader(inventory: Inventory, tree: Tree, problems: Problem[], rules: Rules): LeaderChoice {
  const ranked = rank(unionMembers(tree, rules), rules)
  const best = ranked[0] ?? null
  if (tree.limbs.length > 0) {
    const value = best === null ? 'the trunk above the highest union' : `limb ${best.id}`
    const at = fieldAddress(inventory, tree.limbs[0]?.row ?? tree.row, 'role')
    problems.push(problem('leader-assumed', at, { tree: tree.id, value }))
  }
  if (best !== null)
    return {
      limb: best,
      name: best.id,
      reason: `no row is marked; ${whyBest(ranked, rules)}`,
      confirm: true,
      lost: null
    }
  const overtaken = tree.limbs.some((limb) => (ratioAsSurveyed(tree, limb) ?? 0) >= 1)
  const reason = 'no row is marked; the trunk goes on above the listed limbs'
  return { limb: null, name: 'trunk', reason, confirm: overtaken, lost: null }
}

/** What speaks for the best, and a plain statement where the next is close. */
function whyBest(ranked: readonly Limb[], rules: Rules): string {
  const [best, next] = ranked
  if (best === undefined) return ''
  if (next === undefined) return `limb ${best.id} is the only stem that reaches the top quarter`
  const merits = meritsOf(ranked, rules)
  const ahead = (merits[0] ?? 0) - (merits[1] ?? 0)
  const words = strengths(best, next)
  if (ahead < rules.leaderClose)
    return `limbs ${best.id} and ${next.id} are too close to call${words === '' ? '' : ` (${best.id} is ${words})`}: decide on site`
  return `of ${ranked.length} stems ${best.id} is ${words === '' ? 'the better on the whole' : words}, weighed in the order upright, thick, tall, free of included bark`
}

function strengths(best: Limb, next: Limb): string {
  const words: string[] = []
  if (best.angle !== null && next.angle !== null && best.angle < next.angle) words.push('more upright')
  if ((best.diameter ?? 0) > (next.diameter ?? 0)) words.push('thicker')
  if ((best.tip ?? 0) > (next.tip ?? 0)) words.push('taller')
  if (best.bark === 'none' && next.bark !== 'none') words.push('free of included bark')
  return words.join(', ')
}

/** Live stems on the trunk that reach the top quarter of the tree. */
function highStems(tree: Tree, rules: Rules): Limb[] {
  const top = rules.leaderReach * (tree.height ?? Infinity)
  return tree.limbs.filter(
    (limb) =>
      !limb.dead && !limb.broken && limb.parent === null && limb.diameter !== null && (limb.tip ?? 0) >= top
  )
}

/** Two listed limbs that are each other's stem make up the whole union: there is no further trunk. */
function unionMembers(tree: Tree, rules: Rules): Limb[] {
  const stems = highStems(tree, rules).filter((limb) => limb.stem !== null)
  return stems.filter((limb) => stems.some((other) => other !== limb && areEachOthersStem(limb, other)))
}

/** Within a tenth of each other: the same stem, measured twice. */
function alike(a: number, b: number): boolean {
  return Math.abs(a - b) <= 0.1 * Math.max(a, b)
}

function areEachOthersStem(a: Limb, b: Limb): boolean {
  if (a.diameter === null || b.diameter === null || a.stem === null || b.stem === null) return false
  const apart = Math.abs((a.origin ?? 0) - (b.origin ?? 0)) * 1000
  return apart <= Math.max(a.stem, b.stem) && alike(a.stem, b.diameter) && alike(b.stem, a.diameter)
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
    .sort((a, b) => b.merit - a.merit || a.limb.row - b.limb.row)
    .map(({ limb }) => limb)
}
