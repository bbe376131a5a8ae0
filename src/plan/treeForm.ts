import type { Form } from '../../shared/choices'
import type { Rules } from '../../shared/rules'
import { isUnder } from '../formulas/boundary'
import type { Limb, Tree } from '../inventory/inventory'

/** The form a tree is planned in, and whether it was proposed from its stems. */
export interface TreeForm {
  readonly form: Form
  readonly isProposed: boolean
}

/**
 * Species that are palms, by common or botanical name (botany, from memory). Palms are no trees that branch: the standards
 * used here leave them out.
 */
const palms =
  /\b(palms?|palmetto|phoenix (?:dactylifera|canariensis|reclinata|roebelenii|sylvestris)|washingtonia|sabal|syagrus|trachycarpus|chamaerops|roystonea|cocos nucifera|coconut|butia|livistona|archontophoenix)\b/
const noPalms = /\b(sago palm|palm oil)\b/

/** The same few species come again and again. */
const known = new Map<string, boolean>()

/** True where a species is a palm. */
export function isPalm(species: string): boolean {
  let found = known.get(species)
  if (found === undefined) {
    const name = species.toLowerCase()
    found = palms.test(name) && !noPalms.test(name)
    known.set(species, found)
  }
  return found
}

/** A stem that rises from the ground rather than a limb: on the trunk, from below 0.5 m. */
export function risesFromGround({ origin, dead, parent }: Limb, rules: Rules): boolean {
  return !dead && parent === null && origin !== null && isUnder(origin, rules.multiStemBelow / 1000)
}

/**
 * The form given, or a palm by its species; multi-stem where three or more unmarked stems rise from the ground and no
 * leader is marked; otherwise decurrent.
 */
export function formOf({ form, species, limbs }: Tree, rules: Rules): TreeForm {
  if (form !== null) return { form, isProposed: false }
  if (isPalm(species)) return { form: 'palm', isProposed: false }
  let stems = 0
  for (const limb of limbs) {
    if (limb.role === 'leader') return { form: 'decurrent', isProposed: false }
    if (limb.role === null && risesFromGround(limb, rules)) stems++
  }
  const isMultiStem = stems >= rules.multiStemFrom
  return { form: isMultiStem ? 'multi-stem' : 'decurrent', isProposed: isMultiStem }
}
