import type { Ground } from './inks'
import type { Drawing } from '../shapes'
import { svgNamespace, svgNodes, type Images, type SvgNode } from './svgNodes'

/** Characters that XML 1.0 cannot hold at all; a cell may still contain them. */
const forbidden = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu

const entities: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }

function escape(text: string): string {
  return text.replace(forbidden, '\ufffd').replace(/[&<>"]/g, (sign) => entities[sign] ?? sign)
}

/** An element and all it holds as text. */
export function markup({ name, attributes, children }: SvgNode): string {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${escape(value)}"`)
  const inside = children.map((child) => (typeof child === 'string' ? escape(child) : markup(child)))
  return children.length === 0
    ? `<${name}${written.join('')}/>`
    : `<${name}${written.join('')}>${inside.join('')}</${name}>`
}

/** The drawing as SVG text. On a page it takes the page's colors; on paper it is white with fixed colors. */
export function toSvg(drawing: Drawing, ground: Ground = 'page', images?: Images): string {
  const root = svgNodes(drawing, ground, images)
  return markup({ ...root, attributes: { xmlns: svgNamespace, ...root.attributes } })
}
