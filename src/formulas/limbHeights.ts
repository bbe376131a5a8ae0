import { refuse, type Refusal } from '../../shared/refusal'

/**
 * What is wrong with the heights of a limb and its tree, or null where they go together. All in one unit. A tip below
 * the origin is a drooping limb and in order.
 */
export function checkHeights(origin: number, tip: number, height: number, crownBase: number): Refusal | null {
  if (crownBase >= height)
    return refuse('The crown base is not below the top of the tree: check both heights.')
  if (origin >= height) return refuse('The limb starts at or above the top of the tree: check both heights.')
  if (tip > height) return refuse('The tip is above the top of the tree: check both heights.')
  return null
}
