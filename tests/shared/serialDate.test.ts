import fc from 'fast-check'
import { dayOf, firstSerial, lastSerial, readSerial, serialOf } from '../../shared/serialDate'

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
