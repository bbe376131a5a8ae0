import type { Cell } from '../../shared/cells'

const headers =
  'Tag | Street | Species | Trunk dia (in) | Height (ft) | Crown base (ft) | Life stage | Vigor | Growth | Clearance (ft) | Access | Limb | Role | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft) | Included bark | Bearing | Live or dead | Lowest foliage (ft)'

const species = ['Red maple', 'Swamp white oak', 'Littleleaf linden', 'Hackberry', 'Honeylocust', 'Ginkgo']
const streets = ['Alder Row', 'Bench Lane', 'Cooper Walk', 'Dyer Street', 'Ember Court', 'Fuller Way', 'Glover Road', 'Hooper Hill'] // prettier-ignore

/** The same numbers from 0 to 1 for the same start, evenly spread (a linear congruence, Numerical Recipes). */
function drawn(start: number): () => number {
  let state = start >>> 0
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 2 ** 32
  }
}

/**
 * A program of young trees, an invented scenario of ours: every tree, street and measurement is made up. `places` false
 * leaves the streets out. Most trees want one to three small cuts, some none, a few more or a ladder.
 */
export function youngTrees(count: number, { start = 1, places = true } = {}): Cell[][] {
  const next = drawn(start)
  const between = (from: number, to: number, digits = 1): number =>
    Math.round((from + next() * (to - from)) * 10 ** digits) / 10 ** digits
  const oneOf = <T>(words: readonly T[]): T => words[Math.floor(next() * words.length)] as T
  const rows: Cell[][] = [headers.split(' | ')]
  for (let at = 0; at < count; at++) {
    const trunk = between(1.8, 3.8)
    const height = between(13, 21)
    const street = places
      ? `${String(2 * at + 1)} ${streets[Math.floor((at * streets.length) / count)] ?? ''}`
      : null
    const tree: Cell[] = [`Y${String(at + 1)}`, street, oneOf(species), trunk, height, between(3, 5), 'young', next() < 0.85 ? 'good' : 'fair', 'medium', next() < 0.15 ? 7 : null, 'open'] // prettier-ignore
    const limb = (...cells: Cell[]) =>
      rows.push([...(rows.at(-1)?.[0] === tree[0] ? [tree[0] ?? null, ...Array<Cell>(10).fill(null)] : tree), ...cells]) // prettier-ignore
    limb('A', 'leader', Math.round(trunk * 8) / 10, null, 4, height, null, null, 'live', null)
    const strong = Math.floor(next() * 4)
    for (let limbAt = 0; limbAt < 4; limbAt++) {
      const origin = between(3.5, 8)
      const above = Math.round(trunk * (0.95 - origin / height / 2) * 10) / 10
      const share = limbAt < strong ? between(0.55, 0.95, 2) : between(0.2, 0.42, 2)
      const tip = limbAt < strong ? between(height * 0.75, height * 0.97) : between(origin + 2, origin + 5)
      const dead = next() < 0.04
      limb(String.fromCharCode(66 + limbAt), null, Math.max(0.3, Math.round(above * share * 10) / 10), above, origin, tip, oneOf(['none', 'none', 'partial', 'full']), between(0, 359, 0), dead ? 'dead' : 'live', dead ? null : between(origin - 0.5, origin + 1.5)) // prettier-ignore
    }
  }
  return rows
}
