import { breastHeightMeters } from '../../../shared/units'
import type { TreePlan } from '../../plan/plan'
import type { PresentLimb } from './limbsAtVisit'

/** The trunk and leader as drawn: its diameters by height, and how far its axis leans. Meters. */
export interface TrunkForm {
  /** Where the leader begins and ends. */
  leaderFrom: number
  tip: number
  /** From the ground to the tip, in order of height. */
  profile: { height: number; diameter: number }[]
  /** How far the leader's tip stands to the right of the trunk. */
  lean: number
  /** No trunk diameter is known: a slender one is drawn (house rule). */
  assumed: boolean
}

/** Diameter over height where nothing is measured (house rule, for the drawing only). */
const slenderness = 1 / 60

/** A leader that leans does so by this share of its rise, toward its bearing (house rule, for the drawing only). */
const leanShare = 0.1

function stems(plan: TreePlan, present: readonly PresentLimb[]): { height: number; diameter: number }[] {
  const leader = plan.leader.limb
  const found = present
    .filter(({ limb }) => limb.parent === null || limb.parent === leader?.id)
    .flatMap(({ limb, origin, aspectRatio }) =>
      aspectRatio !== null && aspectRatio > 0 && limb.diameter !== null
        ? [{ height: origin, diameter: limb.diameter / aspectRatio / 1000 }]
        : []
    )
  if (leader !== null && leader.diameter !== null && leader.origin !== null)
    found.push({ height: leader.origin, diameter: leader.diameter / 1000 })
  return found.sort((a, b) => a.height - b.height || b.diameter - a.diameter)
}

/** The measured diameters, never widening upward; a gentle flare at the foot; a point at the tip. */
function profileOf(trunk: number, measured: { height: number; diameter: number }[], tip: number) {
  const breast = Math.min(breastHeightMeters, tip / 3)
  const profile = [
    { height: 0, diameter: trunk * 1.3 },
    { height: breast / 4, diameter: trunk * 1.08 },
    { height: breast, diameter: trunk }
  ]
  let last = { height: breast, diameter: trunk }
  for (const { height, diameter } of measured) {
    if (height <= last.height + 1e-6 || height >= tip - 1e-6) continue
    last = { height, diameter: Math.min(diameter, last.diameter) }
    profile.push(last)
  }
  profile.push({ height: tip, diameter: 0 })
  return profile
}

/** The leader's tip; where that cannot be right, the top of the tree. */
function tipOf({ tree, leader }: TreePlan): number | null {
  const tip = leader.limb?.tip ?? null
  const least = Math.max(0.05 * (tree.height ?? 0), leader.limb?.origin ?? 0, 0.1)
  if (tip !== null && tip > least) return tip
  return tree.height !== null && tree.height >= 0.1 ? tree.height : null
}

/** The form of a tree's trunk, or null where its height is not known. */
export function trunkForm(plan: TreePlan, present: readonly PresentLimb[]): TrunkForm | null {
  const { tree, leader } = plan
  const tip = tipOf(plan)
  if (tip === null) return null
  const measured = stems(plan, present)
  const thickest = Math.max(0, ...measured.map(({ diameter }) => diameter))
  const known = tree.trunk !== null ? tree.trunk / 1000 : thickest
  const lowest = Math.min(...present.map(({ origin }) => origin), tree.crownBase ?? tip)
  const from = leader.limb === null ? lowest : (leader.limb.origin ?? lowest)
  const leaderFrom = Math.max(0, Math.min(from, tip * 0.9))
  const bearing = leader.limb?.bearing ?? null
  return {
    leaderFrom,
    tip,
    profile: profileOf(known > 0 ? known : tip * slenderness, measured, tip),
    lean: bearing === null ? 0 : Math.sin((bearing * Math.PI) / 180) * leanShare * (tip - leaderFrom),
    assumed: !(known > 0)
  }
}

/** Diameter of the trunk or leader at a height. */
export function trunkDiameterAt(form: TrunkForm, height: number): number {
  const { profile } = form
  for (let at = 1; at < profile.length; at++) {
    const below = profile[at - 1]
    const above = profile[at]
    if (below === undefined || above === undefined || height > above.height) continue
    const part = (height - below.height) / (above.height - below.height)
    return below.diameter + (above.diameter - below.diameter) * Math.max(0, part)
  }
  return 0
}

/** Where the axis stands at a height, to the right of the foot of the trunk. */
export function axisAt(form: TrunkForm, height: number): number {
  const part = (height - form.leaderFrom) / (form.tip - form.leaderFrom)
  return form.lean * Math.max(0, Math.min(1, part))
}
