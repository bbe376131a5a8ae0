/** Lists that name some of the columns of an inventory and hold no trees. All of them are invented. */
import { readCsv } from '../../src/file/csvFile'
import { readSheets } from '../../src/inventory/readSheets'

function read(...texts: readonly string[]) {
  const { trees, problems } = readSheets(
    texts.map((text, at) => ({ name: `Sheet${String(at + 1)}`, rows: readCsv(text), top: 0, left: 0 }))
  )
  return {
    ids: trees.map(({ id }) => id),
    codes: problems.map(({ code }) => code),
    said: problems.map(({ message }) => message)
  }
}

const people = 'Name,Height (cm),Age\nAnna,172,34\nBob,181,41'

test.each([
  [people, 'a list of people'],
  ['No,Name,Height,Age\n1,Anna,172,34\n2,Bob,181,41', 'a list of people'],
  ['Nr;Name;Alter;Größe (cm)\n1;Anna;34;172\n2;Bob;41;181', 'a list of people'],
  ['Student,Height (m),Weight (kg)\nAnna,1.72,60\nBob,1.81,70', 'a list of people'],
  ['Prénom,Taille (cm),Poids (kg)\nAnna,172,60\nBob,181,70', 'a list of people'],
  ['Furniture,Height (cm),Width (cm)\nTable,75,120\nChair,90,45', 'a list of things'],
  ['Item No,Species,Thickness (in),Width (in),Length (ft)\n1,Oak,2,8,10\n2,Maple,1,6,8', 'a bill of lumber'],
  [
    'Species,Caliper (in),Height (ft),Price,Qty\nRed maple,2,10,450,5\nPin oak,2.5,12,520,3',
    'a list of prices'
  ],
  ['Tree,Price,Height (ft)\nRed maple,450,8\nPin oak,520,10', 'a list of prices']
])('%s', (text, list) => {
  const { ids, said, codes } = read(text)
  expect(ids).toEqual([])
  expect(codes).toEqual(['no-trees-here'])
  expect(said).toEqual([`This is no inventory of trees: what stands at Sheet1!A1 is ${list}.`])
})

test.each([
  ['No,Species,Height (ft)\n1,Oak,30\n2,Elm,28', ['1', '2']],
  ['Tree,Height (ft)\n1,30\n2,28', ['1', '2']],
  ['Species,Height (m)\nOak,9\nElm,8', ['row 2', 'row 3']],
  ['Name,Height (ft),DBH (in)\nGate,30,9\nPool,28,8', ['Gate', 'Pool']],
  ['Tree no.,Species,Height (ft),Age,Owner name\n1,Oak,30,20,A. Person\n2,Elm,28,35,B. Person', ['1', '2']],
  ['Tree,Species,Height (ft),DBH (in),Price\n1,Oak,30,9,120\n2,Elm,28,8,90', ['1', '2']],
  ['Item,Species,DBH (in),Height (ft),Weight (kg)\n1,Oak,9,30,60\n2,Elm,8,28,70', ['row 2', 'row 3']]
])('a small list of trees is one: %s', (text, ids) => {
  const found = read(text)
  expect(found.codes).not.toContain('no-trees-here')
  expect(found.ids).toEqual(ids)
})

test('a list of people beside the trees is left out and named', () => {
  const { ids, codes, said } = read('Tree,Species,Height (ft)\nT1,Oak,30\nT2,Elm,28', people)
  expect(ids).toEqual(['T1', 'T2'])
  expect(codes).toContain('sheets-left-out')
  expect(said.join()).toContain('Sheet2')
})
