import type { Rules } from '../../../shared/rules'
import { isOver, isUnder } from '../../formulas/boundary'
import { upperThird } from '../../formulas/priority'
import type { Form } from '../../../shared/choices'
import { listed, namedLimbs } from '../../../shared/words/lists'
import type { GrowingLimb } from '../growingLimb'
import type { PreparedTree } from '../prepareTree'

/** What is known besides the limbs: the height from which they can be permanent, in m, and the trunk in mm. */
interface Known {
  readonly lowest: number | null
  readonly trunk: number | null
}

/** Forms that have no few permanent limbs (common practice, no source). */
const ofForm: Partial<Record<Form, string>> = {
  excurrent:
    'An excurrent tree keeps one leader and many small limbs around it: no few of them are chosen as permanent.',
  'multi-stem':
    'A multi-stem tree has no scaffold on one trunk: no permanent limbs are chosen, each stem is judged by itself.'
}

/** Why permanent limbs are not chosen, and what is missing of the survey to choose them, if that is why. */
export interface Withheld {
  readonly withheld: string
  readonly missing: string | null
}

function because(withheld: string): Withheld {
  return { withheld, missing: null }
}

function wanting(missing: string): Withheld {
  return { withheld: `To choose permanent limbs, add ${missing}.`, missing }
}

/** Without a mature height there is no spacing to keep. */
export const noSpacing = wanting('the mature height')

/** Why permanent limbs are not chosen on a tree, with what would allow it; null where they may be. */
export function whyNotChosen(tree: PreparedTree, known: Known): Withheld | null {
  const found = ofForm[tree.form]
  if (found !== undefined) return because(found)
  const { stage } = tree.tree
  // That the scaffold of a grown tree stands is common practice, no source.
  if (stage === 'mature' || stage === 'old')
    return because(
      `The scaffold of ${stage === 'old' ? 'an old' : 'a mature'} tree is there already: no permanent limbs are chosen.`
    )
  if (tree.waitsForLeader) return because('Permanent limbs are chosen once it is decided which stem leads.')
  const missing = missingOf(tree, known)
  return missing.length === 0 ? null : wanting(listed(missing))
}

function missingOf({ tree, limbs, unplanned }: PreparedTree, { lowest, trunk }: Known): string[] {
  const missing: string[] = []
  if (tree.stage === null) missing.push('the life stage')
  if (tree.matureHeight === null) missing.push('the mature height')
  if (lowest === null) missing.push('the clearance needed (or the height of the lowest permanent limb)')
  if (trunk === null) missing.push('the trunk diameter')
  if (
    missing.length > 0 &&
    limbs.some(({ parent, surveyed }) => parent === null && surveyed.bearing === null)
  )
    missing.push('the bearings of its limbs')
  if (limbs.every(({ parent }) => parent !== null)) missing.push('the limbs on its trunk')
  if (unplanned.length > 0) missing.push(`what is missing of ${namedLimbs(unplanned)}`)
  return missing
}

/** The same for limbs whose bearing decides and was not surveyed; null where all have one. */
export function withoutBearings(limbs: readonly GrowingLimb[]): Withheld | null {
  const without = limbs.filter(({ parent, surveyed }) => parent === null && surveyed.bearing === null)
  if (without.length === 0) return null
  return wanting(`the bearing of ${namedLimbs(without.map(({ surveyed }) => surveyed))}`)
}

/**
 * A long stretch of the trunk bears no limb in the list, from where limbs can be permanent up to the canopy's upper third: only
 * the limbs that are a problem were listed, and which of all its limbs stay cannot be told. Null where none is that long.
 */
export function withoutListed(
  { limbs, dead, height, crownBase }: PreparedTree,
  lowest: number,
  rules: Rules
): Withheld | null {
  const from = Math.max(lowest, crownBase)
  const to = upperThird(height, crownBase)
  const heights = [...limbs.filter(({ parent }) => parent === null), ...dead]
    .map(({ origin }) => origin ?? 0)
    .filter((origin) => isOver(origin, from) && isUnder(origin, to))
    .sort((a, b) => a - b)
  const longest = rules.scaffoldGap / 1000
  let before = from
  for (const at of [...heights, to]) {
    if (isOver(at - before, longest))
      return wanting('the other limbs of its trunk, of which long stretches bear none in the list')
    before = at
  }
  return null
}
