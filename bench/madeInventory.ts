import type { Cell, CellBlock } from '../shared/cells'

/** A repeatable stream of numbers from 0 to 1 (mulberry32). */
export function numbers(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}

const headers = [
  'Tree',
  'Species',
  'Trunk dia (in)',
  'Height (ft)',
  'Crown base (ft)',
  'Life stage',
  'Vigor',
  'Growth',
  'Limb',
  'Limb dia (in)',
  'Stem dia (in)',
  'Origin (ft)',
  'Tip (ft)',
  'Included bark',
  'Bearing',
  'Notes'
]

const tenth = (value: number): number => Math.round(value * 10) / 10

/** A made-up inventory of 16 columns with this many limbs, from 3 to 14 a tree (or up to another number), and a wrong cell now and then. */
export function madeInventory(limbs: number, seed = 7, mostLimbs = 14): CellBlock {
  const next = numbers(seed)
  const pick = <T>(values: readonly T[]): T => values[Math.floor(next() * values.length)] as T
  const rows: Cell[][] = [headers]
  for (let tree = 1; rows.length <= limbs; tree++) {
    const trunk = tenth(3 + 17 * next())
    const height = Math.round(14 + trunk * 2.4 + 6 * next())
    const base = Math.round(height * (0.15 + 0.15 * next()))
    const shared: Cell[] = [
      `T${tree}`,
      pick(['Red maple', 'Pin oak', 'Honeylocust', 'American elm', 'Green ash']),
      trunk,
      height,
      base,
      pick(['young', 'young', 'medium', 'medium', 'mature']),
      pick(['good', 'good', 'good', 'fair']),
      pick(['slow', 'medium', 'fast'])
    ]
    const count = 3 + Math.floor((mostLimbs - 2) * next())
    for (let limb = 1; limb <= count && rows.length <= limbs; limb++) {
      const origin = tenth(base + (height * 0.6 - base) * next())
      const stem = tenth(Math.max(1.2, trunk * (1 - origin / height)))
      const wrong = next() < 0.004
      rows.push([
        ...shared,
        `L${limb}`,
        wrong ? 'about 3' : tenth(Math.max(0.5, stem * (0.2 + 0.8 * next()))),
        stem,
        origin,
        tenth(origin + (height - origin) * (0.4 + 0.6 * next())),
        pick(['none', 'none', 'none', 'partial', 'full']),
        Math.round(360 * next()),
        next() < 0.1 ? 'check again' : null
      ])
    }
  }
  return { rows, sheet: 'Inventory', top: 0, left: 0 }
}
