import type { Rules } from '../../../shared/rules'
import { ratioCourses } from '../../plan/outlook'
import { ratio } from '../../../shared/words/figures'
import { percent } from '../../../shared/words/percent'
import { judgedOf } from '../../plan/judged'
import type { TreePlan } from '../../plan/plan'
import { shownDoses } from '../../plan/shownDoses'
import { cellFormats } from '../cellFormats'
import { chartRows } from '../chartRoom'
import type { SheetDraft } from '../draft'
import { foremostLimb } from '../../drawing/charts/ratioCourse'
import { looks } from '../looks'
import { palette } from '../../../shared/palette'
import type { Content, Format, SheetChart } from '../sheet'

/** Trees in the charts; more would not be told apart. */
export const mostCharted = 20

/** What is charted of one tree. Shares 0 to 1; null where there is nothing to show. */
interface Figures {
  tree: string
  limb: string
  about: string
  dose: number
  allowed: number
  now: number | null
  planned: number | null
  alone: number | null
}

function figuresOf(plan: TreePlan, rules: Rules): Figures {
  const [first] = plan.visits
  const doses = first === undefined ? { visit: 0, allowed: 0 } : shownDoses(first)
  const limb = foremostLimb(plan)
  const course = limb === null ? undefined : ratioCourses(plan, rules).find((each) => each.limb === limb)
  const removal = plan.visits.find(({ limbs }) =>
    limbs.some((state) => state.limb === limb && state.decision === 'remove')
  )
  const end = course?.years.at(-1)
  const about =
    course === undefined
      ? 'No limb of this tree is judged.'
      : removal === undefined
        ? `To ${String(end)}`
        : `Removed in ${String(removal.year)}; left alone to ${String(end)}`
  return {
    tree: plan.tree.id,
    limb: course === undefined ? '' : (limb?.id ?? ''),
    about,
    dose: doses.visit,
    allowed: doses.allowed,
    now: course?.unpruned[0] ?? null,
    planned: course?.pruned.at(-1) ?? null,
    alone: course?.unpruned.at(-1) ?? null
  }
}

/** The figures, each where there is room for it among the columns of the table of cuts, from 0. */
const columns = {
  tree: { at: 0, header: 'Tree', format: { bold: true } },
  limb: { at: 1, header: 'Limb with the highest priority' },
  about: { at: 6, header: 'Forecast' },
  dose: { at: 8, header: 'Foliage removed at the next visit', format: cellFormats.share },
  allowed: { at: 9, header: 'Allowed removal', format: cellFormats.share },
  now: { at: 10, header: 'Aspect ratio now', format: cellFormats.hundredth },
  planned: { at: 11, header: 'Ratio as planned', format: cellFormats.hundredth },
  alone: { at: 12, header: 'Ratio left alone', format: cellFormats.hundredth }
} as const satisfies Record<keyof Figures, { at: number; header: string; format?: Format }>

const keys = Object.keys(columns) as (keyof Figures)[]

function cellsOf(draft: SheetDraft, of: (key: keyof Figures) => Content): Content[] {
  const row = Array.from({ length: draft.widths.length }, (): Content => null)
  for (const key of keys) row[columns[key].at] = of(key)
  return row
}

function addTable(draft: SheetDraft, figures: readonly Figures[]): number {
  const header = draft.line(
    cellsOf(draft, (key) => columns[key].header),
    looks.header
  )
  draft.height(header, 1, 42)
  const top = draft.next
  for (const each of figures)
    draft.line(
      cellsOf(draft, (key) => (each[key] === '' ? null : each[key])),
      looks.body
    )
  for (const key of keys) {
    const column: { at: number; format?: Format } = columns[key]
    if (column.format === undefined) continue
    if (column.format.align === 'right') draft.format(header, column.at, 1, 1, { align: 'right' })
    draft.format(top, column.at, figures.length, 1, column.format)
  }
  draft.format(top + figures.length - 1, 0, 1, draft.widths.length, looks.groupEnd)
  return top
}

const shown = (value: number | null): string => (value === null ? 'none' : ratio(value))

