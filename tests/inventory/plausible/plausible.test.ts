/** What can hardly be so is asked about with its cells and its figures, and read as it stands. */
import type { Cell } from '../../../shared/cells'
import { sampleInventory } from '../../../src/file/sampleInventory'
import { plausibility } from '../../../src/inventory/plausible/plausible'
import { readInParts, readInventory } from '../../../src/inventory/readInventory'
import { madeInventory } from '../../../bench/madeInventory'

const headers = [
  'Tree',
  'Trunk dia (in)',
  'Height (ft)',
  'Crown base (ft)',
  'Limb',
  'Limb dia (in)',
  'Stem dia (in)',
  'Origin (ft)',
  'Tip (ft)'
]

/** Three invented trees with two limbs each, all of it likely. */
const likely: readonly Cell[][] = [
  ['T1', 7.2, 30, 6, 'A', 4.1, 5, 7, 28],
  ['T1', 7.2, 30, 6, 'B', 2.7, 5.4, 6.5, 24],
  ['T2', 8.1, 33, 7, 'A', 4.4, 5.6, 8, 31],
  ['T2', 8.1, 33, 7, 'B', 3.1, 6, 7.5, 26],
  ['T3', 9.3, 35, 8, 'A', 4.9, 6.8, 10, 33],
  ['T3', 9.3, 35, 8, 'B', 3.6, 7.1, 9, 30]
]

const questionCodes = [
  'limbs-thicker',
  'heights-swapped',
  'sizes-unlikely',
  'tips-unlikely',
  'tree-shape',
  'crown-base-above-limbs',
  'limbs-alike'
]

const readWith = (change: (row: Cell[], at: number) => Cell[], names: readonly string[] = headers) => {
  const rows = [[...names], ...likely.map((row, at) => change([...row], at))]
  const inventory = readInventory({ rows, sheet: '', top: 0, left: 0 })
  return { inventory, asked: inventory.problems.filter(({ code }) => questionCodes.includes(code)) }
}
const asked = (change: (row: Cell[], at: number) => Cell[], names?: readonly string[]) =>
  readWith(change, names).asked.map(({ code, cell, message }) => [code, cell, message])

const scaled = (columns: readonly number[], factor: number) => (row: Cell[]) =>
  row.map((cell, at) => (columns.includes(at) ? Number(cell) * factor : cell))

test('likely trees raise no question, here, in the sample, or among twenty thousand limbs', () => {
  expect(asked((row) => row)).toEqual([])
  const blocks = [
    { rows: sampleInventory.map((row) => [...row]), sheet: '', top: 0, left: 0 },
    madeInventory(20_000)
  ]
  for (const block of blocks) expect(plausibility(readInventory(block))).toEqual([])
})

test('limb and stem diameters that are swapped are asked about once, at the headers', () => {
  const swap = (row: Cell[]) => row.map((cell, at) => (at === 5 ? row[6]! : at === 6 ? row[5]! : cell))
  const { inventory, asked: found } = readWith(swap)
  expect(found.map(({ code, cell, message }) => [code, cell, message])).toEqual([
    [
      'limbs-thicker',
      'F1',
      'In 6 of 6 limbs compared the “Limb dia (in)” (F1) is larger than the “Stem dia (in)” at G1: are the two columns swapped? They are used as they stand.'
    ]
  ])
  expect(inventory.trees[0]!.limbs[0]).toMatchObject({ diameter: 5 * 25.4, stem: 4.1 * 25.4 })
})

test('one limb thicker than its stem is no question of the columns', () => {
  expect(asked((row, at) => row.map((cell, column) => (at === 0 && column === 5 ? 5.2 : cell)))).toEqual([])
})

test('tips and origins that are swapped are asked about once, and nothing that follows from it', () => {
  const swap = (row: Cell[]) => row.map((cell, at) => (at === 7 ? row[8]! : at === 8 ? row[7]! : cell))
  expect(asked(swap).map(([code, cell]) => [code, cell])).toEqual([['heights-swapped', 'I1']])
})

