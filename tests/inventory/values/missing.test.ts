/** What stands for "not measured" is blank, and told once a column with its count; nothing else is. */
import { readInventory } from '../../../src/inventory/readInventory'
import { codesIn, columnOf } from './columnOf'

const said = (...cells: Parameters<typeof columnOf> extends [string, ...infer Cells] ? Cells : never) => {
  const read = columnOf('Crown spread (m)', ...cells)
  return { values: read.trees.map(({ spread }) => spread), codes: codesIn(read), problems: read.problems }
}

test.each([
  'n/a',
  'N/A',
  'NA',
  'NM',
  '-',
  '–',
  '—',
  '?',
  'none',
  'k.A.',
  's/d',
  'n.d.',
  'nicht gemessen',
  'sin dato',
  'non mesuré',
  'not measured',
  'unknown',
  -9999,
  -999,
  -9,
  '-9999',
  '...'
])('%j is blank', (cell) => {
  expect(said(5.5, cell, 6.5)).toMatchObject({ values: [5.5, null, 6.5], codes: [['missing-codes', 'A3']] })
})

test('all codes of a column are one note with the count', () => {
  const { problems } = said(5, 'n/a', 6, '-', 'n/a', -9999)
  expect(problems.map(({ message, level }) => [message, level])).toEqual([
    [
      'Crown spread reads “n/a”, “-” and “-9999” in 4 of its cells, the first at A3: taken as not measured, like blank cells.',
      'note'
    ]
  ])
})

test('nines above zero are a code only where they repeat far above the rest', () => {
  expect(said(5, 999, 6, 999).values).toEqual([5, null, 6, null])
  expect(said(5, 999, 6).codes).toEqual([['too-large', 'A3']])
  const rows = [
    ['Tree', 'Height (mm)'],
    ['T1', 9999],
    ['T2', 9999],
    ['T3', 8500]
  ]
  const { trees } = readInventory({ rows, sheet: '', top: 0, left: 0 })
  expect(trees.map(({ height }) => height)).toEqual([9.999, 9.999, 8.5])
})

test('a needed value that is not measured is missing at its cell', () => {
  const rows = [
    ['Tree', 'Height (m)', 'Limb', 'Limb dia (cm)', 'Stem dia (cm)', 'Origin (m)', 'Tip (m)'],
    ['T1', 10, 'A', 5, 12, 3, 8],
    ['T1', 10, 'B', 'NM', 12, 3, 8]
  ]
  const { problems, unplanned } = readInventory({ rows, sheet: '', top: 0, left: 0 })
  expect(problems.map(({ code, cell }) => [code, cell])).toContainEqual(['missing-value', 'D3'])
  expect(unplanned.map(({ row }) => row)).toEqual([3])
})

test('a code on a tree’s first row is no second value beside the measured one', () => {
  const rows = [
    ['Tree', 'Height (m)', 'Trunk dia (cm)', 'Limb', 'Limb dia (cm)'],
    ['T1', 'n/a', -9999, 'A', 5],
    ['T1', 10, 20, 'B', 5],
    ['T1', '-', 20, 'C', 5]
  ]
  const { trees, problems } = readInventory({ rows, sheet: '', top: 0, left: 0 })
  expect(trees.map(({ height, trunk }) => [height, trunk])).toEqual([[10, 200]])
  expect(problems.filter(({ code }) => code === 'duplicate-tree')).toEqual([])
})

test('a limit that is unknown is still taken at its strictest, and one that does not exist is none', () => {
  const limits = columnOf('Local limit (%)', '?', 'n/a', '-', 20)
  expect(limits.trees.map(({ localLimit }) => localLimit)).toEqual([0, null, null, 0.2])
  expect(codesIn(limits)).toEqual([
    ['not-a-number', 'A2'],
    ['missing-codes', 'A3']
  ])
})

test('words of a choice can be missing, and a text that is no code stays', () => {
  const vigor = columnOf('Vigor', 'good', 'n/a', '?', 'fair')
  expect(vigor.trees.map((tree) => tree.vigor)).toEqual(['good', null, null, 'fair'])
  expect(codesIn(vigor)).toEqual([['missing-codes', 'A3']])
  expect(columnOf('Species', 'NA', 'Red maple').trees.map(({ species }) => species)).toEqual([
    'NA',
    'Red maple'
  ])
})

test('a dash is a no under a tick, and a question mark there is a doubt', () => {
  const decay = columnOf('Decay', 'x', '-', '?', null)
  expect(decay.limbs.map((limb) => limb.decay)).toEqual([true, false, false, false])
  expect(codesIn(decay)).toEqual([['not-a-choice', 'A4']])
})
