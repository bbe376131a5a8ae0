/** Which row is the leader (design, section 3, "Leader"), as far as no ranking of stems is needed for it. */
import type { Rules } from '../../../shared/rules'
import type { Limb, Tree } from '../../../src/inventory/inventory'
import type { Taken } from './model'
import { atLeast } from './near'
import { lateralPart } from './reductions'

/** Several rows may lead, and are ranked. */
export class LeaderToBeRanked extends Error {}

export interface Leaders {
  /** The row that leads, or null where it is the stem above the highest union. */
  readonly leader: Limb | null
  /** The row that was marked and is dead or broken. */
  readonly lost: Limb | null
}

/** The marked row; where it is dead or broken, the one stem that reaches the top quarter takes over. */
export function leadersOf(tree: Tree, rules: Rules): Leaders {
  const marked = tree.limbs.find(({ role }) => role === 'leader') ?? null
  if (marked === null) {
    if (tree.form !== 'multi-stem' && areOneFork(tree)) throw new LeaderToBeRanked()
    return { leader: null, lost: null }
  }
  if (!marked.dead && !marked.broken) return { leader: marked, lost: null }
  const heirs = tree.limbs.filter(
    (limb) =>
      limb !== marked &&
      !limb.dead &&
      !limb.broken &&
      limb.parent === null &&
      atLeast(limb.tip ?? 0, (tree.height ?? 0) * rules.leaderReach)
  )
  if (heirs.length > 1) throw new LeaderToBeRanked()
  return { leader: heirs[0] ?? marked, lost: marked }
}

/** Two rows of which each was measured as the stem of the other. */
function areOneFork({ limbs }: Tree): boolean {
  const alike = (a: number | null, b: number | null) =>
    a !== null && b !== null && Math.abs(a - b) <= 0.1 * Math.max(a, b)
  return limbs.some((one) =>
    limbs.some((other) => one !== other && alike(one.stem, other.diameter) && alike(other.stem, one.diameter))
  )
}

/** A broken leader is cut back to the stem that takes over; where none is known, on site. */
export function brokenLeaderCut(at: number, { leader, lost }: Leaders, rules: Rules): Taken | null {
  if (lost === null || lost.dead || !lost.broken || lost.decay) return null
  const [origin, tip] = [lost.origin ?? 0, lost.tip ?? 0]
  const height = leader === lost ? null : (leader?.origin ?? null)
  const isKnown = height !== null && height > origin && height < tip
  const place = isKnown ? (height - origin) / (tip - origin) : 0
  const cut = isKnown && lost.diameter !== null ? lost.diameter * (1 - place) : null
  return {
    at,
    obligation: 'broken',
    kind: 'reduce',
    share: (1 - place) ** 2,
    count: 1,
    cutDiameter: cut,
    height: isKnown ? height : null,
    distance: null,
    lateralMin: cut === null ? null : cut * lateralPart(rules, cut),
    tipAfter: null,
    dose: 0,
    cutAt: place,
    endsAt: place,
    lateralAt: null,
    nextRatio: null,
    nextPriority: 0
  }
}
