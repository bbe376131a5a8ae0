/** Sizes of trees in lines of text between the rows of limbs, and in notes. All inventories are invented. */
import { readCsv } from '../../../src/file/csvFile'
import { readSheets } from '../../../src/inventory/readSheets'

function read(text: string) {
  const { trees, problems } = readSheets([{ name: 'Survey', rows: readCsv(text.trim()), top: 0, left: 0 }])
  const cm = (value: number | null): number | null => (value === null ? null : Math.round(value) / 10)
  const m = (value: number | null): number | null => (value === null ? null : Math.round(value * 100) / 100)
  return {
    trees: trees.map(({ id, species, trunk, height, crownBase, limbs }) => [
      ...[id, species, cm(trunk), m(height), m(crownBase)],
      limbs.map((limb) => limb.id).join('')
    ]),
    told: (code: string) => problems.find((each) => each.code === code)?.message ?? null,
    codes: problems.map(({ code }) => code)
  }
}

const limbs = 'Limb,Limb dia (cm),Stem dia (cm),Origin (m),Tip (m)'
const a = 'A,10,12,2,8'
const b = 'B,7,13,1.9,7'

test('a line names each tree and tells its sizes', () => {
  const found = read(`
${limbs}
"Tree 1 - Red oak, 9 m tall, crown from 1.8 m",,,,
${a}
${b}
"Tree 2: Elm, trunk 22 cm, height 8.5 m",,,,
${a}`)
  expect(found.trees).toEqual([
    ['1', 'Red oak', null, 9, 1.8, 'AB'],
    ['2', 'Elm', 22, 8.5, null, 'A']
  ])
  expect(found.told('sizes-from-lines')).toContain('such as “Tree 1 - Red oak')
  expect(found.codes).not.toContain('notes-left-out')
})

test.each([
  [
    'below the rows of its tree',
    `Tree,${limbs}\nT1,${a}\nT1,${b}\n"Trunk 60 cm, height 12 m",,,,,\nT2,${a}\n"Trunk 30 cm, height 8.5 m",,,,,`
  ],
  [
    'above the rows of its tree',
    `Tree,${limbs}\n"Trunk 60 cm, height 12 m",,,,,\nT1,${a}\nT1,${b}\n"Trunk 30 cm, height 8.5 m",,,,,\nT2,${a}`
  ],
  [
    'among the rows of its tree',
    `Tree,${limbs}\nT1,,,,,\n"DBH: 60 cm, height: 12 m",,,,,\n,${a}\n,${b}\nT2,,,,,\n"DBH: 30 cm, height: 8.5 m",,,,,\n,${a}`
  ]
])('a line stands %s', (_where, text) => {
  const found = read(text)
  expect(found.trees).toEqual([
    ['T1', '', 60, 12, null, 'AB'],
    ['T2', '', 30, 8.5, null, 'A']
  ])
  expect(found.codes).not.toContain('sizes-in-lines')
})

test('a line that may be of either tree is named and not used', () => {
  const found = read(`Tree,Height (m),${limbs}\nT1,9,${a}\n"Trunk 60 cm, crown base 2 m",,,,,,\nT2,8,${a}`)
  expect(found.trees.map(([, , trunk]) => trunk)).toEqual([null, null])
  expect(found.told('sizes-in-lines')).toContain('(1, first “Trunk 60 cm, crown base 2 m” at Survey!A3)')
})

test('a line that says again what a column gives is named and not used', () => {
  const found = read(`Tree,Height (m),${limbs}\nT1,9,${a}\n"height 12 m",,,,,,\nT1,9,${b}`)
  expect(found.trees.map(([, , , height]) => height)).toEqual([9])
  expect(found.codes).toContain('sizes-in-lines')
})

test('sizes in notes are the tree’s, each unless a column gives it', () => {
  const found = read(
    `Tree,Species,Height (m),Notes\n1,Oak,9,DBH: 30 cm\n2,Elm,8.5,"leaning; dbh 22 cm; crown base 1.5 m"\n3,Lime,12,height 15 m`
  )
  expect(found.trees).toEqual([
    ['1', 'Oak', 30, 9, null, ''],
    ['2', 'Elm', 22, 8.5, 1.5, ''],
    ['3', 'Lime', null, 12, null, '']
  ])
  expect(found.told('sizes-from-notes')).toContain('“DBH: 30 cm” at Survey!D2')
})

test('a column whose cells hold several measurements each is read', () => {
  const found = read(
    'Tree,Species,Measurements\n1,Oak,"DBH 22 cm, height 9 m, crown base 1.8 m"\n2,Elm,"DBH 18 cm, height 8.2 m"'
  )
  expect(found.trees).toEqual([
    ['1', 'Oak', 22, 9, 1.8, ''],
    ['2', 'Elm', 18, 8.2, null, '']
  ])
})

test.each([
  'trunk 5 m from house',
  'DBH 30 cm in 2019',
  'crown raised to 3 m',
  'cavity 12 cm',
  'height of wall 2 m',
  'surveyed 3 m away'
])('“%s” is no size of a tree', (note) => {
  const found = read(`Tree,Species,Notes,Crown width (m),Vigor\n1,Oak,${note},4,good\n2,Elm,,5,good`)
  expect(found.codes).not.toContain('sizes-from-notes')
})
