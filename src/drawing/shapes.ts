import type { StoredPicture } from '../../shared/pictures/storedPicture'
import type { LookName } from './drawnLooks'

/** A place on paper in pixels, or in a tree in meters from the foot of the trunk; in a tree, up is positive. */
export interface Point {
  x: number
  y: number
}

/** A step of a path. */
export type Step = ['M' | 'L', Point] | ['C', Point, Point, Point] | ['Z']

/** What a shape depicts, so that a pane can find it and a test can measure it. */
export interface Depicts {
  part: string
  /** The limb's id, where the shape belongs to one. */
  limb?: string
}

interface Drawn {
  look: LookName
  depicts?: Depicts
}

export type Shape =
  | (Drawn & { kind: 'path'; steps: Step[] })
  | (Drawn & { kind: 'line'; from: Point; to: Point; width?: number })
  | (Drawn & { kind: 'rect'; x: number; y: number; width: number; height: number; round?: number })
  | (Drawn & { kind: 'circle'; center: Point; radius: number })
  | (Drawn & { kind: 'text'; at: Point; text: string; size: number; anchor: 'start' | 'middle' | 'end' })
  | (Drawn & { kind: 'image'; x: number; y: number; width: number; height: number; picture: StoredPicture })

/** In color, or in black and white for print; both say everything without color too. */
export type DrawingPalette = 'color' | 'print'

/** A drawing as a value: pixels, what it shows in words, and its shapes from back to front. */
export interface Drawing {
  width: number
  height: number
  title: string
  /** Everything the drawing says, in words. */
  alt: string
  palette: DrawingPalette
  shapes: Shape[]
}

/** A closed or open path through points. */
export function polyline(points: readonly Point[], closed: boolean): Step[] {
  const steps = points.map((point, index): Step => [index === 0 ? 'M' : 'L', point])
  return closed ? [...steps, ['Z']] : steps
}

/** A path of separate straight strokes. */
export function strokes(pairs: readonly (readonly [Point, Point])[]): Step[] {
  return pairs.flatMap(([from, to]): Step[] => [
    ['M', from],
    ['L', to]
  ])
}
