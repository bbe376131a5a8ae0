import type { Limb } from '../../inventory/inventory'
import type { TreePlan } from '../../plan/plan'

/** Latin, Greek, Cyrillic and signs: the letters that pictures are painted with on every machine. */
const drawable = /^[\u0020-\u052f\u1e00-\u20bf\u2100-\u22ff\u2500-\u27bf]*$/

function isDrawable(text: string): boolean {
  return drawable.test(text)
}

/** Characters of a name that a small drawing has room for. */
const mostCharacters = 8

const hasRoom = ({ id }: Limb): boolean => id.length <= mostCharacters && isDrawable(id)

/**
 * A limb's name as a small picture has it: its own where it is short and its letters can be painted everywhere, else its place
 * among the limbs of the tree, "#3", which the text beside the picture explains.
 */
export function drawableId({ tree }: Pick<TreePlan, 'tree'>, limb: Limb): string {
  return hasRoom(limb) ? limb.id : `#${String(tree.limbs.indexOf(limb) + 1)}`
}

/** The limbs that a picture names by their place, with their own names: "#3 is 北". */
export function placesExplained(plan: Pick<TreePlan, 'tree'>): string {
  return plan.tree.limbs
    .filter((limb) => !hasRoom(limb))
    .map((limb) => `${drawableId(plan, limb)} is ${limb.id}`)
    .join(', ')
}
