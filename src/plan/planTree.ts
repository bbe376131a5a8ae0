import { visitInterval, type Rules } from '../../shared/rules'
import { ratio } from '../../shared/words/figures'
import { showDiameter } from '../../shared/words/lengths'
import { ceilingPercent, percent } from '../../shared/words/percent'
import { upperThird } from '../formulas/priority'
import { allowedRemoval } from '../formulas/removal'
import { TreeCheck } from './checkTree'
import { closePairs } from './scaffold'
import { heightForClearance, liveCrownRatio } from '../formulas/crown'
import type { Tree, UnplannedList } from '../inventory/inventory'
import type { Problem } from '../../shared/problems'
import { growthAfterLoss, lossAfterCut } from '../formulas/growth'
import { carried, reductionSteps, type Season } from './work'
import { inClearance, isDefective, unprunedGrowth } from './options'
import type { Remaining, TreePlan, Visit } from './plan'
import { chooseForVisit, deadCut, describeVisit, insert, priorityAfter } from './planVisit'
import { basics, prepareTree, type PreparedTree, type TreeBasics } from './prepareTree'
import { whatWouldClear } from './reasons'
import { setShares } from './crown'

/** Plans a tree over its visits. */
export function planTree(
  inventory: UnplannedList,
  tree: Tree,
  rules: Rules,
  year: number,
  visits: number,
  lookAhead: number,
  problems: Problem[]
): TreePlan {
  const check = new TreeCheck(inventory, tree, problems)
  const known = basics(check, rules)
  const allowed = allowedRemoval(known.stage, known.vigor, tree.removed, tree.localLimit ?? 1, rules)
  const plan = emptyPlan(known, allowed, rules)
  const prepared = prepareTree(check, known, rules, year)
  if (prepared === null) return plan
  plan.leader = prepared.leader
  plan.liveCrownRatio = liveCrownRatio(prepared.height, prepared.crownBase)
  noteTree(check, plan, prepared, rules)
  const leaders = tree.limbs.length > 0 ? runVisits(prepared, plan, rules, year, visits, lookAhead) : 0
  const first = plan.visits[0]
  if (first !== undefined) {
    noteFirstVisit(check, prepared, first, leaders, rules)
    for (const { priority } of first.limbs) if (priority > plan.urgency) plan.urgency = priority
  }
  return plan
}

function emptyPlan(known: TreeBasics, allowed: number, rules: Rules): TreePlan {
  const { tree, stage, vigor } = known
  const base = allowedRemoval(stage, 'good', 0, 1, rules)
  let basis = `${stage} ${ceilingPercent(base)}`
  if (vigor !== 'good')
    basis += `, ${vigor} vigor ${ceilingPercent(allowedRemoval(stage, vigor, 0, 1, rules))}`
  if (tree.localLimit !== null) basis += `, local limit ${ceilingPercent(tree.localLimit)}`
  if (tree.removed > 0) basis += `, ${percent(tree.removed)} already removed`
  return {
    tree,
    stage,
    vigor,
    leader: { limb: null, name: '', reason: 'not judged', confirm: true, lost: null },
    allowedRemoval: allowed,
    allowedBasis: basis,
    liveCrownRatio: null,
    interval: visitInterval(rules, stage),
    visits: [],
    remaining: [],
    urgency: 0
  }
}

function noteTree(check: TreeCheck, plan: TreePlan, tree: PreparedTree, rules: Rules): void {
  const { row } = check.tree
  if (check.tree.limbs.length === 0) check.note('no-limbs', row, 'tree')
  if (plan.allowedRemoval <= 0 && plan.vigor !== 'poor')
    check.note('nothing-allowed', row, 'removed', { value: plan.allowedBasis })
  if ((plan.liveCrownRatio ?? 1) < rules.crownRatioGoal - 1e-9) {
    const facts = { value: ratio(plan.liveCrownRatio ?? 0), limit: ratio(rules.crownRatioGoal) }
    check.note('crown-ratio-low', row, 'crownBase', facts)
  }
  noteSpacing(check, rules)
  noteTemporary(check, rules)
  const observed = tree.works.reduce(
    (sum, work) => sum + (work.parent === null ? (work.limb.foliageShare ?? 0) : 0),
    0
  )
  if (observed > 1 + 1e-9)
    check.note('observed-share-too-large', row, 'foliageShare', { value: percent(observed) })
}

