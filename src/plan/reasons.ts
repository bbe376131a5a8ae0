import { barkScore } from '../../shared/rules'
import { lowAndHigh, standing, type Standing } from '../formulas/priority'
import { points, ratio as ratioText } from '../../shared/words/figures'
import { showDiameter, showHeight } from '../../shared/words/lengths'
import { ceilingPercent, percent } from '../../shared/words/percent'
import { inClearance, removalReason, type Barrier, type Option } from './options'
import type { Season, Work } from './work'

/** Texts that a plan needs the same few thousands of times are made once and kept. */
function kept(texts: string[], key: number, make: () => string): string {
  return (texts[key] ??= make())
}

const foliageTexts: string[] = []
const heavierTexts: string[] = []
const woundTexts: string[] = []

/** Pieces of the sentence being put together: joined at once they make one flat text, which is kind to memory. */
const pieces: string[] = []

function sentence(): string {
  const text = pieces.join('')
  pieces.length = 0
  return text
}

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

/** What makes the limb matter: its ratio, its bark, where it starts and how high it reaches. */
function addFindings(work: Work, season: Season): void {
  const { limb, ratio } = work
  const { system } = season
  pieces.push(places[standing(ratio, limb.bark, season.rules)], ': ', ratioText(ratio), ' of the stem')
  if (limb.bark !== 'none') pieces.push(', ', limb.bark, ' bark inclusion')
  if (lowAndHigh(work, season) > 0) {
    pieces.push(', starts at ', showHeight(work.origin, system), ' and reaches ')
    pieces.push(showHeight(work.tip, system), ' of ', showHeight(season.height, system))
  }
  if (inClearance(work, season)) {
    pieces.push(', hangs to ', showHeight(work.lowest, system), ', below the clearance of ')
    pieces.push(showHeight(season.clearance ?? 0, system, 'at least'))
  }
  if (limb.broken) pieces.push(', broken')
  if (limb.rubbing) pieces.push(', rubbing')
}

/** Why this cut, in the trade's words with the numbers behind it. */
export function reasonForCut(work: Work, option: Option, season: Season): string {
  addFindings(work, season)
  const priority = points(work.priority)
  if (option.kind === 'remove') {
    pieces.push(
      '. Removed (',
      removalReason(work, work.ratio, season) ?? '',
      '): takes ',
      percent(option.dose)
    )
    pieces.push(' of the tree’s foliage and ends its priority of ', priority, '.')
    return sentence()
  }
  pieces.push('. Shortened by ', eighths(option.share), ' of its foliage')
  if (option.lateral !== null) pieces.push(', back to limb ', option.lateral.limb.id)
  pieces.push(', ', percent(option.dose), ' of the tree’s: priority ', priority, ' now, ')
  pieces.push(points(option.nextPriority), ' at the next visit.')
  return sentence()
}

export function reasonForDeadWood(): string {
  return 'Dead wood: costs no live foliage.'
}

/** What was weighed and refused for a limb that is cut. */
export function refusedFor(work: Work, option: Option, season: Season): string[] {
  if (option.kind === 'remove') return ['shortening refused: it would leave a limb that is better gone']
  const refused = [removalRefused(work, option, season)]
  const heaviest = season.steps.at(-1) ?? 0
  if (option.share < heaviest - 1e-9 && work.limb.cut === null)
    refused.push(heavierRefused(heaviest, season.allowed))
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

function removalRefused(work: Work, option: Option, season: Season): string {
  const { rules, system } = season
  const { ratio } = work
  if (ratio > rules.removeUpToRatio)
    return kept(
      woundTexts,
      Math.round(ratio * 100),
      () => `removal refused: ${ratioText(ratio)} of the stem, large wound`
    )
  if (work.diameter > rules.removeUpTo)
    return `removal refused: ${showDiameter(work.diameter, system)} is over ${showDiameter(rules.removeUpTo, system)}, large wound`
  if (removalReason(work, ratio, season) === null) return 'removal refused: nothing asks for the limb to go'
  return `removal refused: it would take ${percent(option.dose / option.share)} of the tree’s foliage or break another limit`
}

/** A limb that needs work which no cut offers: hold, or decide removal on site. */
export function isHeld(work: Work, season: Season): boolean {
  return work.barrier !== null && work.options.length === 0 && !isCleared(work, season) && season.allowed > 0
}

function isCleared(work: Work, season: Season): boolean {
  return work.priority < season.rules.clearedBelow && work.nextPriority < season.rules.clearedBelow
}

/** Why a limb is kept as it is. */
export function reasonForKeeping(work: Work, season: Season): string {
  const { ratio, priority } = work
  if (work.options.length === 0 && isCleared(work, season))
    return kept(
      foliageTexts,
      Math.round(ratio * 100),
      () => `${ratioText(ratio)} of the stem: kept for its foliage`
    )
  return `${ratioText(ratio)} of the stem, priority ${points(priority)}: ${whyUncut(work, season)}`
}

function whyUncut(work: Work, season: Season): string {
  if (work.options.length > 0) return 'waits, the allowance does more on other limbs'
  if (season.allowed <= 0) return 'no live foliage to spare'
  if (season.stage === 'planting' && work.ratio < season.rules.gainingUpTo) return 'kept at planting'
  if (work.barrier !== null) return `hold, or decide removal on site; ${barriers[work.barrier]}`
  return 'kept, no cut would lower it enough'
}

const barriers: Record<Barrier, string> = {
  small: 'every shortening cut would be too small to make',
  bare: 'every shortening cut would be below its foliage',
  short: 'shortened further it would be a stub',
  lateral: 'the lateral at the measured cut is too small to take over'
}

/** What would clear a limb that still carries a priority after the last visit planned. */
export function whatWouldClear(work: Work, season: Season): string {
  const { rules } = season
  const bark = 100 * rules.weightBark * barkScore(rules, work.limb.bark)
  if (season.allowed <= 0)
    return 'Needs live foliage to spare: look again when the tree’s vigor or its limits allow a cut.'
  if (work.barrier !== null) return 'Hold, or decide removal on site: it cannot be shortened further.'
  if (work.options.length === 0)
    return 'Its tip is below the upper third and no further shortening lowers it enough: keep it there, or decide removal on site.'
  if (bark >= rules.clearedBelow)
    return `Its included bark alone counts ${points(bark)} points: shortening keeps it in check, only removal on site ends it.`
  return 'Shorten it again at each later visit, until it is at most half its stem and may be removed.'
}

/** Where the reason for a cut comes from. */
export function sourceOf(work: Work, option: Option, season: Season): string {
  if (option.kind === 'reduce')
    return season.stage === 'mature' || season.stage === 'old'
      ? 'At most a quarter of a branch’s foliage on a mature tree: ANSI A300-1995, 5.3.1. Share and order: house rule.'
      : 'Subordinate limbs under half the trunk: Gilman, EDIS EP276. Reduction rather than removal of large limbs: Eisner et al. 2002. Share and order: house rule.'
  if (work.limb.role === 'temporary') return 'Temporary limbs are removed in time: Gilman, EDIS EP276.'
  return 'Removal of limbs up to half the stem: house choice within Eisner, Gilman & Grabosky 2002. Sizes: common practice, no source.'
}

export const deadWoodSource = 'Dead wood first: common practice, no source.'
