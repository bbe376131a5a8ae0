import type { TreePlan, Visit } from '../plan/plan'
import { pointAt, type Curve } from './form/curve'
import { lateralForm } from './form/lateralForm'
import { collarParameter, cutParameter, limbForms, type LimbForm } from './form/limbForm'
import { limbsAtVisit } from './form/limbsAtVisit'
import type { Scale } from './paper'
import type { Point } from './shapes'
import type { Taper } from './form/taper'
import { trunkForm, type TrunkForm } from './form/trunkForm'

/** What becomes of a limb at the visit drawn. */
export type Fate = 'kept' | 'reduced' | 'removed'

export interface SceneLimb {
  form: LimbForm
  fate: Fate
  /** The lateral that becomes the tip. */
  lateral: Taper | null
}

/** Everything that stands in the drawing, in meters. */
export interface Scene {
  plan: TreePlan
  visit: Visit | null
  trunk: TrunkForm
  height: number
  crownBase: number | null
  limbs: SceneLimb[]
  notDrawn: string[]
}

function fateOf(form: LimbForm): Fate {
  if (form.present.goes) return 'removed'
  const kind = form.present.cut?.cut.kind
  return kind === undefined || kind === 'raise' ? 'kept' : kind === 'remove' ? 'removed' : 'reduced'
}

function crownBaseBefore(plan: TreePlan, visit: Visit | null): number | null {
  const earlier = visit === null ? undefined : plan.visits.find((each) => each.visit === visit.visit - 1)
  return earlier?.crownBaseAfter ?? plan.tree.crownBase
}

/** The tree when the visit begins with what the visit does to it, or null where its height is not known. */
export function sceneOf(plan: TreePlan, visit: Visit | null): Scene | null {
  const { present, notDrawn } = limbsAtVisit(plan, visit)
  const trunk = trunkForm(plan, present)
  if (trunk === null) return null
  const limbs = limbForms(plan, present, trunk).map((form): SceneLimb => {
    const lateral = lateralForm(form)
    return { form, fate: fateOf(form), lateral }
  })
  return {
    plan,
    visit,
    trunk,
    height: plan.tree.height ?? trunk.tip,
    crownBase: crownBaseBefore(plan, visit),
    limbs,
    notDrawn
  }
}

/** The parameter up to which the limb stays, and from which it comes off. */
export function cutAt({ form, fate }: SceneLimb): number {
  const cut = form.present.cut?.cut
  return fate === 'kept'
    ? 1
    : fate === 'removed' || cut === undefined
      ? 0
      : cutParameter(form, cut.share, cut.cutHeight)
}

/** Where the cut is made: at the collar of a limb removed, along a limb reduced. */
export function markParameter(limb: SceneLimb, scene: Scene, scale: Scale): number {
  return limb.fate === 'removed' ? collarParameter(limb.form, scene.trunk, scale.exaggeration) : cutAt(limb)
}

function along(curve: Curve, from = 0, to = 1): Point[] {
  return Array.from({ length: 13 }, (_, index) => pointAt(curve, from + ((to - from) * index) / 12))
}

/** Points of the limb's center line that are there before the visit, or after it. */
export function livePoints(limb: SceneLimb, when: 'before' | 'after', from = 0): Point[] {
  if (when === 'before' || limb.fate === 'kept') return along(limb.form.curve, from)
  if (limb.fate === 'removed') return []
  const cut = cutAt(limb)
  const kept = from < cut ? along(limb.form.curve, from, cut) : []
  return [...kept, ...(limb.lateral === null ? [] : along(limb.lateral.curve))]
}
