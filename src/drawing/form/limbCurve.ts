import type { Curve } from './curve'
import type { Point } from '../shapes'

/** Out from the trunk at its angle, then up to its tip; a limb that hardly rises arches over. */
export function limbCurve(
  start: Point,
  across: number,
  rise: number,
  tilt: number,
  byHeight: boolean
): Curve {
  const end = { x: start.x + across, y: start.y + rise }
  if (!byHeight) {
    const arch = 0.12 * Math.abs(across)
    return [
      start,
      { x: start.x + 0.4 * across, y: start.y + arch },
      { x: start.x + 0.8 * across, y: start.y + arch + 0.35 * rise },
      end
    ]
  }
  const radians = (Math.max(5, Math.min(tilt, 85)) * Math.PI) / 180
  const handle = 0.42 * Math.hypot(across, rise)
  const out = Math.min(Math.abs(across) * 0.75, handle * Math.sin(radians)) * Math.sign(across)
  const up = Math.max(0.04 * rise, Math.min(0.45 * rise, handle * Math.cos(radians)))
  return [
    start,
    { x: start.x + out, y: start.y + up },
    { x: start.x + 0.93 * across, y: start.y + 0.6 * rise },
    end
  ]
}

/** Degrees from vertical at which a limb leaves where no angle was measured (house rule, for the drawing only). */
export function usualTilt(aspectRatio: number | null): number {
  return 68 - 38 * Math.min(1, aspectRatio ?? 0.4)
}
