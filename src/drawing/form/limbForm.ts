import type { TreePlan } from '../../plan/plan'
import { parameterWhere, pointAt } from './curve'
import { limbCurve, usualTilt } from './limbCurve'
import { limbReach } from './limbReach'
import { isFree, sideOf, unknownShown } from './limbSide'
import type { PresentLimb } from './limbsAtVisit'
import { parameterAtShare, type Taper } from './taper'
import type { Point } from '../shapes'
import { axisAt, trunkDiameterAt, type TrunkForm } from './trunkForm'

/** A limb as drawn. Meters from the foot of the trunk. */
export interface LimbForm extends Taper {
  present: PresentLimb
  /** 1 to the right, −1 to the left. */
  side: 1 | -1
  parent: LimbForm | null
  reachAssumed: boolean
  bearingKnown: boolean
}

function startOf(origin: number, parent: LimbForm | null, trunk: TrunkForm): Point {
  if (parent === null) return { x: axisAt(trunk, origin), y: origin }
  const rises = parent.curve[3].y > parent.curve[0].y
  const sign = rises ? 1 : -1
  const t = parameterWhere((at) => sign * pointAt(parent.curve, at).y, sign * origin)
  return { x: pointAt(parent.curve, t).x, y: origin }
}

function formOf(
  present: PresentLimb,
  plan: TreePlan,
  trunk: TrunkForm,
  parent: LimbForm | null,
  drawn: readonly LimbForm[]
): LimbForm {
  const { limb, origin, tip, aspectRatio, left } = present
  const { side, shown } =
    limb.bearing === null && parent !== null
      ? { side: parent.side, shown: unknownShown }
      : sideOf(present, drawn, trunk.lean)
  const { reach, assumed } = limbReach(limb, plan.tree, trunk.tip, aspectRatio)
  const rise = tip - origin
  const byHeight = rise > 0.02 * trunk.tip
  const start = startOf(origin, parent, trunk)
  return {
    present,
    side,
    parent,
    curve: limbCurve(
      start,
      side * shown * reach * left,
      rise,
      limb.angle ?? usualTilt(aspectRatio),
      byHeight
    ),
    diameter: (limb.diameter ?? 0) / 1000,
    byHeight,
    reachAssumed: assumed,
    bearingKnown: limb.bearing !== null
  }
}

/** The forms of the limbs, each parent before its own limbs. */
export function limbForms(plan: TreePlan, present: readonly PresentLimb[], trunk: TrunkForm): LimbForm[] {
  const forms = new Map<string, LimbForm>()
  const drawn: LimbForm[] = []
  let waiting = [...present]
  while (waiting.length > 0) {
    const ids = new Set(waiting.map(({ limb }) => limb.id))
    const ready = waiting.filter(({ limb }) => limb.parent === null || !ids.has(limb.parent))
    const round = ready.length > 0 ? ready : waiting
    const settled = round.filter(({ limb }) => !isFree(limb.bearing))
    for (const each of [...settled, ...round.filter(({ limb }) => isFree(limb.bearing))]) {
      const parent = each.limb.parent === null ? null : (forms.get(each.limb.parent) ?? null)
      const form = formOf(each, plan, trunk, parent, drawn)
      drawn.push(form)
      forms.set(each.limb.id, form)
    }
    waiting = ready.length > 0 ? waiting.filter((each) => !ready.includes(each)) : []
  }
  return drawn
}

/** Where a reduction cuts the limb: the parameter of its center line at the cut's height, or by its share. */
export function cutParameter(form: LimbForm, share: number, height: number | null): number {
  const [start, , , end] = form.curve
  if (form.byHeight && height !== null)
    return parameterAtShare(form, Math.max(0, (height - start.y) / (end.y - start.y)))
  return parameterAtShare(form, 1 - Math.sqrt(share))
}

/** Where a limb leaves the bark of what it grows on, drawn with diameters so many times too large. */
export function collarParameter(form: LimbForm, trunk: TrunkForm, exaggeration: number): number {
  const { parent, curve } = form
  const start = curve[0]
  const clear = (t: number): number => {
    const at = pointAt(curve, t)
    if (parent !== null)
      return Math.hypot(at.x - start.x, at.y - start.y) - parent.diameter * exaggeration * 0.4
    const half = (trunkDiameterAt(trunk, at.y) * exaggeration) / 2
    return Math.abs(at.x - axisAt(trunk, at.y)) - half
  }
  return Math.min(0.4, parameterWhere(clear, 0.006 * trunk.tip))
}
