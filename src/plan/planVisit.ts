import type { Rules } from '../../shared/rules'
import { liveCrownRatio, shareBelow } from '../formulas/crown'
import { standing } from '../formulas/priority'
import { lateralFraction, lateralMin } from '../formulas/cuts'
import type { Tree } from '../inventory/inventory'
import { leaveAlone, type Item, type Limits } from './choice'
import { choose } from './choose'
import { crownBaseAfter, crownOf, type Crown } from './crown'
import { doseUnits, familyItems, foliageFrom, takeChildren, weigh, type FamilyItem } from './groups'
import { inClearance, lookAt, optionPool, type Option } from './options'
import type { Cut, Decision, LimbState, Visit } from './plan'
import type { MeasuredDeadwood, PreparedTree } from './prepareTree'
import {
  deadWoodSource,
  isHeld,
  reasonForCut,
  reasonForDeadWood,
  reasonForKeeping,
  refusedFor,
  sourceOf
} from './reasons'
import { ratioAsSurveyed } from './unionStem'
import { carried, type Season, type Work } from './work'

/** What a visit's choice leaves: who was chosen stands in each limb's `chosen`. */
export interface Choice {
  crown: Crown
  crownBaseAfter: number
  /** Competing leaders before any cut. */
  leaders: number
}

/** What a visit has to choose from: the limbs on the trunk that may be cut, their cuts, and the tree's limits. */
export interface Question {
  roots: Work[]
  groups: (readonly Item[])[]
  limits: Limits
  crown: Crown
  /** Competing leaders before any cut. */
  leaders: number
}

/** Looks at every limb and puts the question of the visit. */
export function questionOf(tree: PreparedTree, season: Season): Question {
  const crown = crownOf(tree, season.crownBase, season.third, season.rules)
  const groups: (readonly Item[])[] = []
  const roots: Work[] = []
  optionPool.reset()
  let leaders = 0
  for (const work of tree.works) {
    if (work.gone) continue
    lookAt(work, season)
    if (work.leads) leaders++
  }
  for (const work of tree.works) {
    if (work.gone || work.parent !== null) continue
    const family = work.children.length > 0
    if (!family && work.options.length === 0) continue
    const holds = crown.holders.has(work)
    roots.push(work)
    groups.push(family ? familyItems(work, crown.lower, holds) : weigh(work, crown.lower, holds))
  }
  const limits = {
    units: Math.round(season.allowed * doseUnits),
    cuts: season.rules.cutsPerVisit,
    lower: crown.lowerRoom,
    holders: crown.holders.size > 0 ? crown.holders.size : Infinity,
    leaders: leadersAtOnce(leaders, season)
  }
  return { roots, groups, limits, crown, leaders }
}

/**
 * Chooses for one visit: one option a limb so that the sum of the squares of the next priorities is least within the
 * allowance and the tree's limits. Exact for these stated rules.
 */
export function chooseForVisit(tree: PreparedTree, season: Season): Choice {
  const question = questionOf(tree, season)
  const { crown, groups, leaders } = question
  if (groups.length > 0) settle(question, choose(groups, question.limits))
  return { crown, crownBaseAfter: crownBaseAfter(tree, season.crownBase, crown, season.rules), leaders }
}

/** Of more than three competing leaders, half (rounded up) are cut at the first visit and the rest later. */
function leadersAtOnce(leaders: number, season: Season): number {
  return season.first && leaders > season.rules.leadersAtOnce ? Math.ceil(leaders / 2) : Infinity
}

/** Writes the best choice into the limbs. */
function settle({ roots, groups }: Question, best: readonly number[]): void {
  for (let at = 0; at < roots.length; at++) {
    const root = roots[at]
    const index = best[at] ?? leaveAlone
    if (root === undefined || index === leaveAlone) continue
    if (root.children.length === 0) {
      root.chosen = root.options[index] ?? null
      continue
    }
    const item = groups[at]?.[index] as FamilyItem | undefined
    for (const [work, option] of item?.cutsMade ?? []) work.chosen = option
    takeChildren(root)
  }
}

/** The visit in words and numbers, once its choice is made. */
export function describeVisit(
  tree: PreparedTree,
  season: Season,
  { crown, crownBaseAfter: base }: Choice,
  number: number,
  year: number
): Visit {
  const cuts: Cut[] = []
  const limbs: LimbState[] = []
  let dose = 0
  let objective = 0
  for (const work of tree.works) {
    if (work.gone) continue
    const next = priorityAfter(work)
    objective += next * next
    if (work.chosen !== null) {
      dose += work.chosen.dose
      insert(cuts, cutOf(work, work.chosen, season))
    }
    limbs.push(stateOf(work, next, season))
  }
  return {
    visit: number,
    year,
    allowedRemoval: season.allowed,
    dose: Math.min(dose, season.allowed),
    objective,
    cuts,
    limbs,
    crownBaseAfter: base,
    liveCrownRatioAfter: liveCrownRatio(season.height, base),
    lowerFoliageBefore: crown.lowerShare,
    lowerFoliageAfter: lowerAfter(tree, season, crown)
  }
}

