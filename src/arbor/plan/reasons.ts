import { lowAndHigh } from '../assess/priority'
import { standing, type Standing } from '../assess/standing'
import { showDiameter, showHeight } from '../../../shared/units'
import { inClearance, removalReason, type Barrier, type Option } from './options'
import type { Season, Work } from './work'

/** A percentage as print has it: 0.163 gives "16 %". */
export function percent(share: number): string {
  const value = share * 100
  return value > 0 && value < 0.95 ? `${Math.round(value * 10) / 10} %` : `${Math.round(value)} %`
}

const hundredthTexts: string[] = []

/** Two decimals: 0.8 gives "0.80". The texts are kept, as a plan needs the same few thousands of times. */
function two(value: number): string {
  const hundredths = Math.round(value * 100)
  return (hundredthTexts[hundredths] ??= (hundredths / 100).toFixed(2))
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
function findings(work: Work, season: Season): string {
  const { limb, ratio } = work
  const parts = [`${places[standing(ratio, limb.bark, season.rules)]}: ${two(ratio)} of the stem`]
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
export function reasonForCut(work: Work, option: Option, season: Season): string {
  const { ratio, priority } = work
  const found = findings(work, season)
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
export function refusedFor(work: Work, option: Option, season: Season): string[] {
  const refused: string[] = []
  if (option.kind === 'reduce') {
    refused.push(`removal refused: ${whyNotRemoved(work, option, season)}`)
    const heaviest = season.steps.at(-1)?.share ?? 0
    if (option.share < heaviest - 1e-9 && work.limb.cut === null)
      refused.push(
        `heavier cuts refused: up to ${eighths(heaviest)} was weighed; the allowance of ${percent(season.allowed)} lowers the tree’s priorities more this way`
      )
  } else refused.push('shortening refused: it would leave a limb that is better gone')
  return refused
}

function whyNotRemoved(work: Work, option: Option, season: Season): string {
  const { rules, system } = season
  const { ratio } = work
  if (ratio > rules.removeUpToRatio) return `${two(ratio)} of the stem, large wound`
  if (work.diameter > rules.removeUpTo)
    return `${showDiameter(work.diameter, system)} is over ${showDiameter(rules.removeUpTo, system)}, large wound`
  if (removalReason(work, ratio, season) === null) return 'nothing asks for the limb to go'
  return `it would take ${percent(option.dose / option.share)} of the tree’s foliage or break another limit`
}

/** Why a limb is kept as it is; `hold` where it needs work that no cut offers. */
export function reasonForKeeping(work: Work, season: Season): { reason: string; hold: boolean } {
  const { ratio, priority, options } = work
  const found = `${two(ratio)} of the stem`
  if (options.length > 0)
    return {
      reason: `${found}, priority ${Math.round(priority)}: waits, the allowance does more on other limbs`,
      hold: false
    }
  if (priority < season.rules.clearedBelow && work.nextPriority < season.rules.clearedBelow)
    return { reason: `${found}: kept for its foliage`, hold: false }
  if (season.allowed <= 0)
    return { reason: `${found}, priority ${Math.round(priority)}: no live foliage to spare`, hold: false }
  if (season.stage === 'planting' && ratio < season.rules.gainingUpTo)
    return { reason: `${found}: kept at planting`, hold: false }
  if (work.barrier !== null)
    return {
      reason: `${found}, priority ${Math.round(priority)}: hold, or decide removal on site; ${barriers[work.barrier]}`,
      hold: true
    }
  return {
    reason: `${found}, priority ${Math.round(priority)}: kept, no cut would lower it enough`,
    hold: false
  }
}

const barriers: Record<Barrier, string> = {
  small: 'every shortening cut would be too small to make',
  bare: 'every shortening cut would be below its foliage',
  short: 'shortened further it would be a stub',
  lateral: 'the lateral at the measured cut is too small to take over'
}
