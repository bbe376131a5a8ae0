/** What a line or a fill is painted with. `ink` is the text color; `paper` the ground. */
export type Paint = 'none' | 'ink' | 'paper' | 'wood' | 'leader' | 'cut'

export interface Look {
  fill?: Paint
  fillOpacity?: number
  stroke?: Paint
  strokeOpacity?: number
  width?: number
  /** Lengths of dashes and gaps in pixels. */
  dash?: readonly number[]
  cap?: 'butt' | 'round'
  bold?: boolean
  italic?: boolean
  /** A rim of paper around a text, so that it can be read over lines. */
  rim?: boolean
}

/**
 * Named looks. Each meaning has a form of its own (solid, hollow, dashed, dotted with ticks, a bar), so that a drawing
 * reads in black and white and in forced colors.
 */
export const drawnLooks = {
  ground: { stroke: 'ink', width: 1 },
  soil: { stroke: 'ink', strokeOpacity: 0.5, width: 0.8 },
  axis: { stroke: 'ink', strokeOpacity: 0.7, width: 0.8 },
  grid: { stroke: 'ink', strokeOpacity: 0.13, width: 0.6 },
  upperThird: { fill: 'ink', fillOpacity: 0.05 },
  blank: { fill: 'paper' },
  picture: {},
  crown: {
    fill: 'leader',
    fillOpacity: 0.11,
    stroke: 'leader',
    strokeOpacity: 0.6,
    width: 0.8
  },
  crownBase: { stroke: 'ink', strokeOpacity: 0.8, width: 0.9, dash: [6, 3] },
  clearance: { stroke: 'cut', width: 1, dash: [8, 2.5, 1.5, 2.5] },
  trunk: { fill: 'wood', fillOpacity: 0.75, stroke: 'ink', width: 0.8 },
  leader: { fill: 'leader', stroke: 'leader', width: 1.2 },
  limb: { fill: 'wood', fillOpacity: 0.35, stroke: 'ink', width: 0.8 },
  dead: { fill: 'paper', stroke: 'ink', width: 0.9, dash: [4.5, 2.5] },
  off: { fill: 'paper', fillOpacity: 0.75, stroke: 'cut', width: 1, dash: [0.6, 2.6], cap: 'round' },
  offTicks: { stroke: 'cut', strokeOpacity: 0.85, width: 0.7 },
  cutRim: { stroke: 'paper', width: 5 },
  cutBar: { stroke: 'cut', width: 2.4 },
  madeCut: { stroke: 'ink', width: 1.6 },
  badge: { fill: 'cut', stroke: 'paper', width: 1 },
  badgeText: { fill: 'paper', bold: true },
  pointer: { stroke: 'ink', strokeOpacity: 0.6, width: 0.6 },
  label: { fill: 'ink', bold: true, rim: true },
  leaderLabel: { fill: 'leader', bold: true, rim: true },
  guideText: { fill: 'ink', italic: true, rim: true },
  axisText: { fill: 'ink' },
  caption: { fill: 'ink', bold: true },
  text: { fill: 'ink' },
  strong: { fill: 'ink', bold: true },
  note: { fill: 'ink', italic: true },
  frame: { fill: 'none', stroke: 'ink', width: 1 },
  bar: { fill: 'leader', fillOpacity: 0.85 },
  barTicks: { stroke: 'paper', strokeOpacity: 0.75, width: 0.8 },
  rim: { fill: 'none', stroke: 'ink', strokeOpacity: 0.7, width: 0.8 },
  half: { fill: 'none', stroke: 'ink', strokeOpacity: 0.7, width: 0.8, dash: [2.5, 2] },
  spoke: { stroke: 'ink', cap: 'round' },
  spokeOff: { stroke: 'cut', dash: [1, 2] },
  spokeDead: { stroke: 'ink', dash: [4, 2.5] },
  hub: { fill: 'leader' },
  pruned: { fill: 'none', stroke: 'leader', width: 2 },
  prunedPoint: { fill: 'leader', stroke: 'paper', width: 1 },
  unpruned: { fill: 'none', stroke: 'cut', width: 1.4, dash: [5, 3] },
  unprunedPoint: { fill: 'paper', stroke: 'cut', width: 1.4 },
  threshold: { stroke: 'ink', strokeOpacity: 0.6, width: 0.8, dash: [2, 2] }
} as const satisfies Record<string, Look>

export type LookName = keyof typeof drawnLooks
