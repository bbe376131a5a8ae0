import type { Tree } from '../inventory/inventory'

/** "Red maple, Gate lawn", or whichever of the two is known. */
export function describeTree(tree: Tree): string {
  return [tree.species, tree.site].filter((part) => part.trim() !== '').join(', ')
}

/** "Tree T02: Pin oak, Gate lawn", the heading of a part about one tree. */
export function treeTitle(tree: Tree): string {
  const about = describeTree(tree)
  return about === '' ? `Tree ${tree.id}` : `Tree ${tree.id}: ${about}`
}
