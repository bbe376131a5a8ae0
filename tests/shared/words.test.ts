import fc from 'fast-check'
import { Money } from '../../shared/money'
import { counted, plural } from '../../shared/words/counts'
import { monthNames, showDate, showMonthDay } from '../../shared/words/dates'
import { fixedTenth, grouped, hours, points, ratio, tenth } from '../../shared/words/figures'
import { printedDiameter, printedHeight, showDiameter, showHeight } from '../../shared/words/lengths'
import { listed, namedLimbs } from '../../shared/words/lists'
import { showMoney } from '../../shared/words/money'
import { ceilingPercent, percent, ratePercent, wholePercent } from '../../shared/words/percent'
import { rounded, shownParts, wholeUnits } from '../../shared/words/rounding'
import { capital, closed, sentence } from '../../shared/words/sentences'

describe('the one rule of rounding', () => {
  test('rounds half up to the digits shown', () => {
    expect([rounded(2.25, 1), rounded(2.24, 1), rounded(0.5, 0), rounded(1.005, 2)]).toEqual([
      2.3, 2.2, 1, 1.01
    ])
  })

  test('never rounds what may be at most up, nor what must be at least down', () => {
    const anyLength = fc.double({ min: 0, max: 500, noNaN: true })
    fc.assert(
      fc.property(anyLength, (value) => {
        expect(rounded(value, 1, 'at most')).toBeLessThanOrEqual(value + 1e-6)
        expect(rounded(value, 1, 'at most')).toBeGreaterThan(value - 0.1 - 1e-6)
        expect(rounded(value, 1, 'at least')).toBeGreaterThanOrEqual(value - 1e-6)
        expect(rounded(value, 1, 'at least')).toBeLessThan(value + 0.1 + 1e-6)
      })
    )
  })

  test('takes a limit that lies on a digit for that digit, whatever unit it came through', () => {
    for (let tenths = 1; tenths < 1000; tenths++) {
      const feet = tenths / 10
      expect(printedHeight(feet * 0.3048, 'in-ft', 'at most')).toBe(feet)
      expect(printedHeight(feet * 0.3048, 'in-ft', 'at least')).toBe(feet)
      expect(printedDiameter(feet * 25.4, 'in-ft', 'at least')).toBe(feet)
    }
  })

  test('lets parts add up to the sum shown, which never passes a ceiling that the exact sum keeps', () => {
    const shares = fc.array(fc.double({ min: 0, max: 0.2, noNaN: true }), { maxLength: 8 })
    fc.assert(
      fc.property(shares, fc.double({ min: 0, max: 0.05, noNaN: true }), (parts, room) => {
        const exact = parts.reduce((sum, part) => sum + part, 0)
        const most = wholeUnits(exact + room, 1000, 'at most')
        const shown = shownParts(parts, 1000, most)
        expect(shown.parts.reduce((sum, part) => sum + part, 0)).toBe(shown.sum)
        expect(shown.sum).toBeLessThanOrEqual(most)
        shown.parts.forEach((part, index) => {
          expect(Math.abs(part - parts[index]! * 1000)).toBeLessThan(1 + 1e-5)
        })
      })
    )
  })

  test('gives what is left up to a ceiling to the largest remainders', () => {
    // 4.17 + 4.17 + 4.16 = 12.5: each rounds to 4.2, and 12.6 would be more than is allowed.
    expect(shownParts([0.0417, 0.0417, 0.0416], 1000, 125)).toEqual({ parts: [42, 42, 41], sum: 125 })
    expect(shownParts([0.0417, 0.0417, 0.0416], 1000)).toEqual({ parts: [42, 42, 42], sum: 126 })
  })
})

test.each([
  [0.125, '12.5 %'],
  [0.2, '20 %'],
  [0.183, '18.3 %'],
  [0.004, '0.4 %'],
  [0.0002, 'under 0.1 %'],
  [0, '0 %'],
  [0.25 - 0.1 - 0.15, '0 %']
])('a share of %p reads %s', (share, text) => {
  expect(percent(share)).toBe(text)
})

test.each([
  [0.125, '12.5 %'],
  [0.16667, '16.6 %'],
  [0.3 - 0.1, '20 %']
])('a ceiling of %p reads %s, never more', (share, text) => {
  expect(ceilingPercent(share)).toBe(text)
})

test('ratios of wood and rates of tax have their own digits', () => {
  expect([wholePercent(0.834), ratePercent(0.0825), ratePercent(0.08875), ratePercent(0)]).toEqual([
    '83 %',
    '8.25 %',
    '8.875 %',
    '0 %'
  ])
})

test('figures have the digits of their kind', () => {
  expect([ratio(0.6), points(41.5), hours(1.5), fixedTenth(7), tenth(7.25), grouped(1234567)]).toEqual([
    '0.60',
    '42',
    '1.50',
    '7.0',
    '7.3',
    '1,234,567'
  ])
})

test('a length has at most one decimal, and a limit is never passed by its text', () => {
  expect([showDiameter(63.5, 'in-ft'), showHeight(7.3152, 'in-ft'), showHeight(7.27, 'cm-m')]).toEqual([
    '2.5 in',
    '24 ft',
    '7.3 m'
  ])
  expect(showDiameter(32.1, 'cm-m', 'at least')).toBe('3.3 cm')
  expect(showHeight(10.39, 'cm-m', 'at most')).toBe('10.3 m')
})

test('money is exact, half up, and has its thousands set apart', () => {
  expect(showMoney(new Money('1240.5'), 2)).toBe('1,240.50')
  expect(showMoney(new Money('0.005'), 2)).toBe('0.01')
  expect(showMoney(new Money('-1240.5'), 0)).toBe('-1,241')
  expect(showMoney(new Money('12345678901234567.89'), 2)).toBe('12,345,678,901,234,567.89')
})

test('a date has the year first, and a day of any year its month by name', () => {
  expect([showDate(46083), showDate(new Date('2026-03-02T12:00:00Z'))]).toEqual(['2026-03-02', '2026-03-02'])
  expect(showMonthDay(4, 15)).toBe('15 April')
  expect([monthNames[0], monthNames[11]]).toEqual(['January', 'December'])
})

test('lists, counts and sentences', () => {
  expect([listed([]), listed(['A']), listed(['A', 'B']), listed(['A', 'B', 'C'])]).toEqual([
    '',
    'A',
    'A and B',
    'A, B and C'
  ])
  expect(namedLimbs([{ id: 'B' }, { id: 'C' }])).toBe('limbs B and C')
  expect([counted(1, 'tree'), counted(0, 'tree'), counted(3400, 'entry', 'entries')]).toEqual([
    '1 tree',
    '0 trees',
    '3,400 entries'
  ])
  expect(plural(2, 'that limb', 'those limbs')).toBe('those limbs')
  expect([capital('young'), closed(' kept for now'), closed('why?'), sentence('kept')]).toEqual([
    'Young',
    'kept for now.',
    'why?',
    'Kept.'
  ])
})
