import { refuse, type Refusal } from '../../shared/refusal'

/**
 * Height of a tree from a level distance and a percent scale: distance × (top − base) / 100, base negative below the
 * eye. 100 ft with 52 % and −6 % gives 58 ft. The top is taken to stand over the base.
 *
 * Source: percent scale of a clinometer, common practice, no source.
 */
export function heightByPercent(distance: number, topPercent: number, basePercent: number): number | Refusal {
  return topPercent > basePercent
    ? (distance * (topPercent - basePercent)) / 100
    : refuse('The top reading is not above the base reading: give the base as negative below the eye.')
}
