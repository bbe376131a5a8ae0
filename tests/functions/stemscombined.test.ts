import { STEMSCOMBINED } from '../../functions/survey'
import { blankForms, column, errorForms, faultOf, row } from './spreadsheet'

const combined = STEMSCOMBINED as (...given: unknown[]) => unknown[][]

describe('STEMSCOMBINED gives one result for a range', () => {
  test.each([
    ['a column', column(3, 4)],
    ['a row', row(3, 4)],
    [
      'a block with gaps',
      [
        [3, null],
        ['', 4],
        [0, '  ']
      ]
    ],
    ['numbers stored as text', column('3', ' 4 ')]
  ])('%s of 3 and 4 gives 5', (_, range) => expect(combined(range)).toEqual([[5]]))
  test('one stem alone is its own diameter', () => expect(combined(7)).toEqual([[7]]))
  test('the order of the stems does not matter', () =>
    expect(combined(row(5, 6, 8))[0]?.[0]).toBeCloseTo(combined(row(8, 5, 6))[0]?.[0] as number, 12))
  test('what the spreadsheet appends is ignored', () =>
    expect(combined(row(3, 4), { functionName: 'STEMSCOMBINED' })).toEqual([[5]]))
  test.each(blankForms)('%s gives an empty text', (_, blank) => expect(combined(blank)).toEqual([['']]))
  test('a range of zeros gives an empty text', () => expect(combined(column(0, 0))).toEqual([['']]))
})

describe('STEMSCOMBINED refuses a bad cell and says which', () => {
  test.each(errorForms)('%s', (_, cell, code) => {
    const fault = faultOf(() =>
      combined([
        [3, 4],
        [5, cell]
      ])
    )
    expect(fault.code).toBe(code)
    expect(fault.message).toMatch(/^In row 2, column 2 of the range: diameters holds the error/)
  })
  test.each([[-3], ['thick'], [true]])('%p', (cell) => {
    const fault = faultOf(() => combined(column(3, cell)))
    expect(fault.code).toBe('#VALUE!')
    expect(fault.message).toMatch(/^In row 2, column 1 of the range: diameters /)
  })
  test('a notice passes through', () =>
    expect(combined(column(3, '! the reason'))).toEqual([['! the reason']]))
})
