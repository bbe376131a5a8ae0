import { groupProblems } from '../../shared/groupProblems'
import { defaultRules, type Rules } from '../../shared/rules'
import type { Problem } from '../../shared/problems'
import { ruleChanges, type RuleReasons } from './rules/ruleChanges'
import { readMonth } from '../season/questions'
import { timingNotes, type TimingAnswers, type TimingNote } from '../season/timing'
import { timingProblems } from '../season/timingProblems'
import { unplannedRow, type Inventory, type Tree, type Unplanned } from '../inventory/inventory'
import { bundleYears } from './bundleYears'
import { withWaiting } from './leftOut'
import { firstYearOf, type Plan, type TreePlan } from './plan'
import { isTold } from './checkTree'
import { planTree } from './planTree'
import { atOnce, type InTurns } from './turns'
import type { VisitsWanted } from './planVisits'

export interface PlanOptions {
  /** ISO date, YYYY-MM-DD; visit 1 falls in its year unless `work` says when. The engine has no clock of its own. */
  date: string
  /** When the work begins: the year of visit 1, and words of its season; the name of a month is held against windows. */
  work?: { readonly firstYear: number | null; readonly season: string }
  rules?: Rules
  /** Why rules were changed, and what was wrong with them where they were read. */
  reasons?: RuleReasons
  ruleProblems?: readonly Problem[]
  /** What was answered about the season, an empty object where nothing was; left out, the season is not looked at. */
  timing?: TimingAnswers
  /** Visits to plan, 1 to the horizon of the rules. */
  visits?: number
}

/** What is settled once for all the trees of an inventory, and where what is found of them is gathered. */
interface PlanningRun extends VisitsWanted {
  readonly inventory: Inventory
  readonly unplanned: Unplanned[]
  readonly problems: Problem[]
}

function begin(inventory: Inventory, options: PlanOptions): PlanningRun {
  const rules = options.rules ?? defaultRules
  const year = firstYearOf({ date: options.date, firstYear: options.work?.firstYear })
  if (!Number.isInteger(year)) throw new Error(`Not an ISO date: ${options.date}`)
  return {
    inventory,
    unplanned: [...inventory.unplanned],
    problems: [...(options.ruleProblems ?? []), ...inventory.problems],
    rules,
    date: options.date,
    year,
    visits: Math.max(1, Math.min(options.visits ?? rules.horizonVisits, rules.horizonVisits))
  }
}

/** What was noted, in order: rows that are not planned by row, problems by cause. */
function finished({ unplanned, problems }: PlanningRun): Pick<Plan, 'unplanned' | 'problems'> {
  unplanned.sort((a, b) => a.row - b.row)
  return { unplanned, problems: withWaiting(groupProblems(problems), unplanned) }
}

/** Plans one tree, in turns, and gathers what was found of it. */
function* planNext(tree: Tree, run: PlanningRun): InTurns<TreePlan> {
  const { inventory, unplanned, problems } = run
  const planned = yield* planTree({ inventory, tree }, run)
  for (const found of planned.problems) if (!isTold(found, problems)) problems.push(found)
  for (const { limb, reason } of planned.refused)
    unplanned.push(
      limb === null
        ? { ...unplannedRow(inventory, tree.id, tree.row, reason), wholeTree: true }
        : unplannedRow(inventory, tree.id, limb.row, reason)
    )
  return planned.plan
}

/**
 * Plans tree by tree and keeps none of the plans, for inventories too large to hold with all their plans; visits one year
 * apart stay apart, as only the whole plan knows them. What is found of the trees is handed over at the end.
 */
export function* planEachTree(
  inventory: Inventory,
  options: PlanOptions
): Generator<TreePlan, Pick<Plan, 'unplanned' | 'problems'>> {
  const run = begin(inventory, options)
  for (const tree of inventory.trees) yield atOnce(planNext(tree, run))
  return finished(run)
}

/**
 * Plans an inventory tree by tree, so that a surface can show progress and stop in between; within a tree that takes its time,
 * it rests without one. At the end visits one year apart are put together.
 */
export function* planTrees(
  inventory: Inventory,
  options: PlanOptions
): Generator<TreePlan | undefined, Plan> {
  const run = begin(inventory, options)
  const { problems, rules } = run
  const planned: TreePlan[] = []
  for (const tree of inventory.trees) {
    const next = yield* planNext(tree, run)
    planned.push(next)
    yield next
  }
  const trees = bundleYears(planned, rules)
  const notes = options.timing && notesOf(trees, run, options)
  if (notes) problems.push(...timingProblems(notes, inventory, options.timing?.region ?? ''))
  return {
    date: options.date,
    firstYear: run.year,
    system: inventory.system,
    inventory,
    trees,
    ...finished(run),
    rules,
    ruleChanges: ruleChanges(rules, options.reasons),
    timing: notes ?? []
  }
}

/** What is to be known about the season; a month that the season of the work names stands where none was answered. */
function notesOf(
  trees: readonly TreePlan[],
  { date, year }: PlanningRun,
  { timing = {}, work }: PlanOptions
): TimingNote[] {
  const month = readMonth(work?.season)
  const answers =
    timing.visitMonth === undefined && !Number.isNaN(month) ? { ...timing, visitMonth: month } : timing
  return timingNotes({ date, firstYear: year, trees }, answers)
}

/** Plans a whole inventory. */
export function planInventory(inventory: Inventory, options: PlanOptions): Plan {
  const trees = planTrees(inventory, options)
  for (;;) {
    const step = trees.next()
    if (step.done === true) return step.value
  }
}
