import { convertLength, systems, type UnitSystem } from '../../../shared/units'
import { hundredth } from '../../../shared/words/figures'
import { showHeight } from '../../../shared/words/lengths'
import { upperThird } from '../../formulas/priority'
import { roundStep, type Box, type Scale } from '../paper'
import type { Obstacles } from './placeBoxes'
import type { Scene } from '../scene'
import type { Shape } from '../shapes'
import { textWidth } from './textSize'

const size = 9.5

function levelOf(scale: Scale, height: number): number {
  return scale.foot.y - height * scale.perMeter
}

/** The scale of heights along the left edge, with light lines across. */
export function heightScale(scale: Scale, plot: Box, height: number, system: UnitSystem): Shape[] {
  const unit = systems[system].height
  const top = convertLength(height, 'm', unit)
  const step = roundStep(top, Math.max(3, Math.min(9, Math.floor((height * scale.perMeter) / 28))))
  const shapes: Shape[] = []
  for (let at = 0; at <= top + 1e-9; at += step) {
    const y = levelOf(scale, convertLength(at, unit, 'm'))
    const text = hundredth(at)
    if (at > 0)
      shapes.push({ kind: 'line', from: { x: plot.x, y }, to: { x: plot.x + plot.width, y }, look: 'grid' })
    shapes.push(
      { kind: 'line', from: { x: plot.x - 4, y }, to: { x: plot.x, y }, look: 'axis' },
      { kind: 'text', at: { x: plot.x - 7, y: y + 3.3 }, text, size, anchor: 'end', look: 'axisText' }
    )
  }
  const foot = scale.foot.y
  shapes.push(
    {
      kind: 'line',
      from: { x: plot.x, y: foot },
      to: { x: plot.x, y: levelOf(scale, height) },
      look: 'axis'
    },
    {
      kind: 'text',
      at: { x: plot.x - 7, y: levelOf(scale, height) - 7 },
      text: unit,
      size,
      anchor: 'end',
      look: 'axisText'
    }
  )
  return shapes
}

/** The ground line. */
export function groundLine(scale: Scale, plot: Box): Shape {
  const { y } = scale.foot
  return { kind: 'line', from: { x: plot.x, y }, to: { x: plot.x + plot.width, y }, look: 'ground' }
}

interface Guide {
  height: number
  text: string
  look: 'crownBase' | 'clearance'
}

function guidesOf(scene: Scene, when: 'before' | 'after', system: UnitSystem): Guide[] {
  const guides: Guide[] = []
  const base = when === 'after' ? (scene.visit?.crownBaseAfter ?? scene.crownBase) : scene.crownBase
  if (base !== null)
    guides.push({ height: base, text: `crown base ${showHeight(base, system)}`, look: 'crownBase' })
  const { clearance, clearanceSide } = scene.plan.tree
  const side = clearanceSide === null ? '' : `, ${clearanceSide.text}`
  if (clearance !== null)
    guides.push({
      height: clearance,
      text: `clearance ${showHeight(clearance, system, 'at least')}${side}`,
      look: 'clearance'
    })
  return guides.sort((a, b) => b.height - a.height)
}

/** Crown base and clearance as lines with words, the upper one worded above its line and the lower one below. */
export function guideLines(
  scene: Scene,
  scale: Scale,
  plot: Box,
  when: 'before' | 'after',
  system: UnitSystem,
  obstacles: Obstacles
): Shape[] {
  const right = plot.x + plot.width
  return guidesOf(scene, when, system).flatMap((guide, index): Shape[] => {
    const y = levelOf(scale, guide.height)
    const baseline = index === 0 ? y - 3 : y + 10
    const width = textWidth(guide.text, size)
    obstacles.boxes.push({ x: right - width, y: baseline - 9, width, height: 11 })
    return [
      {
        kind: 'line',
        from: { x: plot.x, y },
        to: { x: right, y },
        look: guide.look,
        depicts: { part: guide.look === 'crownBase' ? 'crown-base' : 'clearance' }
      },
      {
        kind: 'text',
        at: { x: right, y: baseline },
        text: guide.text,
        size,
        anchor: 'end',
        look: 'guideText'
      }
    ]
  })
}

/** The canopy's upper third as a light band. */
export function upperThirdBand(scene: Scene, scale: Scale, plot: Box, obstacles: Obstacles): Shape[] {
  if (scene.crownBase === null || scene.crownBase >= scene.height) return []
  const top = levelOf(scale, scene.height)
  const y = levelOf(scale, upperThird(scene.height, scene.crownBase))
  const text = 'upper third'
  const right = plot.x + plot.width
  obstacles.boxes.push({ x: right - textWidth(text, size), y: top, width: textWidth(text, size), height: 12 })
  return [
    {
      kind: 'rect',
      x: plot.x,
      y: top,
      width: plot.width,
      height: y - top,
      look: 'upperThird',
      depicts: { part: 'upper-third' }
    },
    { kind: 'line', from: { x: plot.x, y }, to: { x: right, y }, look: 'soil' },
    { kind: 'text', at: { x: right, y: top + 9 }, text, size, anchor: 'end', look: 'guideText' }
  ]
}
