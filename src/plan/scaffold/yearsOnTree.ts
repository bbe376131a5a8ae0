import { visitInterval, type Rules } from '../../../shared/rules'
import { isOver } from '../../formulas/boundary'
import { aspectRatio } from '../../formulas/diameters'
import { growthAfterLoss } from '../../formulas/growth'
import { upperThird } from '../../formulas/priority'
import type { GrowingLimb } from '../growingLimb'
import { growthRate } from '../growthRate'
import type { PreparedTree } from '../prepareTree'

/** A limb is as thick as a temporary one may be, or thicker: by itself, or beside its stem. */
export function isTooThick(
  { diameter, stem }: Pick<GrowingLimb, 'diameter' | 'stem'>,
  rules: Rules
): boolean {
  return isOver(diameter, rules.temporaryCut) || isOver(aspectRatio(diameter, stem), rules.temporaryRatio)
}

/**
 * The year by which a temporary limb goes: the first in which it would be thicker than 2 in or than half its stem if it grows
 * on unpruned, at most 25 years ahead (Gilman & Black, Circular 853/MG087: less than half the trunk; the size and the
 * look ahead are house rules).
 */
export function goesBy(limb: GrowingLimb, tree: PreparedTree, year: number, rules: Rules): number {
  const { stemGrowth, height, crownBase } = tree
  const conditions = { stemGrowth, height, rules, third: upperThird(height, crownBase) }
  const years = visitInterval(rules, tree.stage)
  let { diameter, stem } = limb
  for (let passed = 0; passed < rules.expectedYears; passed += years) {
    if (isTooThick({ diameter, stem }, rules)) return year + passed
    const rate = growthRate(limb, aspectRatio(diameter, stem), limb.tip, limb.shortened, conditions)
    for (let ahead = 1; ahead <= years; ahead++) {
      const gain = growthAfterLoss(rate, limb.loss, ahead, limb.lossAge + passed, limb.fade)
      const then = { diameter: diameter + gain, stem: stem + ahead * stemGrowth }
      if (isTooThick(then, rules)) return year + Math.min(passed + ahead, rules.expectedYears)
      if (ahead === years) ({ diameter, stem } = then)
    }
  }
  return year + rules.expectedYears
}
