import type { Drawing, Point, Shape, Step } from './shapes'

const moved = ({ x, y }: Point, by: Point): Point => ({ x: x + by.x, y: y + by.y })

function movedStep(step: Step, by: Point): Step {
  switch (step[0]) {
    case 'Z':
      return step
    case 'C':
      return ['C', moved(step[1], by), moved(step[2], by), moved(step[3], by)]
    case 'L':
    case 'M':
      return [step[0], moved(step[1], by)]
  }
}

function movedShape(shape: Shape, by: Point): Shape {
  switch (shape.kind) {
    case 'path':
      return { ...shape, steps: shape.steps.map((step) => movedStep(step, by)) }
    case 'line':
      return { ...shape, from: moved(shape.from, by), to: moved(shape.to, by) }
    case 'rect':
    case 'image':
      return { ...shape, x: shape.x + by.x, y: shape.y + by.y }
    case 'circle':
      return { ...shape, center: moved(shape.center, by) }
    case 'text':
      return { ...shape, at: moved(shape.at, by) }
  }
}

/** Two drawings as one, the second to the right of the first. */
export function sideBySide(left: Drawing, right: Drawing, apart: number): Drawing {
  const by = { x: left.width + apart, y: 0 }
  return {
    ...left,
    width: by.x + right.width,
    height: Math.max(left.height, right.height),
    title: `${left.title}; ${right.title}`,
    alt: `${left.alt} ${right.alt}`,
    shapes: [...left.shapes, ...right.shapes.map((shape) => movedShape(shape, by))]
  }
}

/** Two drawings as one, the second below the first. */
export function oneBelow(upper: Drawing, lower: Drawing, apart: number): Drawing {
  const by = { x: 0, y: upper.height + apart }
  return {
    ...upper,
    width: Math.max(upper.width, lower.width),
    height: by.y + lower.height,
    title: `${upper.title}; ${lower.title}`,
    alt: `${upper.alt} ${lower.alt}`,
    shapes: [...upper.shapes, ...lower.shapes.map((shape) => movedShape(shape, by))]
  }
}
