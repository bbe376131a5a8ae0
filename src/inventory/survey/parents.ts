import type { OpenTree } from '../readTree'
import { shownId, treeKey } from './treeKeys'

/** Words for the trunk itself, which is the parent of every limb that names none. */
const trunk =
  /^(?:the )?(?:(?:main )?(?:trunk|stem|leader|bole|axis)|(?:haupt)?stamm|stammachse|leittrieb|(?:le )?tronc(?: principal)?|axe(?: principal)?|(?:el )?tronco(?: principal)?|fuste|none|0|-|–)$/

/** Puts the parent's id as its own row has it, whatever its case; a parent that is the trunk is none. */
export function resolveParents(tree: OpenTree): void {
  if (tree.limbs.every(({ parent }) => parent === null)) return
  const ids = new Map<string, string>()
  for (const { id } of tree.limbs) if (!ids.has(treeKey(id))) ids.set(treeKey(id), id)
  tree.limbs.forEach((limb, at) => {
    if (limb.parent === null) return
    const key = treeKey(shownId(limb.parent))
    const parent = ids.get(key) ?? (trunk.test(key) ? null : limb.parent)
    if (parent !== limb.parent) tree.limbs[at] = { ...limb, parent }
  })
}
