import type { TreePlan } from './plan'

/** Share of the tree's foliage that its listed limbs carry at the first visit, 0 to 1; null where none was judged. */
export function listedFoliage({ visits }: TreePlan): number | null {
  const limbs = visits[0]?.limbs ?? []
  if (limbs.length === 0) return null
  const ids = new Set(limbs.map(({ limb }) => limb.id))
  let share = 0
  for (const { limb, foliageShare } of limbs)
    if (limb.parent === null || !ids.has(limb.parent)) share += foliageShare
  return Math.min(1, share)
}
