/** Elements that every part of a chart is made of (DrawingML, ECMA-376 part 1, 20.1 and 21.2). */
import type { SvgNode } from '../../drawing/paint/svgNodes'

export type Node = SvgNode

/** English Metric Units in a point, in which DrawingML measures lines. */
export const unitsAPoint = 12_700

export function element(
  name: string,
  attributes: Record<string, string | number>,
  ...children: (Node | string)[]
): Node {
  const texts = Object.entries(attributes).map(([key, value]) => [key, String(value)])
  return { name, attributes: Object.fromEntries(texts) as Record<string, string>, children }
}

export const valueElement = (name: string, val: string | number) => element(name, { val })

export function solidFill(color: string): Node {
  return element('a:solidFill', {}, valueElement('a:srgbClr', color.replace('#', '').toUpperCase()))
}

export function titleElement(text: string, size: number, bold: boolean, turned = false): Node {
  const look = { sz: size * 100, b: bold ? 1 : 0 }
  const body = turned ? element('a:bodyPr', { rot: -5_400_000, vert: 'horz' }) : element('a:bodyPr', {})
  const paragraph = element(
    'a:p',
    {},
    element('a:pPr', {}, element('a:defRPr', look)),
    element('a:r', {}, element('a:rPr', look), element('a:t', {}, text))
  )
  const rich = element('c:rich', {}, body, element('a:lstStyle', {}), paragraph)
  return element('c:title', {}, element('c:tx', {}, rich), valueElement('c:overlay', 0))
}
