import { percent } from '../../shared/words/percent'
import type { Visit } from '../plan/plan'
import { shownDoses } from '../plan/shownDoses'
import type { Point, Shape } from './shapes'
import { strokes } from './shapes'

/** "18.3 % of 20 %". */
export function doseOfAllowed(visit: Visit): string {
  const { allowed, visit: dose } = shownDoses(visit)
  return `${percent(dose)} of ${percent(allowed)}`
}

/** The dose of a visit in words. */
export function doseWords(visit: Visit): string {
  if (visit.allowedRemoval <= 0) return 'No live wood this season'
  return `Foliage removed: ${doseOfAllowed(visit)} allowed`
}

/** A bar as long as the allowance, filled by the dose; the frame is the ceiling and no target. */
export function doseBar(visit: Visit, at: Point, width: number, height: number): Shape[] {
  const { dose, allowedRemoval } = visit
  const share = allowedRemoval > 0 ? Math.min(1, dose / allowedRemoval) : 0
  const filled = width * share
  const bars: [Point, Point][] = []
  for (let x = at.x + 4; x < at.x + filled - 1; x += 5)
    bars.push([
      { x, y: at.y + 1 },
      { x, y: at.y + height - 1 }
    ])
  return [
    { kind: 'rect', ...at, width: filled, height, look: 'bar', depicts: { part: 'dose' } },
    { kind: 'path', steps: strokes(bars), look: 'barTicks' },
    { kind: 'rect', ...at, width, height, look: 'frame', depicts: { part: 'allowance' } }
  ]
}
