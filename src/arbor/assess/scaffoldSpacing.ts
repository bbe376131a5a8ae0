/** Least distance between permanent limbs up the trunk, as a share of the height at maturity. */
const shareOfMatureHeight = 0.03

/**
 * Least distance up the trunk between the permanent limbs of a tree: 3 % of its height at maturity, in that height’s
 * unit. 50 ft gives 1.5 ft.
 *
 * Source: ISA consumer brochure, Pruning Young Trees (read as reprinted).
 */
export function scaffoldSpacing(matureHeight: number): number {
  return shareOfMatureHeight * matureHeight
}
