import { ratio as ratioWords } from '../../../shared/words/figures'
import { showDiameter, showHeight } from '../../../shared/words/lengths'
import type { Rules } from '../../../shared/rules'
import { inOrder, isOver } from '../../formulas/boundary'
import { aspectRatio } from '../../formulas/diameters'
import type { GrowingLimb } from '../growingLimb'
import { againstPermanent, type Against, type Judging } from './againstPermanent'
import type { ScaffoldLimb } from './scaffold'
import { closeness } from './spacing'
import { isMarked, isMarkedPermanent, isMarkedTemporary } from './surveyed'
import { goesBy, isTooThick } from './yearsOnTree'

/** What a limb is to the scaffold, once its permanent limbs are chosen. */
export function judgeLimb(
  limb: GrowingLimb,
  chosen: readonly GrowingLimb[],
  spacing: number | null,
  judging: Judging
): ScaffoldLimb {
  const { surveyed } = limb
  if (isMarkedPermanent(surveyed)) return permanent(limb, 'marked permanent in the survey')
  if (isMarkedTemporary(surveyed)) {
    const marked = { reason: 'marked temporary in the survey', goes: true }
    // Of a limb that is only said not to be permanent nobody says that it comes off at any size.
    return temporary(limb, marked, judging, surveyed.role === 'temporary')
  }
  if (chosen.includes(limb)) return permanent(limb, 'keeps the spacing of permanent limbs')
  const found = againstPermanent(limb, judging) ?? againstChosen(limb, chosen, spacing, judging)
  return temporary(limb, found, judging)
}

function permanent({ surveyed }: GrowingLimb, reason: string): ScaffoldLimb {
  const by = isMarked(surveyed) ? 'survey' : 'rules'
  return { limb: surveyed, permanence: 'permanent', goneBy: null, by, reason }
}

/** A temporary limb with the year by which it goes; one too thick to come off at once is not judged. */
function temporary(
  limb: GrowingLimb,
  { reason, goes }: Against,
  judging: Judging,
  atAnySize = false
): ScaffoldLimb {
  const { tree, rules, year } = judging
  const by = isMarked(limb.surveyed) ? 'survey' : 'rules'
  const isThick = goes && !atAnySize && isTooThick(limb, rules)
  if (goes && !isThick) {
    const goneBy = goesBy(limb, tree, year, rules)
    return { limb: limb.surveyed, permanence: 'temporary', goneBy, by, reason }
  }
  const why = isThick ? `${reason}; ${tooThick(limb, judging)}` : reason
  return { limb: limb.surveyed, permanence: null, goneBy: null, by, reason: why }
}

/** By itself, or else beside its stem. */
function tooThick({ diameter, stem }: GrowingLimb, { tree, rules }: Judging): string {
  const size = isOver(diameter, rules.temporaryCut)
    ? showDiameter(diameter, tree.system)
    : `${ratioWords(aspectRatio(diameter, stem))} of its stem`
  return `at ${size} too thick to come off as a temporary limb: reduced first`
}

/**
 * The permanent limb that a limb on the trunk stands too close to, the nearest of them; null where it keeps the spacing. One
 * just as near is the lower one.
 */
export function inTheWay(
  limb: GrowingLimb,
  chosen: readonly GrowingLimb[],
  spacing: number,
  rules: Rules
): GrowingLimb | null {
  let nearest: GrowingLimb | null = null
  for (const other of chosen) {
    if (other === limb || other.parent !== null) continue
    if (closeness(limb.surveyed, other.surveyed, spacing, rules) === null) continue
    const nearer =
      nearest === null
        ? -1
        : inOrder(apart(limb, other), apart(limb, nearest)) || inOrder(other.origin, nearest.origin)
    if (nearer < 0) nearest = other
  }
  return nearest
}

function apart(one: GrowingLimb, other: GrowingLimb): number {
  return Math.abs(one.origin - other.origin)
}

/** A limb that could be permanent, and stands too close to one that is. */
function againstChosen(
  limb: GrowingLimb,
  chosen: readonly GrowingLimb[],
  spacing: number | null,
  { tree, rules }: Judging
): Against {
  const other = spacing === null ? null : inTheWay(limb, chosen, spacing, rules)
  if (spacing === null || other === null) throw new Error('A limb that keeps the spacing was not chosen')
  const { id } = other.surveyed
  if (closeness(limb.surveyed, other.surveyed, spacing, rules) === 'near') {
    const distance = showHeight(apart(limb, other), tree.system)
    const least = showHeight(spacing, tree.system)
    return { reason: `starts ${distance} from permanent limb ${id}, less than ${least}`, goes: true }
  }
  const where = limb.origin > other.origin ? 'above' : 'below'
  return { reason: `${where} permanent limb ${id} on the same side`, goes: true }
}
