import { fixedTenth, ratio as ratioText } from '../../../shared/words/figures'
import { defaultRules, type Rules } from '../../../shared/rules'
import type { Limb } from '../../inventory/inventory'
import type { TreePlan } from '../../plan/plan'
import { chartFrame, chartText, emptyChart, type Axis, type ChartOptions } from './chartFrame'
import { foremostLimb, ratioCourse, type RatioCourse, type RatioPoint } from './ratioCourse'
import { polyline, strokes, type Drawing, type Point, type Shape } from '../shapes'
import { textWidth } from '../labels/textSize'

export interface RatioChartOptions extends ChartOptions {
  /** The limb shown; the one with the highest priority where none is named. */
  limb?: Limb
  rules?: Rules
}

const side = 3.6

function placed(axis: Axis, points: readonly RatioPoint[], years: readonly number[]): Point[] {
  const { plot, place } = axis
  const [first = 0, last = 1] = [years[0], years.at(-1)]
  const inset = 26
  return points.map(({ year, ratio }) => ({
    x: plot.x + inset + ((plot.width - 2 * inset) * (year - first)) / Math.max(1, last - first),
    y: place(ratio)
  }))
}

function square({ x, y }: Point): Shape {
  return { kind: 'rect', x: x - side, y: y - side, width: 2 * side, height: 2 * side, look: 'unprunedPoint' }
}

function dot(center: Point): Shape {
  return { kind: 'circle', center, radius: side, look: 'prunedPoint' }
}

function cross({ x, y }: Point): Shape {
  const arm = 5
  const steps = strokes([
    [
      { x: x - arm, y: y - arm },
      { x: x + arm, y: y + arm }
    ],
    [
      { x: x - arm, y: y + arm },
      { x: x + arm, y: y - arm }
    ]
  ])
  return { kind: 'path', steps, look: 'pruned', depicts: { part: 'removed' } }
}

/** Lines at the ratios up to which a limb is subordinate and from which it is codominant. */
function thresholds({ plot, place }: Axis, rules: Rules): Shape[] {
  return [rules.subordinateUpTo, rules.codominantFrom].map((value): Shape => {
    const y = place(value)
    const to = { x: plot.x + plot.width, y }
    return { kind: 'line', from: { x: plot.x, y }, to, look: 'threshold', depicts: { part: 'threshold' } }
  })
}

function keys(plotLeft: number, y: number, removed: boolean, rules: Rules): Shape[] {
  const second = plotLeft + 30 + textWidth('as planned', 10) + 14
  const line = (x: number, look: 'pruned' | 'unpruned' | 'threshold', down = 0): Shape => ({
    kind: 'line',
    from: { x, y: y + down },
    to: { x: x + 24, y: y + down },
    look
  })
  const word = (x: number, text: string, down = 0): Shape => ({
    kind: 'text',
    at: { x: x + 30, y: y + 3.5 + down },
    text,
    size: 10,
    anchor: 'start',
    look: 'text'
  })
  const low = ratioText(rules.subordinateUpTo)
  const high = ratioText(rules.codominantFrom)
  return [
    line(plotLeft, 'pruned'),
    dot({ x: plotLeft + 12, y }),
    word(plotLeft, 'as planned'),
    line(second, 'unpruned'),
    square({ x: second + 12, y }),
    word(second, removed ? 'left alone; × removed' : 'left alone'),
    line(plotLeft, 'threshold', 15),
    word(plotLeft, `subordinate to ${low}, codominant from ${high}`, 15)
  ]
}

function courseShapes(course: RatioCourse, options: ChartOptions, title: string, rules: Rules): Shape[] {
  const all = [...course.pruned, ...course.unpruned]
  const ratios = all.map(({ ratio }) => ratio)
  const greatest = Math.max(rules.codominantFrom + 0.1, ...ratios)
  const from = Math.max(0, Math.floor((Math.min(rules.subordinateUpTo, ...ratios) - 0.02) * 5) / 5)
  const { axis, shapes } = chartFrame(options, title, greatest, (value) => fixedTenth(value), 56, from)
  const years = course.unpruned.map(({ year }) => year)
  const unpruned = placed(axis, course.unpruned, years)
  const pruned = placed(axis, course.pruned, years)
  const foot = axis.plot.y + axis.plot.height
  const end = pruned.at(-1)
  return [
    ...shapes,
    ...thresholds(axis, rules),
    { kind: 'path', steps: polyline(unpruned, false), look: 'unpruned', depicts: { part: 'left-alone' } },
    ...unpruned.map(square),
    { kind: 'path', steps: polyline(pruned, false), look: 'pruned', depicts: { part: 'as-planned' } },
    ...pruned.map(dot),
    ...(course.removedIn !== null && end !== undefined ? [cross(end)] : []),
    ...unpruned.map(({ x }, index) => chartText(x, foot + 14, String(years[index] ?? ''))),
    ...keys(axis.plot.x, foot + 30, course.removedIn !== null, rules)
  ]
}

function wordsOf(points: readonly RatioPoint[]): string {
  return points.map(({ year, ratio }) => `${ratioText(ratio)} in ${year}`).join(', ')
}

/** The expected aspect ratio of one limb with the planned cuts and without any. A forecast by the plan's growth rules. */
export function ratioChart(plan: TreePlan, options: RatioChartOptions): Drawing {
  const { limb: wanted, rules = defaultRules, ...setting } = options
  const limb = wanted ?? foremostLimb(plan)
  const course = limb === null ? null : ratioCourse(plan, limb, rules)
  if (course === null)
    return emptyChart(setting, `Tree ${plan.tree.id}: aspect ratio`, 'No limb of this tree is judged.')
  const title = `Tree ${plan.tree.id}, limb ${course.limb.id}: aspect ratio forecast`
  const removed = course.removedIn === null ? '' : ` Removed in ${course.removedIn}.`
  return {
    ...setting,
    title,
    alt: `${title}. As planned: ${wordsOf(course.pruned)}.${removed} Left alone: ${wordsOf(course.unpruned)}.`,
    shapes: courseShapes(course, setting, title, rules)
  }
}
