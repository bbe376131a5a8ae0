import { inksOf, type Ground } from './inks'
import { drawnLooks, type Look } from '../drawnLooks'
import type { Turn } from '../../../shared/pictures/pictureHead'
import type { StoredPicture } from '../../../shared/pictures/storedPicture'
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

/** Addresses of the pictures in a drawing that hold their bytes. */
export type Images = ReadonlyMap<StoredPicture, string>

const noImages: Images = new Map()

/** How pixels as they are stored come to stand in a place of this size, by how the camera was held (see `Turn`). */
function upright(turn: Turn, width: number, height: number): readonly number[] {
  const ways: Readonly<Record<Turn, readonly number[]>> = {
    1: [1, 0, 0, 1, 0, 0],
    2: [-1, 0, 0, 1, width, 0],
    3: [-1, 0, 0, -1, width, height],
    4: [1, 0, 0, -1, 0, height],
    5: [0, 1, 1, 0, 0, 0],
    6: [0, 1, -1, 0, width, 0],
    7: [0, -1, -1, 0, width, height],
    8: [0, -1, 1, 0, 0, height]
  }
  return ways[turn]
}

function imageAttributes(shape: Extract<Shape, { kind: 'image' }>, images: Images): Record<string, string> {
  const { x, y, width, height, picture } = shape
  const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = upright(picture.turn, width, height)
  const lies = picture.turn >= 5
  return {
    href: images.get(picture) ?? '',
    width: pixels(lies ? height : width),
    height: pixels(lies ? width : height),
    preserveAspectRatio: 'none',
    transform: `matrix(${[a, b, c, d, x + e, y + f].map(pixels).join(' ')})`
  }
}

function geometry(
  shape: Shape,
  images: Images
): { name: string; attributes: Record<string, string>; text?: string } {
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
    case 'image':
      return { name: 'image', attributes: imageAttributes(shape, images) }
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

function shapeNode(shape: Shape, inks: Inks, images: Images): SvgNode {
  const { name, attributes, text } = geometry(shape, images)
  const width = shape.kind === 'line' ? shape.width : undefined
  Object.assign(attributes, lookAttributes(drawnLooks[shape.look], inks, width))
  if (shape.depicts !== undefined) {
    attributes['data-part'] = shape.depicts.part
    if (shape.depicts.limb !== undefined) attributes['data-limb'] = shape.depicts.limb
  }
  return { name, attributes, children: text === undefined ? [] : [text] }
}

/** The whole picture as nodes: an image with a title, a description, and its shapes. */
export function svgNodes(drawing: Drawing, ground: Ground, images = noImages): SvgNode {
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
    children: [...children, ...shapes.map((shape) => shapeNode(shape, inks, images))]
  }
}
