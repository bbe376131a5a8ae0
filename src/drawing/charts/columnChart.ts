import { chartFrame, chartText, type ChartOptions } from './chartFrame'
import { strokes, type Point, type Shape } from '../shapes'
import { textWidth } from '../labels/textSize'

/** One column of a chart. */
export interface Column {
  /** Lines below the column. */
  labels: string[]
  value: number
  /** The value in words, above the column. */
  text: string
  /** A ceiling, drawn as an empty frame around the column. */
  ceiling?: number
}

const lineHeight = 12.5

function filling(x: number, y: number, width: number, height: number): Shape[] {
  const lines: [Point, Point][] = []
  for (let at = y + height - 4; at > y + 1; at -= 5)
    lines.push([
      { x: x + 1, y: at },
      { x: x + width - 1, y: at }
    ])
  return [
    { kind: 'rect', x, y, width, height, look: 'bar', depicts: { part: 'column' } },
    { kind: 'path', steps: strokes(lines), look: 'barTicks' }
  ]
}

/** Columns side by side over a value axis. */
export function columnShapes(
  options: ChartOptions,
  caption: string,
  columns: readonly Column[],
  write: (value: number) => string
): Shape[] {
  const greatest = Math.max(...columns.flatMap(({ value, ceiling }) => [value, ceiling ?? 0]))
  const lines = Math.max(...columns.map(({ labels }) => labels.length))
  const framed = (above: number) =>
    chartFrame(options, caption, greatest, write, lines * lineHeight + 4, 0, above)
  /** Where the values are wider than their columns, every second one stands a line higher. */
  const room = framed(0).axis.plot.width / columns.length - 6
  const crowded = columns.some(({ text }) => textWidth(text, 10, true) > room)
  const { axis, shapes } = framed(crowded ? lineHeight : 0)
  const { plot, place } = axis
  const slot = plot.width / columns.length
  const width = Math.min(56, slot * 0.56)
  columns.forEach(({ labels, value, text, ceiling }, index) => {
    const middle = plot.x + slot * (index + 0.5)
    const x = middle - width / 2
    const foot = plot.y + plot.height
    const y = place(value)
    shapes.push(...filling(x, y, width, foot - y))
    if (ceiling !== undefined) {
      const top = place(ceiling)
      const depicts = { part: 'ceiling' }
      shapes.push({ kind: 'rect', x, y: top, width, height: foot - top, look: 'frame', depicts })
    }
    const lifted = crowded && index % 2 === 1 ? lineHeight : 0
    shapes.push(chartText(middle, Math.min(y, place(ceiling ?? 0)) - 5 - lifted, text, true))
    labels.forEach((label, line) => {
      shapes.push(chartText(middle, foot + lineHeight * (line + 1), label))
    })
  })
  return shapes
}
