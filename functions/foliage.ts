import { sharesAmong, sharesWithStems } from '../src/formulas/crown'
import { refuse } from '../shared/refusal'
import { length, text, type Argument } from './argument'
import type { Result } from './row'
import { allCells } from './together'

/** A stem left blank: which of the two forms is meant shows only when a tree's rows stand together. */
const optionalStem: Argument<number, 'stem_diameters'> = {
  ...length('stem_diameters'),
  fallback: 0,
  zeroIsBlank: true
}

type Row = [diameter: number, tree: string, stem: number]

const shares = allCells(
  [length('limb_diameters'), text('tree_ids', ''), optionalStem],
  (rows: Row[]): Result[] => {
    const results = new Array<Result>(rows.length)
    for (const places of byTree(rows)) shareOut(rows, places, results)
    return results
  }
)

/** The rows of each tree. A blank id carries on the tree above it, as inventories often leave it blank. */
function byTree(rows: readonly Row[]): Iterable<number[]> {
  const trees = new Map<string, number[]>()
  let current = ''
  for (const [place, [, tree]] of rows.entries()) {
    if (tree !== '') current = tree
    const places = trees.get(current)
    if (places) places.push(place)
    else trees.set(current, [place])
  }
  return trees.values()
}

/** The thinnest stem is taken as that of the highest union. */
function shareOut(rows: readonly Row[], places: readonly number[], results: Result[]): void {
  const limbs = places.map((place) => {
    const [diameter, , stem] = rows[place] as Row
    return { diameter, stem, origin: -stem }
  })
  const measured = limbs.filter(({ stem }) => stem > 0)
  const among = measured.length === 0 ? sharesAmong(limbs.map(({ diameter }) => diameter)) : null
  const withStems = among ?? sharesWithStems(measured)
  let next = 0
  for (const [index, place] of places.entries()) {
    const known = among !== null || (limbs[index]?.stem ?? 0) > 0
    results[place] = known
      ? (withStems[next++] as number)
      : refuse('stem_diameters is blank here while other limbs of this tree have one: measure it.', 'missing')
  }
}

/**
 * Share of the foliage that each limb carries, known to about ±30 % for a single limb.
 * @customfunction FOLIAGESHARE
 * @param limb_diameters Diameters of the live limbs on the trunk, more than 0, all in one unit.
 * @param [tree_ids] Tree of each limb; a blank cell carries on the tree above. One tree unless given.
 * @param [stem_diameters] Stem diameter just above each union, the same unit; then the trunk's top counts too.
 * @returns Shares from 0 to 1: d²/Σd² among the rows given; with stems, d²/S as the plan uses it, S = max(Σd² + thinnest stem², largest D² + d²). Rows that are blank or wrong take no part, which makes the others larger.
 * @example =LIMB.FOLIAGESHARE({3; 4}) gives {0.36; 0.64}
 * @example =LIMB.FOLIAGESHARE({3; 4}, , {10; 12}) gives {0.05625; 0.1}
 * @source Grabosky, Gilman & Harchick 2007, Urban For. Urban Green. 6:159-167 (leaf mass linear in basal area); ±30 % is a house reading of open data.
 */
export function FOLIAGESHARE(
  limb_diameters: unknown[][],
  tree_ids?: unknown[][],
  stem_diameters?: unknown[][]
): unknown[][] {
  return shares({ limb_diameters, tree_ids, stem_diameters })
}
