import { byName } from '../../shared/words/order'
import { rowPlace } from '../inventory/inventory'
import type { Plan, TreePlan } from '../plan/plan'
import { treePlace, zoneWords } from '../plan/treeTitle'

const houseBefore = /^\d+\s?\p{L}?(?:\s?[-–/]\s?\d+\s?\p{L}?)?\s+(?=\p{L})/u
const houseBehind = /,?\s+(?:#|no\.?|nr\.?|n°)?\s*\d+\s?\p{L}?$/iu

/** A street without the number of the house: "12 Elm Street", "Hauptstraße 4a" (common practice, no source). */
function streetOf(address: string): string {
  const street = address.replace(houseBefore, '').replace(houseBehind, '').trim()
  return street === '' ? address : street
}

const beforeComma = (site: string): string => site.split(',')[0]?.trim() ?? ''

/** Ways to tell the place of a tree from its location, the larger places first. */
const ways: readonly ((site: string) => string)[] = [
  beforeComma,
  (site) => streetOf(beforeComma(site)),
  (site) => site,
  streetOf
]

/** Trees to a place from which a walk goes by places (house judgment): fewer, and each would be a place of its own. */
const treesToPlace = 1.5

/** By what places are known to be the same. */
export const placeKey = (name: string): string => name.trim().toLowerCase()

/** By the tags of the trees, as one reads them; the same tag by its row. */
export function byTag(one: { readonly tree: TreePlan }, other: { readonly tree: TreePlan }): number {
  return byName(one.tree.tree.id, other.tree.tree.id) || one.tree.tree.row - other.tree.tree.row
}

const placesAmong = (names: readonly string[]): number => new Set(names.map(placeKey)).size

/** How the places of trees are told. */
export interface PlaceTeller {
  readonly nameOf: (tree: TreePlan) => string
  /** Zones, in which one goes to the worst tree first; along a street one goes by the tags. */
  readonly isZone: boolean
}

/** How the places of these trees are told: by zone, otherwise by street or sheet; null where nothing tells them apart or together. */
export function placeTeller(trees: readonly TreePlan[], plan: Plan): PlaceTeller | null {
  const sites = trees.map(({ tree }) => treePlace(tree)).filter((site) => site !== '')
  const zoneOf = ({ tree }: TreePlan) => zoneWords(tree.zone)
  const isWorth = (names: readonly string[]) => names.length >= treesToPlace * placesAmong(names)
  const zones = trees.map(zoneOf)
  if (isWorth(zones) && placesAmong(zones) > 1) return { nameOf: zoneOf, isZone: true }
  const worth = ways.filter((way) => isWorth(sites.map(way)))
  const way = worth.find((each) => placesAmong(sites.map(each)) > 1)
  if (way !== undefined) return { nameOf: ({ tree }) => way(treePlace(tree)), isZone: false }
  const sheetOf = ({ tree }: TreePlan) => rowPlace(plan.inventory, tree.row).sheet
  if (placesAmong(trees.map(sheetOf)) > 1) return { nameOf: sheetOf, isZone: true }
  const single = worth[0]
  return sites.length === 0 || single === undefined
    ? null
    : { nameOf: ({ tree }) => single(treePlace(tree)), isZone: false }
}
