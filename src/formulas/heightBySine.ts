import { refuse, type Refusal } from '../../shared/refusal'

const degree = Math.PI / 180

/**
 * Height of a tree from slant distances and angles to its top and base: R·sin(top) − R′·sin(base), the base angle
 * negative below the eye. Right also where the top does not stand over the base.
 *
 * Source: sine method, nativetreesociety.org (tops average 13 ft off the base).
 */
export function heightBySine(
  topRange: number,
  topAngle: number,
  baseRange: number,
  baseAngle: number
): number | Refusal {
  const height = topRange * Math.sin(topAngle * degree) - baseRange * Math.sin(baseAngle * degree)
  return height > 0
    ? height
    : refuse('The top does not come out above the base: give the base angle as negative below the eye.')
}
