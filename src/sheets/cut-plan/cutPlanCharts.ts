import type { Rules } from '../../../shared/rules'
import { ratioCourses } from '../../plan/outlook'
import type { TreePlan } from '../../plan/plan'
import { chartRows } from '../chartRoom'
import type { SheetDraft } from '../draft'
import { foremostLimb } from '../../drawing/charts/ratioCourse'
import { looks } from '../looks'
import { palette } from '../../../shared/palette'
import type { Content, SheetChart } from '../sheet'

/** Trees in the charts; more would not be told apart. */
export const mostCharted = 20

/** Where the figures stand, in the columns of the table of cuts. */
const columns = { tree: 0, limb: 1, about: 4, dose: 6, allowed: 7, now: 8, planned: 9, alone: 10 } as const

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
  const { dose = 0, allowedRemoval = 0 } = plan.visits[0] ?? {}
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
    dose,
    allowed: allowedRemoval,
    now: course?.unpruned[0] ?? null,
    planned: course?.pruned.at(-1) ?? null,
    alone: course?.unpruned.at(-1) ?? null
  }
}

const percent = { numberFormat: '0%', align: 'right' } as const
const hundredth = { numberFormat: '0.00', align: 'right' } as const

const headers: Record<keyof typeof columns, string> = {
  tree: 'Tree',
  limb: 'Limb with the highest priority',
  about: 'Forecast',
  dose: 'Dose of the next visit',
  allowed: 'Allowed removal',
  now: 'Aspect ratio now',
  planned: 'Ratio as planned',
  alone: 'Ratio left alone'
}

function addTable(draft: SheetDraft, figures: readonly Figures[]): number {
  const cells = (of: (key: keyof typeof columns) => Content): Content[] => {
    const row = Array.from({ length: draft.widths.length }, (): Content => null)
    for (const key of Object.keys(columns) as (keyof typeof columns)[]) row[columns[key]] = of(key)
    return row
  }
  const header = draft.line(
    cells((key) => headers[key]),
    looks.header
  )
  draft.height(header, 1, 42)
  draft.format(header, columns.dose, 1, 5, { align: 'right' })
  const top = draft.next
  for (const each of figures)
    draft.line(
      cells((key) => (each[key] === '' ? null : each[key])),
      looks.body
    )
  draft.format(top, columns.tree, figures.length, 1, { bold: true })
  draft.format(top, columns.dose, figures.length, 2, percent)
  draft.format(top, columns.now, figures.length, 3, hundredth)
  draft.format(top + figures.length - 1, 0, 1, draft.widths.length, looks.groupEnd)
  return top
}

const shown = (ratio: number | null): string => (ratio === null ? 'none' : ratio.toFixed(2))
const shownPercent = (share: number): string => `${String(Math.round(share * 100))} %`

function doseChart(figures: readonly Figures[], area: SheetChart['area'], top: number): SheetChart {
  const title = 'Dose of the next visit against allowed removal'
  const of = (column: number) => ({ row: top, column, rows: figures.length, columns: 1 })
  const words = figures.map(
    ({ tree, dose, allowed }) => `tree ${tree}, ${shownPercent(dose)} of ${shownPercent(allowed)}`
  )
  return {
    area,
    title,
    alt: `${title}, a ceiling and not a target. ${words.join('; ')}.`,
    labels: of(columns.tree),
    series: [
      { name: 'Dose', values: of(columns.dose), drawn: 'columns', color: palette.moss },
      {
        name: 'Allowed removal (a ceiling, not a target)',
        values: of(columns.allowed),
        drawn: 'points',
        color: palette.umber
      }
    ],
    valueTitle: 'Share of the tree’s live foliage',
    valueFormat: '0%'
  }
}

function ratioChart(figures: readonly Figures[], area: SheetChart['area'], top: number): SheetChart {
  const title = 'Aspect ratio of each tree’s foremost limb, now and after the programme'
  const of = (column: number) => ({ row: top, column, rows: figures.length, columns: 1 })
  const words = figures.map(
    ({ tree, limb, now, planned, alone }) =>
      `tree ${tree}, limb ${limb}: ${shown(now)} now, ${shown(planned)} as planned, ${shown(alone)} left alone`
  )
  return {
    area,
    title,
    alt: `${title}. A forecast by the growth rules, not a promise. ${words.join('; ')}.`,
    labels: of(columns.tree),
    series: [
      { name: 'Now', values: of(columns.now), drawn: 'columns', color: palette.rule },
      { name: 'As planned (forecast)', values: of(columns.planned), drawn: 'points', color: palette.moss },
      { name: 'Left alone (forecast)', values: of(columns.alone), drawn: 'points', color: palette.umber }
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

const plannedFirst = (trees: readonly TreePlan[]) =>
  trees.filter(({ visits }) => visits.length > 0).slice(0, mostCharted)

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
  const all = trees.filter(({ visits }) => visits.length > 0).length === charted.length
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
