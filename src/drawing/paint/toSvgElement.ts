import type { Drawing } from '../shapes'
import { svgNamespace, svgNodes, type SvgNode } from './svgNodes'

function build(node: SvgNode, owner: Document): Element {
  const element = owner.createElementNS(svgNamespace, node.name)
  for (const [name, value] of Object.entries(node.attributes)) element.setAttribute(name, value)
  for (const child of node.children)
    element.append(typeof child === 'string' ? owner.createTextNode(child) : build(child, owner))
  return element
}

/** The drawing as an element of a page, in the page's own colors. Texts are text, never markup. */
export function toSvgElement(drawing: Drawing, owner: Document): SVGSVGElement {
  return build(svgNodes(drawing, 'page'), owner) as SVGSVGElement
}
