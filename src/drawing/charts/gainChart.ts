import type { Rules } from '../../../shared/rules'
import { convertLength, systems, type UnitSystem } from '../../../shared/units'
import { tenth } from '../../../shared/words/figures'
import { wholePercent } from '../../../shared/words/percent'
import { capital } from '../../../shared/words/sentences'
import type { Cut, TreePlan, Visit } from '../../plan/plan'
import { upperThird } from '../../formulas/priority'
import { drawableId } from '../labels/letters'
import { textWidth } from '../labels/textSize'
import type { Drawing, DrawingPalette, Point, Shape } from '../shapes'
import { ratioCourse } from './ratioCourse'

/** A value of today, after the work, or left alone. */
interface GainBar {
  /** Lines below the bar. */
  labels: readonly string[]
  value: number
  text: string
  look: 'bar' | 'off' | 'frame'
}

interface GainPanel {
  title: string
  bars: readonly GainBar[]
  goal: { value: number; text: string } | null
}

/** What a visit gains for the limb of a tree that needs it most. */
export interface Gain {
  panels: readonly GainPanel[]
  alt: string
}

/** The cut that the chart is about: of the most urgent limb that is shortened or taken off, else one that is raised. */
function foremostCut({ cuts }: Visit): Cut | null {
  const rank = ({ kind, priority }: Cut) => (kind === 'raise' ? -1 : priority)
  return cuts
    .filter(({ live }) => live)
    .reduce<Cut | null>((best, cut) => (best === null || rank(cut) > rank(best) ? cut : best), null)
}

function topPanel(plan: TreePlan, cut: Cut, name: string, system: UnitSystem): GainPanel | null {
  const { height, crownBase } = plan.tree
  const unit = systems[system].height
  const of = (meters: number) => convertLength(meters, 'm', unit)
  const { tip } = cut.limb
  if (cut.kind === 'raise') {
    const { lowestFoliage } = cut.limb
    const required = plan.tree.clearance
    if (lowestFoliage === null || cut.cutHeight === null) return null
    return {
      title: `Leaves of ${name}, from (${unit})`,
      bars: [
        { labels: ['now'], value: of(lowestFoliage), text: tenth(of(lowestFoliage)), look: 'off' },
        { labels: ['after'], value: of(cut.cutHeight), text: tenth(of(cut.cutHeight)), look: 'bar' }
      ],
      goal: required === null ? null : { value: of(required), text: `goal ${tenth(of(required))}` }
    }
  }
  if (tip === null) return null
  const after = cut.kind === 'remove' ? 0 : cut.endsAt
  if (after === null) return null
  const goal = height === null || crownBase === null ? null : upperThird(height, crownBase)
  return {
    title: `Top of ${name} (${unit})`,
    bars: [
      { labels: ['now'], value: of(tip), text: tenth(of(tip)), look: 'off' },
      {
        labels: ['after'],
        value: of(after),
        text: cut.kind === 'remove' ? 'gone' : tenth(of(after)),
        look: 'bar'
      },
      { labels: ['left', 'alone'], value: of(tip), text: `${tenth(of(tip))} +`, look: 'frame' }
    ],
    goal: goal === null ? null : { value: of(goal), text: `goal ${tenth(of(goal))}` }
  }
}

function thicknessPanel(plan: TreePlan, cut: Cut, name: string, rules: Rules): GainPanel | null {
  const course = ratioCourse(plan, cut.limb, rules)
  const [now, then] = [course?.unpruned[0], course?.unpruned.at(-1)]
  if (course === null || now === undefined || then === undefined || cut.kind === 'raise') return null
  const end = course.pruned.find(({ year }) => year === then.year)
  const year = String(then.year)
  return {
    title: `${capital(name)}, % of its stem`,
    bars: [
      { labels: ['now'], value: now.ratio, text: wholePercent(now.ratio), look: 'off' },
      {
        labels: ['pruned', year],
        value: end?.ratio ?? 0,
        text: end === undefined ? 'gone' : wholePercent(end.ratio),
        look: 'bar'
      },
      { labels: ['left', 'alone', year], value: then.ratio, text: wholePercent(then.ratio), look: 'frame' }
    ],
    goal: { value: rules.subordinateUpTo, text: `goal ${wholePercent(rules.subordinateUpTo)}` }
  }
}

