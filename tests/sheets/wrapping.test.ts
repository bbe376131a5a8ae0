import fc from 'fast-check'
import { foldText } from '../../shared/folding'
import { pointsPerWidth, printedFold } from '../../src/sheets/printedLines'
import { linesNeeded } from '../../src/sheets/wrapping'

/** Word by word, as one would fold a text by hand. */
function foldedByHand(text: string, width: number): string[] {
  const lines: string[] = []
  for (const paragraph of text.split(/\r\n|\r|\n/)) {
    let line = ''
    for (const word of paragraph.split(/\s+/).filter((part) => part !== '')) {
      if (line !== '' && line.length + 1 + word.length > width) {
        lines.push(line)
        line = ''
      }
      line = line === '' ? word : `${line} ${word}`
      for (; line.length > width; line = line.slice(width)) lines.push(line.slice(0, width))
    }
    lines.push(line)
  }
  return lines
}

const text = fc
  .array(fc.constantFrom('a', 'limb', 'subordinate', ' ', ' ', '  ', '\n', '\r\n', '\t', '\u00a0', '–'), {
    maxLength: 40
  })
  .map((parts) => parts.join(''))

/** Words with one space between them, in paragraphs. */
const evenText = fc
  .array(fc.array(fc.constantFrom('a', 'limb', 'subordinate', '–'), { minLength: 1, maxLength: 12 }), {
    minLength: 1,
    maxLength: 3
  })
  .map((paragraphs) => paragraphs.map((words) => words.join(' ')).join('\n'))

describe('folding a text', () => {
  test.each([
    ['a limb as thick as its stem', 12, ['a limb as', 'thick as its', 'stem']],
    ['subordinate', 4, ['subo', 'rdin', 'ate']],
    ['a subordinate limb', 5, ['a', 'subor', 'dinat', 'e', 'limb']],
    ['first\nsecond  line ', 20, ['first', 'second line']],
    ['', 10, ['']]
  ])('%j in %i characters', (words, width, lines) => {
    expect(foldText(words, width)).toEqual(lines)
  })

  test('breaks where it would be broken word by word', () => {
    fc.assert(
      fc.property(text, fc.integer({ min: 1, max: 30 }), (words, width) => {
        expect(foldText(words, width)).toEqual(foldedByHand(words, width))
      }),
      { numRuns: 500 }
    )
  })

  test('a cell needs as many lines as the letters of its text take, and anything else one', () => {
    fc.assert(
      fc.property(evenText, fc.integer({ min: 16, max: 60 }), (words, width) => {
        expect(linesNeeded(words, width)).toBe(printedFold(words, width * pointsPerWidth, 10).length)
      })
    )
    expect(linesNeeded('WWWWWWWWWWWW', 12)).toBeGreaterThan(linesNeeded('llllllllllll', 12))
    expect(linesNeeded(12345678, 3)).toBe(1)
    expect(linesNeeded(null, 3)).toBe(1)
  })
})
