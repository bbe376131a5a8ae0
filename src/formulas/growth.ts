import { defaultRules, type Rules } from '../../shared/rules'
import { atMost, wholeUp } from './boundary'
import { aspectRatio } from './diameters'

/** A diameter and what it gains until then, in one unit. */
export interface Growing {
  readonly diameter: number
  readonly gain: number
}

/** Aspect ratio once limb and stem have gained: (d + gain) / (D + gain). */
export function ratioAfterGrowth(limb: Growing, stem: Growing): number {
  return aspectRatio(limb.diameter + limb.gain, stem.diameter + stem.gain)
}

/** A diameter and what it gains a year, in one unit. */
export interface GrowingYearly {
  readonly diameter: number
  readonly yearly: number
}

/** Aspect ratio after some years: (d + years·limb growth) / (D + years·stem growth). */
export function projectedRatio(limb: GrowingYearly, stem: GrowingYearly, years: number): number {
  return ratioAfterGrowth(
    { diameter: limb.diameter, gain: years * limb.yearly },
    { diameter: stem.diameter, gain: years * stem.yearly }
  )
}

/**
 * Share of a cut's effect that is left in the year that begins `years` after it: 1, 2/3, 1/3, then 0 where it fades over
 * three years.
 *
 * Source: gone after three growing seasons, Loyd, Smiley & Fite 2024, AUF 50(6):414-426; the linear fading between is
 * a house rule.
 */
export function effectLeft(years: number, fade = defaultRules.effectYears): number {
  if (years >= fade) return 0
  return years <= 0 ? 1 : 1 - Math.floor(years) / fade
}

/** Share of its full foliage that a limb carries so many years after it lost a share: 1 − loss·m. */
export function foliageKept(loss: number, years: number, fade = defaultRules.effectYears): number {
  return loss === 0 ? 1 : 1 - loss * effectLeft(years, fade)
}

/** Share of its full foliage that a limb has lost once a cut takes a share of what it carries. */
export function lossAfterCut(kept: number, share: number): number {
  return 1 - kept * (1 - share)
}

/**
 * Diameter growth a year of an unpruned limb from its stem's: g·min(1, a/0.8) where its tip is in the canopy's upper
 * third, else g·a (house rule).
 */
export function limbGrowth(
  stemGrowth: number,
  aspectRatio: number,
  tipInUpperThird: boolean,
  rules: Rules = defaultRules
): number {
  return tipInUpperThird
    ? stemGrowth * Math.min(1, aspectRatio / rules.fullGrowthRatio)
    : stemGrowth * aspectRatio
}

/**
 * Diameter growth a year of a shortened limb that others overtop: g·a·0.5 (house rule; Gilman & Grabosky 2009 give the
 * direction only: the leader grew more and the pruned stem less).
 */
export function overtoppedGrowth(
  stemGrowth: number,
  aspectRatio: number,
  rules: Rules = defaultRules
): number {
  return stemGrowth * aspectRatio * rules.overtoppedGrowth
}

/**
 * Whole years until a tree reaches a height, its height growing as its trunk diameter to the power 2/3 (house rule): null
 * where it does not grow. Heights in one unit; trunk and growth a year in one unit.
 */
export function yearsToHeight(
  needed: number,
  height: number,
  trunk: number,
  growthAYear: number,
  rules: Rules = defaultRules
): number | null {
  if (atMost(needed, height)) return 0
  if (!(trunk > 0 && growthAYear > 0)) return null
  const factor = (needed / height) ** (1 / rules.heightPower)
  return wholeUp((trunk * (factor - 1)) / growthAYear)
}

/**
 * Years' worth of growth that a limb makes over the next whole years, given the share it lost and how many years ago:
 * Σ (1 − loss·m), m fading as `effectLeft` says.
 *
 * Source: growth loss proportional to the foliage removed, Gilman & Grabosky 2009, AUF 35(6):281-286.
 */
function growthYears(loss: number, age: number, years: number, fade = defaultRules.effectYears): number {
  if (loss === 0) return years
  let sum = 0
  for (let year = 0; year < years; year++) sum += foliageKept(loss, age + year, fade)
  return sum
}

/** Diameter gained over whole years by a limb that lost a share of its foliage, `age` years before they begin. */
export function growthAfterLoss(
  growthAYear: number,
  loss: number,
  years: number,
  age = 0,
  fade = defaultRules.effectYears
): number {
  return growthAYear * growthYears(loss, age, years, fade)
}
