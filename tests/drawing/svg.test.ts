/** @jest-environment jsdom */
import { doseChart } from '../../src/drawing/charts/doseChart'
import type { Drawing, DrawingPalette } from '../../src/drawing/shapes'
import { toSvg } from '../../src/drawing/paint/toSvg'
import { toSvgElement } from '../../src/drawing/paint/toSvgElement'
import { samplePlan, treeNamed } from './inventedTrees'
import { drawn } from './measured'

const hostile = '"><script>alert(1)</script>&amp;\u0001'

function hostileDrawing(palette: DrawingPalette = 'color'): Drawing {
  const plan = samplePlan()
  const tree = treeNamed(plan, 'T01')
  Object.assign(tree.tree, { id: hostile, species: `<b>${hostile}` })
  for (const limb of tree.tree.limbs) Object.assign(limb, { id: limb.id + hostile })
  return drawn(tree, tree.visits[0]!, 'before', { palette })
}

function parsed(svg: string): Document {
  const page = new DOMParser().parseFromString(svg, 'image/svg+xml')
  expect(page.querySelector('parsererror')).toBeNull()
  return page
}

it('writes well-formed SVG in which a cell’s text stays text', () => {
  for (const ground of ['page', 'paper'] as const) {
    const page = parsed(toSvg(hostileDrawing(), ground))
    expect(page.querySelectorAll('script')).toHaveLength(0)
    expect(page.documentElement.getAttribute('role')).toBe('img')
    expect(page.querySelector('title')?.textContent).toContain('"><script>alert(1)</script>&amp;\ufffd')
    expect(page.querySelector('desc')?.textContent).toBe(page.documentElement.getAttribute('aria-label'))
  }
})

it('builds the same picture as an element of a page', () => {
  const drawing = hostileDrawing()
  const built = toSvgElement(drawing, document)
  const page = parsed(toSvg(drawing, 'page')).documentElement
  expect(built.querySelectorAll('script')).toHaveLength(0)
  expect(built.namespaceURI).toBe('http://www.w3.org/2000/svg')
  const [ours, theirs] = [built, page].map((root) =>
    [...root.querySelectorAll('*')].map((element) => [
      element.tagName,
      ...element
        .getAttributeNames()
        .sort()
        .map((name) => `${name}=${element.getAttribute(name)?.replaceAll('\u0001', '\ufffd') ?? ''}`)
    ])
  )
  expect(ours).toEqual(theirs)
  expect(ours!.length).toBeGreaterThan(50)
})

it('takes every color from the page around it, and none from there on paper', () => {
  const drawing = hostileDrawing()
  const colors = (svg: string): Set<string> =>
    new Set([...svg.matchAll(/(?:fill|stroke)="([^"]+)"/g)].map((match) => match[1]!))
  for (const color of colors(toSvg(drawing, 'page')))
    expect(color).toMatch(/^(none|currentColor|var\(--drawing-)/)
  for (const color of colors(toSvg(drawing, 'paper'))) expect(color).toMatch(/^(none|#[0-9a-f]{6})$/)
})

it('prints in black and white only', () => {
  const svg = toSvg(hostileDrawing('print'), 'paper')
  const colors = [...svg.matchAll(/(?:fill|stroke)="(#[^"]+)"/g)].map((match) => match[1])
  expect([...new Set(colors)].sort()).toEqual(['#000000', '#ffffff'])
})

it('stands on white paper as a file, and on nothing in a page', () => {
  const drawing = doseChart(treeNamed(samplePlan(), 'T01'), { width: 300, height: 200, palette: 'color' })
  const first = (svg: string): string | undefined =>
    parsed(svg).documentElement.children[2]?.getAttribute('fill') ?? undefined
  expect(first(toSvg(drawing, 'paper'))).toBe('#ffffff')
  expect(first(toSvg(drawing, 'page'))).not.toBe('#ffffff')
})
