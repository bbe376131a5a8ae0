import type { Rules } from '../../../shared/rules'
import { atLeast, inOrder } from '../../formulas/boundary'
import type { GrowingLimb } from '../growingLimb'
import type { PreparedTree } from '../prepareTree'
import { againstPermanent, type Judging } from './againstPermanent'
import { inTheWay, judgeLimb } from './judgeLimb'
import { lowestPermanent } from './lowestPermanent'
import type { Scaffold } from './scaffold'
import { closeness, pairsThat, scaffoldSpacing } from './spacing'
import { isMarked, isMarkedPermanent } from './surveyed'
import { noSpacing, whyNotChosen, withoutBearings, withoutListed, type Withheld } from './withheld'

/**
 * The scaffold of a young or medium tree: its permanent limbs, those that are temporary with the year by which they go, and
 * those that are not judged with the reason. Of the limbs on the trunk that can be permanent the thickest come first, and
 * each keeps the spacing from those chosen before; what the survey says of a limb stands. In whatever order the rows are.
 * Which of two comes first is a house rule.
 */
export function chooseScaffold(tree: PreparedTree, year: number, rules: Rules): Scaffold {
  const { matureHeight } = tree.tree
  const { lowest, lowestElsewhere, lowestFrom } = lowestPermanent(tree.tree, rules)
  const spacing = matureHeight === null ? null : scaffoldSpacing(matureHeight, rules)
  const trunk = trunkOf(tree, rules)
  const judging: Judging = { lowest, lowestElsewhere, lowestFrom, tree, rules, year, trunk }
  const marked = tree.limbs.filter(isSaidPermanent)
  const why = whyNotChosen(tree, judging)
  if (why !== null) return withheldFor(why, marked, spacing, judging)
  const able = tree.limbs.filter((limb) => isAble(limb, judging))
  const unknown =
    withoutBearings([...marked, ...able]) ?? (lowest === null ? null : withoutListed(tree, lowest, rules))
  if (unknown !== null || spacing === null) return withheldFor(unknown ?? noSpacing, marked, spacing, judging)
  const chosen = choose(marked, able, spacing, rules)
  const limbs = tree.limbs.map((limb) => judgeLimb(limb, chosen, spacing, judging))
  return scaffoldOf(judging, spacing, limbs, isChosen, closeOf(marked, spacing, rules))
}

/** Nothing is chosen: what the survey says of limbs is told, and why it is no more. */
function withheldFor(
  why: Withheld,
  marked: readonly GrowingLimb[],
  spacing: number | null,
  judging: Judging
): Scaffold {
  const told = judging.tree.limbs.filter(isTold)
  const limbs = told.map((limb) => judgeLimb(limb, marked, spacing, judging))
  return scaffoldOf(judging, spacing, limbs, why, closeOf(marked, spacing, judging.rules))
}

const isChosen = { withheld: null, missing: null }

function scaffoldOf(
  { lowest, lowestElsewhere, lowestFrom }: Judging,
  spacing: number | null,
  limbs: Scaffold['limbs'],
  { withheld, missing }: Pick<Scaffold, 'withheld' | 'missing'>,
  close: Scaffold['close']
): Scaffold {
  return { lowest, lowestElsewhere, lowestFrom, spacing, limbs, withheld, missing, close }
}

function isSaidPermanent({ surveyed }: GrowingLimb): boolean {
  return isMarkedPermanent(surveyed)
}

function isTold({ surveyed }: GrowingLimb): boolean {
  return isMarked(surveyed)
}

/** The survey says nothing of the limb, and nothing stands against it as a permanent one. */
function isAble(limb: GrowingLimb, judging: Judging): boolean {
  return !isMarked(limb.surveyed) && againstPermanent(limb, judging) === null
}

/** Trunk or caliper; where neither was measured, at least as thick as the thickest stem at a union. */
function trunkOf({ tree, limbs }: PreparedTree, rules: Rules): number | null {
  const measured = tree.caliper ?? tree.trunk
  if (measured !== null) return measured
  let thickest = 0
  for (const { stem, parent } of limbs) if (parent === null && stem > thickest) thickest = stem
  return atLeast(thickest, rules.temporaryUpTo) ? thickest : null
}

/** Pairs of permanent limbs of the survey that do not keep the spacing. */
function closeOf(marked: readonly GrowingLimb[], spacing: number | null, rules: Rules): Scaffold['close'] {
  if (spacing === null || marked.length < 2) return []
  const onTrunk = marked.filter(({ parent }) => parent === null).map(({ surveyed }) => surveyed)
  return pairsThat(onTrunk, spacing, (lower, upper) => closeness(lower, upper, spacing, rules) !== null)
}

/** The thickest first, each as far from those chosen before it as the spacing asks. */
function choose(
  marked: readonly GrowingLimb[],
  able: readonly GrowingLimb[],
  spacing: number,
  rules: Rules
): readonly GrowingLimb[] {
  const chosen = [...marked]
  for (const limb of [...able].sort(byMerit))
    if (inTheWay(limb, chosen, spacing, rules) === null) chosen.push(limb)
  return chosen
}

/** Thickest, then least beside its stem, then lowest; never by its row. */
function byMerit(one: GrowingLimb, other: GrowingLimb): number {
  return (
    inOrder(other.diameter, one.diameter) ||
    inOrder(other.stem, one.stem) ||
    inOrder(one.origin, other.origin) ||
    inOrder(one.surveyed.bearing ?? 0, other.surveyed.bearing ?? 0) ||
    (one.surveyed.id < other.surveyed.id ? -1 : 1)
  )
}
