/** Ticks, words of a choice, scales of numbers and compass points, each by its column. */
import { codesIn, columnOf } from './columnOf'

test('ticks for included bark are full, a blank is none, and one note says so', () => {
  const read = columnOf('Included bark', 'x', null, '✓', '●', 'no', 'partial')
  expect(read.limbs.map(({ bark }) => bark)).toEqual(['full', 'none', 'full', 'full', 'none', 'partial'])
  expect(read.problems.map(({ code, level, message }) => [code, level, message])).toEqual([
    [
      'ticks-taken',
      'note',
      'Included bark reads “x”, “✓” and “●” in 3 of its cells, the first at A2; each was taken as “full”.'
    ]
  ])
})

test('the word full needs no note', () => {
  expect(columnOf('Included bark', 'full', 'voll', 'complète').problems).toEqual([])
})

test.each(['x', 'X', '✓', '✔', 'Y', 'yes', 'ja', 'J', 'oui', 'O', 'sí', 'S', 'true', true, '1', 1, '●'])(
  '%j under a flag is yes',
  (cell) => {
    const read = columnOf('Rubbing', cell, null)
    expect(read.limbs.map(({ rubbing }) => rubbing)).toEqual([true, false])
    expect(read.problems).toEqual([])
  }
)

test.each(['no', 'N', 'nein', 'non', '0', 0, 'false', false])('%j under a flag is no', (cell) => {
  expect(columnOf('Rubbing', cell, 'x').limbs.map(({ rubbing }) => rubbing)).toEqual([false, true])
})

test('a tick under dead wood is dead in four languages', () => {
  for (const header of ['Dead?', 'Totholz', 'Bois mort', 'Muerta'])
    expect(columnOf(header, 'x', null, 'ja').limbs.map(({ dead }) => dead)).toEqual([true, false, true])
})

test.each([
  [
    ['B', 'R', 'M'],
    ['good', 'fair', 'poor']
  ],
  [
    ['g', 'm', 's.'],
    ['good', 'fair', 'poor']
  ],
  [
    ['B', 'M', 'F'],
    ['good', 'fair', 'poor']
  ],
  [
    ['G', 'F', 'P'],
    ['good', 'fair', 'poor']
  ],
  // Malo or moyen: nothing tells.
  [
    ['B', 'M', 'B'],
    [null, null, null]
  ],
  [
    ['B', 'R', 'middling'],
    [null, null, null]
  ]
])('the letters %j of vigor are read by their company', (cells, values) => {
  expect(columnOf('Vigor', ...cells).trees.map(({ vigor }) => vigor)).toEqual(values)
})

test.each([
  ['1 (leicht geschwächt)', 'fair'],
  ['2 (stark geschwächt)', 'poor'],
  ['0 (vital)', 'good'],
  ['bon état', 'good'],
  ['en mauvais état', 'poor'],
  ['Buen estado', 'good'],
  ['guter Zustand', 'good'],
  ['In fair condition', 'fair'],
  ['alta', 'good'],
  ['Good (3 of 5)', 'good'],
  ['Bonne / Good', 'good'],
  ['Bonne / Fair', null],
  ['Fair-poor', null]
])('“%s” says a vigor', (text, value) => {
  expect(columnOf('Vigor', text).trees[0]!.vigor).toBe(value)
})

test('a header may tell what its numbers mean', () => {
  const vigors = (header: string) => columnOf(header, 1, 3, '2').trees.map(({ vigor }) => vigor)
  expect(vigors('Condition (1=good 2=fair 3=poor)')).toEqual(['good', 'poor', 'fair'])
  expect(vigors('Vitalität (1 = gut, 2 = mittel, 3 = schlecht)')).toEqual(['good', 'poor', 'fair'])
  expect(vigors('Condition (1=good 2=odd 3=poor)')).toEqual([null, null, null])
})

test('included bark may be slight or strong, in four languages', () => {
  const words = ['slight', 'teilw.', 'légère', 'leve', 'strong', 'stark', 'forte', 'fuerte']
  expect(columnOf('Included bark', ...words).limbs.map(({ bark }) => bark)).toEqual([
    ...words.slice(0, 4).map(() => 'partial'),
    ...words.slice(4).map(() => 'full')
  ])
})

test('numbers without words are asked about once, and nothing is guessed', () => {
  const read = columnOf('Vigor', 1, 2, 3, 1)
  expect(read.trees.map(({ vigor }) => vigor)).toEqual([null, null, null, null])
  expect(read.problems.map(({ code, cell, message }) => [code, cell, message])).toEqual([
    [
      'choice-scale',
      'A1',
      'Vigor at A1 is given in numbers (“1”, “2” and “3”) and not in words: which of them means what? Its 4 cells were taken as not given.'
    ]
  ])
})

test('numbers for life stages hold up their trees until their meaning is given', () => {
  const read = columnOf('Life stage', 1, 2, 3, 1)
  expect(codesIn(read)).toEqual([
    ['choice-number', 'A2'],
    ['choice-number', 'A3'],
    ['choice-number', 'A4'],
    ['choice-number', 'A5']
  ])
  expect(read.trees.map(({ unplannable }) => unplannable !== null)).toEqual([true, true, true, true])
})

test('a 1 on a scale of 0, 1 and 2 is no tick', () => {
  const read = columnOf('Included bark', 0, 1, 2)
  expect(read.limbs.map(({ bark }) => bark)).toEqual(['none', 'none', 'none'])
  expect(codesIn(read)).toEqual([['choice-scale', 'A1']])
  expect(columnOf('Included bark', 0, 1, 1).limbs.map(({ bark }) => bark)).toEqual(['none', 'full', 'full'])
})

test('one number among words is reported at its cell', () => {
  const read = columnOf('Vigor', 'good', 2)
  expect(codesIn(read)).toEqual([['not-a-choice', 'A3']])
})

test('a dead tree is asked about and nothing live is cut on it', () => {
  const read = columnOf('Vigor', 'dead', 'good')
  expect(read.trees.map(({ vigor }) => vigor)).toEqual(['poor', 'good'])
  expect(read.problems[0]!.message).toContain('is the whole tree dead?')
})

test('the letter O is told from the other points of its column', () => {
  expect(columnOf('Bearing', 'O', 'NE').limbs.map(({ bearing }) => bearing)).toEqual([270, 45])
  expect(columnOf('Bearing', 'NO', 'W').limbs.map(({ bearing }) => bearing)).toEqual([45, 270])
  const open = columnOf('Bearing', 'NO', 'S')
  expect(open.limbs.map(({ bearing }) => bearing)).toEqual([null, 180])
  expect(codesIn(open)).toEqual([['not-a-number', 'A2']])
})
