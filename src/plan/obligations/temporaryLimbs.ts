import { isOver } from '../../formulas/boundary'
import { aspectRatio } from '../../formulas/diameters'
import { growthAfterLoss } from '../../formulas/growth'
import { carriersFirst, takeAway, type GrowingLimb } from '../growingLimb'
import { growthRate } from '../growthRate'
import { removalOf } from '../removal'
import type { VisitConditions } from '../visitConditions'
import { fits, keepsCrown, make, type FirstPass } from './passState'
import { wait } from './shorten'

/**
 * Temporary limbs that would pass 2 in or half of their stem by the next visit, or whose year comes before it, are removed; one
 * that was raised just now too, as that only puts off what is due: its removal takes the place of the raising.
 */
export function removeTemporaryLimbs(pass: FirstPass): void {
  const { conditions } = pass
  // What goes with the limb that carries it is not cut before by itself.
  for (const limb of carriersFirst(conditions.limbs)) {
    const { surveyed } = limb
    if (limb.gone || limb.permanence !== 'temporary') continue
    if (pass.obliged.has(limb)) {
      removeRatherThanRaise(pass, limb)
      continue
    }
    if (!isDue(limb, conditions)) continue
    const cut = removalOf(limb)
    if (surveyed.decay) wait(pass, limb, 'inspect first')
    else if (!keepsCrown(pass, limb)) wait(pass, limb, 'crown ratio')
    else if (fits(pass, cut)) make(pass, limb, cut, 'temporary')
    else wait(pass, limb, 'allowance')
  }
}

function removeRatherThanRaise(pass: FirstPass, limb: GrowingLimb): void {
  const at = pass.made.findIndex((each) => each.limb === limb)
  const raised = pass.made[at]
  if (raised?.cut.kind !== 'raise' || raised.assessed === null) return
  const before = raised.assessed.limb
  // What is left of it once it is raised is what its removal takes more.
  if (!isDue(before, pass.conditions) || !fits(pass, removalOf(limb)) || !keepsCrown(pass, limb)) return
  const more = removalOf(limb).dose
  pass.made[at] = { ...raised, cut: removalOf(before), obligation: 'temporary' }
  pass.left = Math.max(0, pass.left - more)
  takeAway(limb)
}

function isDue(limb: GrowingLimb, conditions: VisitConditions): boolean {
  const { rules, years, stemGrowth, year } = conditions
  if (limb.goneBy !== null && limb.goneBy < year + years) return true
  const rate = growthRate(limb, aspectRatio(limb.diameter, limb.stem), limb.tip, limb.shortened, conditions)
  const diameter = limb.diameter + growthAfterLoss(rate, limb.loss, years, limb.lossAge, limb.fade)
  const ratio = aspectRatio(diameter, limb.stem + years * stemGrowth)
  return isOver(diameter, rules.temporaryCut) || isOver(ratio, rules.temporaryRatio)
}
