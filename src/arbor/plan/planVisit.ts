import type { Rules } from '../../../shared/rules'
import { standing } from '../assess/standing'
import type { Limb } from '../measure/inventory'
import { choose } from './choose'
import { crownBaseAfter, crownOf, type Crown } from './crown'
import { doseUnits, groupItems, shareBelow, type GroupItem } from './groups'
import { offerFor, type Offer, type Option } from './options'
import type { Cut, Decision, LimbState, Visit } from './plan'
import type { PreparedTree } from './prepareTree'
import { reasonForCut, reasonForDeadWood, reasonForKeeping, refusedFor } from './reasons'
import { carried, type Season, type Work } from './work'

/** A visit with what it leaves behind for the next. */
export interface PlannedVisit {
  visit: Visit
  decided: ReadonlyMap<Work, Option | 'with parent'>
  crownBase: number
}

/**
 * Plans one visit: one option a limb so that the sum of the squares of the next priorities is least within the
 * allowance and the tree's limits. Exact for these stated rules.
 */
export function planVisit(tree: PreparedTree, season: Season, number: number, year: number): PlannedVisit {
  const offers = new Map<Work, Offer>()
  for (const work of tree.works) if (!work.gone) offers.set(work, offerFor(work, season))
  const crown = crownOf(tree, season.crownBase, season.third, season.rules)
  const decided = decide(tree, season, offers, crown)
  const removed = new Set<Work>()
  for (const [work, option] of decided)
    if (option !== 'with parent' && option.kind === 'remove') removed.add(work)
  const base = crownBaseAfter(tree, season.crownBase, crown, removed)
  const visit = describeVisit(tree, season, offers, decided, crown, base)
  return { visit: { ...visit, visit: number, year }, decided, crownBase: base }
}

function decide(
  tree: PreparedTree,
  season: Season,
  offers: ReadonlyMap<Work, Offer>,
  crown: Crown
): Map<Work, Option | 'with parent'> {
  const roots = tree.works.filter((work) => work.parent === null && !work.gone)
  const groups: GroupItem[][] = roots.map((root) =>
    groupItems(root, offers, season, crown.lower, carried, crown.holders.has(root))
  )
  const chosen = choose(groups, {
    dose: Math.round(season.allowed * doseUnits),
    cuts: season.rules.cutsPerVisit,
    lower: crown.lowerRoom,
    holders: crown.holders.size > 0 ? crown.holders.size : Infinity
  })
  const decided = new Map<Work, Option | 'with parent'>()
  groups.forEach((items, at) => {
    for (const [work, option] of items[chosen[at] ?? 0]?.parts ?? []) decided.set(work, option)
  })
  for (const work of tree.works) if (!work.gone && !decided.has(work)) decided.set(work, 'with parent')
  return decided
}

function describeVisit(
  tree: PreparedTree,
  season: Season,
  offers: ReadonlyMap<Work, Offer>,
  decided: ReadonlyMap<Work, Option | 'with parent'>,
  crown: Crown,
  base: number
): Omit<Visit, 'visit' | 'year'> {
  const cuts: Cut[] = []
  const limbs: LimbState[] = []
  let dose = 0
  let objective = 0
  for (const [work, option] of decided) {
    const offer = offers.get(work)
    if (offer === undefined) continue
    if (option !== 'with parent') {
      objective += option.nextPriority * option.nextPriority
      dose += option.dose
      if (option.kind !== 'retain') cuts.push(cutOf(offer, option, season))
    }
    limbs.push(stateOf(offer, option, season))
  }
  cuts.sort((a, b) => b.priority - a.priority || a.limb.row - b.limb.row)
  return {
    allowedRemoval: season.allowed,
    dose: Math.min(dose, season.allowed),
    objective,
    cuts,
    limbs,
    crownBaseAfter: base,
    liveCrownRatioAfter: (season.height - base) / season.height,
    lowerFoliageBefore: crown.lowerShare,
    lowerFoliageAfter: lowerAfter(tree, season, decided, crown)
  }
}

function cutOf({ work, ratio, priority }: Offer, option: Option, season: Season): Cut {
  const kind = option.kind === 'remove' ? 'remove' : 'reduce'
  return {
    limb: work.limb,
    kind,
    share: option.share,
    cutDiameter: option.cut,
    lateralMin: kind === 'remove' ? null : lateralToLeave(option.cut, season.rules),
    cutHeight: option.cutHeight,
    tipAfter: kind === 'remove' ? null : option.tipAfter,
    dose: option.dose,
    aspectRatio: ratio,
    projectedAspectRatio: kind === 'remove' ? null : option.nextRatio,
    priority,
    nextPriority: option.nextPriority,
    standing: standing(ratio, work.limb.bark, season.rules),
    live: true,
    marked: option.cut > season.rules.markedCut,
    needsReason: option.cut > season.rules.reasonedCut,
    reason: reasonForCut(work, ratio, priority, option, season),
    refused: refusedFor(work, ratio, option, season)
  }
}

function lateralToLeave(cut: number, rules: Rules): number {
  return cut * (cut > rules.largeCut ? rules.lateralFractionLarge : rules.lateralFraction)
}

/** A dead limb comes off without costing live foliage. */
export function deadCut(limb: Limb, rules: Rules): Cut {
  const ratio = limb.diameter !== null && limb.stem !== null ? limb.diameter / limb.stem : NaN
  const diameter = limb.diameter ?? NaN
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
    standing: standing(ratio, limb.bark, rules),
    live: false,
    marked: diameter > rules.markedCut,
    needsReason: diameter > rules.reasonedCut,
    reason: reasonForDeadWood(),
    refused: []
  }
}

function stateOf(offer: Offer, option: Option | 'with parent', season: Season): LimbState {
  const { work, ratio, priority } = offer
  const kept = option !== 'with parent' && option.kind === 'retain' ? reasonForKeeping(offer, season) : null
  const decision: Decision =
    option === 'with parent'
      ? 'remove'
      : option.kind !== 'retain'
        ? option.kind
        : kept?.hold === true
          ? 'hold'
          : 'retain'
  return {
    limb: work.limb,
    aspectRatio: ratio,
    standing: standing(ratio, work.limb.bark, season.rules),
    priority,
    foliageShare: work.share * carried(work),
    decision,
    nextPriority: option === 'with parent' ? 0 : option.nextPriority,
    reason: option === 'with parent' ? `goes with limb ${work.parent?.limb.id ?? ''}` : (kept?.reason ?? '')
  }
}

/** Share of what is left that is in the lower two-thirds of the crown. */
function lowerAfter(
  tree: PreparedTree,
  season: Season,
  decided: ReadonlyMap<Work, Option | 'with parent'>,
  crown: Crown
): number {
  let all = crown.leaderShare
  let low = crown.leaderShare * shareBelow(crown.leaderFrom, season.height, season.third)
  for (const work of tree.works) {
    const option = decided.get(work)
    if (work.parent !== null || work.gone || option === undefined || option === 'with parent') continue
    const left = work.share * carried(work) - option.dose
    const from =
      work.limb.lowestFoliage !== null && work.limb.lowestFoliage < option.tipAfter
        ? work.limb.lowestFoliage
        : work.origin
    all += left
    low += option.kind === 'remove' ? 0 : left * shareBelow(from, option.tipAfter, season.third)
  }
  return all > 0 ? low / all : 0
}