/** What a visit gains; null where nothing of it can be drawn. */
export function gainOf(plan: TreePlan, visit: Visit, system: UnitSystem, rules: Rules): Gain | null {
  const cut = foremostCut(visit)
  if (cut === null) return null
  const panelsOf = (name: string) =>
    [topPanel(plan, cut, name, system), thicknessPanel(plan, cut, name, rules)].filter(
      (panel) => panel !== null
    )
  const panels = panelsOf(`limb ${drawableId(plan, cut.limb)}`)
  if (panels.length === 0) return null
  const words = panelsOf(`limb ${cut.limb.id}`).map(({ title, bars, goal }) => {
    const values = bars.map(({ labels, text }) => `${labels.join(' ')} ${text}`)
    return `${title}: ${[...values, ...(goal === null ? [] : [goal.text])].join(', ')}`
  })
  return { panels, alt: `${words.join('. ')}. Later years are a forecast by the growth rules.` }
}

const [titleSize, textSize] = [10.5, 9.5] as const
const line = 11

function text(x: number, y: number, words: string, strong = false): Shape {
  const size = textSize
  return { kind: 'text', at: { x, y }, text: words, size, anchor: 'middle', look: strong ? 'strong' : 'text' }
}

function panelShapes(
  { title, bars, goal }: GainPanel,
  corner: Point,
  width: number,
  height: number
): Shape[] {
  const { x: left, y: top } = corner
  const most = Math.max(goal?.value ?? 0, ...bars.map(({ value }) => value)) || 1
  const labelLines = Math.max(...bars.map(({ labels }) => labels.length))
  const foot = top + height - labelLines * line - 6
  const room = foot - (top + 44)
  const at = (value: number) => foot - (room * value) / most
  const slot = width / bars.length
  const wide = Math.min(34, slot * 0.6)
  const shapes: Shape[] = [
    {
      kind: 'text',
      at: { x: left, y: top + 12 },
      text: title,
      size: Math.min(titleSize, (titleSize * width) / textWidth(title, titleSize, true)),
      anchor: 'start',
      look: 'strong'
    }
  ]
  bars.forEach(({ labels, value, text: words, look }, index) => {
    const middle = left + slot * (index + 0.5)
    const [x, y] = [middle - wide / 2, at(value)]
    if (value > 0)
      shapes.push({ kind: 'rect', x, y, width: wide, height: foot - y, look, depicts: { part: 'column' } })
    shapes.push(text(middle, y - 3, words, true))
    labels.forEach((label, place) => {
      shapes.push(text(middle, foot + line * (place + 1), label))
    })
  })
  shapes.push({ kind: 'line', from: { x: left, y: foot }, to: { x: left + width, y: foot }, look: 'ground' })
  if (goal === null) return shapes
  const y = at(goal.value)
  return [
    ...shapes,
    {
      kind: 'line',
      from: { x: left, y },
      to: { x: left + width, y },
      look: 'crownBase',
      depicts: { part: 'goal' }
    },
    {
      kind: 'text',
      at: { x: left, y: top + 25 },
      text: `dashed: ${goal.text}`,
      size: textSize,
      anchor: 'start',
      look: 'note'
    }
  ]
}

export interface GainChartOptions {
  width: number
  height: number
  palette: DrawingPalette
  /** The panels stand beside each other, else one below the other. */
  beside: boolean
}

const gap = 14
/** Pixels of a panel at most. */
const most = { width: 200, height: 190 } as const

/** The gain as bars: today, after the work and left alone, each against the goal as a dashed line. */
export function gainChart({ panels, alt }: Gain, options: GainChartOptions): Drawing {
  const { width, height, palette, beside } = options
  const count = panels.length
  const room = beside
    ? { width: Math.min(most.width, (width - gap * (count - 1)) / count), height }
    : { width, height: Math.min(most.height, (height - gap * (count - 1)) / count) }
  const shapes = panels.flatMap((panel, place) => {
    const corner = beside ? { x: place * (room.width + gap), y: 0 } : { x: 0, y: place * (room.height + gap) }
    return panelShapes(panel, corner, room.width, room.height)
  })
  return { width, height, title: 'What the work gains', alt, palette, shapes }
}
