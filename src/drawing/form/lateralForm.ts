import { pointAt } from './curve'
import { cutParameter, type LimbForm } from './limbForm'
import type { Taper } from './taper'

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
  const across =
    form.side * (form.byHeight ? 0.6 * Math.max(rise, 0) : Math.abs(form.curve[3].x - from.x) * kept)
  return {
    curve: [
      from,
      { x: from.x + 0.55 * across, y: from.y + 0.2 * rise },
      { x: from.x + 0.92 * across, y: from.y + 0.55 * rise },
      { x: from.x + across, y: top }
    ],
    diameter: (cut.work.section * Math.max(0, Math.min(1, kept))) / 1000,
    byHeight: form.byHeight
  }
}
