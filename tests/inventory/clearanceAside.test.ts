/** A clearance in a list about power lines, and a condition in percent. All inventories are invented. */
import type { Cell } from '../../shared/cells'
import { readSheets } from '../../src/inventory/readSheets'

function read(headers: readonly string[], ...rows: readonly (readonly Cell[])[]) {
  const sheet = { name: 'Feeder', rows: [headers, ...rows], top: 0, left: 0 }
  const { trees, problems } = readSheets([sheet])
  return {
    clearances: trees.map(({ clearance }) => clearance),
    vigors: trees.map(({ vigor }) => vigor),
    said: problems.map(({ code, cell }) => `${code} ${cell}`)
  }
}

const trees = ['Tree', 'Species', 'DBH (in)', 'Height (ft)']
const elm = ['K1', 'Elm', 9, 33]

it.each([
  ['Clearance required (ft)', 'Conductor'],
  ['Clearance needed (ft)', 'Circuit'],
  ['Min clearance (m)', 'Power line']
])('“%s” beside “%s” is asked about and not used', (header, beside) => {
  const { clearances, said } = read([...trees, header, beside], [...elm, 10, 'a'])
  expect(clearances).toEqual([null])
  expect(said.filter((each) => each.endsWith('Feeder!E1'))).toEqual(['clearance-aside Feeder!E1'])
})

it('one that says what it is above is used as before', () => {
  const { clearances, said } = read([...trees, 'Clearance over road (ft)', 'Circuit'], [...elm, 14, 'a'])
  expect(clearances[0]).toBeCloseTo(4.267, 3)
  expect(said.join()).not.toContain('clearance-aside')
})

it('one in a list without lines is used as before', () => {
  const { clearances } = read([...trees, 'Clearance needed (ft)', 'Crew'], [...elm, 8, 'a'])
  expect(clearances[0]).toBeCloseTo(2.438, 3)
})

it('a condition in percent is told to be numbers that stand for words', () => {
  const { vigors, said } = read([...trees, 'Health %'], [...elm, 80], ['K2', 'Elm', 8, 30, 55])
  expect(vigors).toEqual([null, null])
  expect(said).toContain('choice-scale Feeder!E1')
})
