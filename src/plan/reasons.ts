import { barkScore } from '../../shared/rules'
import { lowAndHigh, standing, type Standing } from '../formulas/priority'
import { points, ratio as ratioText } from '../../shared/words/figures'
import { showDiameter, showHeight } from '../../shared/words/lengths'
import { ceilingPercent, percent } from '../../shared/words/percent'
import type { AssessedLimb } from './assessLimb'
import { inClearance } from './clearance'
import type { Barrier, PossibleCut } from './possibleCut'
import { removalReason } from './removalReason'
import type { VisitConditions } from './visitConditions'

/** Texts that a plan needs the same few thousands of times are made once and kept. */
function kept(texts: string[], key: number, make: () => string): string {
  return (texts[key] ??= make())
}

const foliageTexts: string[] = []
const heavierTexts: string[] = []
const woundTexts: string[] = []

function eighths(share: number): string {
  const parts = Math.round(share * 8)
  return Math.abs(share * 8 - parts) < 1e-9 ? `${parts}/8` : percent(share)
}

const places: Record<Standing, string> = {
  codominant: 'Codominant',
  competing: 'Competes with the leader',
  gaining: 'Gaining on the leader',
  subordinate: 'Subordinate'
}

/**
 * What makes the limb matter: its ratio, its bark, where it starts and how high it reaches. In pieces: a text joined at once is one
 * flat text, and a plan of such texts takes an eighth less memory than one of texts that grew piece by piece.
 */
function findings(assessed: AssessedLimb, conditions: VisitConditions): string[] {
  const { limb, aspectRatio: ratio } = assessed
  const { surveyed } = limb
  const { system, height, clearance, rules } = conditions
  const found = [places[standing(ratio, surveyed.bark, rules)], ': ', ratioText(ratio), ' of the stem']
  if (surveyed.bark !== 'none') found.push(', ', surveyed.bark, ' bark inclusion')
  if (lowAndHigh(limb, conditions) > 0) {
    found.push(', starts at ', showHeight(limb.origin, system), ' and reaches ')
    found.push(showHeight(limb.tip, system), ' of ', showHeight(height, system))
  }
  if (inClearance(limb, conditions)) {
    found.push(', hangs to ', showHeight(limb.lowest, system), ', below the clearance of ')
    found.push(showHeight(clearance ?? 0, system, 'at least'))
  }
  if (surveyed.broken) found.push(', broken')
  if (surveyed.rubbing) found.push(', rubbing')
  return found
}

/** Why this cut, in the trade's words with the numbers behind it. */
export function reasonForCut(assessed: AssessedLimb, cut: PossibleCut, conditions: VisitConditions): string {
  const pieces = findings(assessed, conditions)
  const priority = points(assessed.priority)
  const dose = percent(cut.dose)
  if (cut.kind === 'remove') {
    const why = removalReason(assessed.limb, assessed.aspectRatio, conditions) ?? ''
    pieces.push('. Removed (', why, '): takes ', dose)
    pieces.push(' of the tree’s foliage and ends its priority of ', priority, '.')
  } else {
    pieces.push('. Shortened by ', eighths(cut.share), ' of its foliage')
    if (cut.lateral !== null) pieces.push(', back to limb ', cut.lateral.surveyed.id)
    pieces.push(', ', dose, ' of the tree’s: priority ', priority, ' now, ')
    pieces.push(points(cut.nextPriority), ' at the next visit.')
  }
  return pieces.join('')
}

export function reasonForDeadWood(): string {
  return 'Dead wood: costs no live foliage.'
}

/** What was weighed and refused for a limb that is cut. */
export function refusedFor(assessed: AssessedLimb, cut: PossibleCut, conditions: VisitConditions): string[] {
  if (cut.kind === 'remove') return ['shortening refused: it would leave a limb that is better gone']
  const refused = [removalRefused(assessed, cut, conditions)]
  const heaviest = conditions.steps.at(-1) ?? 0
  if (cut.share < heaviest - 1e-9 && assessed.limb.surveyed.cut === null)
    refused.push(heavierRefused(heaviest, conditions.allowed))
  return refused
}

function heavierRefused(heaviest: number, allowed: number): string {
  return kept(
    heavierTexts,
    Math.round(heaviest * 8) * 10_000 + Math.floor(allowed * 1000 + 1e-6),
    () =>
      `heavier cuts refused: up to ${eighths(heaviest)} was weighed; the allowance of ${ceilingPercent(allowed)} lowers the tree’s priorities more this way`
  )
}

