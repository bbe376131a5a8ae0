import type { Rules } from '../../../shared/rules'
import { ratio as ratioWords } from '../../../shared/words/figures'
import { showDiameter, showHeight } from '../../../shared/words/lengths'
import { isOver, isUnder } from '../../formulas/boundary'
import { aspectRatio } from '../../formulas/diameters'
import { upperThird } from '../../formulas/priority'
import type { GrowingLimb } from '../growingLimb'
import { lowestAt, type LowestPermanent } from './lowestPermanent'
import type { PreparedTree } from '../prepareTree'

/** What the limbs of a tree are judged by. */
export interface Judging extends LowestPermanent {
  readonly tree: PreparedTree
  readonly rules: Rules
  readonly year: number
  /** The trunk in mm, as far as it is known. */
  readonly trunk: number | null
}

/** What stands against a limb as a permanent one: why, and whether it goes as a temporary limb for it. */
export interface Against {
  readonly reason: string
  readonly goes: boolean
}

function stays(reason: string): Against {
  return { reason, goes: false }
}

/**
 * What stands against a limb as a permanent one, whatever stands beside it; null where it can be one. It starts on the trunk,
 * high enough, below the canopy's upper third (house rule), is sound, free of included bark, and small beside its stem.
 */
export function againstPermanent(limb: GrowingLimb, judging: Judging): Against | null {
  const { surveyed, parent } = limb
  if (parent !== null) return stays(`grows on limb ${parent.surveyed.id}, not on the trunk`)
  if (surveyed.decay) return stays('decay or a crack: inspect first')
  if (surveyed.broken) return stays('broken')
  if (surveyed.rubbing) return stays('rubbing')
  return againstPlace(limb, judging) ?? againstUnion(limb, judging)
}

function againstPlace({ surveyed, origin }: GrowingLimb, judging: Judging): Against | null {
  const { tree, rules, trunk } = judging
  const { system } = tree
  const from = lowestAt(surveyed.bearing, judging, tree.tree, rules)
  if (isUnder(origin, from)) {
    const reason = `starts at ${showHeight(origin, system)}, below the lowest permanent limb at ${showHeight(from, system)}`
    return { reason, goes: true }
  }
  if (trunk !== null && isUnder(trunk, rules.temporaryUpTo))
    return stays(`the trunk is under ${showDiameter(rules.temporaryUpTo, system)}: chosen once it is thicker`)
  return isUnder(origin, upperThird(tree.height, tree.crownBase))
    ? null
    : stays('starts in the upper third of the canopy: chosen at a later visit')
}

function againstUnion({ surveyed, diameter, stem }: GrowingLimb, { rules }: Judging): Against | null {
  if (surveyed.bark !== 'none') return { reason: `${surveyed.bark} bark inclusion`, goes: true }
  const ratio = aspectRatio(diameter, stem)
  return isOver(ratio, rules.scaffoldRatio) ? stays(`${ratioWords(ratio)} of its stem: reduced first`) : null
}
