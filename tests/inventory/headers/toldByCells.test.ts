/** Columns whose header says little, told by their cells or by the words of other trades. Inventories are invented. */
import type { Cell } from '../../../shared/cells'
import { readSheets } from '../../../src/inventory/readSheets'

const headers = [
  'Tree',
  'Height (ft)',
  'Limb',
  'Limb dia (in)',
  'Stem dia (in)',
  'Starts at (ft)',
  'Top (ft)'
]
const limbs: Cell[][] = [
  ['E-1', 31, 'A', 4, 7, 9, 27],
  ['E-1', 31, 'B', 3, 6.5, 11, 28],
  ['E-2', 27, 'A', 5, 6, 8, 26],
  ['E-3', 36, 'A', 3.5, 8, 12, 30]
]

/** What a further column of the limbs is taken for, and what was read in the first row. */
function further(header: string, cells: readonly Cell[]) {
  const rows: Cell[][] = [[...headers, header], ...limbs.map((row, at) => [...row, cells[at] ?? null])]
  const inventory = readSheets([{ name: 'Yard', rows, top: 0, left: 0 }])
  const match = inventory.matches.find((each) => each.header === header)
  return { inventory, field: match?.field ?? null, confidence: match?.confidence }
}

test.each([
  ['Fork', ['incl', 'ok', 'incl', 'ok'], 'bark'],
  ['Joint kind', ['bark included', 'sound', 'sound', 'sound'], 'bark'],
  ['Zustand Ast', ['vital', 'abgestorben', 'vital', 'vital'], 'live'],
  ['How it looks', ['alive', 'alive', 'dead', 'alive'], 'live'],
  ['Standing', ['codominant', 'lateral', 'competing', 'lateral'], 'role'],
  ['Statut', ['codominante', 'latérale', 'dominée', 'latérale'], 'role']
])('“%s” is told by its words and asked about', (header, cells, field) => {
  expect(further(header, cells)).toMatchObject({ field, confidence: 'likely' })
})

test.each([
  ['Weather', ['ok', 'ok', 'normal', 'ok']],
  ['Color', ['green', 'bark', 'brown', 'red']],
  ['Span', [112, 112, 113, 114]],
  ['Aisle_ft', [5, 6, 5, 6]]
])('“%s” is taken for nothing', (header, cells) => {
  expect(further(header, cells).field).toBeNull()
})

test('letters N, P and F of inclusion are none, partial and full', () => {
  const { inventory } = further('Bark inclusion', ['N', 'P', 'F', 'N'])
  expect(inventory.trees.flatMap((tree) => tree.limbs.map((limb) => limb.bark))).toEqual([
    'none',
    'partial',
    'full',
    'none'
  ])
})

test('words of roles in a list of trees alone make no limbs of them', () => {
  const rows: Cell[][] = [
    ['Tree no.', 'Species', 'DBH (in)', 'Height (ft)', 'Structure'],
    [11, 'Red oak', 14, 41, 'codominant'],
    [12, 'Red oak', 12, 38, 'codominant'],
    [13, 'Elm', 17, 44, 'leader']
  ]
  const { trees, matches } = readSheets([{ name: 'Mall', rows, top: 0, left: 0 }])
  expect(trees.map(({ limbs }) => limbs.length)).toEqual([0, 0, 0])
  expect(matches.find(({ header }) => header === 'Structure')?.field).toBeNull()
})

test('a list of trees whose heights are classes asks nothing about limbs', () => {
  const rows: Cell[][] = [
    ['AssetID', 'SpeciesCode', 'Species', 'Height_Class', 'Condition'],
    ['701', 'ACSA', 'Acer saccharum', '16-30', 'good'],
    ['702', 'QUAL', 'Quercus alba', '31-45', 'fair'],
    ['703', 'QUAL', 'Quercus alba', '31-45', 'fair']
  ]
  const { problems, matches } = readSheets([{ name: 'City', rows, top: 0, left: 0 }])
  expect(problems.filter(({ code }) => code === 'column-asked')).toEqual([])
  expect(matches.find(({ field }) => field === 'species')?.header).toBe('Species')
})