function removalRefused(assessed: AssessedLimb, cut: PossibleCut, conditions: VisitConditions): string {
  const { rules, system } = conditions
  const { limb, aspectRatio: ratio } = assessed
  if (ratio > rules.removeUpToRatio)
    return kept(
      woundTexts,
      Math.round(ratio * 100),
      () => `removal refused: ${ratioText(ratio)} of the stem, large wound`
    )
  if (limb.diameter > rules.removeUpTo)
    return `removal refused: ${showDiameter(limb.diameter, system)} is over ${showDiameter(rules.removeUpTo, system)}, large wound`
  if (removalReason(limb, ratio, conditions) === null)
    return 'removal refused: there is no reason to remove the limb'
  return `removal refused: it would take ${percent(cut.dose / cut.share)} of the tree’s foliage or break another limit`
}

/** A limb that needs work which no cut offers: hold, or decide removal on site. */
export function isHeld(assessed: AssessedLimb, conditions: VisitConditions): boolean {
  return (
    assessed.barrier !== null &&
    assessed.cuts.length === 0 &&
    !isCleared(assessed, conditions) &&
    conditions.allowed > 0
  )
}

function isCleared(assessed: AssessedLimb, conditions: VisitConditions): boolean {
  return (
    assessed.priority < conditions.rules.clearedBelow && assessed.nextPriority < conditions.rules.clearedBelow
  )
}

/** Why a limb is kept as it is. */
export function reasonForKeeping(assessed: AssessedLimb, conditions: VisitConditions): string {
  const { aspectRatio: ratio, priority } = assessed
  if (assessed.cuts.length === 0 && isCleared(assessed, conditions))
    return kept(
      foliageTexts,
      Math.round(ratio * 100),
      () => `${ratioText(ratio)} of the stem: kept for its foliage`
    )
  const why = whyUncut(assessed, conditions)
  return [ratioText(ratio), ' of the stem, priority ', points(priority), ': ', why].join('')
}

function whyUncut(assessed: AssessedLimb, conditions: VisitConditions): string {
  if (assessed.cuts.length > 0) return 'waits, the allowance does more on other limbs'
  if (conditions.allowed <= 0) return 'no live foliage to spare'
  if (conditions.stage === 'planting' && assessed.aspectRatio < conditions.rules.gainingUpTo)
    return 'kept at planting'
  if (assessed.barrier !== null) return `hold, or decide removal on site; ${barriers[assessed.barrier]}`
  return 'kept, no cut would lower it enough'
}

const barriers: Record<Barrier, string> = {
  small: 'every shortening cut would be too small to make',
  bare: 'every shortening cut would be below its foliage',
  short: 'shortened further it would be a stub',
  lateral: 'the lateral at the measured cut is too small to take over'
}

/** What would clear a limb that still carries a priority after the last visit planned. */
export function whatWouldClear(assessed: AssessedLimb, conditions: VisitConditions): string {
  const { rules } = conditions
  const bark = 100 * rules.weightBark * barkScore(rules, assessed.limb.surveyed.bark)
  if (conditions.allowed <= 0)
    return 'Needs live foliage to spare: look again when the tree’s vigor or its limits allow a cut.'
  if (assessed.barrier !== null) return 'Hold, or decide removal on site: it cannot be shortened further.'
  if (assessed.cuts.length === 0)
    return 'Its tip is below the upper third and no further shortening lowers it enough: keep it there, or decide removal on site.'
  if (bark >= rules.clearedBelow)
    return `Its included bark alone counts ${points(bark)} points: shortening keeps it in check, only removal on site ends it.`
  return 'Shorten it again at each later visit, until it is at most half its stem and may be removed.'
}

/** Where the reason for a cut comes from. */
export function sourceOf(assessed: AssessedLimb, cut: PossibleCut, conditions: VisitConditions): string {
  if (cut.kind === 'reduce')
    return conditions.stage === 'mature' || conditions.stage === 'old'
      ? 'At most a quarter of a branch’s foliage on a mature tree: ANSI A300-1995, 5.3.1. Share and order: house rule.'
      : 'Subordinate limbs under half the trunk: Gilman, EDIS EP276. Reduction rather than removal of large limbs: Eisner et al. 2002. Share and order: house rule.'
  if (assessed.limb.surveyed.role === 'temporary')
    return 'Temporary limbs are removed in time: Gilman, EDIS EP276.'
  return 'Removal of limbs up to half the stem: house choice within Eisner, Gilman & Grabosky 2002. Sizes: common practice, no source.'
}

export const deadWoodSource = 'Dead wood first: common practice, no source.'
