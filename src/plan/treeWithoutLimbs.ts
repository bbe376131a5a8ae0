import type { Problem } from '../../shared/problems'
import type { Rules } from '../../shared/rules'
import { showHeight } from '../../shared/words/lengths'
import { listed } from '../../shared/words/lists'
import { atMost, isUnder } from '../formulas/boundary'
import { liveCrownRatio } from '../formulas/crown'
import { treeProblem, type Findings, type SurveyedTree } from './checkTree'
import { chooseLeader } from './chooseLeader'
import { isUnmeasured } from './judged'
import type { TreePlan } from './plan'
import { allowanceNotes, crownRatioNotes } from './treeNotes'

/**
 * The plan of a tree without limbs: its allowance, and its crown ratio and a time budget where they are known. One that has
 * neither of these is listed among what is not planned.
 */
export function planWithoutLimbs(
  surveyed: SurveyedTree,
  unjudged: TreePlan,
  rules: Rules
): Findings & { readonly plan: TreePlan } {
  const { leader, problems } = chooseLeader(surveyed, rules)
  const crown = crownOf(surveyed, rules)
  const plan = { ...unjudged, leader, liveCrownRatio: crown.ratio }
  const noLimbs = treeProblem(surveyed, 'no-limbs', surveyed.tree.row, 'tree', { given: givenOf(plan) })
  return {
    plan,
    problems: [...problems, noLimbs, ...allowanceNotes(surveyed, plan), ...crown.problems],
    refused: isUnmeasured(plan) ? [{ limb: null, reason: noLimbs.message }] : []
  }
}

function crownOf(
  surveyed: SurveyedTree,
  rules: Rules
): { readonly ratio: number | null; readonly problems: readonly Problem[] } {
  const { height, crownBase, row } = surveyed.tree
  if (height === null || crownBase === null) return { ratio: null, problems: [] }
  if (isUnder(crownBase, height)) {
    const ratio = liveCrownRatio(height, crownBase)
    return { ratio, problems: crownRatioNotes(surveyed, ratio, rules) }
  }
  const facts = { value: showHeight(height, surveyed.inventory.system) }
  return { ratio: null, problems: [treeProblem(surveyed, 'crown-base-above-top', row, 'crownBase', facts)] }
}

/** What is known of a tree without its limbs: "allowance, crown ratio and a time budget are given". */
function givenOf({ tree, liveCrownRatio: ratio, allowedRemoval }: TreePlan): string {
  const isAsked = tree.unplannable !== null
  const given = [
    ...(isAsked ? [] : ['allowance']),
    ...(ratio === null ? [] : ['crown ratio']),
    ...(tree.trunk === null || (atMost(allowedRemoval, 0) && !isAsked) ? [] : ['a time budget'])
  ]
  if (given.length === 0) return 'nothing is given'
  return `${listed(given)} ${given.length === 1 ? 'is' : 'are'} given`
}