test('meters under feet are asked about with both units that would do', () => {
  expect(asked(scaled([2, 3, 7, 8], 0.3048))).toEqual([
    [
      'sizes-unlikely',
      'C1',
      'By “Height (ft)” (C1, read as feet) and “Trunk dia (in)” (B1, read as inches) a typical tree is 15 times as high as its trunk is thick, where 20 to 120 times is usual: are the heights in meters or the diameters in centimeters? They are used as they stand.'
    ]
  ])
})

test('centimeters under inches are asked about too', () => {
  const found = asked(scaled([1, 5, 6], 2.54))
  expect(found.map(([code, cell]) => [code, cell])).toEqual([['sizes-unlikely', 'C1']])
  expect(found[0]![2]).toContain('or the diameters in centimeters?')
})

test('feet under meters, where no trunk is given, are told from the stems at the unions', () => {
  const names = [
    'Tree',
    'Old tag',
    'Height (m)',
    'Crown base (m)',
    'Limb',
    'Limb dia (cm)',
    'Stem dia (cm)',
    'Origin (m)',
    'Tip (m)'
  ]
  const found = asked((row) => scaled([5, 6], 2.54)(row.map((cell, at) => (at === 1 ? null : cell))), names)
  expect(found.map(([code, cell]) => [code, cell])).toEqual([['sizes-unlikely', 'C1']])
  expect(found[0]![2]).toContain('what stands above a typical union')
  expect(found[0]![2]).toContain('are the heights in feet')
})

test('tips in meters beside heights in feet, and the other way round', () => {
  const low = asked(scaled([7, 8], 0.3048))
  expect(low.find(([code]) => code === 'tips-unlikely')).toEqual([
    'tips-unlikely',
    'I1',
    'By “Tip (ft)” (I1, read as feet) the limbs of a typical tree reach 29 % of its height: is it in meters? It is used as it stands.'
  ])
  const names = headers.map((name) =>
    /Height|Tip|Origin|base/.test(name) ? name.replace('(ft)', '(m)') : name
  )
  const high = asked((row) => scaled([2, 3], 0.3048)(row), names)
  expect(high.map(([code, cell]) => [code, cell])).toContainEqual(['tips-unlikely', 'I1'])
})

test('one tree of an odd shape is asked about at its height', () => {
  expect(asked((row, at) => row.map((cell, column) => (at > 3 && column === 1 ? 60 : cell)))).toEqual([
    [
      'tree-shape',
      'C6',
      'Tree T3 has a height of 35 ft at C6 and a trunk diameter of 60 in: 7 times as high as thick. Are both right? They are used as they stand.'
    ]
  ])
})

test('a crown base clearly above every union is asked about, one between the unions is not', () => {
  const crown = (feet: number) =>
    asked((row, at) => row.map((cell, column) => (at < 2 && column === 3 ? feet : cell)))
  expect(crown(16)).toEqual([
    [
      'crown-base-above-limbs',
      'D2',
      'Tree T1 has its crown base at D2, 16 ft, above the origin of every live limb that is listed; the lowest starts at 6.5 ft. Is that right? It is used as it stands.'
    ]
  ])
  expect(crown(6.8)).toEqual([])
  expect(crown(7.5)).toEqual([])
})

test('two limbs of a tree that were measured alike are asked about, and both are kept', () => {
  const { asked: found, inventory } = readWith((row, at) =>
    at === 1 ? ['T1', 7.2, 30, 6, 'B', 4.1, 5, 7, 28] : row
  )
  expect(found.map(({ code, cell, message }) => [code, cell, message])).toEqual([
    [
      'limbs-alike',
      'F3',
      'Limbs A and B of tree T1 (F3) have the same measurements throughout. Was one limb entered twice? Both are planned.'
    ]
  ])
  expect(inventory.trees[0]!.limbs).toHaveLength(2)
})

test('reading in parts asks the same, once', () => {
  const rows = [
    [...headers],
    ...Array.from({ length: 40 }, (_, at) =>
      likely.map((row) => [`${String(row[0])}-${String(at)}`, ...row.slice(1)])
    )
      .flat()
      .map(scaled([2, 3, 7, 8], 0.3048))
  ]
  const block = { rows, sheet: '', top: 0, left: 0 }
  const parts = [...readInParts(block, 30)]
  expect(parts.length).toBeGreaterThan(3)
  expect(parts.flatMap(({ problems }) => problems)).toEqual(readInventory(block).problems)
})
