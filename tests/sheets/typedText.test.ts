import * as fc from 'fast-check'
import { fitCell, longestCellText, startsFormula, typedText } from '../../src/sheets/typedText'

describe('a text as it has to be typed to stay a text', () => {
  test.each([
    '=1+1',
    '+49 30',
    '-3',
    '@SUM(A1)',
    '3-2',
    '1/2',
    '007',
    '1E5',
    '15 %',
    'TRUE',
    'false',
    '#N/A',
    'May 5',
    "'quoted"
  ])('%s gets an apostrophe before it', (text) => {
    expect(typedText(text)).toBe(`'${text}`)
  })

  test.each(['Red maple', 'Remove at the branch collar.', 'Érable', ''])('“%s” is typed as it is', (text) => {
    expect(typedText(text)).toBe(text)
  })

  test('whatever the text, what is typed never starts a formula, a number or a sign', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        const typed = typedText(text)
        expect(typed === '' || /^(\p{L}|')/u.test(typed)).toBe(true)
        expect(typed === text || typed === `'${text}`).toBe(true)
      })
    )
  })

  test('a text longer than a cell can hold is cut, and its end is marked', () => {
    const long = '=' + 'x'.repeat(40000)
    expect(fitCell(long)).toHaveLength(longestCellText)
    expect(fitCell(long).endsWith('…')).toBe(true)
    expect(typedText(long)).toHaveLength(longestCellText)
  })

  test('a formula is seen behind spaces too', () => {
    expect(startsFormula('  =A1')).toBe(true)
    expect(startsFormula('a=1')).toBe(false)
  })
})
