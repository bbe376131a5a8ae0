/** Which column names the trees, where "Tree" holds their kinds or nothing is called so. All inventories are invented. */
import type { Cell } from '../../shared/cells'
import { readSheets } from '../../src/inventory/readSheets'

type Rows = readonly (readonly Cell[])[]

function read(sheets: Readonly<Record<string, Rows>>) {
  const given = Object.entries(sheets).map(([name, rows]) => ({ name, rows, top: 0, left: 0 }))
  const { trees, problems } = readSheets(given)
  return {
    trees: trees.map(({ id, species, height }) => [id, species, height === null ? null : Math.round(height)]),
    codes: problems.map(({ code }) => code),
    asked: problems.filter(({ code }) => code === 'column-likely').map(({ cell }) => cell)
  }
}

it('a column “Tree” of kinds that come again with other sizes gives the species, and the number the tree', () => {
  const { trees, codes, asked } = read({
    Walk: [
      [
        'Nr.',
        'Tree',
        'Trunk (in)',
        'Height (ft)',
        'Limb to remove',
        'Limb dia (in)',
        'Stem (in)',
        'Origin (ft)',
        'Tip (ft)'
      ],
      [1, 'Honeylocust', 9, 33, 'N', 3, 7, 8, 24],
      [2, 'Honeylocust', 12, 40, 'E', 4, 8, 9, 28],
      [3, 'Ginkgo', 8, 30, 'W', 2, 6, 8, 22]
    ]
  })
  expect(trees).toEqual([
    ['1', 'Honeylocust', 10],
    ['2', 'Honeylocust', 12],
    ['3', 'Ginkgo', 9]
  ])
  expect(codes).not.toContain('duplicate-tree')
  expect(asked).toContain('Walk!B1')
})

it('lists of trees on two sheets without a plain id are trees, each row one, and no sheet is a tree', () => {
  const headers = ['Ref #', 'Species', 'Dia (in)', 'Ht (ft)']
  const { trees, codes } = read({
    'Ward 3': [headers, [501, 'Elm', 9, 33], [502, 'Elm', 12, 40]],
    'Ward 4': [headers, [601, 'Elm', 10, 30]]
  })
  expect(trees.map(([id]) => id)).toEqual(['501', '502', '601'])
  expect(codes).not.toContain('id-from-sheet')
  const nameless = ['Species', 'Dia (in)', 'Ht (ft)']
  const rows = read({
    'Ward 3': [nameless, ['Elm', 9, 33], ['Elm', 12, 40]],
    'Ward 4': [nameless, ['Elm', 10, 30]]
  })
  expect(rows.trees).toHaveLength(3)
  expect(rows.codes).not.toContain('id-from-sheet')
})

it('what is measured in a unit is never the name of a limb', () => {
  const { codes, asked } = read({
    Survey: [
      ['Tree', 'XCH_FT', 'Height (ft)', 'Limb dia (in)', 'Stem (in)', 'Origin (ft)', 'Tip (ft)'],
      ['K1', 5, 33, 3, 7, 8, 24],
      ['K1', 6, 33, 4, 8, 9, 28],
      ['K2', 5, 30, 2, 6, 8, 22]
    ]
  })
  expect(asked).not.toContain('Survey!B1')
  expect(codes).toContain('column-unknown')
})

it('a column that is only likely a form, and holds no word of one, holds up nothing', () => {
  const rows = (header: string): Rows => [
    ['Baum', 'Höhe (m)', header, 'Ast', 'Ø Ast (cm)', 'Stamm über Ansatz (cm)', 'Ansatz (m)', 'Spitze (m)'],
    ['K1', 11, 'betont', 'a', 7, 14, 3, 8],
    ['K2', 12, 'verdeckt', 'a', 6, 13, 3, 8]
  ]
  const { codes } = read({ Liste: rows('Habitus') })
  expect(codes.filter((code) => code === 'not-a-choice').length).toBeLessThanOrEqual(1)
})

it('a list of trees without measures is not asked for those of limbs', () => {
  const { trees, codes } = read({
    List: [
      ['Site ID', 'Street', 'Species code', 'Species', 'Height class', 'DBH class'],
      [700, 'Dock Rd', 'ULAM', 'Elm', '31-45', '0-6'],
      [701, 'Dock Rd', 'QURU', 'Red oak', '16-30', '7-12']
    ]
  })
  expect(trees.map(([id, species]) => [id, species])).toEqual([
    ['700', 'Elm'],
    ['701', 'Red oak']
  ])
  expect(codes).not.toContain('column-asked')
})

it('the same headers on several sheets mean the same, so that numbers that begin again are those of each sheet', () => {
  const headers = ['Nr', 'Tree', 'DBH (in)', 'Height (ft)']
  const { trees } = read({
    'East bed': [headers, [1, 'Elm', 9, 33], [2, 'Elm', 12, 40], [3, 'Ginkgo', 8, 30]],
    'West bed': [headers, [1, 'Oak', 10, 30], [2, 'Zelkova', 11, 35]]
  })
  expect(trees.map(([id, species]) => [id, species])).toEqual([
    ['1 (East bed)', 'Elm'],
    ['2 (East bed)', 'Elm'],
    ['3', 'Ginkgo'],
    ['1 (West bed)', 'Oak'],
    ['2 (West bed)', 'Zelkova']
  ])
})

it('a row with a shout and nothing else is a note, and a low quotation mark repeats the tree above', () => {
  const { trees } = read({
    Heft: [
      [
        'Baum',
        'BHD (cm)',
        'Höhe (m)',
        'Ast',
        'Ø Ast (cm)',
        'Stamm über Ansatz (cm)',
        'Ansatz (m)',
        'Spitze (m)'
      ],
      ['Ulme Eck', 26, 10, 'N', 9, 18, 2.5, 8],
      ['„', null, null, 'S', 8, 17, 3, 8],
      ['Vorsicht Hund!', null, null, null, null, null, null, null],
      ['Esche', 24, 9, 'N', 8, 15, 2, 7]
    ]
  })
  expect(trees.map(([id]) => id)).toEqual(['Ulme Eck', 'Esche'])
})
