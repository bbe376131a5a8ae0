import { lowAndHigh, standing, type Standing } from '../formulas/priority'
import { foliagePart } from '../../shared/words/foliageParts'
import { Figure, points } from '../../shared/words/figures'
import { showDiameter, showHeight } from '../../shared/words/lengths'
import { percent } from '../../shared/words/percent'
import { namedLimbs } from '../../shared/words/lists'
import type { Limb } from '../inventory/inventory'
import { inClearance } from './clearance'
import type { Obligation } from './obligation'
import type { AssessedLimb } from './assessLimb'
import type { PossibleCut } from './possibleCut'
import { priorityText } from './priorityWords'
import { removalReason } from './removalReason'
import { isGrown, type VisitConditions } from './visitConditions'

const places: Record<Standing, Figure> = {
  codominant: found('Codominant'),
  competing: found('Competes with the leader'),
  gaining: found('Gaining on the leader'),
  subordinate: found('Subordinate')
}

/** Where a limb stands with its ratio, as `ratio` has it. */
function found(place: string): Figure {
  return new Figure(2, 2, false, ' of the stem', `${place}: `)
}

/**
 * What makes the limb matter: its ratio, its bark, where it starts and how high it reaches. In pieces: a text joined at once is one
 * flat text, and a plan of such texts takes an eighth less memory than one of texts that grew piece by piece.
 */
function findings(assessed: AssessedLimb, conditions: VisitConditions): string[] {
  const { limb, aspectRatio: ratio } = assessed
  const { surveyed } = limb
  const { system, height, clearance, rules } = conditions
  const pieces = [places[standing(ratio, surveyed.bark, rules)].of(ratio)]
  if (surveyed.bark !== 'none') pieces.push(barks[surveyed.bark])
  if (lowAndHigh(limb, conditions) > 0) {
    pieces.push(', starts at ', showHeight(limb.origin, system), ' and reaches ')
    pieces.push(showHeight(limb.tip, system), ' of ', showHeight(height, system))
  }
  if (inClearance(limb, conditions)) {
    pieces.push(', hangs to ', showHeight(limb.lowest, system), ', below ')
    pieces.push(showHeight(clearance ?? 0, system, 'at least'))
  }
  if (surveyed.broken) pieces.push(', broken')
  if (surveyed.rubbing) pieces.push(', rubbing')
  return pieces
}

const barks = { partial: ', partial bark inclusion', full: ', full bark inclusion' }

/** Why this cut, in the trade's words with the numbers behind it. */
export function reasonForCut(
  assessed: AssessedLimb,
  cut: PossibleCut,
  obligation: Obligation | null,
  conditions: VisitConditions
): string {
  const pieces = findings(assessed, conditions)
  if (obligation === 'broken') pieces.push(brokenReason(cut))
  else if (cut.kind === 'raise') addRaising(pieces, cut, conditions)
  else if (cut.kind === 'remove') addRemoval(pieces, assessed, cut, obligation, conditions)
  else addReduction(pieces, assessed, cut, obligation, conditions)
  return pieces.join('')
}

function addRaising(pieces: string[], cut: PossibleCut, { system }: VisitConditions): void {
  pieces.push('. Raised to ', showHeight(cut.cutHeight ?? 0, system, 'at least'))
  pieces.push(': its hanging side branches, ', foliagePart(cut.share), ' of its foliage, ')
  pieces.push(percent(cut.dose), ' of the tree’s.')
}

function addRemoval(
  pieces: string[],
  { limb, aspectRatio, priority }: AssessedLimb,
  { dose }: PossibleCut,
  obligation: Obligation | null,
  conditions: VisitConditions
): void {
  const why = obligation ?? removalReason(limb, aspectRatio, conditions) ?? ''
  pieces.push('. Removed (', why)
  if (why === 'temporary' && limb.goneBy !== null) pieces.push(', goes by ', String(limb.goneBy))
  pieces.push('): takes ', percent(dose))
  if (priority < 0.5) pieces.push(' of the tree’s foliage.')
  else
    pieces.push(
      ' of the tree’s foliage and ends its priority, ',
      priorityText(priority, conditions.rules),
      '.'
    )
}

function addReduction(
  pieces: string[],
  { limb, priority }: AssessedLimb,
  { share, count, lateral, dose, nextPriority }: PossibleCut,
  obligation: Obligation | null,
  { system, rules }: VisitConditions
): void {
  pieces.push('. Reduced by ', foliagePart(share), ' of its foliage')
  if (count > 1) pieces.push(` in ${String(count)} cuts of at most ${showDiameter(rules.smallCuts, system)}`)
  if (lateral !== null) pieces.push(', back to limb ', lateral.surveyed.id)
  pieces.push(', ', percent(dose))
  const isFirstStep = obligation === 'clearance' && limb.permanence !== 'permanent'
  pieces.push(
    isFirstStep ? ' of the tree’s, the first step of its removal: priority ' : ' of the tree’s: priority ',
    priorityText(priority, rules),
    ' now, ',
    points(nextPriority),
    ' expected at the next visit.'
  )
}

function brokenReason(cut: PossibleCut): string {
  return cut.kind === 'remove'
    ? '. No sound lateral is listed on it: removed. What is beyond the break is lost already.'
    : '. Cut back to the nearest live lateral or union below the break; what lies beyond is lost already.'
}

/** A broken leader is cut back to what takes over. */
export function reasonForLostLeader(limb: Limb, cut: PossibleCut, { system }: VisitConditions): string {
  const where =
    cut.cutHeight === null
      ? 'sound wood below the break'
      : `the union at ${showHeight(cut.cutHeight, system)}`
  return `The leader ${limb.id} is broken. Cut it back to ${where}; what lies beyond is lost already.`
}

/** Dead wood comes off as far as it is dead: back to the live limbs on it, and a leader to live wood. */
export function reasonForDeadWood({ role }: Limb, onIt: readonly Limb[]): string {
  const back = role === 'leader' ? ' Cut it back to live wood.' : ''
  const live = onIt.length === 0 ? back : ` Cut it back to ${namedLimbs(onIt)}, listed as live on it.`
  return `Dead wood: costs no live foliage.${live}`
}

const houseOrder = 'Share and order: house rule.'

/** Where the reason for a cut comes from. */
export function sourceOf(
  assessed: AssessedLimb,
  cut: PossibleCut,
  obligation: Obligation | null,
  { stage }: VisitConditions
): string {
  if (obligation === 'broken') return 'Broken wood back to sound wood: common practice, no source.'
  if (cut.kind === 'raise')
    return 'Raising from the lowest foliage up: common practice, no source. Half of a limb at most: house rule.'
  if (cut.kind === 'reduce')
    return isGrown(stage)
      ? `At most a quarter of a branch’s foliage on a mature tree: ANSI A300-1995, 5.3.1. ${houseOrder}`
      : `Subordinate limbs under half the trunk: Gilman, EDIS EP276. Reduction rather than removal of large limbs: Eisner et al. 2002. ${houseOrder}`
  if (assessed.limb.permanence === 'temporary')
    return 'Temporary limbs are removed in time: Gilman, EDIS EP276; when: house rule.'
  if (assessed.limb.shortened)
    return 'Most limbs that were subordinated will later be removed: Gilman & Black, Circular 853/MG087. Sizes: house rule.'
  return 'Removal of limbs up to half the stem: house choice within Eisner, Gilman & Grabosky 2002. Sizes: common practice, no source.'
}

export const deadWoodSource = 'Dead wood first: common practice, no source.'
