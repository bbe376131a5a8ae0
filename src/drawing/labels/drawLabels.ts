import type { Limb } from '../../inventory/inventory'
import { onPaper, type Box, type Scale } from '../paper'
import { placeBoxes, type Obstacles, type Wanted } from './placeBoxes'
import { livePoints, type Scene } from '../scene'
import type { Point, Shape } from '../shapes'
import { shortened, textWidth } from './textSize'

const size = 11

/** How a limb is called in the picture. */
type NameOf = (limb: Limb) => string

const ownName: NameOf = ({ id }) => id

interface Label extends Wanted {
  text: string
  limb: string
}

function labelOf(text: string, limb: string, anchor: Point, toward: Point): Label {
  return { text, limb, anchor, toward, clear: 3, width: textWidth(text, size, true) + 2, height: size + 1 }
}

function limbLabels(scene: Scene, scale: Scale, when: 'before' | 'after', nameOf: NameOf): Label[] {
  return scene.limbs.flatMap((limb) => {
    const tip = livePoints(limb, when).at(-1)
    if (tip === undefined) return []
    const { side, present } = limb.form
    const id = shortened(nameOf(present.limb), size, 60)
    return [labelOf(id, present.limb.id, onPaper(scale, tip), { x: side * 0.75, y: -0.66 })]
  })
}

/** The leader's name; "trunk" where no row is the leader. */
export function leaderWords(scene: Scene, nameOf: NameOf = ownName): string {
  const { name, limb } = scene.plan.leader
  if (limb !== null) return `Leader ${nameOf(limb)}`
  return name === '' ? 'Leader not judged' : `Leader: ${name}`
}

function leaderLabel(scene: Scene, scale: Scale, nameOf: NameOf): Label {
  const { trunk, plan } = scene
  const text = shortened(leaderWords(scene, nameOf), size, 120)
  return labelOf(text, plan.leader.limb?.id ?? '', onPaper(scale, { x: trunk.lean, y: trunk.tip }), {
    x: 0,
    y: -1
  })
}

function drawn(label: Label, box: Box, isLeader: boolean): Shape[] {
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 }
  const near = {
    x: Math.max(box.x, Math.min(label.anchor.x, box.x + box.width)),
    y: Math.max(box.y, Math.min(label.anchor.y, box.y + box.height))
  }
  const shapes: Shape[] = []
  if (Math.hypot(near.x - label.anchor.x, near.y - label.anchor.y) > 7)
    shapes.push({ kind: 'line', from: label.anchor, to: near, look: 'pointer' })
  shapes.push({
    kind: 'text',
    at: { x: middle.x, y: middle.y + size * 0.36 },
    text: label.text,
    size,
    anchor: 'middle',
    look: isLeader ? 'leaderLabel' : 'label',
    depicts: isLeader ? { part: 'leader-label' } : { part: 'label', limb: label.limb }
  })
  return shapes
}

/** The name of the leader and of every limb, near its tip and clear of the rest. */
export function labelShapes(
  scene: Scene,
  scale: Scale,
  when: 'before' | 'after',
  obstacles: Obstacles,
  nameOf: NameOf = ownName
): Shape[] {
  const labels = [leaderLabel(scene, scale, nameOf), ...limbLabels(scene, scale, when, nameOf)]
  const boxes = placeBoxes(labels, obstacles)
  obstacles.boxes.push(...boxes)
  return labels.flatMap((label, index) => {
    const box = boxes[index]
    return box === undefined ? [] : drawn(label, box, index === 0)
  })
}
