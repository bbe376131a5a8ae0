import { problem, type Problem } from '../../../shared/problems'
import { fieldAddress, type Inventory, type Limb, type Tree } from '../measure/inventory'
import type { LeaderChoice } from '../plan/plan'
import { leaderMerit } from './leaderRank'

/**
 * Which stem is kept as the leader. A row marked as leader wins. Otherwise, where the listed limbs are both members of
 * one union and reach the top quarter, the best of them is proposed; where the trunk goes on unlisted, the trunk is.
 * A proposal is always to be confirmed on site: no published weights exist (common practice, no source).
 */
export function chooseLeader(inventory: Inventory, tree: Tree, problems: Problem[]): LeaderChoice {
  const marked = tree.limbs.filter((limb) => limb.role === 'leader')
  const first = marked[0]
  if (first !== undefined) {
    for (const other of marked.slice(1)) {
      const at = fieldAddress(inventory, other.row, 'role')
      problems.push(problem('leader-twice', at, { tree: tree.id, limb: first.id }))
    }
    return markedLeader(first)
  }
  const candidate = bestOfUnion(tree)
  if (tree.limbs.length > 0) {
    const value = candidate === null ? 'the trunk above the highest union' : `limb ${candidate.id}`
    const at = fieldAddress(inventory, tree.limbs[0]?.row ?? tree.row, 'role')
    problems.push(problem('leader-assumed', at, { tree: tree.id, value }))
  }
  if (candidate !== null)
    return {
      limb: candidate,
      name: candidate.id,
      reason:
        'no row is marked; of the stems at the union it is the most upright, thickest and tallest, in that order of weight',
      confirm: true
    }
  const overtaken = tree.limbs.some((limb) => ratioAsMeasured(limb) >= 1)
  return {
    limb: null,
    name: 'trunk',
    reason: 'no row is marked; the trunk goes on above the listed limbs',
    confirm: overtaken
  }
}

function markedLeader(limb: Limb): LeaderChoice {
  const lost = limb.dead ? 'dead' : limb.broken ? 'broken' : null
  return lost === null
    ? { limb, name: limb.id, reason: 'marked as leader in the inventory', confirm: false }
    : {
        limb,
        name: limb.id,
        reason: `marked as leader, but ${lost}: decide on site which stem takes over`,
        confirm: true
      }
}

function ratioAsMeasured(limb: Limb): number {
  return limb.diameter !== null && limb.stem !== null && limb.measured === 'above'
    ? limb.diameter / limb.stem
    : NaN
}

/** Within a tenth of each other: the same stem, measured twice. */
function alike(a: number, b: number): boolean {
  return Math.abs(a - b) <= 0.1 * Math.max(a, b)
}

/** Two listed limbs that are each other's stem make up the whole union: there is no further trunk. */
function bestOfUnion(tree: Tree): Limb | null {
  const top = 0.75 * (tree.height ?? Infinity)
  const stems = tree.limbs.filter(
    (limb) =>
      !limb.dead &&
      limb.parent === null &&
      limb.diameter !== null &&
      limb.stem !== null &&
      (limb.tip ?? 0) >= top
  )
  const members = stems.filter((limb) =>
    stems.some((other) => other !== limb && areEachOthersStem(limb, other))
  )
  return [...members].sort(byMerit(members))[0] ?? null
}

function areEachOthersStem(a: Limb, b: Limb): boolean {
  if (a.diameter === null || b.diameter === null || a.stem === null || b.stem === null) return false
  const apart = Math.abs((a.origin ?? 0) - (b.origin ?? 0)) * 1000
  return apart <= Math.max(a.stem, b.stem) && alike(a.stem, b.diameter) && alike(b.stem, a.diameter)
}

/** The better leader first; a lean that was not measured counts as halfway. */
function byMerit(members: readonly Limb[]): (a: Limb, b: Limb) => number {
  const thickest = Math.max(...members.map((limb) => limb.diameter ?? 0))
  const tallest = Math.max(...members.map((limb) => limb.tip ?? 0))
  const merit = ({ diameter, angle, tip, bark }: Limb): number =>
    leaderMerit({ diameter: diameter ?? 0, lean: angle ?? 45, height: tip ?? 0, bark }, thickest, tallest)
  return (a, b) => merit(b) - merit(a) || a.row - b.row
}
