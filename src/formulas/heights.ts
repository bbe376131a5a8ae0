import { refuse, type Refusal } from '../../shared/refusal'
import { atLeast, isOver } from './boundary'

const degree = Math.PI / 180

/**
 * Height of a tree from a distance and two angles: distance × (tan top − tan base). The distance is level, from the
 * eye to the trunk; angles are in degrees from level, the base angle negative where the base is below the eye. Gives
 * the height in the distance's unit. The top is taken to stand over the base.
 *
 * Source: tangent method, common forestry practice; a top that leans or spreads causes an error of 15 to 25 ft
 * (nativetreesociety.org).
 */
export function treeHeight(distance: number, topAngle: number, baseAngle: number): number | Refusal {
  return topAngle > baseAngle
    ? distance * (Math.tan(topAngle * degree) - Math.tan(baseAngle * degree))
    : refuse('The top angle is not above the base angle: give the base angle as negative below the eye.')
}

/** Where a limb starts on its trunk or its parent, and how high its tip is; the tip of a drooping limb is the lower. */
export interface LimbHeights {
  readonly origin: number
  readonly tip: number
}

/** How tall a tree is, and where its live crown begins. */
export interface TreeHeights {
  readonly height: number
  readonly crownBase: number
}

/**
 * What is wrong with the heights of a limb and its tree, or null where they go together. All in one unit. A tip below
 * the origin is a drooping limb and in order.
 */
export function checkHeights(
  { origin, tip }: LimbHeights,
  { height, crownBase }: TreeHeights
): Refusal | null {
  if (atLeast(crownBase, height))
    return refuse('The crown base is not below the top of the tree: check both heights.')
  if (atLeast(origin, height))
    return refuse('The limb starts at or above the top of the tree: check both heights.')
  if (isOver(tip, height)) return refuse('The tip is above the top of the tree: check both heights.')
  return null
}
