import { inksOf, type Ground } from './inks'
import { drawnLooks, type Look } from '../drawnLooks'
import type { Drawing, Shape, Step } from '../shapes'

/** An element of the picture, before it becomes text or a node of a page. */
export interface SvgNode {
  name: string
  attributes: Record<string, string>
  children: (SvgNode | string)[]
}

export const svgNamespace = 'http://www.w3.org/2000/svg'

type Inks = ReturnType<typeof inksOf>

/** To a hundredth of a pixel; anything that is not a number is a bug of the drawing, never a picture. */
function pixels(value: number): string {
  if (!Number.isFinite(value)) throw new Error('A drawing holds a place that is not a number.')
  return String(Math.round(value * 100) / 100 + 0)
}

function pathData(steps: readonly Step[]): string {
  return steps
    .map(([letter, ...points]) => letter + points.map(({ x, y }) => `${pixels(x)} ${pixels(y)}`).join(' '))
    .join('')
}

function lookAttributes(look: Look, inks: Inks, width: number | undefined): Record<string, string> {
  const attributes: Record<string, string> = { fill: inks[look.fill ?? 'none'] }
  if (look.fillOpacity !== undefined) attributes['fill-opacity'] = String(look.fillOpacity)
  if (look.stroke !== undefined) attributes['stroke'] = inks[look.stroke]
  if (look.strokeOpacity !== undefined) attributes['stroke-opacity'] = String(look.strokeOpacity)
  const stroke = width ?? look.width
  if (stroke !== undefined) attributes['stroke-width'] = pixels(stroke)
  if (look.dash !== undefined) attributes['stroke-dasharray'] = look.dash.join(' ')
  if (look.cap !== undefined) attributes['stroke-linecap'] = look.cap
  if (look.bold === true) attributes['font-weight'] = '700'
  if (look.italic === true) attributes['font-style'] = 'italic'
  if (look.rim === true)
    Object.assign(attributes, {
      stroke: inks.paper,
      'stroke-width': '3',
      'stroke-linejoin': 'round',
      'paint-order': 'stroke'
    })
  return attributes
}

function geometry(shape: Shape): { name: string; attributes: Record<string, string>; text?: string } {
  switch (shape.kind) {
    case 'path':
      return { name: 'path', attributes: { d: pathData(shape.steps), 'stroke-linejoin': 'round' } }
    case 'line': {
      const { from, to } = shape
      return {
        name: 'line',
        attributes: { x1: pixels(from.x), y1: pixels(from.y), x2: pixels(to.x), y2: pixels(to.y) }
      }
    }
    case 'rect': {
      const { x, y, width, height } = shape
      const attributes: Record<string, string> = {
        x: pixels(x),
        y: pixels(y),
        width: pixels(width),
        height: pixels(height)
      }
      if (shape.round !== undefined) attributes['rx'] = pixels(shape.round)
      return { name: 'rect', attributes }
    }
    case 'circle':
      return {
        name: 'circle',
        attributes: { cx: pixels(shape.center.x), cy: pixels(shape.center.y), r: pixels(shape.radius) }
      }
    case 'text': {
      const attributes: Record<string, string> = {
        x: pixels(shape.at.x),
        y: pixels(shape.at.y),
        'font-size': pixels(shape.size)
      }
      if (shape.anchor !== 'start') attributes['text-anchor'] = shape.anchor
      return { name: 'text', attributes, text: shape.text }
    }
  }
}

function shapeNode(shape: Shape, inks: Inks): SvgNode {
  const { name, attributes, text } = geometry(shape)
  const width = shape.kind === 'line' ? shape.width : undefined
  Object.assign(attributes, lookAttributes(drawnLooks[shape.look], inks, width))
  if (shape.depicts !== undefined) {
    attributes['data-part'] = shape.depicts.part
    if (shape.depicts.limb !== undefined) attributes['data-limb'] = shape.depicts.limb
  }
  return { name, attributes, children: text === undefined ? [] : [text] }
}

/** The whole picture as nodes: an image with a title, a description, and its shapes. */
export function svgNodes(drawing: Drawing, ground: Ground): SvgNode {
  const { width, height, title, alt, shapes } = drawing
  const inks = inksOf(ground, drawing.palette)
  const children: SvgNode[] = [
    { name: 'title', attributes: {}, children: [title] },
    { name: 'desc', attributes: {}, children: [alt] }
  ]
  if (ground === 'paper')
    children.push({
      name: 'rect',
      attributes: { width: pixels(width), height: pixels(height), fill: inks.paper },
      children: []
    })
  const attributes: Record<string, string> = {
    class: 'drawing',
    role: 'img',
    'aria-label': alt,
    width: pixels(width),
    height: pixels(height),
    viewBox: `0 0 ${pixels(width)} ${pixels(height)}`
  }
  if (ground === 'paper')
    attributes['font-family'] = "'Segoe UI', Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif"
  return {
    name: 'svg',
    attributes,
    children: [...children, ...shapes.map((shape) => shapeNode(shape, inks))]
  }
}
