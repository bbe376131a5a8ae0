/** Signs that programs put before or around cells to say that they are text. All inventories are invented. */
import type { Cell } from '../../shared/cells'
import { readSheets } from '../../src/inventory/readSheets'

const rows: readonly (readonly string[])[] = [
  [
    'Baum',
    'Art',
    'BHD (cm)',
    'Höhe (m)',
    'Ast',
    'Ø Ast (cm)',
    'Stamm über Ansatz (cm)',
    'Ansatz (m)',
    'Spitze (m)'
  ],
  ['01', 'Linde', '31', '12,5', 'A', '6', '14', '3,5', '9'],
  ['02', 'Ulme', '28', '11', 'A', '7', '13', '3', '8,5']
]

function read(cells: readonly (readonly Cell[])[]) {
  const { trees, problems } = readSheets([{ name: 'Liste', rows: cells, top: 0, left: 0 }])
  return {
    trees: trees.map(({ id, species, trunk, height, limbs }) => [
      id,
      species,
      trunk,
      height,
      limbs.map(({ diameter, stem, tip }) => [diameter, stem, tip])
    ]),
    codes: problems.map(({ code }) => code)
  }
}

const plain = read(rows).trees

it.each([
  ['an apostrophe', (text: string) => `'${text}`],
  ['a typographic one', (text: string) => `’${text}`],
  ['a grave accent', (text: string) => `\`${text}`],
  ['a caret', (text: string) => `^${text}`],
  ['quotation marks around', (text: string) => `"${text}"`],
  ['guillemets around', (text: string) => `« ${text} »`],
  ['a formula that gives the text', (text: string) => `="${text}"`]
])('%s', (_what, marked) => {
  const found = read(rows.map((row) => row.map(marked)))
  expect(found.trees).toEqual(plain)
  expect(found.codes).toContain('text-marks')
})

it('in columns of numbers alone, with blank cells', () => {
  const found = read(
    rows.map((row, at) => row.map((text, column) => (at > 0 && column !== 1 ? `'${text}` : text)))
  )
  expect(found.trees).toEqual(plain)
})

it('leaves the names of sorts and single signs as they are', () => {
  const found = read([
    ['Tree', 'Species', 'DBH (in)', 'Height (ft)'],
    ['1', "'Bowhall'", 9, 30],
    ['2', "'Armstrong'", 8, "'28"],
    ['3', "'t Hof elm", 8, 27]
  ])
  expect(found.trees.map(([, species]) => species)).toEqual(["'Bowhall'", "'Armstrong'", "'t Hof elm"])
  expect(found.codes).not.toContain('text-marks')
})

it('keeps the decimals of a column as typed where only the others tell how one is meant', () => {
  const found = read([
    ["'Tree", "'DBH (cm)", "'Height (m)"],
    ["'1", "'31.5", "'12"],
    ["'2", "'30.125", "'11"]
  ])
  expect(found.trees.map(([, , trunk]) => trunk)).toEqual([315, 301.25])
})
