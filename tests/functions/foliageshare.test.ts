import fc from 'fast-check'
import { FOLIAGESHARE } from '../../functions/foliage'
import { blankForms, column, errorForms, faultOf, row } from './spreadsheet'

const share = FOLIAGESHARE as (...given: unknown[]) => unknown[][]
const numbers = (cells: unknown[][]): number[] => cells.map(([cell]) => cell as number)

describe('FOLIAGESHARE shares among the rows given', () => {
  test('bases of 7, 5, 5, 4, 4 and 3 in share by their squares', () => {
    const shares = numbers(share(column(7, 5, 5, 4, 4, 3)))
    expect(shares[0]).toBe(0.35)
    expect(shares[1]).toBeCloseTo(25 / 140, 12)
    expect(shares[5]).toBeCloseTo(9 / 140, 12)
  })
  test('a row of cells comes back as a row', () => expect(share(row(3, 4))).toEqual([[0.36, 0.64]]))
  test('one limb alone carries all of it', () => expect(share(5)).toEqual([[1]]))
  test('each tree is shared out on its own, wherever its rows stand', () => {
    const shares = numbers(share(column(3, 6, 4, 8), column('A', 'B', 'A', 'B')))
    expect(shares).toEqual([0.36, 0.36, 0.64, 0.64])
  })
  test('a blank tree id carries on the tree above', () => {
    const shares = numbers(share(column(3, 4, 6, 8), column('A', null, 12, '')))
    expect(shares).toEqual([0.36, 0.64, 0.36, 0.64])
  })
  test('a tree numbered 12 is the same as one written "12"', () =>
    expect(numbers(share(column(3, 4), column(12, '12')))).toEqual([0.36, 0.64]))
  test('shares of a tree add up to 1 and do not depend on the unit', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.5, max: 60, noNaN: true }), { minLength: 1, maxLength: 40 }),
        (limbs) => {
          const shares = numbers(share(column(...limbs)))
          const metric = numbers(share(column(...limbs.map((limb) => limb * 25.4))))
          expect(shares.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9)
          shares.forEach((one, index) => expect(metric[index]).toBeCloseTo(one, 9))
        }
      )
    )
  })
})

describe('FOLIAGESHARE with stems gives the engine’s share', () => {
  test('the thinnest stem counts as the tree’s top', () => {
    const shares = numbers(share(column(3, 4), null, column(10, 12)))
    expect(shares).toEqual([9 / 160, 16 / 160])
  })
  test('a stem counts with the widest union where limbs were left out of the survey', () => {
    const shares = numbers(share(column(3, 3), null, column(2, 9)))
    expect(shares[0]).toBe(9 / 90)
  })
  test('only the trees with stems use them', () => {
    const shares = numbers(share(column(3, 4, 3, 4), column('A', '', 'B', ''), column(10, 12, null, 0)))
    expect(shares).toEqual([9 / 160, 16 / 160, 0.36, 0.64])
  })
  test('a stem missing beside others of its tree is asked for', () => {
    const cells = share(column(3, 4), null, column(10, null))
    expect(cells[0]).toEqual([9 / 109])
    expect(cells[1]?.[0]).toMatch(/^! stem_diameters is blank here/)
  })
})

describe('FOLIAGESHARE minds blanks and bad cells', () => {
  test.each(blankForms)('%s gives an empty text', (_, blank) =>
    expect(share(blank, blank, blank)).toEqual([['']])
  )
  test('blank, 0 and bad rows take no part', () => {
    const cells = share(column(3, null, 'thick', '! before', 0, 4))
    expect(cells[0]).toEqual([0.36])
    expect(cells[1]).toEqual([''])
    expect(cells[2]?.[0]).toMatch(/^! limb_diameters reads “thick”/)
    expect(cells[3]).toEqual(['! before'])
    expect(cells[4]).toEqual([''])
    expect(cells[5]).toEqual([0.64])
  })
  test.each(errorForms)('%s alone is refused', (_, cell, code) => {
    const fault = faultOf(() => share([[cell]]))
    expect(fault.code).toBe(code)
    expect(fault.message).toContain('limb_diameters')
  })
  test('ranges of different sizes are refused', () => {
    expect(faultOf(() => share(column(3, 4), column('A', 'B', 'C'))).code).toBe('#VALUE!')
  })
})
