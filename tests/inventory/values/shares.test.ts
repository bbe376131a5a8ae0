/** Whether 1 and 0.5 are percentages is told from the header and the whole column. */
import { codesIn, columnOf } from './columnOf'

const shares = (header: string, ...cells: (string | number)[]) => {
  const read = columnOf(header, ...cells)
  const values = read.trees.map(({ removed }) => removed)
  return {
    values: values.map((value) => Number((value ?? NaN).toFixed(9))),
    codes: codesIn(read),
    problems: read.problems
  }
}

test('under a percent sign 1 is one percent, and what is below is asked about', () => {
  const { values, codes, problems } = shares('Foliage removed (%)', 1, 0.5, 10, 0)
  expect(values).toEqual([0.01, 0.005, 0.1, 0])
  expect(codes).toEqual([['share-or-percent', 'A3']])
  expect(problems[0]!.message).toBe(
    'Foliage removed this season at A3 reads 0.5 among percentages: is it 0.5 % or 50 %? It was taken as 0.5 %.'
  )
})

test('one value over 1 makes the whole column percentages', () => {
  expect(shares('Foliage removed', 1, 10)).toMatchObject({
    values: [0.01, 0.1],
    codes: [
      ['whole-percent', 'A2'],
      ['whole-percent', 'A3']
    ]
  })
  expect(shares('Foliage removed', 0.05, 10)).toMatchObject({
    values: [0.0005, 0.1],
    codes: [
      ['share-or-percent', 'A2'],
      ['whole-percent', 'A3']
    ]
  })
})

test('none of what a tree may lack is 0, and not unknown', () => {
  expect(shares('Foliage removed', 'none', '5 %', 'keine', 'aucun')).toMatchObject({
    values: [0, 0.05, 0, 0],
    codes: []
  })
})

test('fractions alone are fractions', () => {
  expect(shares('Foliage removed', 0.05, 0.1, 0, 1)).toMatchObject({ values: [0.05, 0.1, 0, 1], codes: [] })
})

test('a text with a sign is a percentage everywhere, and a fraction beside it is asked about', () => {
  expect(shares('Foliage removed (%)', '5 %', 5, '5%').values).toEqual([0.05, 0.05, 0.05])
  const { values, codes, problems } = shares('Foliage removed', '5 %', 0.05)
  expect(values).toEqual([0.05, 0.05])
  expect(codes).toEqual([['share-or-percent', 'A3']])
  expect(problems[0]!.message).toContain('is it 0.05 % or 5 %? It was taken as 5 %.')
})

test('an estimate is taken with a doubt, except of a limit', () => {
  const dieback = columnOf('Dieback (%)', '~10 %', '5-10%', 'lots')
  expect(dieback.trees.map((tree) => tree.dieback)).toEqual([0.1, expect.closeTo(0.075, 12), null])
  expect(codesIn(dieback)).toEqual([
    ['inexact-share', 'A2'],
    ['inexact-share', 'A3'],
    ['not-a-number', 'A4']
  ])
  expect(shares('Foliage removed (%)', '~10 %')).toMatchObject({
    values: [1],
    codes: [['not-a-number', 'A2']]
  })
})
