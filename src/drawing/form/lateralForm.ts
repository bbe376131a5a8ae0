import type { Point } from '../shapes'
import { directionAt, pointAt } from './curve'
import { cutParameter, type LimbForm } from './limbForm'
import type { Taper } from './taper'

/** Across a lateral grows as far as its limb would on that rise, and a fifth of the rise more (house rule, for the drawing only). */
function outward(along: Point, side: 1 | -1, rise: number): number {
  const slope = Math.max(-0.8, Math.min(0.8, along.x / Math.max(0.3, along.y)))
  return (0.7 * slope + 0.2 * side) * rise
}

/**
 * The lateral that becomes the tip when a limb is reduced: from the cut, outward and up to the tip height of the plan.
 * Its diameter over the cut's is what is left of the rise over what the cut takes, as the plan computes it.
 */
export function lateralForm(form: LimbForm): Taper | null {
  const cut = form.present.cut?.cut
  if (cut?.kind !== 'reduce') return null
  const { tip } = form.present
  const from = pointAt(form.curve, cutParameter(form, cut.share, cut.cutHeight))
  const top = cut.endsAt ?? from.y
  const taken = tip - from.y
  const rise = top - from.y
  const kept = Math.abs(taken) > 1e-6 ? rise / taken : 1 / 3
  const along = directionAt(form.curve, cutParameter(form, cut.share, cut.cutHeight))
  const across = form.byHeight
    ? outward(along, form.side, Math.max(rise, 0))
    : form.side * Math.abs(form.curve[3].x - from.x) * kept
  const handle = 0.35 * Math.hypot(across, rise)
  return {
    // It leaves in the direction of the limb and turns a little out and up, as a side branch that takes over does.
    curve: [
      from,
      { x: from.x + along.x * handle, y: from.y + along.y * handle },
      { x: from.x + across * 0.88, y: from.y + rise * 0.62 },
      { x: from.x + across, y: top }
    ],
    diameter: (cut.work.section * Math.max(0, Math.min(1, kept))) / 1000,
    byHeight: form.byHeight
  }
}
