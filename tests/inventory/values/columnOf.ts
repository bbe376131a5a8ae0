import type { Cell } from '../../../shared/cells'
import type { Problem } from '../../../shared/problems'
import { readInventory } from '../../../src/inventory/readInventory'
import type { Limb, Tree } from '../../../src/inventory/inventory'

interface Read {
  readonly trees: readonly Tree[]
  readonly limbs: readonly Limb[]
  /** Problems in the column in question. */
  readonly problems: readonly Problem[]
}

/** An invented list of one limb a tree with one more column, which stands in A. */
export function columnOf(header: string, ...cells: Cell[]): Read {
  const headers = ['Tree', 'Height (m)', 'Limb', 'Limb dia (cm)', 'Stem dia (cm)', 'Origin (m)', 'Tip (m)']
  const rows: Cell[][] = [
    [header, ...headers],
    ...cells.map((cell, at): Cell[] => [cell, `T${String(at + 1)}`, 10, 'L', 5 + at / 10, 12, 3, 8])
  ]
  const { trees, problems } = readInventory({ rows, sheet: '', top: 0, left: 0 })
  return {
    trees,
    limbs: trees.flatMap(({ limbs }) => limbs),
    // What the column means is not in question here.
    problems: problems.filter(({ code, cell }) => /^A\d+$/.test(cell) && code !== 'column-likely')
  }
}

export const codesIn = ({ problems }: Read) => problems.map(({ code, cell }) => [code, cell])
