import fc from 'fast-check'
import {
  dayOf,
  firstSerial,
  lastSerial,
  looksLikeDate,
  readDate,
  readSerial,
  readYear,
  serialOf
} from '../../shared/dates'
import { isDateFormat } from '../../shared/numberFormats'

/** Anchors of the 1900 date system: ECMA-376 part 1, 18.17.4.1, from memory. */
test.each([
  [61, 1900, 3, 1],
  [25569, 1970, 1, 1],
  [36526, 2000, 1, 1],
  [45351, 2024, 2, 29],
  [2958465, 9999, 12, 31]
])('serial %d is %d-%d-%d', (serial, year, month, day) => {
  expect(serialOf(year, month, day)).toBe(serial)
  expect(dayOf(serial)).toEqual({ year, month, day })
})

test('every serial and its day are each other’s reverse', () => {
  fc.assert(
    fc.property(fc.integer({ min: firstSerial, max: lastSerial }), (serial) => {
      const { year, month, day } = dayOf(serial)
      expect(serialOf(year, month, day)).toBe(serial)
      const text = [String(year), String(month).padStart(2, '0'), String(day).padStart(2, '0')].join('-')
      expect(readSerial(text)).toBe(serial)
      expect(readSerial(String(serial))).toBe(serial >= 10000 ? serial : null)
    })
  )
})

test.each([
  [2023, 2, 29],
  [2024, 13, 1],
  [2024, 0, 1],
  [2024, 4, 31],
  [1900, 2, 28],
  [10000, 1, 1]
])('there is no serial for %d-%d-%d', (year, month, day) => expect(serialOf(year, month, day)).toBeNaN())

test.each([60, 0, -1, NaN, 2958466, true, '31/3/2024', '2024-02-30', 'soon', ''])('%p is no date', (cell) =>
  expect(readSerial(cell)).toBeNull()
)

test('a time of day belongs to its day', () => {
  expect(dayOf(45382.99)).toEqual({ year: 2024, month: 3, day: 31 })
  expect(readSerial(2958465.5)).toBe(2958465.5)
})

it('counts a known day as spreadsheets do', () => {
  // Microsoft Support, DATEVALUE and the 1900 date system: 2008-01-01 is serial 39448 (from memory).
  expect(readSerial('2008-01-01')).toBe(39448)
})

describe('one reading of dates for every surface', () => {
  const march31 = { year: 2024, month: 3, day: 31 }
  const year = (value: number) => ({ year: value, month: null, day: null })

  test.each([
    [45382, march31],
    ['45382', march31],
    ['2024-03-31', march31],
    ['2024-3-31', march31],
    ['2024-03-31T08:00', march31],
    ['2024/03/31', march31],
    ['31.03.2024', march31],
    ['31 Mar 2024', march31],
    ['31-March-2024', march31],
    ['March 31, 2024', march31],
    [2024, year(2024)],
    ['2024', year(2024)],
    ['March 2024', year(2024)],
    ['spring 2024', year(2024)],
    // Which part is the month differs by country.
    ['3/4/2024', year(2024)],
    ['31/3/2024', year(2024)]
  ])('%j', (cell, date) => {
    expect(readDate(cell)).toEqual(date)
    expect(readYear(cell)).toBe(date.year)
    expect(readSerial(cell)).toBe('month' in date && date.month !== null ? 45382 : null)
  })

  test.each(['31.02.2024', '2024-02-30', '13/14/2024', 'spring', '8ft?', '0012', true, null, 0.5, NaN])(
    '%j is no date',
    (cell) => {
      expect(readDate(cell)).toBeNull()
      expect(readYear(cell)).toBeNull()
    }
  )

  test('a number that is neither a year nor a likely serial is no year of pruning', () => {
    expect([61, 1899, 1900, 2200, 46000, 130000].map(readYear)).toEqual([null, null, 1900, 2200, 2025, null])
  })

  test('knows the look of a date from a number and from two readings', () => {
    for (const text of ['2026-03-01', '3-Feb', 'Feb 3', '3 Feb 2026', '31.03.2024', '3/2/2026'])
      expect([text, looksLikeDate(text)]).toEqual([text, true])
    for (const text of ['5-6', '10/9', '5/6/8', '1.016,5', '12.5', 'march', '3 apples', '12 mm'])
      expect([text, looksLikeDate(text)]).toEqual([text, false])
  })

  test('knows a format that shows days or times from one that shows numbers', () => {
    for (const format of ['yyyy-mm-dd', 'm/d/yyyy', '[$-409]d-mmm-yy;@', 'h:mm', '[h]:mm:ss', 'mm:ss.0'])
      expect([format, isDateFormat(format)]).toEqual([format, true])
    for (const format of ['General', '0.00', '#,##0.00', '0 "days"', '[Red]0', '0 %', '@', '0.0E+00', '#\\d'])
      expect([format, isDateFormat(format)]).toEqual([format, false])
  })
})
