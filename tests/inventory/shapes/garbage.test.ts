/** Whatever stands in cells of one tree, the others are read as if it did not. */
import fc from 'fast-check'
import type { Cell } from '../../../shared/cells'
import { groupProblems, mostProblems } from '../../../shared/groupProblems'
import { readSheets } from '../../../src/inventory/readSheets'
import { brokenNumbers, differentTrees, lostRows } from './compared'
import { surveys } from './drawnSurvey'
import { runs } from './runs'
import { plainShape, sheetsOf, type ShapeRow, type ShapeSheet } from './shape'

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
const thrown = fc.record({
  tree: fc.nat(9),
  cells: fc.array(fc.record({ row: fc.nat(9), column: fc.nat(30), cell: fc.constantFrom(...garbage) }), {
    minLength: 1,
    maxLength: 5
  })
})

function withThrown(sheet: ShapeSheet, id: Cell, cells: readonly Thrown[]): ShapeSheet {
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

test('random cells never throw, never change another tree, and lose no row', () => {
  fc.assert(
    fc.property(
      surveys(6).filter(({ trees }) => trees.length >= 4),
      thrown,
      (survey, { tree, cells }) => {
        const [sheet] = plainShape(survey)
        const id = survey.trees[tree % survey.trees.length]!.values.tree as Cell
        const shape = [withThrown(sheet!, id, cells)]
        const got = readSheets(sheetsOf(shape))
        const others = survey.trees
          .map(({ values }) => String(values.tree))
          .filter((each) => each !== String(id))
        const of = (inventory: typeof got) => inventory.trees.filter((each) => others.includes(each.id))
        expect(differentTrees(of(got), of(readSheets(sheetsOf(plainShape(survey)))))).toEqual([])
        expect(lostRows(shape, got)).toEqual([])
        expect(brokenNumbers(got.trees)).toEqual([])
        expect(groupProblems(got.problems).length).toBeLessThanOrEqual(mostProblems)
      }
    ),
    runs(200, 60_000)
  )
})
