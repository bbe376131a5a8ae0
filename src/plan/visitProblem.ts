import { assessLimbs, type AssessedLimb } from './assessLimb'
import type { Limits } from './choice'
import { crownOf, type Crown } from './crown'
import {
  doseUnits,
  familyItems,
  weighCuts,
  type Assessments,
  type FamilyItem,
  type WeighedCut
} from './families'
import type { PreparedTree } from './prepareTree'
import type { VisitConditions } from './visitConditions'

/** What a visit has to choose from: the limbs on the trunk that may be cut, their cuts, and the tree's limits. */
export interface VisitProblem {
  /** Every limb that is there, in the inventory's order. */
  readonly assessed: readonly AssessedLimb[]
  readonly roots: readonly AssessedLimb[]
  /** What may be done with each of the roots. */
  readonly groups: readonly (readonly (WeighedCut | FamilyItem)[])[]
  readonly limits: Limits
  readonly crown: Crown
  /** Competing leaders before any cut. */
  readonly leaders: number
}

/** Assesses every limb and puts the problem of the visit. The limbs have their shares of the foliage. */
export function visitProblem(tree: PreparedTree, conditions: VisitConditions): VisitProblem {
  const { rules } = conditions
  const crown = crownOf(tree, conditions.crownBase, conditions.third, rules)
  const assessed = assessLimbs(conditions)
  const all = assessments(assessed)
  const roots: AssessedLimb[] = []
  const groups: (readonly (WeighedCut | FamilyItem)[])[] = []
  for (const root of assessed) {
    const { limb } = root
    const isFamily = limb.children.length > 0
    if (limb.parent !== null || (!isFamily && root.cuts.length === 0)) continue
    const holds = crown.holders.has(limb)
    roots.push(root)
    groups.push(isFamily ? familyItems(root, all, crown.lower, holds) : weighCuts(root, crown.lower, holds))
  }
  const leaders = assessed.filter(({ leads }) => leads).length
  const limits = {
    units: Math.round(conditions.allowed * doseUnits),
    cuts: rules.cutsPerVisit,
    lower: crown.lowerRoom,
    holders: crown.holders.size > 0 ? crown.holders.size : Infinity,
    leaders: leadersAtOnce(leaders, conditions)
  }
  return { assessed, roots, groups, limits, crown, leaders }
}

const noFamilies: Assessments = new Map()

/** Each limb's assessment, for the trees on which limbs stand on limbs. */
function assessments(assessed: readonly AssessedLimb[]): Assessments {
  return assessed.some(({ limb }) => limb.parent !== null)
    ? new Map(assessed.map((each) => [each.limb, each]))
    : noFamilies
}

/** Of more than three competing leaders, half (rounded up) are cut at the first visit and the rest later. */
function leadersAtOnce(leaders: number, { first, rules }: VisitConditions): number {
  return first && leaders > rules.leadersAtOnce ? Math.ceil(leaders / 2) : Infinity
}
