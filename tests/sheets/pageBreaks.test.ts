import * as fc from 'fast-check'
import { pageBreaks, pageRoom, pageScale } from '../../src/sheets/pageBreaks'

/** Rows of ten points each. */
const even = (count: number) => [{ row: 0, rows: count, points: 10 }]

describe('the room of a page', () => {
  const portrait = { paper: 'letter', orientation: 'portrait' } as const

  test('is its height without margins where the sheet is narrow', () => {
    // 11 in less twice 0.75 in, 72 points each, less 12 for rounding.
    expect(pageRoom(portrait, [40])).toBeCloseTo(9.5 * 72 - 12, 6)
  })

  test('grows as a wide sheet is printed smaller', () => {
    // 1000 characters are 5253.75 points on a page of 540; 5621.5 where they come out 7 % wider.
    expect(pageScale(portrait, [1000])).toBe(9)
    expect(pageRoom(portrait, [1000]) / pageRoom(portrait, [40])).toBeCloseTo(100 / 9, 6)
  })

  test('a sheet is never printed larger than it is', () => {
    expect(pageScale(portrait, [40])).toBe(100)
    expect(pageScale({ ...portrait, orientation: 'landscape' }, [40])).toBe(100)
  })
})

describe('page breaks', () => {
  test('fall where a page has to begin', () => {
    expect(pageBreaks(even(10), 10, { starts: new Set([0, 4]), blocks: [] }, 1000)).toEqual([4])
  })

  test('keep a block together that would run over the end', () => {
    expect(pageBreaks(even(10), 10, { starts: new Set(), blocks: [0, 4, 8] }, 70)).toEqual([4])
  })

  test('let a block run on that is longer than a page', () => {
    expect(pageBreaks(even(20), 20, { starts: new Set(), blocks: [2] }, 100)).toEqual([])
  })

  test('end a block where a page has to begin', () => {
    expect(pageBreaks(even(12), 12, { starts: new Set([6]), blocks: [4] }, 70)).toEqual([6])
  })

  test('count rows without a height of their own as 15 points', () => {
    expect(pageBreaks([], 6, { starts: new Set(), blocks: [0, 3] }, 75)).toEqual([3])
    expect(pageBreaks([], 6, { starts: new Set(), blocks: [0, 3] }, 90)).toEqual([])
  })

  test('never split a block that fits on a page', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 1, maxLength: 30 }),
        fc.integer({ min: 6, max: 12 }),
        (lengths, rowsOfPage) => {
          const blocks: number[] = []
          let count = 0
          for (const length of lengths) {
            blocks.push(count)
            count += length
          }
          const marks = { starts: new Set<number>(), blocks }
          const breaks = new Set(pageBreaks(even(count), count, marks, rowsOfPage * 10))
          let used = 0
          for (let row = 0; row < count; row++) {
            if (breaks.has(row)) used = 0
            used += 1
            expect(used).toBeLessThanOrEqual(rowsOfPage)
          }
          for (const row of breaks) expect(blocks).toContain(row)
        }
      )
    )
  })
})
