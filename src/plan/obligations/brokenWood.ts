import { isOver, isUnder } from '../../formulas/boundary'
import { cutShare, diameterAlong, lateralFraction, tipAfterCut } from '../../formulas/cuts'
import { aspectRatio } from '../../formulas/diameters'
import { growthAfterLoss, lossAfterCut, ratioAfterGrowth } from '../../formulas/growth'
import type { Limb } from '../../inventory/inventory'
import { carried, carriersFirst, type GrowingLimb } from '../growingLimb'
import { growthRate } from '../growthRate'
import type { PossibleCut } from '../possibleCut'
import { removalOf } from '../removal'
import { priorityOf, type VisitConditions } from '../visitConditions'
import { make, type FirstPass } from './passState'
import { wait } from './shorten'

/**
 * Broken wood: cut to the nearest lateral or union below the break. What lies beyond it counts as lost already, so it takes
 * nothing of the allowance; where nothing sound is known below the break, the limb is removed.
 */
export function cutBrokenWood(pass: FirstPass): void {
  if (pass.conditions.first) cutBrokenLeader(pass)
  // What goes with the limb that carries it is not cut before by itself.
  for (const limb of carriersFirst(pass.conditions.limbs)) {
    const { surveyed } = limb
    if (limb.gone || !surveyed.broken || limb.corrected) continue
    if (surveyed.decay) {
      wait(pass, limb, 'inspect first')
      continue
    }
    const lateral = soundLateral(limb)
    const cut = lateral === null ? { ...removalOf(limb), dose: 0 } : backTo(limb, lateral, pass)
    make(pass, limb, cut, 'broken')
    limb.corrected = true
  }
}

/** Where sound wood is known on a broken limb: its first live lateral, or the highest listed limb on it that is sound. */
interface SoundLateral {
  readonly origin: number
  readonly limb: GrowingLimb | null
}

/** Above the one and below the other, on neither. */
function isBetween(value: number, low: number, high: number): boolean {
  return isOver(value, low) && isUnder(value, high)
}

function soundLateral({ surveyed, children, origin, tip }: GrowingLimb): SoundLateral | null {
  const { lateralHeight, breakHeight } = surveyed
  const below = breakHeight === null ? tip : Math.min(tip, breakHeight)
  let highest: SoundLateral | null =
    lateralHeight !== null && isBetween(lateralHeight, origin, below)
      ? { origin: lateralHeight, limb: null }
      : null
  for (const child of children) {
    const { broken, decay } = child.surveyed
    const isSound = !child.gone && !broken && !decay && isBetween(child.origin, origin, below)
    if (isSound && (highest === null || isOver(child.origin, highest.origin)))
      highest = { origin: child.origin, limb: child }
  }
  return highest
}

/** The first live lateral by the cut; where its diameter was not measured, the least that a cut is left with. */
function lateralRatio({ surveyed }: GrowingLimb, diameter: number, { rules }: VisitConditions): number {
  const { lateral, cut } = surveyed
  return lateral === null || cut !== null
    ? lateralFraction(diameter, rules)
    : Math.min(1, aspectRatio(lateral, diameter))
}

function backTo(limb: GrowingLimb, { origin, limb: lateral }: SoundLateral, pass: FirstPass): PossibleCut {
  const { conditions } = pass
  const along = (origin - limb.origin) / (limb.tip - limb.origin)
  const diameter = diameterAlong(limb.diameter, along)
  const share = cutShare(diameter, limb.diameter)
  const tipAfter =
    lateral === null
      ? tipAfterCut(limb, share, lateralRatio(limb, diameter, conditions))
      : Math.min(limb.tip, Math.max(lateral.tip, origin))
  const ratio = limb.diameter / limb.stem
  const rate = growthRate(limb, ratio, tipAfter, true, conditions)
  const loss = lossAfterCut(carried(limb), share)
  const gain = growthAfterLoss(rate, loss, conditions.years, 0, limb.fade)
  const stem = { diameter: limb.stem, gain: conditions.years * conditions.stemGrowth }
  const nextRatio = ratioAfterGrowth({ diameter: limb.diameter, gain }, stem)
  return {
    kind: 'reduce',
    share,
    cutDiameter: diameter,
    count: 1,
    cutHeight: origin,
    distance: null,
    beyond: 1 - along,
    tipAfter,
    dose: 0,
    nextRatio,
    nextPriority: priorityOf(limb, nextRatio, tipAfter, conditions),
    lateral
  }
}

/** A leader that is broken is cut back to the limb that takes over, or else to sound wood on site. */
function cutBrokenLeader({ tree, made }: FirstPass): void {
  const { lost, limb: heir } = tree.leader
  if (lost === null || lost.dead || !lost.broken || lost.decay) return
  made.push({ surveyed: lost, limb: null, assessed: null, cut: leaderCut(lost, heir), obligation: 'broken' })
}

/** A known height on a leader, below its break where that was measured. */
function isBelowBreak(height: number | null, { breakHeight }: Limb): boolean {
  return height !== null && (breakHeight === null || isUnder(height, breakHeight))
}

function leaderCut(lost: Limb, heir: Limb | null): PossibleCut {
  const { tip, diameter } = lost
  const origin = lost.origin ?? 0
  const ofHeir = heir === lost ? null : (heir?.origin ?? null)
  const place = isBelowBreak(lost.lateralHeight, lost) ? lost.lateralHeight : ofHeir
  const along =
    place === null || tip === null || !isOver(tip, origin) ? null : (place - origin) / (tip - origin)
  const isKnown = along !== null && isBetween(along, 0, 1)
  const beyond = isKnown ? 1 - along : 1
  return {
    kind: 'reduce',
    share: beyond * beyond,
    cutDiameter: (diameter ?? 0) * beyond,
    count: 1,
    cutHeight: isKnown ? place : null,
    distance: null,
    beyond,
    tipAfter: isKnown ? (place ?? origin) : origin,
    dose: 0,
    nextRatio: 0,
    nextPriority: 0,
    lateral: null
  }
}
