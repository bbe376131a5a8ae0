import { byName } from '../../../shared/words/order'
import { rowPlace } from '../../inventory/inventory'
import type { Plan, TreePlan } from '../../plan/plan'
import { treePlace, zoneWords } from '../../plan/treeTitle'
import type { RoundLine } from './roundTrees'

/** The trees of a place, in the order of the round. */
export interface RoundPlace<Line extends RoundLine = RoundLine> {
  readonly name: string
  readonly lines: readonly Line[]
}

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

const key = (name: string): string => name.trim().toLowerCase()

const placesAmong = (names: readonly string[]): number => new Set(names.map(key)).size

/** How the places of these trees are told; null where nothing tells them apart or together. */
function placeTeller(trees: readonly TreePlan[], plan: Plan): ((tree: TreePlan) => string) | null {
  const sites = trees.map(({ tree }) => treePlace(tree)).filter((site) => site !== '')
  const zoneOf = ({ tree }: TreePlan) => zoneWords(tree.zone)
  const isWorth = (names: readonly string[]) => names.length >= treesToPlace * placesAmong(names)
  const zones = trees.map(zoneOf)
  if (isWorth(zones) && placesAmong(zones) > 1) return zoneOf
  const worth = ways.filter((way) => isWorth(sites.map(way)))
  const way = worth.find((each) => placesAmong(sites.map(each)) > 1)
  if (way !== undefined) return ({ tree }) => way(treePlace(tree))
  const sheetOf = ({ tree }: TreePlan) => rowPlace(plan.inventory, tree.row).sheet
  if (placesAmong(trees.map(sheetOf)) > 1) return sheetOf
  const single = worth[0]
  return sites.length === 0 || single === undefined ? null : ({ tree }) => single(treePlace(tree))
}

const byTag = (one: RoundLine, other: RoundLine): number =>
  byName(one.tree.tree.id, other.tree.tree.id) || one.tree.tree.row - other.tree.tree.row

const worstFirst = (one: RoundLine, other: RoundLine): number =>
  Number(other.must) - Number(one.must) || other.worst - one.worst || byTag(one, other)

/** Without places one walks by the tags: past the trees that must be dealt with, then past the others. */
function byTags(lines: readonly RoundLine[]): RoundPlace[] {
  const must = lines.filter(({ must: needed }) => needed)
  const rest = lines.filter(({ must: needed }) => !needed)
  return [
    { name: 'Trees with a cut that must be made', lines: must.sort(byTag) },
    { name: 'If time allows', lines: rest.sort(byTag) }
  ].filter((place) => place.lines.length > 0)
}

/** The round by places, that of the worst tree first, and the worst trees first in each; by tags where no place is known. */
export function placesOf(lines: readonly RoundLine[], plan: Plan): RoundPlace[] {
  const placeOf = placeTeller(plan.trees, plan)
  if (placeOf === null) return byTags(lines)
  const places = new Map<string, { name: string; lines: RoundLine[] }>()
  for (const line of [...lines].sort(worstFirst)) {
    const name = placeOf(line.tree)
    const place = places.get(key(name))
    if (place !== undefined) place.lines.push(line)
    else places.set(key(name), { name: name === '' ? 'No location given' : name, lines: [line] })
  }
  return [...places.values()]
}
