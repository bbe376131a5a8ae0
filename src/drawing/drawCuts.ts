import { beside, stationAt, type Station } from './form/outline'
import type { Box, Scale } from './paper'
import { placeBoxes, type Obstacles, type Wanted } from './labels/placeBoxes'
import { cutAt, markParameter, type Scene, type SceneLimb } from './scene'
import type { Shape } from './shapes'

const badgeRadius = 7

interface Mark {
  limb: SceneLimb
  number: number
  station: Station
  /** A raising takes off hanging branches here and there: its number has no bar. */
  barred: boolean
}

/** Where on a limb the number of a raising stands. */
const raisedAt = 0.45

function marksOf(scene: Scene, scale: Scale): Mark[] {
  return scene.limbs.flatMap((limb) => {
    const { cut, raised } = limb.form.present
    return [cut, raised].flatMap((each): Mark[] => {
      if (each === null) return []
      const barred = each.cut.kind !== 'raise'
      const at = barred ? markParameter(limb, scene, scale) : raisedAt
      return [{ limb, number: each.number, station: stationAt(scale, limb.form, at), barred }]
    })
  })
}

function bar({ limb, station, barred }: Mark): Shape[] {
  if (!barred) return []
  const reach = station.half + 4.5
  const ends = { from: beside(station, -reach), to: beside(station, reach) }
  const id = limb.form.present.limb.id
  return [
    { kind: 'line', ...ends, look: 'cutRim' },
    { kind: 'line', ...ends, look: 'cutBar', depicts: { part: 'cut', limb: id } }
  ]
}

function badge(mark: Mark, box: Box): Shape[] {
  const center = { x: box.x + box.width / 2, y: box.y + box.height / 2 }
  const depicts = { part: 'badge', limb: mark.limb.form.present.limb.id }
  return [
    { kind: 'line', from: mark.station.center, to: center, look: 'pointer' },
    { kind: 'circle', center, radius: badgeRadius, look: 'badge', depicts },
    {
      kind: 'text',
      at: { x: center.x, y: center.y + 3.3 },
      text: String(mark.number),
      size: 9.5,
      anchor: 'middle',
      look: 'badgeText'
    }
  ]
}

/** A bar across each limb where it is cut, with the number of the cut; `boxes` gains the places taken. */
export function cutMarks(scene: Scene, scale: Scale, obstacles: Obstacles): Shape[] {
  const marks = marksOf(scene, scale)
  const wishes = marks.map((mark): Wanted => {
    const { station, limb } = mark
    const outward = beside(station, limb.form.side)
    return {
      anchor: station.center,
      width: badgeRadius * 2,
      height: badgeRadius * 2,
      toward: { x: outward.x - station.center.x, y: outward.y - station.center.y },
      clear: station.half + 6
    }
  })
  const boxes = placeBoxes(wishes, obstacles)
  obstacles.boxes.push(...boxes)
  const badges = marks.flatMap((mark, index) => {
    const box = boxes[index]
    return box === undefined ? [] : badge(mark, box)
  })
  return [...marks.flatMap(bar), ...badges]
}

/** After the visit: the face of each reduction cut. */
export function madeCuts(scene: Scene, scale: Scale): Shape[] {
  return scene.limbs
    .filter(({ fate }) => fate === 'reduced')
    .map((limb): Shape => {
      const station = stationAt(scale, limb.form, cutAt(limb))
      const reach = station.half + 1.5
      return {
        kind: 'line',
        from: beside(station, -reach),
        to: beside(station, reach),
        look: 'madeCut',
        depicts: { part: 'made-cut', limb: limb.form.present.limb.id }
      }
    })
}
