import type { Problem } from '../../../shared/problems'
import type { Rules } from '../../../shared/rules'
import { showHeight } from '../../../shared/words/lengths'
import { isUnder } from '../../formulas/boundary'
import type { Limb } from '../../inventory/inventory'
import { treeProblem, type SurveyedTree } from '../checkTree'
import { lowestAt } from './lowestPermanent'
import type { Scaffold } from './scaffold'
import { closePairs } from './spacing'
import { isMarkedPermanent } from './surveyed'

/** What is told of the scaffold of a tree: what its survey says that cannot be so or is not advised, and what is missing. */
export function scaffoldNotes(surveyed: SurveyedTree, scaffold: Scaffold, rules: Rules): Problem[] {
  const permanent = surveyed.tree.limbs.filter(isMarkedPermanent)
  return [
    ...permanent.flatMap((limb) => limbNotes(surveyed, limb, scaffold, rules)),
    ...spacingNotes(surveyed, scaffold, rules),
    ...missingNotes(surveyed, scaffold)
  ]
}

/** A limb marked permanent: dead or broken, temporary too, or below the lowest permanent limb. */
function limbNotes(surveyed: SurveyedTree, limb: Limb, scaffold: Scaffold, rules: Rules): Problem[] {
  const { id, row, dead, broken, role, origin, bearing, parent } = limb
  const notes: Problem[] = []
  if (dead || broken) {
    const facts = { limb: id, what: dead ? 'dead' : 'broken' }
    notes.push(treeProblem(surveyed, 'permanent-lost', row, dead ? 'live' : 'broken', facts))
  }
  if (role === 'temporary')
    notes.push(treeProblem(surveyed, 'permanent-temporary', row, 'permanent', { limb: id }))
  const from = scaffold.lowest === null ? 0 : lowestAt(bearing, scaffold, surveyed.tree, rules)
  if (!dead && parent === null && origin !== null && isUnder(origin, from)) {
    const facts = { limb: id, value: show(surveyed, origin), limit: show(surveyed, from) }
    notes.push(treeProblem(surveyed, 'permanent-low', row, 'origin', facts))
  }
  return notes
}

/** Limbs too close to each other: those of the scaffold, or where none is known all that may be permanent. */
function spacingNotes(surveyed: SurveyedTree, scaffold: Scaffold, rules: Rules): Problem[] {
  const isKnown =
    scaffold.withheld === null || scaffold.limbs.some(({ permanence }) => permanence === 'permanent')
  const pairs = isKnown ? scaffold.close : closePairs(surveyed.tree, rules)
  const code = isKnown ? 'permanent-close' : 'scaffold-spacing'
  return pairs.map(({ upper, lower, apart, wanted }) => {
    const [value, limit] = [show(surveyed, apart), show(surveyed, wanted)]
    return treeProblem(surveyed, code, upper.row, 'origin', { limb: upper.id, other: lower.id, value, limit })
  })
}

/** What is missing of the survey, where somebody looks for permanent limbs. */
function missingNotes(surveyed: SurveyedTree, { missing, lowest }: Scaffold): Problem[] {
  const { matureHeight, lowestPermanent, limbs, row } = surveyed.tree
  if (missing === null) return []
  if (matureHeight === null && lowestPermanent === null && !limbs.some(isAskedFor)) return []
  const field = matureHeight === null ? 'matureHeight' : lowest === null ? 'lowestPermanent' : 'tree'
  return [treeProblem(surveyed, 'scaffold-missing', row, field, { value: missing })]
}

/** Its column says whether it is permanent, or its role says that it is. */
function isAskedFor(limb: Limb): boolean {
  return limb.permanent !== null || isMarkedPermanent(limb)
}

function show({ inventory }: SurveyedTree, meters: number): string {
  return showHeight(meters, inventory.system)
}
