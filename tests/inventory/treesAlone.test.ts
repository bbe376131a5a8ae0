/** What is told of limbs elsewhere makes no limb of a tree in a list of trees alone. All inventories are invented. */
import { readCsv } from '../../src/file/csvFile'
import { readSheets } from '../../src/inventory/readSheets'

function read(text: string) {
  const { trees, problems } = readSheets([{ name: 'Survey', rows: readCsv(text), top: 0, left: 0 }])
  return { limbs: trees.map(({ limbs }) => limbs.length), problems }
}

test.each([
  ['Lean', '5', '12'],
  ['Decay', 'yes', 'no'],
  ['Included bark', 'none', 'full'],
  ['Broken', 'no', 'yes']
])('“%s” of a tree opens no limb, and is named', (header, one, other) => {
  const found = read(`Tree,Species,Height (ft),DBH (in),${header}\n1,Oak,30,9,${one}\n2,Elm,28,8,${other}`)
  expect(found.limbs).toEqual([0, 0])
  expect(found.problems.map(({ message }) => message).join()).toContain(`“${header}”`)
})

test('beside limbs it is theirs', () => {
  const found = read(
    'Tree,Height (ft),Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft),Decay\n1,30,A,4,5,7,28,yes'
  )
  expect(found.limbs).toEqual([1])
  expect(found.problems.map(({ message }) => message).join()).not.toContain('“Decay”')
})

test('totals of a page and of the limbs open no trees', () => {
  const found = read(
    'Tree,Height (ft),Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)\n1,30,A,4,5,7,28\nSubtotal page 1,,1,,,,\n2,28,A,3,5,7,24\nLimbs total,,2,,,,'
  )
  expect(found.limbs).toEqual([1, 1])
  expect(found.problems.map(({ code }) => code)).toContain('totals-left-out')
})
