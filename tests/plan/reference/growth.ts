/** Growth between visits (design, section 3). */
import { classGrowth, stageGrowthFactor, type Rules } from '../../../shared/rules'
import { atLeast } from './near'
import { upperThird } from './priority'
import type { LimbNow, TreeNow } from './model'

/** What is left of a cut's effect after so many years: 1, 2/3, 1/3, 0. */
export function effectLeft(rules: Rules, years: number): number {
  return Math.max(0, 1 - years / rules.effectYears)
}

/** The part of its foliage that a limb has, 1 − f·m, or of its growth, so many years on. */
export function partLeft(rules: Rules, { lost, since }: Pick<LimbNow, 'lost' | 'since'>, later = 0): number {
  return 1 - lost * effectLeft(rules, since + later)
}

/** A limb that loses a share of what it has. */
export function losing(
  rules: Rules,
  limb: Pick<LimbNow, 'lost' | 'since'>,
  share: number
): Pick<LimbNow, 'lost' | 'since'> {
  return { lost: 1 - partLeft(rules, limb) * (1 - share), since: 0 }
}

/** What the stem grows in diameter a year; a measured rate wins. */
export function stemGrowth({ tree, rules, now }: Pick<TreeNow, 'tree' | 'rules' | 'now'>): number {
  if (typeof tree.growth === 'number') return tree.growth
  return classGrowth(rules, tree.growth ?? 'medium') * stageGrowthFactor(rules, now)
}

type Growing = Pick<LimbNow, 'diameter' | 'stem' | 'origin' | 'tip' | 'lost' | 'since' | 'shortened'>

/** What an unpruned limb, or one that is overtopped, grows in diameter a year. */
export function limbGrowth(tree: TreeNow, limb: Growing): number {
  const { rules } = tree
  const ratio = limb.diameter / limb.stem
  const inUpperThird = atLeast(limb.tip, upperThird(tree))
  const halfWay = limb.origin + (tree.height - limb.origin) * rules.overtoppedBelow
  if (limb.shortened && (!inUpperThird || !atLeast(limb.tip, halfWay)))
    return stemGrowth(tree) * ratio * rules.overtoppedGrowth
  return stemGrowth(tree) * (inUpperThird ? Math.min(1, ratio / rules.fullGrowthRatio) : ratio)
}

/** The limb and its stem after years of growth. */
export function grown(tree: TreeNow, limb: Growing, years: number): { diameter: number; stem: number } {
  const rate = limbGrowth(tree, limb)
  let { diameter, stem } = limb
  for (let year = 0; year < years; year++) {
    diameter += rate * partLeft(tree.rules, limb, year)
    stem += stemGrowth(tree)
  }
  return { diameter, stem }
}

export function projectedRatio(tree: TreeNow, limb: Growing, years = tree.interval): number {
  const { diameter, stem } = grown(tree, limb, years)
  return diameter / stem
}
