import { refuse, type Refusal } from '../../shared/refusal'

const degree = Math.PI / 180

/**
 * Height of a tree from a distance and two angles: distance × (tan top − tan base). The distance is level, from the
 * eye to the trunk; angles are in degrees from level, the base angle negative where the base is below the eye. Gives
 * the height in the distance's unit. The top is taken to stand over the base.
 *
 * Source: tangent method, common forestry practice; a top that leans or spreads errs it by 15 to 25 ft
 * (nativetreesociety.org).
 */
export function treeHeight(distance: number, topAngle: number, baseAngle: number): number | Refusal {
  return topAngle > baseAngle
    ? distance * (Math.tan(topAngle * degree) - Math.tan(baseAngle * degree))
    : refuse('The top angle is not above the base angle: give the base angle as negative below the eye.')
}
