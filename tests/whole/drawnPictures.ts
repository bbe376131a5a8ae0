/**
 * Stands in for the library that turns a drawing into pixels, which is neither ours nor quick: a test that mocks
 * `@resvg/resvg-js` with this sees the drawings as they are handed over.
 */

/** A picture of one transparent point (PNG, ISO/IEC 15948). */
const point = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mNkYAAAAAYAAjCB0C8AAAAASUVORK5CYII='

/** The drawings handed over since the list was last emptied, as SVG. */
export const drawn: string[] = []

export function renderAsync(svg: string, { fitTo }: { fitTo: { value: number } }) {
  drawn.push(svg)
  return Promise.resolve({
    width: fitTo.value,
    height: fitTo.value,
    asPng: () => Buffer.from(point, 'base64')
  })
}
