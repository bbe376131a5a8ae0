import { ratio } from '../../../shared/words/figures'
import type { Box } from '../paper'
import { placeBoxes, type Wanted } from './placeBoxes'
import type { Scene, SceneLimb } from '../scene'
import type { LookName } from '../drawnLooks'
import type { Point, Shape } from '../shapes'
import { shortened, textWidth } from './textSize'

/** Room that the rose takes. */
export const roseSize = { width: 104, height: 106 }

const radius = 33
const size = 9
/** A limb far thicker than its stem is drawn no further than this. */
const furthest = 1.2

/** The limbs whose bearing and aspect ratio are known and that are there. */
export function roseLimbs(scene: Scene, when: 'before' | 'after'): SceneLimb[] {
  return scene.limbs.filter(
    ({ form: { present }, fate }) =>
      present.limb.bearing !== null &&
      present.aspectRatio !== null &&
      present.limb.parent === null &&
      !(when === 'after' && fate === 'removed')
  )
}

function pointToward(center: Point, bearing: number, distance: number): Point {
  const angle = (bearing * Math.PI) / 180
  return { x: center.x + Math.sin(angle) * distance, y: center.y - Math.cos(angle) * distance }
}

function spokeLook({ form, fate }: SceneLimb, when: 'before' | 'after'): LookName {
  if (form.present.limb.dead) return 'spokeDead'
  return fate === 'removed' && when === 'before' ? 'spokeOff' : 'spoke'
}

function spokes(limbs: readonly SceneLimb[], center: Point, when: 'before' | 'after'): Shape[] {
  const widest = limbs.length > 8 ? 3.5 : 5
  const thickest = Math.max(...limbs.map(({ form }) => form.diameter))
  return limbs.map((limb): Shape => {
    const { limb: measured, aspectRatio } = limb.form.present
    return {
      kind: 'line',
      from: center,
      to: pointToward(center, measured.bearing ?? 0, radius * Math.min(furthest, aspectRatio ?? 0)),
      width: Math.max(0.8, (limb.form.diameter / thickest) * widest),
      look: spokeLook(limb, when),
      depicts: { part: 'spoke', limb: measured.id }
    }
  })
}

function names(limbs: readonly SceneLimb[], center: Point, box: Box): Shape[] {
  const wishes = limbs.map(({ form: { present } }): Wanted => {
    const bearing = present.limb.bearing ?? 0
    const tip = radius * Math.max(1, Math.min(furthest, present.aspectRatio ?? 0))
    const outward = pointToward({ x: 0, y: 0 }, bearing, 1)
    const text = shortened(present.limb.id, size, 30)
    return {
      anchor: pointToward(center, bearing, tip),
      toward: outward,
      width: textWidth(text, size, true),
      height: size,
      clear: 1.5
    }
  })
  const places = placeBoxes(wishes, { boxes: [northBox(center)], wood: [], inside: box })
  return places.map((place, index): Shape => {
    const id = limbs[index]?.form.present.limb.id ?? ''
    const at = { x: place.x + place.width / 2, y: place.y + size * 0.86 }
    return {
      kind: 'text',
      at,
      text: shortened(id, size, 30),
      size,
      anchor: 'middle',
      look: 'label',
      depicts: { part: 'spoke-label', limb: id }
    }
  })
}

/** North stands at the top; short strokes mark the other three quarters. */
function compass(center: Point): Shape[] {
  const north = pointToward(center, 0, radius + 7)
  const marks = [0, 90, 180, 270].map((bearing): Shape => ({
    kind: 'line',
    from: pointToward(center, bearing, radius - 3),
    to: pointToward(center, bearing, radius + 3),
    look: 'axis'
  }))
  return [
    ...marks,
    {
      kind: 'text',
      at: { x: north.x, y: north.y + 1.5 },
      text: 'N ↑',
      size,
      anchor: 'middle',
      look: 'axisText'
    }
  ]
}

function northBox(center: Point): Box {
  return { x: center.x - 10, y: center.y - radius - 15, width: 20, height: 12 }
}

/**
 * The limbs from above, by bearing: as long as their aspect ratio, the outer ring standing for a limb as thick as its
 * stem and the dashed one for the ratio up to which a limb is subordinate; as wide as their diameters compare.
 */
export function bearingRose(
  scene: Scene,
  when: 'before' | 'after',
  corner: Point,
  subordinateUpTo: number
): Shape[] {
  const limbs = roseLimbs(scene, when)
  const center = { x: corner.x + roseSize.width / 2, y: corner.y + 12 + radius + 3 }
  const box = { x: corner.x, y: corner.y, width: roseSize.width, height: 2 * radius + 32 }
  return [
    { kind: 'circle', center, radius, look: 'rim', depicts: { part: 'rose' } },
    { kind: 'circle', center, radius: radius * subordinateUpTo, look: 'half' },
    ...compass(center),
    ...(limbs.length > 0 ? spokes(limbs, center, when) : []),
    { kind: 'circle', center, radius: 2.6, look: 'hub' },
    ...names(limbs, center, box),
    {
      kind: 'text',
      at: { x: center.x, y: box.y + box.height + 4 },
      text: `aspect ratio, ring ${ratio(subordinateUpTo)}`,
      size,
      anchor: 'middle',
      look: 'note'
    }
  ]
}
