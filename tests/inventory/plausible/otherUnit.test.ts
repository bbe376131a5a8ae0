/** One tree among others, a size of which was likely typed in another unit. All inventories are invented. */
import type { Cell } from '../../../shared/cells'
import { readInventory } from '../../../src/inventory/readInventory'

const feet: readonly (readonly [height: number, dbh: number])[] = [
  [42, 14],
  [36, 11],
  [39, 13],
  [44, 15],
  [33, 10]
]

function asked(headers: readonly string[], sizes: readonly (readonly Cell[])[]) {
  const rows = [['Tree', ...headers], ...sizes.map((row, at) => [`P${at + 1}`, ...row])]
  return readInventory({ rows, sheet: '', top: 0, left: 0 })
    .problems.filter(({ code }) => code === 'tree-unit' || code === 'tree-shape' || code === 'sizes-unlikely')
    .map(({ code, cell, message }) => [code, cell, message])
}

const inFeet = ['Height (ft)', 'DBH (in)']

it('meters typed among feet', () => {
  expect(asked(inFeet, [...feet, [12.2, 14]])).toEqual([
    [
      'tree-unit',
      'B7',
      'Tree P6 has a height of 12.2 ft at B7 beside a trunk of 14 in: 10 times as high as thick, where a typical tree here is 36 times. Was it typed in meters, which would be 40 ft? It is used as it stands.'
    ]
  ])
})

it('feet typed among meters', () => {
  const meters = feet.map(([height, dbh]) => [height * 0.3048, dbh * 2.54])
  const found = asked(['Height (m)', 'DBH (cm)'], [...meters, [38, 33]])
  expect(found.map(([code, cell]) => [code, cell])).toEqual([['tree-unit', 'B7']])
  expect(found[0]?.[2]).toContain('Was it typed in feet')
})

it('centimeters typed among inches', () => {
  const found = asked(inFeet, [...feet, [38, 33]])
  expect(found.map(([code, cell]) => [code, cell])).toEqual([['tree-unit', 'C7']])
  expect(found[0]?.[2]).toContain('a trunk diameter of 33 in at C7')
  expect(found[0]?.[2]).toContain('Was it typed in centimeters, which would be 13 in?')
})

it.each<[string, readonly (readonly Cell[])[]]>([
  ['a young tree, small in both', [...feet, [14, 3.5]]],
  ['a stout tree', [...feet, [30, 17]]],
  ['a tree whose sizes suit no other unit', [...feet, [17, 40]]],
  ['few trees', feet.slice(0, 2).concat([[12.2, 14]])]
])('%s is not asked about', (_what, sizes) => {
  expect(asked(inFeet, sizes).filter(([code]) => code === 'tree-unit')).toEqual([])
})

it('nor is a list in which the trees are not alike', () => {
  const mixed = [...feet, [12, 14], [11, 12], [13, 13], [14, 15]]
  expect(asked(inFeet, mixed).filter(([code]) => code === 'tree-unit')).toEqual([])
})