function doseChart(figures: readonly Figures[], area: SheetChart['area'], top: number): SheetChart {
  const title = 'Foliage removed at the next visit against allowed removal'
  const of = (column: number) => ({ row: top, column, rows: figures.length, columns: 1 })
  const words = figures.map(
    ({ tree, dose, allowed }) => `tree ${tree}, ${percent(dose)} of ${percent(allowed)}`
  )
  return {
    area,
    title,
    alt: `${title}, a ceiling and not a target. ${words.join('; ')}.`,
    labels: of(columns.tree.at),
    series: [
      { name: 'Foliage removed', values: of(columns.dose.at), drawn: 'columns', color: palette.moss },
      {
        name: 'Allowed removal (a ceiling, not a target)',
        values: of(columns.allowed.at),
        drawn: 'points',
        color: palette.umber
      }
    ],
    valueTitle: 'Share of the tree’s live foliage',
    valueFormat: '0%'
  }
}

function ratioChart(figures: readonly Figures[], area: SheetChart['area'], top: number): SheetChart {
  const title = 'Aspect ratio of each tree’s foremost limb, now and after the program'
  const of = (column: number) => ({ row: top, column, rows: figures.length, columns: 1 })
  const words = figures.map(
    ({ tree, limb, now, planned, alone }) =>
      `tree ${tree}, limb ${limb}: ${shown(now)} now, ${shown(planned)} as planned, ${shown(alone)} left alone`
  )
  return {
    area,
    title,
    alt: `${title}. A forecast by the growth rules, not a promise. ${words.join('; ')}.`,
    labels: of(columns.tree.at),
    series: [
      { name: 'Now', values: of(columns.now.at), drawn: 'columns', color: palette.rule },
      { name: 'As planned (forecast)', values: of(columns.planned.at), drawn: 'points', color: palette.moss },
      { name: 'Left alone (forecast)', values: of(columns.alone.at), drawn: 'points', color: palette.umber }
    ],
    valueTitle: 'Aspect ratio',
    valueFormat: '0.0'
  }
}

/** The charts, and the rows that belong to them, heading included; no charts where no tree is planned. */
export interface CutPlanCharts {
  charts: SheetChart[]
  from: number
  to: number
}

/** A chart of nothing but zeros and gaps says nothing: whether there is a dose, and a limb that is judged, to show. */
function worthCharting(trees: readonly TreePlan[]): { doses: boolean; ratios: boolean } {
  return {
    doses: trees.some(({ visits }) => (visits[0]?.dose ?? 0) > 0),
    ratios: trees.some((plan) => foremostLimb(plan) !== null)
  }
}

/** Trees with limbs that were judged. */
const judgedTrees = (trees: readonly TreePlan[]) =>
  trees.filter((plan) => plan.visits.length > 0 && judgedOf(plan) !== 'none')

const plannedFirst = (trees: readonly TreePlan[]) => judgedTrees(trees).slice(0, mostCharted)

/** Whether the cut plan of these trees has any chart. */
export function hasCharts(trees: readonly TreePlan[]): boolean {
  const { doses, ratios } = worthCharting(plannedFirst(trees))
  return doses || ratios
}

/** Dose against allowance, and aspect ratios with and without pruning, of the most urgent trees. */
export function addCutPlanCharts(draft: SheetDraft, trees: readonly TreePlan[], rules: Rules): CutPlanCharts {
  const from = draft.next
  const charted = plannedFirst(trees)
  if (charted.length === 0) return { charts: [], from, to: from }
  const all = judgedTrees(trees).length === charted.length
  draft.section(all ? 'The trees in figures' : `The ${String(charted.length)} most urgent trees in figures`)
  draft.line(
    [
      'Allowed removal is a ceiling, not a target. Ratios to come are a forecast by the growth rules, not a promise: measure again at each visit.'
    ],
    looks.lead
  )
  const figures = charted.map((plan) => figuresOf(plan, rules))
  const top = addTable(draft, figures)
  const { doses, ratios } = worthCharting(charted)
  if (!doses && !ratios) return { charts: [], from, to: draft.next }
  draft.blank()
  const room = chartRows(draft, 300)
  const charts: SheetChart[] = []
  if (doses) charts.push(doseChart(figures, { ...room, column: 0, columns: 8 }, top))
  const besides = doses ? { column: 8, columns: 10 } : { column: 0, columns: 8 }
  if (ratios) charts.push(ratioChart(figures, { ...room, ...besides }, top))
  return { charts, from, to: draft.next }
}
