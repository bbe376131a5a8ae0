import { LEADERRANK } from '../../functions/assess'
import { blankForms, column, faultOf } from './spreadsheet'

const rank = LEADERRANK as (...given: unknown[]) => unknown[][]

describe('LEADERRANK ranks stems', () => {
  test.each<[string, unknown[], unknown[]]>([
    ['the more upright of equals leads', [column(9, 9), column(20, 5), column(40, 40)], [2, 1]],
    ['the thicker of equals leads', [column(8, 9), column(5, 5), column(40, 40)], [2, 1]],
    ['the taller of equals leads', [column(9, 9), column(5, 5), column(38, 40)], [2, 1]],
    ['included bark counts against', [column(9, 9), 5, 40, column('full', 'none')], [2, 1]],
    ['equals keep their order', [column(9, 9, 9), 5, 40], [1, 2, 3]],
    ['the straightest leads even where it is not the thickest', [column(10, 9), column(35, 3), 40], [2, 1]],
    ['a stem below the top quarter never leads', [column(9, 7), column(0, 60), column(29, 40)], [2, 1]]
  ])('%s', (_, args, ranks) => {
    expect(rank(...args)).toEqual(column(...ranks))
  })
  test('one stem alone is first', () => expect(rank(9, 5, 40)).toEqual([[1]]))
  test('blank and bad rows take no rank', () => {
    const cells = rank(column(9, null, 8, '! before'), column(20, null, 'level', 5), column(40, null, 40, 40))
    expect(cells[0]).toEqual([1])
    expect(cells[1]).toEqual([''])
    expect(cells[2]?.[0]).toMatch(/^! lean_angles reads “level”/)
    expect(cells[3]).toEqual(['! before'])
  })
  test.each(blankForms)('%s everywhere gives an empty text', (_, blank) =>
    expect(rank(blank, blank, blank, blank)).toEqual([['']])
  )
  test('a lean past level is refused', () => {
    expect(faultOf(() => rank(9, 91, 40)).message).toMatch(
      /lean_angles is 91; it must be 0 or more and at most 90/
    )
  })
  test('a missing height alone is asked for', () => {
    const fault = faultOf(() => rank(9, 5, null))
    expect([fault.code, fault.message]).toEqual(['#N/A', 'heights is blank: give a value.'])
  })
})
