import fc from 'fast-check'
import { forTerminal, jsonForTerminal } from '../../../shared/words/terminal'

/** What must not come through, told by code. */
function steers(text: string): boolean {
  return [...text].some((sign) => {
    const code = sign.codePointAt(0)!
    const control = (code < 0x20 && code !== 9 && code !== 10) || (code >= 0x7f && code < 0xa0)
    return control || (code >= 0x202a && code <= 0x202e) || (code >= 0x2066 && code <= 0x2069)
  })
}

test('what would color, move or delete is shown as a sign', () => {
  expect(forTerminal('T\u001b[31m1\u0007')).toBe('T␛[31m1␇')
  expect(forTerminal('B\u0008\u007f\u009b2J')).toBe('B␈␡�2J')
  expect(forTerminal('a\u202eb')).toBe('a�b')
})

test('line breaks, tabs and letters of any script stay', () => {
  const text = 'Bäume\n\tЛипа 樹 🌳 ½'
  expect(forTerminal(text)).toBe(text)
})

test('no text steers the terminal, and JSON stays what it was', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      expect(steers(forTerminal(text))).toBe(false)
      const json = jsonForTerminal(JSON.stringify({ text }, null, 2))
      expect(steers(json)).toBe(false)
      expect(JSON.parse(json)).toEqual({ text })
    })
  )
})
