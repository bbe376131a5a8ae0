import type { Area } from '../../../shared/cells'
import { defaultRules } from '../../../shared/rules'
import { percent, wholePercent } from '../../../shared/words/percent'
import type { Plan, TreePlan, Visit } from '../../plan/plan'
import { shownDoses } from '../../plan/shownDoses'
import { foremostLimb, ratioCourse, type RatioCourse } from '../../drawing/charts/ratioCourse'
import { palette } from '../../../shared/palette'
import type { Content, SheetChart } from '../sheet'

/** One row of the figures: a year, what comes off in it, and how thick the limb is then, as planned and left alone. */
export interface CourseRow {
  year: number
  visit: Visit | null
  pruned: number | null
  unpruned: number | null
}

/** How a tree goes on: what its charts show, by year. */
export interface Course {
  tree: TreePlan
  /** The limb that is followed, or null where none is judged. */
  limb: RatioCourse['limb'] | null
  rows: CourseRow[]
  visits: number
}

/** The visits of a tree, the last ending the forecast, with the course of its foremost limb. */
export function courseOf(tree: TreePlan, { rules = defaultRules }: Plan): Course {
  const limb = foremostLimb(tree)
  const course = limb === null ? null : ratioCourse(tree, limb, rules)
  const years = course?.unpruned.map(({ year }) => year) ?? tree.visits.map(({ year }) => year)
  const at = (points: RatioCourse['pruned'] | undefined, year: number) =>
    points?.find((point) => point.year === year)?.ratio ?? null
  const rows = years.map((year): CourseRow => ({
    year,
    visit: tree.visits.find((visit) => visit.year === year) ?? null,
    pruned: at(course?.pruned, year),
    unpruned: at(course?.unpruned, year)
  }))
  return { tree, limb: course?.limb ?? null, rows, visits: tree.visits.length }
}

/** The figures as cells: year, leaves taken, the most allowed, thickness as planned and left alone. */
export function courseCells({ limb, rows }: Course): { heads: Content[][]; body: Content[][] } {
  const over: Content[] = [null, 'Leaves', null, limb === null ? null : `Limb ${limb.id}`, null]
  const heads = ['Year', 'taken', 'at most', ...(limb === null ? [null, null] : ['planned', 'left alone'])]
  const body = rows.map(({ year, visit, pruned, unpruned }): Content[] => [
    year,
    visit === null ? null : shownDoses(visit).visit,
    visit === null ? null : shownDoses(visit).allowed,
    pruned,
    unpruned
  ])
  return { heads: [over, heads], body }
}

const thickness = (ratio: number | null) => (ratio === null ? 'gone' : wholePercent(ratio))

/** How many charts a tree gets: a single visit needs none of its doses. */
export function chartsOf({ limb, rows, visits }: Course): number {
  return (visits > 1 ? 1 : 0) + (limb !== null && rows.length > 1 ? 1 : 0)
}

/** "18.3 % of at most 20 %". */
function takenOf(visit: Visit): string {
  const { allowed, visit: taken } = shownDoses(visit)
  return `${percent(taken)} of at most ${percent(allowed)}`
}

/** What comes off at each visit against what may. */
function leavesChart(course: Course, area: Area, column: (at: number, rows: number) => Area): SheetChart[] {
  const { tree, rows, visits } = course
  if (visits < 2) return []
  const title = `Tree ${tree.tree.id}: leaves taken at each visit`
  const words = rows.flatMap(({ year, visit }) =>
    visit === null ? [] : [`${String(year)}: ${takenOf(visit)}`]
  )
  return [
    {
      area,
      title,
      alt: `${title}, a forecast after the first. ${words.join('; ')}.`,
      labels: column(0, visits),
      series: [
        { name: 'Taken', values: column(1, visits), drawn: 'columns', color: palette.moss },
        { name: 'At most', values: column(2, visits), drawn: 'dashed-line', color: palette.umber }
      ],
      valueTitle: 'Share of its leaves',
      valueFormat: '0%'
    }
  ]
}

/** How thick the foremost limb becomes, pruned and left alone. */
function limbChart(course: Course, area: Area, column: (at: number, rows: number) => Area): SheetChart[] {
  const { tree, limb, rows } = course
  if (limb === null || rows.length < 2) return []
  const title = `Limb ${limb.id}: how thick beside its stem`
  const words = rows.map(
    ({ year, pruned, unpruned }) =>
      `${String(year)}: ${thickness(pruned)} as planned, ${thickness(unpruned)} left alone`
  )
  return [
    {
      area,
      title,
      alt: `Tree ${tree.tree.id}. ${title}, a forecast by the growth rules. ${words.join('; ')}.`,
      labels: column(0, rows.length),
      series: [
        { name: 'As planned', values: column(3, rows.length), drawn: 'line', color: palette.moss },
        { name: 'Left alone', values: column(4, rows.length), drawn: 'dashed-line', color: palette.umber }
      ],
      valueTitle: 'Share of the stem',
      valueFormat: '0%'
    }
  ]
}

/**
 * The charts of a tree, one below the other, the first in the area given. `figures` is the cell of the first year.
 */
export function courseCharts(
  course: Course,
  figures: { row: number; column: number },
  first: Area
): SheetChart[] {
  const column = (at: number, rows: number): Area => ({
    row: figures.row,
    column: figures.column + at,
    rows,
    columns: 1
  })
  const leaves = leavesChart(course, first, column)
  const next = { ...first, row: first.row + leaves.length * first.rows }
  return [...leaves, ...limbChart(course, next, column)]
}
