/** Cells that hold anything but what was measured, thrown into the rows of one tree. */
import fc from 'fast-check'
import type { Cell } from '../../../shared/cells'
import type { ShapeRow, ShapeSheet } from './shape'

const garbage: readonly Cell[] = [
  ...[null, '', '   ', true, false, 0, -0, -5, 1e9, 1e300, 46056, 0.001, NaN, Infinity, -Infinity],
  ...['#N/A', '#DIV/0!', '#REF!', '2026-03-01', '3-Feb', '1e999', '0x10', '1,016', '12,5', '5-6', '½'],
  ...[
    '?',
    '~2',
    'about 3',
    '12 apples',
    'low',
    'dead',
    'leader',
    'none',
    '🌳',
    'x'.repeat(400),
    '=1+1',
    '１２'
  ]
]

interface Thrown {
  readonly row: number
  readonly column: number
  readonly cell: Cell
}

/** Into one tree, the one that `tree` names. */
export const thrown = fc.record({
  tree: fc.nat(9),
  cells: fc.array(fc.record({ row: fc.nat(9), column: fc.nat(30), cell: fc.constantFrom(...garbage) }), {
    minLength: 1,
    maxLength: 5
  })
})

export function withThrown(sheet: ShapeSheet, id: Cell, cells: readonly Thrown[]): ShapeSheet {
  const rows: ShapeRow[] = [...sheet.rows]
  const at = rows[0]!.cells.indexOf('Tree')
  const own = rows.flatMap(({ kind, cells: each }, row) => (kind === 'data' && each[at] === id ? [row] : []))
  for (const { row, column, cell } of cells) {
    const place = own[row % own.length]!
    const copy = [...rows[place]!.cells]
    copy[column % copy.length] = cell
    rows[place] = { kind: 'data', cells: copy }
  }
  return { ...sheet, rows }
}
