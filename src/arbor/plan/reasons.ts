import { lowAndHigh } from '../assess/priority'
import { standing, type Standing } from '../assess/standing'
import { showDiameter, showHeight } from '../../../shared/units'
import {
  inClearance,
  reductionCandidates,
  reductionShares,
  removalReason,
  whyNotReduced,
  type Offer,
  type Option
} from './options'
import type { Season, Work } from './work'

/** A percentage as print has it: 0.163 gives "16 %". */
export function percent(share: number): string {
  const value = share * 100
  return `${value > 0 && value < 0.95 ? value.toFixed(1) : Math.round(value)} %`
}

const eighths = (share: number): string => {
  const parts = share * 8
  return Math.abs(parts - Math.round(parts)) < 1e-9 ? `${Math.round(parts)}/8` : percent(share)
}

const places: Record<Standing, string> = {
  codominant: 'Codominant',
  competing: 'Competes with the leader',
  gaining: 'Gaining on the leader',
  subordinate: 'Subordinate'
}

/** What makes the limb matter: its ratio, its bark, where it starts and how high it reaches. */
function findings(work: Work, ratio: number, season: Season): string {
  const { limb } = work
  const parts = [`${places[standing(ratio, limb.bark, season.rules)]}: ${ratio.toFixed(2)} of the stem`]
  if (limb.bark !== 'none') parts.push(`${limb.bark} bark inclusion`)
  if (lowAndHigh(work.origin, work.tip, season.height, season.crownBase) > 0)
    parts.push(
      `starts at ${showHeight(work.origin, season.system)} and reaches ${showHeight(work.tip, season.system)} of ${showHeight(season.height, season.system)}`
    )
  if (inClearance(work, season))
    parts.push(
      `hangs to ${showHeight(work.lowest, season.system)}, below the clearance of ${showHeight(season.clearance ?? 0, season.system)}`
    )
  if (limb.broken) parts.push('broken')
  if (limb.rubbing) parts.push('rubbing')
  return parts.join(', ')
}

/** Why this cut, in the trade's words with the numbers behind it. */
export function reasonForCut(
  work: Work,
  ratio: number,
  priority: number,
  option: Option,
  season: Season
): string {
  const found = findings(work, ratio, season)
  if (option.kind === 'remove') {
    const why = removalReason(work, ratio, season) ?? ''
    return `${found}. Removed (${why}): takes ${percent(option.dose)} of the tree’s foliage and ends its priority of ${Math.round(priority)}.`
  }
  return `${found}. Shortened by ${eighths(option.share)} of its foliage, ${percent(option.dose)} of the tree’s: priority ${Math.round(priority)} now, ${Math.round(option.nextPriority)} at the next visit.`
}

export function reasonForDeadWood(): string {
  return 'Dead wood: costs no live foliage.'
}

/** What was weighed and refused for a limb that is cut. */
export function refusedFor(work: Work, ratio: number, option: Option, season: Season): string[] {
  const refused: string[] = []
  if (option.kind === 'reduce') {
    refused.push(`removal refused: ${whyNotRemoved(work, ratio, option, season)}`)
    const heaviest = reductionShares(season).at(-1) ?? 0
    if (option.share < heaviest - 1e-9 && work.limb.cut === null)
      refused.push(
        `heavier cuts refused: up to ${eighths(heaviest)} was weighed; the allowance of ${percent(season.allowed)} lowers the tree’s priorities more this way`
      )
  } else refused.push('shortening refused: it would leave a limb that is better gone')
  return refused
}

function whyNotRemoved(work: Work, ratio: number, option: Option, season: Season): string {
  const { rules, system } = season
  if (ratio > rules.removeUpToRatio) return `${ratio.toFixed(2)} of the stem, large wound`
  if (work.diameter > rules.removeUpTo)
    return `${showDiameter(work.diameter, system)} is over ${showDiameter(rules.removeUpTo, system)}, large wound`
  if (removalReason(work, ratio, season) === null) return 'nothing asks for the limb to go'
  return `it would take ${percent(option.dose / option.share)} of the tree’s foliage or break another limit`
}

/** Why a limb is kept as it is; `hold` where it needs work that no cut offers. */
export function reasonForKeeping(offer: Offer, season: Season): { reason: string; hold: boolean } {
  const { work, ratio, priority, options } = offer
  const found = `${ratio.toFixed(2)} of the stem`
  if (options.length > 1)
    return {
      reason: `${found}, priority ${Math.round(priority)}: waits, the allowance does more on other limbs`,
      hold: false
    }
  if (priority < season.rules.clearedBelow && (options[0]?.nextPriority ?? 0) < season.rules.clearedBelow)
    return { reason: `${found}: kept for its foliage`, hold: false }
  if (season.allowed <= 0)
    return { reason: `${found}, priority ${Math.round(priority)}: no live foliage to spare`, hold: false }
  if (season.stage === 'planting' && ratio < season.rules.gainingUpTo)
    return { reason: `${found}: kept at planting`, hold: false }
  return whyHeld(work, found, priority, season)
}

const barriers = {
  small: 'every shortening cut would be too small to make',
  bare: 'every shortening cut would be below its foliage',
  short: 'shortened further it would be a stub',
  lateral: 'the lateral at the measured cut is too small to take over'
} as const

function whyHeld(
  work: Work,
  found: string,
  priority: number,
  season: Season
): { reason: string; hold: boolean } {
  const barrier = reductionCandidates(work, season).map((reduction) => whyNotReduced(work, reduction, season))
  const first = barrier.find((why) => why !== null)
  const none = barrier.every((why) => why !== null)
  const start = `${found}, priority ${Math.round(priority)}: `
  if (none && first !== undefined && first !== null)
    return { reason: `${start}hold, or decide removal on site; ${barriers[first]}`, hold: true }
  return { reason: `${start}kept, no cut would lower it enough`, hold: false }
}
