import type { Tree } from '../inventory/inventory'

/** A zone as one says it: "zone B" where only its letter or number is given. */
export function zoneWords(zone: string): string {
  const text = zone.trim()
  return /^(?:\p{L}{1,2}|[\p{L}-]{0,2}\d+\p{L}?)$/u.test(text) ? `zone ${text}` : text
}

/** Where a tree stands: its location, or its zone where no more is known. */
export function treePlace({ site, zone }: Pick<Tree, 'site' | 'zone'>): string {
  return site.trim() === '' ? zoneWords(zone) : site.trim()
}

/** "Red maple, Gate lawn", or whichever of the two is known. */
export function describeTree(tree: Tree): string {
  return [tree.species, treePlace(tree)].filter((part) => part.trim() !== '').join(', ')
}

/** "Tree T02: Pin oak, Gate lawn", the heading of a part about one tree. */
export function treeTitle(tree: Tree): string {
  const about = describeTree(tree)
  return about === '' ? `Tree ${tree.id}` : `Tree ${tree.id}: ${about}`
}
