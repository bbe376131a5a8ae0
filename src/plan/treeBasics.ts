import type { Form, LifeStage, Vigor } from '../../shared/choices'
import { percent } from '../../shared/words/percent'
import type { Problem } from '../../shared/problems'
import { classGrowth, stageGrowthFactor, type Rules } from '../../shared/rules'
import { allowedRemoval } from '../formulas/removal'
import type { Tree } from '../inventory/inventory'
import { assumed, hasColumn, treeProblem, type SurveyedTree } from './checkTree'
import { vigorWithDieback, wasJustPruned } from './stops'
import { formOf } from './treeForm'

/** What could be settled of a tree even where its limbs cannot be judged. */
export interface TreeBasics {
  readonly tree: Tree
  readonly form: Form
  readonly stage: LifeStage
  /** As given or assumed, and no better than the dieback allows. */
  readonly vigor: Vigor
  /** Mm a year, slowed by the life stage where it comes from a class. */
  readonly stemGrowth: number
  /** The form was proposed from the stems. */
  readonly formProposed: boolean
  /** Pruned within a year, and how much came off is not given. */
  readonly justPruned: boolean
}

/** Form, life stage, vigor and growth, with what is assumed where they are missing, at a date. */
export function basics(tree: Tree, rules: Rules, date: string): TreeBasics {
  const stage = tree.stage ?? 'mature'
  const vigor = vigorWithDieback(tree.vigor ?? 'fair', tree.dieback, rules)
  const { growth } = tree
  const stemGrowth =
    typeof growth === 'number'
      ? growth
      : classGrowth(rules, growth ?? 'medium') * stageGrowthFactor(rules, stage)
  const { form, isProposed } = formOf(tree, rules)
  const justPruned = wasJustPruned(tree, date, rules)
  return { tree, form, stage, vigor, stemGrowth, formProposed: isProposed, justPruned }
}

/** Share of the live foliage that may come off at the first visit. */
export function allowedFirst({ tree, stage, vigor, justPruned }: TreeBasics, rules: Rules): number {
  if (justPruned) return 0
  return allowedRemoval(stage, vigor, tree.removed ?? 0, tree.localLimit ?? 1, rules)
}

/** What is told of a tree's basics: what was assumed, poor vigor, and what stops live cuts. */
export function basicsProblems(surveyed: SurveyedTree, known: TreeBasics, rules: Rules): Problem[] {
  const { tree, form, stage, vigor } = known
  const problems: Problem[] = []
  if (tree.stage === null) problems.push(assumed(surveyed, 'stage', stage))
  if (tree.vigor === null) problems.push(assumed(surveyed, 'vigor', tree.vigor ?? 'fair'))
  if (tree.form === null && form === 'decurrent' && hasColumn(surveyed.inventory, 'form'))
    problems.push(assumed(surveyed, 'form', form))
  if (tree.dieback !== null && vigor !== (tree.vigor ?? 'fair')) {
    const facts = { value: percent(tree.dieback), text: vigor }
    problems.push(treeProblem(surveyed, 'dieback-counts', tree.row, 'dieback', facts))
  }
  if (vigor === 'poor') problems.push(treeProblem(surveyed, 'poor-vigor', tree.row, 'vigor'))
  if (known.justPruned) {
    const facts = { count: rules.prunedWithin }
    problems.push(treeProblem(surveyed, 'pruned-recently', tree.row, 'lastPruned', facts))
  }
  return problems
}
