// Pending: what the drawn shapes found and the reader does not do yet. Run by `npx jest --testMatch '**/notYet.pending.ts'`.
// A case that is read rightly goes to examples.test.ts, and its header is drawn again.
import { readSheets } from '../../../src/inventory/readSheets'
import type { SheetCells } from '../../../src/inventory/survey/sheetCells'

const sheet = (name: string, ...rows: SheetCells['rows']): SheetCells => ({ name, rows, top: 0, left: 0 })

test('a height among the limb’s columns is the tree’s where another column gives the tip', () => {
  const { trees } = readSheets([
    sheet(
      'Survey',
      [
        'Limb',
        'Limb dia (cm)',
        'Height (m)',
        'Origin (m)',
        'Tree',
        'Crown base (m)',
        'Stem dia (cm)',
        'Tip (m)'
      ],
      ['A', 12, 11, 5, 'T1', 2.4, 24, 10.8],
      ['B', 11, 11, 4, 'T1', 2.4, 26, 9.1],
      ['A', 10, 9, 4, 'T2', 2.1, 21, 8.8]
    )
  ])
  expect(trees.map(({ height, limbs }) => [height, limbs[0]?.tip])).toEqual([
    [11, 10.8],
    [9, 8.8]
  ])
})

test('notes behind a latitude are still those of the limb', () => {
  const { trees } = readSheets([
    sheet(
      'Survey',
      [
        'Tree',
        'Height (m)',
        'Limb',
        'Limb dia (cm)',
        'Stem dia (cm)',
        'Origin (m)',
        'Tip (m)',
        'Lat',
        'Notes'
      ],
      ['T1', 13.9, 'A', 12, 21, 4, 13, 41.20311, 'thin bark']
    )
  ])
  expect(trees[0]?.limbs[0]?.notes).toBe('thin bark')
})

test('the French top of a branch is a tip, and no neighbor by which a stem is the trunk', () => {
  const { trees } = readSheets([
    sheet(
      'Survey',
      [
        'Tree',
        'Height (m)',
        'Crown base (m)',
        'Limb',
        'Limb dia (cm)',
        'Cime de la branche (m)',
        'Stem dia (cm)',
        'Origin (m)'
      ],
      ['T1', 13.9, 3, 'A', 12, 13, 21, 4],
      ['T1', 13.9, 3, 'B', 11, 12, 22, 4.5],
      ['T2', 12.9, 3, 'A', 12, 11, 20, 4]
    )
  ])
  expect(trees[0]?.limbs[0]?.stem).toBe(210)
})
