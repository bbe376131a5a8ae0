import type { LookName } from '../drawnLooks'
import type { Scene } from '../scene'
import { polyline, strokes, type Point, type Shape } from '../shapes'
import { textWidth } from './textSize'

export interface Key {
  text: string
  swatch: (at: Point) => Shape[]
}

const length = 18
const size = 10

function wood(look: LookName, ticks = false): (at: Point) => Shape[] {
  return ({ x, y }) => {
    const outline = polyline(
      [
        { x, y: y - 3 },
        { x: x + length, y: y - 1.5 },
        { x: x + length, y: y + 1.5 },
        { x, y: y + 3 }
      ],
      true
    )
    const marks = strokes(
      [3, 8, 13].map((along): [Point, Point] => [
        { x: x + along, y: y - 5 },
        { x: x + along, y: y + 5 }
      ])
    )
    const shapes: Shape[] = [{ kind: 'path', steps: outline, look }]
    if (ticks) shapes.unshift({ kind: 'path', steps: marks, look: 'offTicks' })
    return shapes
  }
}

const bar = ({ x, y }: Point): Shape[] => {
  const middle = x + length / 2
  return [
    ...wood('limb')({ x, y }),
    { kind: 'line', from: { x: middle, y: y - 6 }, to: { x: middle, y: y + 6 }, look: 'cutBar' }
  ]
}

const dots = ({ x, y }: Point): Shape[] => [
  { kind: 'line', from: { x, y }, to: { x: x + length, y }, look: 'crown' }
]

/** The keys that this drawing uses. */
export function keysOf(scene: Scene, when: 'before' | 'after'): Key[] {
  const keys: Key[] = [{ text: 'leader', swatch: wood('leader') }]
  const has = (test: (limb: Scene['limbs'][number]) => boolean): boolean => scene.limbs.some(test)
  const stays = (limb: Scene['limbs'][number]): boolean => limb.fate !== 'removed'
  if (has((limb) => stays(limb) && !limb.form.present.limb.dead))
    keys.push({ text: 'limb', swatch: wood('limb') })
  if (when === 'before') {
    if (has(({ fate }) => fate !== 'kept'))
      keys.push({ text: 'comes off', swatch: wood('off', true) }, { text: 'cut', swatch: bar })
    if (has(({ form }) => form.present.limb.dead)) keys.push({ text: 'dead', swatch: wood('dead') })
  } else if (has((limb) => stays(limb) && limb.form.present.limb.dead))
    keys.push({ text: 'dead', swatch: wood('dead') })
  return [...keys, { text: 'crown', swatch: dots }]
}

/** Sets keys out in rows within a width; gives the shapes and the height they take. */
export function setKeys(
  keys: readonly Key[],
  corner: Point,
  width: number
): { shapes: Shape[]; height: number } {
  const row = 16
  let { x, y } = corner
  const shapes: Shape[] = []
  for (const key of keys) {
    const wide = length + 5 + textWidth(key.text, size) + 9
    if (x > corner.x && x + wide > corner.x + width + 6) {
      x = corner.x
      y += row
    }
    shapes.push(...key.swatch({ x, y: y + row / 2 }), {
      kind: 'text',
      at: { x: x + length + 5, y: y + row / 2 + 3.5 },
      text: key.text,
      size,
      anchor: 'start',
      look: 'text'
    })
    x += wide
  }
  return { shapes, height: y + row - corner.y }
}