/** Puts an entry where its priority belongs, highest first; equals stay in the inventory's order. */
export function insert<T extends { priority: number }>(entries: T[], entry: T): void {
  let at = entries.length
  while (at > 0 && (entries[at - 1]?.priority ?? 0) < entry.priority) at--
  entries.splice(at, 0, entry)
}

/** Priority expected at the next visit under what was chosen; a limb that goes has none. */
export function priorityAfter(work: Work): number {
  if (work.withParent) return 0
  return work.chosen === null ? work.nextPriority : work.chosen.nextPriority
}

function cutOf(work: Work, option: Option, season: Season): Cut {
  const { ratio, priority } = work
  const { kind } = option
  return {
    limb: work.limb,
    kind,
    share: option.share,
    cutDiameter: option.cut,
    lateralMin: kind === 'remove' ? null : lateralMin(option.cut, lateralFraction(option.cut, season.rules)),
    cutHeight: Number.isNaN(option.cutHeight) ? null : option.cutHeight,
    tipAfter: kind === 'remove' ? null : option.tipAfter,
    dose: option.dose,
    aspectRatio: ratio,
    projectedAspectRatio: kind === 'remove' ? null : option.nextRatio,
    priority,
    nextPriority: option.nextPriority,
    standing: standing(ratio, work.limb.bark, season.rules),
    live: true,
    inClearance: inClearance(work, season),
    marked: option.cut > season.rules.markedCut,
    needsReason: option.cut > season.rules.reasonedCut,
    reason: reasonForCut(work, option, season),
    refused: refusedFor(work, option, season),
    source: sourceOf(work, option, season)
  }
}

/** A dead limb comes off without costing live foliage. */
export function deadCut(tree: Tree, limb: MeasuredDeadwood, rules: Rules): Cut {
  const { diameter } = limb
  const ratio = ratioAsSurveyed(tree, limb)
  return {
    limb,
    kind: 'remove',
    share: 1,
    cutDiameter: diameter,
    lateralMin: null,
    cutHeight: null,
    tipAfter: null,
    dose: 0,
    aspectRatio: ratio,
    projectedAspectRatio: null,
    priority: 0,
    nextPriority: 0,
    standing: ratio === null ? null : standing(ratio, limb.bark, rules),
    live: false,
    inClearance: false,
    marked: diameter > rules.markedCut,
    needsReason: diameter > rules.reasonedCut,
    reason: reasonForDeadWood(),
    refused: [],
    source: deadWoodSource
  }
}

function stateOf(work: Work, nextPriority: number, season: Season): LimbState {
  const { limb, ratio, priority } = work
  return {
    limb,
    aspectRatio: ratio,
    standing: standing(ratio, limb.bark, season.rules),
    priority,
    foliageShare: work.share * carried(work),
    decision: decisionOf(work, season),
    nextPriority,
    nextRatio: work.withParent ? 0 : (work.chosen?.nextRatio ?? work.nextRatio),
    reason: reasonOf(work, season)
  }
}

function decisionOf(work: Work, season: Season): Decision {
  if (work.withParent) return 'remove'
  if (work.chosen !== null) return work.chosen.kind
  return isHeld(work, season) ? 'hold' : 'retain'
}

/** Why no cut is made; a cut carries its own reason. */
function reasonOf(work: Work, season: Season): string {
  if (work.withParent) return `goes with limb ${work.parent?.limb.id ?? ''}`
  return work.chosen === null ? reasonForKeeping(work, season) : ''
}

/** Share of what is left that is in the lower two-thirds of the crown. */
function lowerAfter(tree: PreparedTree, season: Season, crown: Crown): number {
  let all = crown.leaderShare
  let low = crown.leaderShare * shareBelow(crown.leaderFrom, season.height, season.third)
  for (const work of tree.works) {
    const option = work.chosen
    if (work.parent !== null || work.gone || option?.kind === 'remove') continue
    const left = work.share * carried(work) - (option?.dose ?? 0)
    const tip = option?.tipAfter ?? work.tip
    all += left
    low += left * shareBelow(foliageFrom(work, tip), tip, season.third)
  }
  return all > 0 ? low / all : 0
}
