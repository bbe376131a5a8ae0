import { printedLines, printedPoints } from '../../src/sheets/printedLines'

test('a text is as wide as its letters, a little is kept free, and bold is wider', () => {
  // "abc" in Carlito: 479 + 525 + 423 thousandths.
  expect(printedPoints('abc', 10)).toBeCloseTo(14.27 * 1.03, 6)
  expect(printedPoints('abc', 20)).toBeCloseTo(2 * printedPoints('abc', 10), 6)
  expect(printedPoints('abc', 10, true)).toBeGreaterThan(printedPoints('abc', 10))
  expect(printedPoints('木', 10)).toBeGreaterThan(printedPoints('m', 10))
})

test('lines are broken between words, and within a word that is longer than the column', () => {
  const word = printedPoints('oak', 10)
  const space = printedPoints(' ', 10)
  expect(printedLines('oak oak oak', 3 * word + 2 * space + 0.01, 10)).toBe(1)
  expect(printedLines('oak oak oak', 3 * word + 2 * space - 0.01, 10)).toBe(2)
  expect(printedLines('oak oak oak', word + 0.01, 10)).toBe(3)
  expect(printedLines('oakoakoak', word + 0.01, 10)).toBe(3)
  expect(printedLines('oak\noak', 1000, 10)).toBe(2)
  expect(printedLines('', 100, 10)).toBe(1)
})
