import type { Drawing } from '../../src/drawing/shapes'
import { el, fill } from './elements'
import type { Drawings } from '../engine'

/** Pixels: narrower than any pane, wider than any print needs, and what is taken where a place has no width yet. */
const narrowest = 240
const widest = 460
const unmeasured = 300

const failed =
  'The drawing could not be shown. Close the pane and open it again; the numbers above and below hold without it.'

export interface Figure {
  element: HTMLElement
  /** Draws again, as what is drawn has changed. */
  redraw(): void
}

/** A drawing as wide as its place. It is drawn when it is first seen, and again when the pane gets another width. */
export function figure(
  load: () => Promise<Drawings>,
  build: (drawings: Drawings, width: number) => Drawing
): Figure {
  const element = el('div', { class: 'figure' })
  let drawnWidth = 0
  let turn = 0
  const draw = async (width: number): Promise<void> => {
    drawnWidth = width
    turn += 1
    const mine = turn
    try {
      const drawings = await load()
      if (mine === turn) fill(element, drawings.toSvgElement(build(drawings, width), document))
    } catch {
      if (mine === turn) fill(element, el('p', { class: 'aside' }, failed))
    }
  }
  const fit = (room: number): void => {
    const width = Math.min(widest, Math.max(narrowest, Math.floor(room)))
    if (width !== drawnWidth) void draw(width)
  }
  // A page without the observer is a page without a layout: there is no width to follow.
  if (typeof ResizeObserver === 'undefined') fit(unmeasured)
  else
    new ResizeObserver(([entry]) => {
      if (entry !== undefined && entry.contentRect.width > 0) fit(entry.contentRect.width)
    }).observe(element)
  return {
    element,
    redraw: () => {
      if (drawnWidth > 0) void draw(drawnWidth)
    }
  }
}
