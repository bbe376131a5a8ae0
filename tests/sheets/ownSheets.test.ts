import * as fc from 'fast-check'
import { firstCellOf, freeSheetName, ownName, readOwnName } from '../../src/sheets/ownSheets'
import { looks } from '../../src/sheets/looks'
import { palette } from '../../shared/palette'
import { foldText } from '../../shared/folding'
import { linesNeeded } from '../../src/sheets/wrapping'

describe('the names by which our sheets are found again', () => {
  test('are read back to the document, its number and its sheet', () => {
    const sheetName = fc
      .string({ minLength: 1, maxLength: 31 })
      .filter((name) => !/^'|'$|[[\]:*?/\\]/.test(name))
    fc.assert(
      fc.property(
        fc.constantFrom('cut-plan' as const, 'estimate' as const),
        fc.integer({ min: 1, max: 99 }),
        sheetName,
        (kind, number, name) => {
          expect(readOwnName(ownName(kind, number), `=${firstCellOf(name)}`)).toEqual({
            kind,
            number,
            sheetName: name
          })
        }
      )
    )
  })

  test('a name of the user’s, a sheet that is gone and a moved cell are not ours', () => {
    expect(readOwnName('Budget', "='Cut plan'!$A$1")).toBeNull()
    expect(readOwnName('Limbwright_cut_plan', '=#REF!$A$1')).toBeNull()
    expect(readOwnName('Limbwright_cut_plan', "='Cut plan'!$B$7")).toBeNull()
    expect(readOwnName('Limbwright_cut_plan_x', "='Cut plan'!$A$1")).toBeNull()
  })

  test('a taken sheet name is numbered, without regard to capitals', () => {
    expect(freeSheetName('Cut plan', ['Inventory'])).toBe('Cut plan')
    expect(freeSheetName('Cut plan', ['CUT PLAN', 'Cut plan (2)'])).toBe('Cut plan (3)')
  })
})

describe('folded text', () => {
  test('keeps every word in order and no line is too long', () => {
    fc.assert(
      fc.property(fc.string(), fc.integer({ min: 1, max: 60 }), (text, width) => {
        const lines = foldText(text, width)
        expect(lines.every((line) => line.length <= width)).toBe(true)
        expect(lines.join('').replace(/\s/g, '')).toBe(text.replace(/\s/g, ''))
      })
    )
  })

  test('a wrapped cell needs more lines in a narrower column', () => {
    const text = 'Shortened by three eighths of its foliage, a tenth of the tree’s'
    expect(linesNeeded(text, 20)).toBeGreaterThan(linesNeeded(text, 40))
    expect(linesNeeded(12.5, 3)).toBe(1)
  })
})

/** Contrast of two colors. Source: WCAG 2.2, W3C, relative luminance and contrast ratio. */
function contrast(a: string, b: string): number {
  const luminance = (color: string) => {
    const [red = 0, green = 0, blue = 0] = [1, 3, 5]
      .map((start) => parseInt(color.slice(start, start + 2), 16) / 255)
      .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4))
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue
  }
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x)
  return (light! + 0.05) / (dark! + 0.05)
}

describe('the palette', () => {
  test('black on white is 21 to 1, so the measure is right', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6)
  })

  test('every text keeps 4.5 to 1 on what lies under it (WCAG 2.2, 1.4.3)', () => {
    for (const look of Object.values(looks) as { color?: string; fill?: string }[])
      if (look.color !== undefined)
        expect(contrast(look.color, look.fill ?? '#ffffff')).toBeGreaterThanOrEqual(4.5)
    expect(contrast(palette.ink, palette.inputFill)).toBeGreaterThanOrEqual(4.5)
    for (const text of [palette.ink, palette.umber])
      expect(contrast(text, palette.noticeFill)).toBeGreaterThanOrEqual(4.5)
  })
})
