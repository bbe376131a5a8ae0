import { lowAndHigh } from '../formulas/priority'
import type { Cut, TreePlan } from '../plan/plan'
import { scaffoldLimb } from '../plan/scaffold/scaffoldWords'

/** What a cut is for; each cut serves the first of these that holds for it. */
export type Purpose =
  'dead' | 'hurt' | 'leader' | 'clearance' | 'temporary' | 'reach' | 'end-weight' | 'spacing'

/** Cuts that serve one purpose, in the order of the plan. */
export interface PurposeGroup {
  purpose: Purpose
  cuts: Cut[]
}

function reachesHigh({ limb }: Cut, { tree }: TreePlan): boolean {
  const { height, crownBase } = tree
  if (limb.origin === null || limb.tip === null || height === null || crownBase === null) return false
  return lowAndHigh({ origin: limb.origin, tip: limb.tip }, { height, crownBase }) > 0
}

function purposeOf(cut: Cut, tree: TreePlan): Purpose {
  if (cut.obligation === 'dead') return 'dead'
  if (cut.obligation === 'broken' || cut.obligation === 'rubbing') return 'hurt'
  if (cut.obligation !== null) return cut.obligation
  if (cut.standing !== 'subordinate') return 'leader'
  if (cut.inClearance) return 'clearance'
  if (scaffoldLimb(tree, cut.limb)?.permanence === 'temporary') return 'temporary'
  if (reachesHigh(cut, tree)) return 'reach'
  const grown = tree.stage === 'mature' || tree.stage === 'old'
  return grown && cut.kind === 'reduce' ? 'end-weight' : 'spacing'
}

const order: Purpose[] = [
  'leader',
  'clearance',
  'reach',
  'end-weight',
  'dead',
  'hurt',
  'temporary',
  'spacing'
]

/** More than one document asks for the same visits. */
const known = new WeakMap<readonly Cut[], PurposeGroup[]>()

/** The cuts of a visit by what they are for, the leader first. */
export function byPurpose(tree: TreePlan, cuts: readonly Cut[]): readonly PurposeGroup[] {
  let groups = known.get(cuts)
  if (groups === undefined) known.set(cuts, (groups = grouped(tree, cuts)))
  return groups
}

function grouped(tree: TreePlan, cuts: readonly Cut[]): PurposeGroup[] {
  const groups = new Map<Purpose, Cut[]>()
  for (const cut of cuts) {
    const purpose = purposeOf(cut, tree)
    const own = groups.get(purpose)
    if (own === undefined) groups.set(purpose, [cut])
    else own.push(cut)
  }
  return order.flatMap((purpose) => {
    const found = groups.get(purpose)
    return found === undefined ? [] : [{ purpose, cuts: found }]
  })
}
