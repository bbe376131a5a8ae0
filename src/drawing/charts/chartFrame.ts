import { roundStep, type Box } from '../paper'
import type { Drawing, DrawingPalette, Shape } from '../shapes'
import { linesOf } from '../labels/textSize'

export interface ChartOptions {
  /** Pixels. */
  width: number
  height: number
  palette: DrawingPalette
}

const margin = 8
const captionSize = 12
const size = 10

/** Values against the height of a plot. */
export interface Axis {
  plot: Box
  top: number
  place: (value: number) => number
}

export interface Frame {
  axis: Axis
  shapes: Shape[]
}

/**
 * A caption, a value axis with ticks and light lines, and the ground line. `write` puts a value in words; `from` is the
 * value at the ground, 0 unless lines rather than columns are drawn; `above` is room for a second line of values.
 */
export function chartFrame(
  options: ChartOptions,
  caption: string,
  greatest: number,
  write: (value: number) => string,
  below: number,
  from = 0,
  above = 0
): Frame {
  const lines = linesOf(caption, captionSize * 1.08, options.width - 2 * margin)
  const step = roundStep(greatest > from ? greatest - from : 1, 4)
  const top = from + Math.max(1, Math.ceil((greatest - from - 1e-9) / step)) * step
  const labels = Array.from(
    { length: Math.round((top - from) / step) + 1 },
    (_, index) => from + index * step
  )
  const wide = Math.max(...labels.map((value) => write(value).length)) * size * 0.58
  const y = lines.length * 16 + 26 + above
  const plot = {
    x: margin + wide + 8,
    y,
    width: Math.max(40, options.width - 2 * margin - wide - 8),
    height: Math.max(30, options.height - y - below - margin)
  }
  const place = (value: number): number => plot.y + plot.height * (1 - (value - from) / (top - from))
  const shapes: Shape[] = lines.map((text, index) => ({
    kind: 'text',
    at: { x: margin, y: 17 + index * 16 },
    text,
    size: captionSize,
    anchor: 'start',
    look: 'caption'
  }))
  for (const value of labels) {
    const at = place(value)
    shapes.push(
      {
        kind: 'line',
        from: { x: plot.x, y: at },
        to: { x: plot.x + plot.width, y: at },
        look: value === from ? 'ground' : 'grid'
      },
      {
        kind: 'text',
        at: { x: plot.x - 6, y: at + 3.5 },
        text: write(value),
        size,
        anchor: 'end',
        look: 'axisText'
      }
    )
  }
  return { axis: { plot, top, place }, shapes }
}

/** A text under or over a place of the chart. */
export function chartText(x: number, y: number, text: string, strong = false): Shape {
  return { kind: 'text', at: { x, y }, text, size, anchor: 'middle', look: strong ? 'strong' : 'text' }
}

/** A drawing with one sentence instead of a chart, where there is nothing to show. */
export function emptyChart(options: ChartOptions, title: string, sentence: string): Drawing {
  const shapes = linesOf(sentence, size, options.width - 2 * margin).map((text, index): Shape => ({
    kind: 'text',
    at: { x: margin, y: 38 + index * 14 },
    text,
    size,
    anchor: 'start',
    look: 'text'
  }))
  const caption: Shape = {
    kind: 'text',
    at: { x: margin, y: 17 },
    text: title,
    size: captionSize,
    anchor: 'start',
    look: 'caption'
  }
  return { ...options, title, alt: `${title}. ${sentence}`, shapes: [caption, ...shapes] }
}
