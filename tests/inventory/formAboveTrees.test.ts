import { readInventory } from '../../src/inventory/readInventory'

const headers = ['Tree', 'Height (ft)', 'Limb', 'Limb dia (in)', 'Stem dia (in)', 'Origin (ft)', 'Tip (ft)']
const rows = [headers, ['T1', 30, 'A', 4.1, 5, 7, 28], ['T2', 33, 'A', 4.4, 5.6, 8, 31]]
const read = (...lines: (string | number | null)[][]) =>
  readInventory({ sheet: 'Survey', top: 0, left: 0, rows: lines })

test('a form above several trees tells their site, and nothing else of them', () => {
  const { trees } = read(['Site:', 'North park'], ['Species:', 'Elm'], [], ...rows)
  expect(trees.map(({ id, site, species }) => [id, site, species])).toEqual([
    ['T1', 'North park', ''],
    ['T2', 'North park', '']
  ])
})

test('above one tree it tells all that it says', () => {
  const { trees } = read(['Site:', 'North park'], ['Species:', 'Elm'], [], ...rows.slice(0, 2))
  expect(trees.map(({ id, site, species }) => [id, site, species])).toEqual([['T1', 'North park', 'Elm']])
})

test('a column of sites goes before the form', () => {
  const sites = rows.map((row, at) => [...row, at === 0 ? 'Site' : 'South yard'])
  const { trees } = read(['Site:', 'North park'], [], ...sites)
  expect(trees.map(({ site }) => site)).toEqual(['South yard', 'South yard'])
})
