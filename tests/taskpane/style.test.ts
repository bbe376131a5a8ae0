import { paneStyle } from '../../tools/style'

const css = paneStyle()

/** The custom properties of the light palette, and of the dark one on top of it. */
function palette(dark: boolean): Map<string, string> {
  const blocks = [...css.matchAll(/:root\{([^}]*)\}/g)].map(([, body]) => body ?? '')
  const chosen = dark ? blocks.slice(0, 2) : blocks.slice(0, 1)
  const pairs = chosen.flatMap((block) => [...block.matchAll(/(--[\w-]+):\s*(#[0-9a-f]+)/gi)])
  return new Map(pairs.map(([, name, value]) => [name ?? '', value ?? '']))
}

/** Relative luminance of #rgb or #rrggbb. Source: WCAG 2.2, definition of relative luminance. */
function luminance(color: string): number {
  const digits = color.length === 4 ? [...color.slice(1)].map((d) => d + d) : color.slice(1).match(/../g)!
  const [r, g, b] = digits.map((pair) => {
    const part = parseInt(pair, 16) / 255
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!
}

/** Source: WCAG 2.2, definition of contrast ratio. */
function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y)
  return (light! + 0.05) / (dark! + 0.05)
}

test('contrast is computed as WCAG 2.2 defines it: black on white is 21 to 1', () => {
  expect(contrast('#000', '#ffffff')).toBeCloseTo(21, 10)
})

describe.each([
  ['light', false],
  ['dark', true]
])('in the %s look', (_name, dark) => {
  const colors = palette(dark)
  const ratio = (front: string, ground: string) =>
    contrast(colors.get(front) ?? 'missing', colors.get(ground) ?? 'missing')

  test.each([
    ['--ink', '--paper'],
    ['--ink', '--raised'],
    ['--ink', '--caution'],
    ['--quiet', '--paper'],
    ['--quiet', '--raised'],
    ['--moss', '--paper'],
    ['--moss', '--caution'],
    ['--moss', '--raised'],
    ['--umber', '--paper'],
    ['--on-primary', '--primary'],
    ['--on-primary', '--primary-over']
  ])('text in %s on %s has at least 4.5 to 1 (WCAG 2.2, 1.4.3)', (front, ground) => {
    expect(ratio(front, ground)).toBeGreaterThanOrEqual(4.5)
  })

  test.each([
    ['--rule-strong', '--paper'],
    ['--moss', '--paper'],
    ['--focus', '--paper'],
    ['--focus', '--raised'],
    ['--focus', '--caution']
  ])('edges that mean something in %s on %s have at least 3 to 1 (WCAG 2.2, 1.4.11)', (front, ground) => {
    expect(ratio(front, ground)).toBeGreaterThanOrEqual(3)
  })
})

test('nothing is fetched: no address, no import, no font of its own', () => {
  expect(css).not.toMatch(/url\(|@import|@font-face|https?:/)
})

test('sizes are those of the Fabric Core ramp', () => {
  const sizes = new Set([...css.matchAll(/font-size:\s*([^;}]+)/g)].map(([, size]) => size))
  expect([...sizes].sort()).toEqual(['12px', '14px', '16px', '18px', '20px', '24px'])
})

test('motion stops where a person asks for less', () => {
  expect(css).toMatch(/prefers-reduced-motion:\s*reduce/)
  expect(css).toMatch(/forced-colors:\s*active/)
})

test('no height is fixed but that of bars and the smallest marks', () => {
  const heights = [...css.matchAll(/[{;](?:block-size|height):\s*([^;}]+)/g)].map(([, size]) => size)
  expect(heights.filter((size) => !/^(?:[1-9]px|100%)$/.test(size ?? ''))).toEqual([])
})
