import { CREWHOURS } from '../../functions/work'
import { inventedRates } from '../../src/price/rates'
import { blankForms, column, errorForms, faultOf, type CellFunction } from './spreadsheet'

const hours = CREWHOURS as CellFunction
const one = (...args: unknown[]): number => hours(...args)[0]?.[0] as number

describe('CREWHOURS gives one result for the cuts of a tree', () => {
  test('set-up and each cut by size and height, in hours', () => {
    const minutes = inventedRates.setUpMinutes.open + inventedRates.betweenTrees + 3 * 1 + 7 * 1.3
    expect(one(column(1.5, 3), column(8, 15))).toBeCloseTo(minutes / 60, 12)
  })
  test('harder access takes longer', () => {
    const open = one(column(1.5, 3), column(8, 15))
    expect(one(column(1.5, 3), column(8, 15), 'fenced')).toBeGreaterThan(open)
    expect(one(column(1.5, 3), column(8, 15), 'no machine')).toBeGreaterThan(one(3, 15, 'fenced'))
  })
  test('the same cuts in centimeters and meters take as long', () => {
    expect(one(column(3.81, 7.62), column(2.4384, 4.572), 'open', 'cm-m')).toBeCloseTo(
      one(column(1.5, 3), column(8, 15)),
      12
    )
  })
  test.each([
    ['access', [column(2, 3), 8, null], [column(2, 3), 8, 'open']],
    ['units', [column(2, 3), 8, null, null], [column(2, 3), 8, 'open', 'in-ft']]
  ])('%s left blank takes its default', (_, blank, given) => expect(hours(...blank)).toEqual(hours(...given)))
  test('blank rows are passed over', () =>
    expect(one(column(2, null, 3), column(8, '', 8))).toBe(one(column(2, 3), column(8, 8))))
  test.each(blankForms)('%s gives an empty text', (_, blank) => expect(hours(blank, blank)).toEqual([['']]))
})

describe('CREWHOURS refuses a bad cell and says which', () => {
  test.each(errorForms)('%s', (_, cell, code) => {
    const fault = faultOf(() => hours(column(2, cell), column(8, 8)))
    expect(fault.code).toBe(code)
    expect(fault.message).toMatch(/^In row 2, column 1 of the range: cut_diameters/)
  })
  test('a height left blank beside its cut', () => {
    const fault = faultOf(() => hours(column(2, 3), column(8, null)))
    expect([fault.code, fault.message]).toEqual([
      '#N/A',
      'In row 2, column 1 of the range: heights is blank: give a value.'
    ])
  })
  test('the cuts of trees with different access', () => {
    expect(faultOf(() => hours(column(2, 3), 8, column('open', 'fenced'))).message).toMatch(
      /one tree at a time/
    )
  })
  test('a notice passes through', () =>
    expect(hours(column(2, '! the reason'), 8)).toEqual([['! the reason']]))
})
