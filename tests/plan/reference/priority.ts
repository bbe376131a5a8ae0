import type { Limb } from '../../../src/inventory/inventory'
import { barkScore } from '../../../shared/rules'
import { atLeast } from './near'
import type { TreeModel } from './model'

function clamp(value: number): number {
  return Math.min(1, Math.max(0, value))
}

/** Where the canopy's upper third starts. */
export function upperThird({ height, crownBase }: TreeModel): number {
  return height - (height - crownBase) / 3
}

export function startsLow({ height }: TreeModel, origin: number): number {
  return clamp((height / 2 - origin) / (height / 2))
}

export function reachesHigh(tree: TreeModel, tip: number): number {
  const start = upperThird(tree)
  return clamp((tip - start) / (tree.height - start))
}

/** 100·(0.45·A + 0.30·R + 0.10·T): the priority without included bark. */
export function structuralPart(tree: TreeModel, ratio: number, origin: number, tip: number): number {
  const { rules, height } = tree
  const A = Math.max(0, (ratio - rules.ratioScoredFrom) / (1 - rules.ratioScoredFrom))
  const R = Math.sqrt(startsLow(tree, origin) * reachesHigh(tree, tip))
  const T = clamp((tip / height - rules.tipScoredFrom) / (1 - rules.tipScoredFrom))
  return 100 * (rules.weightRatio * A + rules.weightReach * R + rules.weightTip * T)
}

export function priority(
  tree: TreeModel,
  bark: Limb['bark'],
  ratio: number,
  origin: number,
  tip: number
): number {
  return structuralPart(tree, ratio, origin, tip) + 100 * tree.rules.weightBark * barkScore(tree.rules, bark)
}

/** Competing or codominant: more than gaining. */
export function competes({ rules }: TreeModel, ratio: number): boolean {
  return ratio > rules.gainingUpTo + 1e-6
}

/** The band of an aspect ratio. */
export function standing(
  { rules }: TreeModel,
  ratio: number,
  bark: Limb['bark']
): 'subordinate' | 'gaining' | 'competing' | 'codominant' {
  if (atLeast(ratio, bark === 'none' ? rules.codominantFrom : rules.codominantIncludedFrom))
    return 'codominant'
  if (ratio <= rules.subordinateUpTo + 1e-6) return 'subordinate'
  return competes({ rules } as TreeModel, ratio) ? 'competing' : 'gaining'
}