function noteTemporary(check: TreeCheck, rules: Rules): void {
  const { caliper, trunk, limbs, row } = check.tree
  const size = caliper ?? trunk
  if (size === null || size >= rules.temporaryUpTo || limbs.length === 0) return
  const { system } = check.inventory
  const facts = { value: showDiameter(size, system), limit: showDiameter(rules.temporaryUpTo, system) }
  check.note('all-temporary', row, caliper === null ? 'trunk' : 'caliper', facts)
}

function noteSpacing(check: TreeCheck, rules: Rules): void {
  for (const { upper, lower, apart, wanted } of closePairs(check.tree, rules)) {
    const facts = { limb: upper.id, other: lower.id, value: check.show(apart), limit: check.show(wanted) }
    check.note('scaffold-spacing', upper.row, 'origin', facts)
  }
}

function noteFirstVisit(
  check: TreeCheck,
  tree: PreparedTree,
  visit: Visit,
  leaders: number,
  rules: Rules
): void {
  if (visit.lowerFoliageBefore < rules.lowerFoliageGoal - 1e-9 && tree.works.length > 0)
    check.note('lower-foliage-low', check.tree.row, 'tree', { value: percent(visit.lowerFoliageBefore) })
  if (leaders > rules.leadersAtOnce) check.note('many-leaders', check.tree.row, 'tree', { count: leaders })
  if (tree.tree.clearance === null) return
  const { clearance } = tree.tree
  const season = { clearance, clearanceSide: tree.tree.clearanceSide?.degrees ?? null, rules } as Season
  const stage = stagedUntil(check, tree, tree.tree.clearance, rules)
  const cut = new Map(visit.cuts.map((each) => [each.limb, each.kind]))
  for (const work of tree.works) {
    const kind = cut.get(work.limb)
    if (
      kind === 'remove' ||
      !inClearance({ ...work, lowest: work.limb.lowestFoliage ?? work.lowest }, season)
    )
      continue
    const done =
      kind === 'reduce' ? 'it is shortened now and not yet removed' : 'it is not removed at the first visit'
    const value = done + stage
    check.note('clearance-held', work.limb.row, 'lowestFoliage', { limb: work.limb.id, value })
  }
}

/** The tree has to be taller before its crown may be raised as high as the clearance asks. */
function stagedUntil(check: TreeCheck, tree: PreparedTree, clearance: number, rules: Rules): string {
  const needed = heightForClearance(clearance, rules.crownRatioGoal)
  return needed > tree.height
    ? `; a live-crown ratio of ${rules.crownRatioGoal} allows that clearance once the tree is ${check.show(needed)} tall`
    : ''
}

/**
 * Runs the visits at their interval until every next priority is cleared or the horizon ends; gives the number of
 * competing leaders before any cut.
 */
function runVisits(
  tree: PreparedTree,
  plan: TreePlan,
  rules: Rules,
  year: number,
  visits: number,
  ahead: number
): number {
  const years = visitInterval(rules, tree.stage)
  let crownBase = tree.crownBase
  let leaders = 0
  for (let number = 1; number <= visits + ahead; number++) {
    const allowed = number === 1 ? plan.allowedRemoval : allowedLater(plan, rules)
    const season = seasonOf(tree, rules, crownBase, years, allowed, number === 1)
    setShares(tree)
    const choice = chooseForVisit(tree, season)
    if (number === 1) leaders = choice.leaders
    if (number <= visits) {
      const visit = describeVisit(tree, season, choice, number, year + (number - 1) * years)
      if (number === 1) for (const limb of tree.dead) visit.cuts.push(deadCut(tree.tree, limb, rules))
      plan.visits.push(visit)
      if (number === visits) plan.remaining = remainingAfter(tree, season)
    } else noteCleared(plan.remaining, number, tree, rules)
    if (isDone(tree, plan, number, rules, season)) {
      if (number < visits) plan.remaining = remainingAfter(tree, season)
      break
    }
    advance(tree, season)
    crownBase = choice.crownBaseAfter
  }
  while (plan.visits.length > 1 && plan.visits.at(-1)?.cuts.length === 0) plan.visits.pop()
  return leaders
}

