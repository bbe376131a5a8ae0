import type { Drawing } from '../shapes'

/** A picture file. `pixelRatio` says how many of its pixels stand for one of the drawing's. */
export interface Picture {
  png: Uint8Array
  width: number
  height: number
  alt: string
}

/** Turns a drawing into a PNG. A browser paints on a canvas, a command line with a library of its own. */
export interface DrawingPainter {
  paint(drawing: Drawing, pixelRatio: number): Promise<Picture>
}

/** Pixels for one of a drawing's where it goes onto a sheet: sharp on paper, and small enough to send. */
export const sheetPixelRatio = 2
