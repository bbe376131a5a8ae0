/**
 * Shares of foliage among the rows given: d²/Σd².
 *
 * Source: Grabosky, Gilman & Harchick 2007, Urban For. Urban Green. 6:159-167. A single limb is known to ±30 % only
 * (house reading of open data).
 */
export function sharesAmong(diameters: readonly number[]): number[] {
  let squares = 0
  for (const diameter of diameters) squares += diameter * diameter
  return diameters.map((diameter) => (diameter * diameter) / squares)
}

/**
 * What the whole tree's foliage is measured against: S = max(Σd² + D_top², max(D² + d²)) over the live limbs on the
 * trunk, D the stem just above each union and D_top that of the highest union. Sparse surveys leave limbs out, so S
 * comes out small and doses large, which errs on the safe side.
 */
export function crownSection(limbs: readonly { diameter: number; stem: number; origin: number }[]): number {
  let squares = 0
  let largest = 0
  let topOrigin = -Infinity
  let topStem = 0
  for (const { diameter, stem, origin } of limbs) {
    const square = diameter * diameter
    squares += square
    if (stem * stem + square > largest) largest = stem * stem + square
    if (origin > topOrigin || (origin === topOrigin && stem < topStem)) {
      topOrigin = origin
      topStem = stem
    }
  }
  return Math.max(squares + topStem * topStem, largest)
}

/** The engine's shares for limbs with their stems: d²/S. */
export function sharesWithStems(
  limbs: readonly { diameter: number; stem: number; origin: number }[]
): number[] {
  const section = crownSection(limbs)
  return limbs.map(({ diameter }) => (diameter * diameter) / section)
}