function allowedLater(plan: TreePlan, rules: Rules): number {
  return allowedRemoval(plan.stage, plan.vigor, 0, plan.tree.localLimit ?? 1, rules)
}

/** What holds for a tree at one visit. */
export function seasonOf(
  tree: PreparedTree,
  rules: Rules,
  crownBase: number,
  years: number,
  allowed: number,
  first: boolean
): Season {
  return {
    rules,
    system: tree.system,
    stage: tree.stage,
    first,
    height: tree.height,
    crownBase,
    third: upperThird(tree.height, crownBase),
    years,
    stemGrowth: tree.stemGrowth,
    allowed,
    clearance: tree.tree.clearance,
    clearanceSide: tree.tree.clearanceSide?.degrees ?? null,
    steps: reductionSteps(tree.stage, rules),
    works: tree.works
  }
}

/** The limbs that carry a next priority of 10 or more after a visit. */
function remainingAfter(tree: PreparedTree, season: Season): Remaining[] {
  const { rules } = season
  const remaining: Remaining[] = []
  for (const work of tree.works) {
    if (work.gone) continue
    const priority = priorityAfter(work)
    if (priority >= rules.clearedBelow)
      insert(remaining, {
        limb: work.limb,
        priority,
        clearedByVisit: null,
        remedy: whatWouldClear(work, season)
      })
  }
  return remaining
}

/** Beyond the last visit planned: says by which visit a remaining limb would be cleared. */
function noteCleared(
  remaining: readonly Remaining[],
  number: number,
  tree: PreparedTree,
  rules: Rules
): void {
  for (const left of remaining) {
    if (left.clearedByVisit !== null) continue
    const work = tree.works.find((each) => each.limb === left.limb)
    if (work === undefined || work.gone || priorityAfter(work) < rules.clearedBelow)
      left.clearedByVisit = number
  }
}

/** Nothing left to do: every limb cleared and nothing asked for, or no live foliage to be had at any visit. */
function isDone(tree: PreparedTree, plan: TreePlan, number: number, rules: Rules, season: Season): boolean {
  if (season.allowed <= 0 && number > 1) return true
  if (number > plan.visits.length)
    return plan.remaining.every(({ clearedByVisit }) => clearedByVisit !== null)
  for (const work of tree.works) {
    if (work.gone || work.withParent || work.chosen?.kind === 'remove') continue
    if (priorityAfter(work) >= rules.clearedBelow || inClearance(work, season)) return false
    if (isDefective(work) && work.chosen === null) return false
  }
  return true
}

/** Carries every limb to the next visit: cuts made, then years of growth. */
export function advance(tree: PreparedTree, season: Season): void {
  for (const work of tree.works) {
    if (work.gone) continue
    const option = work.chosen
    if (work.withParent || option?.kind === 'remove') {
      work.gone = true
      continue
    }
    const growth = unprunedGrowth(work, work.ratio, season)
    if (option !== null) {
      work.loss = lossAfterCut(carried(work), option.share)
      work.lossAge = 0
      work.tip = option.tipAfter
      work.mended = true
    }
    work.diameter += growthAfterLoss(growth, work.loss, season.years, work.lossAge, work.fade)
    work.stem += season.years * season.stemGrowth
    work.lossAge += season.years
  }
}
