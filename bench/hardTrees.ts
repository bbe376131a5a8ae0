import type { Cell, CellBlock } from '../shared/cells'
import { numbers } from './madeInventory'

/** A limb of an invented tree: inches and feet; `on` is the place of the limb it grows on. */
export interface DrawnLimb {
  readonly diameter: number
  readonly stem: number
  readonly origin: number
  readonly tip: number
  readonly bark: string
  readonly on: number | null
  readonly leads?: boolean
}

/** An invented tree whose cuts are hard to choose: many limbs that matter about as much, limbs on limbs, tight limits. */
export interface DrawnTree {
  readonly height: number
  readonly base: number
  readonly stage: string
  readonly vigor: string
  readonly limbs: readonly DrawnLimb[]
}

const headers =
  'Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Role | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft) | Included bark | Parent limb'

/** The tree as an inventory of its own. */
export function inventoryOf({ height, base, stage, vigor, limbs }: DrawnTree): CellBlock {
  const rows = limbs.map(({ diameter, stem, origin, tip, bark, on, leads }, at): Cell[] => [
    ...['T1', height, base, stage, vigor],
    ...[
      `B${at}`,
      leads === true ? 'leader' : null,
      diameter,
      stem,
      origin,
      tip,
      bark,
      on === null ? null : `B${on}`
    ]
  ])
  return { rows: [headers.split(' | '), ...rows], sheet: 'Trees', top: 0, left: 0 }
}

export const mostLimbs = 60

const tenth = (value: number): number => Math.round(value * 10) / 10

/** Draws trees and changes them a little, from a seed. */
export interface Drawing {
  fresh(): DrawnTree
  changed(tree: DrawnTree): DrawnTree
}

export function drawing(seed: number): Drawing {
  const next = numbers(seed)
  const pick = <T>(values: readonly T[]): T => values[Math.floor(next() * values.length)] as T
  const between = (low: number, high: number): number => low + (high - low) * next()

  function limbOn(tree: DrawnTree, on: number | null, thick: number): DrawnLimb {
    const { height, base } = tree
    const parent = on === null ? undefined : tree.limbs[on]
    const [from, to] = parent === undefined ? [base, 0.7 * height] : [parent.origin, parent.tip]
    const origin = tenth(between(from, to))
    const stem = tenth(parent === undefined ? thick * (1 - origin / height) + 1 : parent.diameter * 0.8)
    return {
      diameter: tenth(Math.max(0.5, stem * between(0.2, 0.9))),
      stem,
      origin,
      tip: tenth(between(origin + 0.4 * (height - origin), height)),
      bark: pick(['none', 'none', 'partial', 'full']),
      on
    }
  }

  function fresh(): DrawnTree {
    const height = tenth(between(25, 65))
    const thick = between(8, 16)
    const bare: DrawnTree = {
      height,
      base: tenth(height * between(0.08, 0.28)),
      stage: pick(['planting', 'young', 'medium', 'medium', 'mature']),
      vigor: pick(['good', 'good', 'fair']),
      limbs: []
    }
    const onLimbs = next() < 0.5
    const limbs: DrawnLimb[] = []
    const count = Math.floor(between(20, mostLimbs + 1))
    while (limbs.length < count) {
      const on = onLimbs && limbs.length > 3 && next() < 0.4 ? Math.floor(next() * 4) : null
      limbs.push(limbOn({ ...bare, limbs }, on, thick))
    }
    return { ...bare, limbs }
  }

  function changedLimb(limb: DrawnLimb, { height, limbs }: DrawnTree): DrawnLimb {
    const twin = pick(limbs)
    return pick([
      { ...limb, diameter: tenth(Math.max(0.5, limb.diameter * between(0.8, 1.2))) },
      { ...limb, tip: tenth(between(limb.origin + 0.4 * (height - limb.origin), height)) },
      { ...limb, bark: pick(['none', 'partial', 'full']) },
      { ...limb, diameter: twin.diameter, stem: twin.stem }
    ])
  }

  function changed(tree: DrawnTree): DrawnTree {
    const at = Math.floor(next() * tree.limbs.length)
    const limbs = tree.limbs.map((limb, place) => (place === at ? changedLimb(limb, tree) : limb))
    const copied = limbs[at]
    if (copied !== undefined && limbs.length < mostLimbs && next() < 0.2) limbs.push(copied)
    const base = next() < 0.1 ? tenth(tree.height * between(0.05, 0.3)) : tree.base
    const vigor = next() < 0.1 ? pick(['good', 'fair']) : tree.vigor
    return { ...tree, base, vigor, limbs }
  }

  return { fresh, changed }
}
