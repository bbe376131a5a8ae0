import type { AssessedLimb } from '../assessLimb'
import { rootsOf, type LeaderFoliage } from '../crown'
import type { PreparedTree } from '../prepareTree'
import type { VisitConditions } from '../visitConditions'
import { cutBrokenWood } from './brokenWood'
import type { FirstPass } from './passState'
import { clearTheSide } from './raiseLimbs'
import { cutRubbingLimbs } from './rubbingLimbs'
import { removeTemporaryLimbs } from './temporaryLimbs'

/**
 * The first pass of a visit: what has to be done, in order, each under the allowance that is left: broken wood, rubbing
 * limbs, clearance, temporary limbs. Dead wood goes before them and takes no live foliage.
 */
export function meetObligations(
  tree: PreparedTree,
  conditions: VisitConditions,
  assessed: readonly AssessedLimb[],
  leader: LeaderFoliage
): FirstPass {
  const obliges = mayOblige(tree, conditions)
  const pass: FirstPass = {
    tree,
    conditions,
    leader,
    assessed: obliges ? new Map(assessed.map((each) => [each.limb, each])) : noLimbs,
    lowestBefore: obliges ? rootsOf(tree).map(({ lowest }) => lowest) : noHeights,
    left: conditions.allowed,
    made: [],
    obliged: obliges ? new Map() : nobody
  }
  if (!obliges) return pass
  cutBrokenWood(pass)
  cutRubbingLimbs(pass)
  clearTheSide(pass)
  removeTemporaryLimbs(pass)
  return pass
}

const noLimbs: FirstPass['assessed'] = new Map()
const nobody: FirstPass['obliged'] = new Map()
const noHeights: FirstPass['lowestBefore'] = []

/** Most trees have nothing that obliges to a cut. */
function mayOblige({ leader, limbs }: PreparedTree, { clearance }: VisitConditions): boolean {
  if (clearance !== null || leader.lost !== null) return true
  return limbs.some(
    ({ surveyed, permanence }) => surveyed.broken || surveyed.rubbing || permanence === 'temporary'
  )
}
