import type { UnitSystem } from '../../../shared/units'
import { noCutWords } from '../../plan/judged'
import { bearingRose, roseLimbs, roseSize } from './bearingRose'
import { cutLines } from '../cutLines'
import { doseBar, doseWords } from '../doseBar'
import { keysOf, setKeys } from './legendKeys'
import type { Scale } from '../paper'
import { notesOf } from './notes'
import type { Scene } from '../scene'
import type { Point, Shape } from '../shapes'
import { linesOf } from './textSize'

const gap = 12
const textSize = 10.5
const noteSize = 9.5
/** Wide enough for the cuts to stand beside the rose. */
const roomForCuts = 230

export interface LegendSetting {
  when: 'before' | 'after'
  system: UnitSystem
  subordinateUpTo: number
}

interface Set {
  shapes: Shape[]
  height: number
}

function doseBlock(scene: Scene, corner: Point, width: number): Set {
  const { visit } = scene
  if (visit === null) return { shapes: [], height: 0 }
  const shapes: Shape[] = [
    {
      kind: 'text',
      at: { x: corner.x, y: corner.y + 10 },
      text: doseWords(visit),
      size: textSize,
      anchor: 'start',
      look: 'strong'
    },
    ...doseBar(visit, { x: corner.x, y: corner.y + 16 }, Math.min(width, 220), 10)
  ]
  return { shapes, height: 34 }
}

/** Lines of text below each other. */
function textBlock(lines: readonly string[], corner: Point, look: 'text' | 'note'): Set {
  const size = look === 'note' ? noteSize : textSize
  const step = size * 1.32
  const shapes = lines.map((text, index): Shape => {
    const at = { x: corner.x, y: corner.y + size + index * step }
    return { kind: 'text', at, text, size, anchor: 'start', look }
  })
  return { shapes, height: lines.length * step }
}

function cutBlock(scene: Scene, corner: Point, width: number, setting: LegendSetting): Set {
  const { when, system } = setting
  if (scene.visit === null) return { shapes: [], height: 0 }
  const lines = cutLines(scene.visit, when, system)
  if (lines.length === 0)
    return textBlock(linesOf(`${noCutWords(scene.plan)}.`, textSize, width), corner, 'text')
  const shapes: Shape[] = []
  let { y } = corner
  for (const { number, text } of lines) {
    const block = textBlock(linesOf(text, textSize, width - 18), { x: corner.x + 18, y }, 'text')
    shapes.push(
      {
        kind: 'text',
        at: { x: corner.x + 12, y: y + textSize },
        text: String(number),
        size: textSize,
        anchor: 'end',
        look: 'strong'
      },
      ...block.shapes
    )
    y += block.height + 1.5
  }
  return { shapes, height: y - corner.y }
}

/** The legend without its rose, which only takes up room here. */
export function legendBlocks(
  scene: Scene,
  scale: Scale,
  corner: Point,
  width: number,
  setting: LegendSetting
): Set {
  const rose = hasRose(scene)
  const left = rose ? roseSize.width + gap : 0
  const right = { x: corner.x + left, y: corner.y + 4 }
  const dose = doseBlock(scene, right, width - left)
  const keysAt = { x: right.x, y: right.y + dose.height }
  const keys = setKeys(keysOf(scene, setting.when), keysAt, width - left)
  const upper = keysAt.y + keys.height
  const roseEnd = corner.y + (rose ? roseSize.height : 0)
  const beside = width - left >= roomForCuts
  const cutsAt = beside ? { x: right.x, y: upper + 6 } : { x: corner.x, y: Math.max(upper + 6, roseEnd) + 4 }
  const cuts = cutBlock(scene, cutsAt, width - (cutsAt.x - corner.x), setting)
  const below = Math.max(cuts.height > 0 ? cutsAt.y + cuts.height : upper, roseEnd)
  const lines = linesOf(notesOf(scene, scale).join(' '), noteSize, width)
  const notes = textBlock(lines, { x: corner.x, y: below + 6 }, 'note')
  return {
    shapes: [...dose.shapes, ...keys.shapes, ...cuts.shapes, ...notes.shapes],
    height: below + 6 + notes.height - corner.y
  }
}

function hasRose(scene: Scene): boolean {
  return roseLimbs(scene, 'before').length > 0
}

/** What stands below a tree: rose, dose, keys, cuts and notes. */
export function legend(
  scene: Scene,
  scale: Scale,
  corner: Point,
  width: number,
  setting: LegendSetting
): Shape[] {
  const rose = hasRose(scene) ? bearingRose(scene, setting.when, corner, setting.subordinateUpTo) : []
  return [...rose, ...legendBlocks(scene, scale, corner, width, setting).shapes]
}
