import { crownOutline } from './form/crownOutline'
import { legendBlocks, type LegendSetting } from './labels/legend'
import { fitScale, type Box, type Scale } from './paper'
import { livePoints, type Scene } from './scene'

/** Pixels around and between the parts of the picture. */
export const margin = 6
export const captionHeight = 22
const axisWidth = 26
/** Above the tip, for the leader's name; and between the ground and the legend. */
export const headroom = 20
export const footroom = 12
const leastPlot = 120

function extents(scene: Scene): { left: number; right: number } {
  const points = scene.limbs.flatMap((limb) => [...livePoints(limb, 'before'), ...livePoints(limb, 'after')])
  const across = [...points, ...crownOutline(scene, 'before')].map(({ x }) => x)
  return { left: Math.min(...across, scene.trunk.lean), right: Math.max(...across, scene.trunk.lean) }
}

/** The tree fits the plot before the visit and after it. */
export function scaleFor(scene: Scene, plot: Box): Scale {
  const { left, right } = extents(scene)
  const room = 12
  const box = { x: plot.x + room, y: plot.y, width: plot.width - 2 * room, height: plot.height }
  const trunk = scene.trunk.profile[2]?.diameter ?? 0
  return fitScale(box, Math.max(scene.height, scene.trunk.tip), left, right, trunk)
}

/** The legend is as high before as after, so that the two trees stand at the same scale. */
export function legendHeight(scene: Scene, width: number, setting: LegendSetting): number {
  const any: Scale = { perMeter: 1, foot: { x: 0, y: 0 }, exaggeration: 2.5 }
  const heights = (['before', 'after'] as const).map(
    (when) => legendBlocks(scene, any, { x: 0, y: 0 }, width, { ...setting, when }).height
  )
  return Math.max(...heights)
}

/** Where the tree stands, between the caption and the legend. */
export function plotOf(width: number, height: number, below: number): Box {
  const x = margin + axisWidth
  const y = captionHeight + headroom
  return {
    x,
    y,
    width: width - x - margin,
    height: Math.max(leastPlot, height - y - footroom - below - margin)
  }
}

/** As high as the tree gets where it fills the width, within reason or up to a height that is given. */
export function treeHeight(scene: Scene, width: number, most = Math.min(420, width * 1.05)): number {
  const { perMeter } = scaleFor(scene, plotOf(width, 10_000, 0))
  return Math.min(most, Math.max(180, scene.height * perMeter))
}
