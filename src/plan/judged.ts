import { counted } from '../../shared/words/counts'
import { namedLimbs } from '../../shared/words/lists'
import { capital } from '../../shared/words/sentences'
import type { Limb } from '../inventory/inventory'
import type { Plan, TreePlan } from './plan'

/**
 * How far a tree's limbs could be judged: it has none listed, all of them could, some or none. What could not be judged is
 * never said to need no cut.
 */
export type Judged = 'no limbs' | 'all' | 'some' | 'none'

/** The limbs of a tree that are to be judged: all but its leader. */
function toJudge({ tree, leader }: TreePlan): readonly Limb[] {
  return tree.limbs.filter((limb) => limb !== leader.limb)
}

export function judgedOf(plan: TreePlan): Judged {
  if (plan.tree.limbs.length === 0) return 'no limbs'
  if (plan.notJudged.length === 0) return 'all'
  return plan.notJudged.length < toJudge(plan).length ? 'some' : 'none'
}

/** "limbs not judged", "2 of 5 limbs not judged", "no limbs listed"; empty where all were judged. */
export function judgedWords(plan: TreePlan): string {
  switch (judgedOf(plan)) {
    case 'no limbs':
      return 'no limbs listed'
    case 'all':
      return ''
    case 'some':
      return `${String(plan.notJudged.length)} of ${counted(toJudge(plan).length, 'limb')} not judged`
    case 'none':
      return 'limbs not judged'
  }
}

/** What stands where a visit has no cut: that it needs none is only true of limbs that were judged. */
export function noCutWords(plan: TreePlan): string {
  switch (judgedOf(plan)) {
    case 'no limbs':
    case 'none':
      return capital(judgedWords(plan))
    case 'some':
      return `No cut of the limbs that were judged; ${judgedWords(plan)}`
    case 'all':
      return 'No cut is planned at this visit'
  }
}

/** As many limbs as are named one by one. */
const few = 6

/** The limbs that were not judged by name: "limbs B and C", or their number where they are many. */
export function notJudgedLimbs({ notJudged }: TreePlan): string {
  return notJudged.length > few ? counted(notJudged.length, 'limb') : namedLimbs(notJudged)
}

/** Trees of which nothing could be planned, though they are listed. */
export function treesNotPlanned({ trees }: Pick<Plan, 'trees'>): readonly TreePlan[] {
  return trees.filter((plan) => judgedOf(plan) === 'none' || isUnmeasured(plan))
}

/** A tree without limbs, and without what would give a crown ratio or a time budget. */
export function isUnmeasured({ tree, liveCrownRatio }: TreePlan): boolean {
  return tree.limbs.length === 0 && liveCrownRatio === null && tree.trunk === null
}
