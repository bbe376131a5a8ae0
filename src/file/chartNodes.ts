/** Elements that every part of a chart is made of (DrawingML, ECMA-376 part 1, 20.1 and 21.2). */
import type { SvgNode } from '../drawing/paint/svgNodes'

export type Node = SvgNode

/** English Metric Units in a point, in which DrawingML measures lines. */
export const unitsAPoint = 12_700

export function node(
  name: string,
  attributes: Record<string, string | number>,
  ...children: (Node | string)[]
): Node {
  const texts = Object.entries(attributes).map(([key, value]) => [key, String(value)])
  return { name, attributes: Object.fromEntries(texts) as Record<string, string>, children }
}

export const value = (name: string, val: string | number) => node(name, { val })

export function solid(color: string): Node {
  return node('a:solidFill', {}, value('a:srgbClr', color.replace('#', '').toUpperCase()))
}

export function title(text: string, size: number, bold: boolean, turned = false): Node {
  const look = { sz: size * 100, b: bold ? 1 : 0 }
  const body = turned ? node('a:bodyPr', { rot: -5_400_000, vert: 'horz' }) : node('a:bodyPr', {})
  const paragraph = node(
    'a:p',
    {},
    node('a:pPr', {}, node('a:defRPr', look)),
    node('a:r', {}, node('a:rPr', look), node('a:t', {}, text))
  )
  const rich = node('c:rich', {}, body, node('a:lstStyle', {}), paragraph)
  return node('c:title', {}, node('c:tx', {}, rich), value('c:overlay', 0))
}
