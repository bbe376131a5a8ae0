/** Several measures in one cell: under a header that names their order, or in texts that name each. All inventories are invented. */
import type { Cell } from '../../../shared/cells'
import { measuresNamed, partsOfCell } from '../../../src/inventory/arrange/combinedColumns'
import type { ReadingChoices } from '../../../src/inventory/inventory'
import { readSheets } from '../../../src/inventory/readSheets'

function read(rows: readonly (readonly Cell[])[], choices: ReadingChoices = {}) {
  return readSheets([{ name: 'Round', rows, top: 0, left: 0 }], choices)
}

describe('a header that names several measures', () => {
  it.each([
    ['BHD × Höhe', ['BHD', 'Höhe']],
    ['Sizes (ht / dbh / spread)', ['ht', 'dbh', 'spread']],
    ['DAP / Altura (cm / m)', ['DAP (cm)', 'Altura (m)']],
    ['Limb: dia, stem, origin, tip', ['dia', 'stem', 'origin', 'tip']],
    ['Girth (in) + height (ft)', ['Girth (in)', 'height (ft)']],
    ['Height & crown base (m)', ['Height (m)', 'crown base (m)']]
  ])('“%s”', (header, parts) => {
    expect(measuresNamed(header)).toEqual(parts)
  })

  it.each([
    'DBH / trunk diameter',
    'Dead/alive',
    'Tree/limb',
    'Height 2018 / 2022',
    'Limb / stem dia',
    'Species, genus'
  ])('“%s” is none', (header) => {
    expect(measuresNamed(header)).toBeNull()
  })

  it.each([
    ['9 in x 28 ft', 2, ['9 in', '28 ft']],
    ['9x28', 2, ['9', '28']],
    ['4,5 / 11 / 2,8 / 7', 4, ['4,5', '11', '2,8', '7']],
    ['12 m – 30 cm', 2, ['12 m', '30 cm']],
    ['9 in', 2, null],
    ['3/8/9', 2, null]
  ])('%s has %d parts: %j', (text, count, parts) => {
    expect(partsOfCell(text, count)).toEqual(parts)
  })
})

it('a list of trees with height and diameter in one column', () => {
  const { trees, problems } = read([
    ['Baum', 'Größe (H × BHD)'],
    ['Ulme 1', '11 m × 26 cm'],
    ['Ulme 2', '9,5 m × 22 cm']
  ])
  expect(trees.map(({ height, trunk }) => [height, trunk])).toEqual([
    [11, 260],
    [9.5, 220]
  ])
  expect(problems.map(({ code }) => code)).toContain('measures-parted')
})

it('limbs with all four measures in one column, beside columns of their own', () => {
  const { trees } = read([
    ['Tree', 'Height (ft)', 'Limb', 'Dia|Stem|Origin|Tip (in|in|ft|ft)', 'Vigor'],
    ['K1', 33, 'a', '3 | 7 | 8 | 24', 'good'],
    ['K1', 33, 'b', '2.5 | 6 | 11 | 27', 'good']
  ])
  expect(trees[0]?.limbs.map(({ diameter, stem, origin, tip }) => [diameter, stem, origin, tip])).toEqual([
    [expect.closeTo(76.2), expect.closeTo(177.8), expect.closeTo(2.4384), expect.closeTo(7.3152)],
    [expect.closeTo(63.5), expect.closeTo(152.4), expect.closeTo(3.3528), expect.closeTo(8.2296)]
  ])
})

it('a cell with another count of numbers is refused with its text, and a code is no number', () => {
  const { trees, problems } = read([
    ['Tree', 'DBH/height'],
    ['K1', '9 in / 28 ft'],
    ['K2', '30 ft'],
    ['K3', 'n/a'],
    ['K4', '8 in / 27 ft'],
    ['K5', 12]
  ])
  expect(trees.map(({ height, trunk }) => [height !== null, trunk !== null])).toEqual([
    [true, true],
    [false, false],
    [false, false],
    [true, true],
    [false, false]
  ])
  const refused = problems.filter(({ code }) => code === 'not-a-number')
  expect(refused.map(({ cell }) => cell)).toEqual(['Round!B3', 'Round!B3', 'Round!B6', 'Round!B6'])
})

it('nor are both halves of a pair taken from one number', () => {
  const { trees } = read([
    ['Tree', 'Height (ft)', 'Limb', 'Limb/stem dia (in)', 'Origin (ft)', 'Tip (ft)'],
    ['K1', 33, 'a', '3/7', 8, 24],
    ['K1', 33, 'b', '2/6', 9, 24],
    ['K1', 33, 'c', '2/5', 10, 24],
    ['K1', 33, 'd', '3.5/6', 10, 24],
    ['K1', 33, 'e', 5, 11, 27]
  ])
  expect(trees[0]?.limbs.map(({ diameter, stem }) => diameter !== null && stem !== null)).toEqual([
    true,
    true,
    true,
    true,
    false
  ])
  expect(trees[0]?.limbs.at(-1)).toMatchObject({ diameter: null, stem: null })
})

it('bilingual headers above single numbers stay as they are, and so does what a person chose', () => {
  const plain = read([
    ['Baum', 'Höhe / Height (m)', 'BHD / DBH (cm)'],
    ['1', 11, 26],
    ['2', 12, 28]
  ])
  expect(plain.trees.map(({ height, trunk }) => [height, trunk])).toEqual([
    [11, 260],
    [12, 280]
  ])
  const rows = [
    ['Tree', 'Species', 'Height (ft)', 'DBH / ht'],
    ['1', 'Oak', 28, '9 in / 28 ft']
  ]
  const chosen = read(rows, { answers: [{ header: 'DBH / ht', field: null }] })
  expect(chosen.trees[0]?.trunk).toBeNull()
})

describe('sizes in texts that name each', () => {
  it('are read where nothing else tells of trees, and the column is not also called one without a use', () => {
    const { trees, problems } = read([
      ['Árbol', 'Medidas'],
      ['Tilo 4', 'DAP 30 cm, altura 12 m'],
      ['Tilo 5', 'DAP 26 cm, altura 11 m']
    ])
    expect(trees.map(({ height, trunk }) => [height, trunk])).toEqual([
      [12, 300],
      [11, 260]
    ])
    const codes = problems.map(({ code }) => code)
    expect(codes).toContain('sizes-in-texts')
    expect(codes).not.toContain('column-unknown')
  })

  it('beside other columns too', () => {
    const { trees, problems } = read([
      ['Tree', 'Species', 'Sizes', 'Vigor'],
      ['7', 'Elm', '10 in DBH, 31 ft tall', 'good'],
      ['8', 'Elm', '11 in DBH, 33 ft tall', 'fair']
    ])
    expect(trees.map(({ trunk }) => trunk)).toEqual([254, expect.closeTo(279.4)])
    expect(problems.map(({ code }) => code)).not.toContain('column-unknown')
  })
})
