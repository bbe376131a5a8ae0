/** The charts that the documents describe: their cells, their words, and that they cover nothing. */
import { wholeProgram } from '../../src/price/offers'
import { printedDose } from './printedDose'
import { byUrgency, type TreePlan } from '../../src/plan/plan'
import { ratioCourses } from '../../src/plan/outlook'
import { planInventory } from '../../src/plan/planInventory'
import { estimatePlan } from '../../src/price/estimatePlan'
import { inventedRatesIn } from '../../src/price/rates'
import type { Area, Cell } from '../../shared/cells'
import { readInventory } from '../../src/inventory/readInventory'
import { describeCutPlan } from '../../src/sheets/cut-plan/cutPlan'
import { mostCharted } from '../../src/sheets/cut-plan/cutPlanCharts'
import { describeEstimate } from '../../src/sheets/estimate/estimateSheet'
import { foremostLimb } from '../../src/drawing/charts/ratioCourse'
import { isFormula, type Content, type SheetChart, type SheetDescription } from '../../src/sheets/sheet'
import { madeInventory } from '../../bench/madeInventory'
import { metricRows, planOf, samplePlan } from './samplePlan'

const plan = samplePlan()
const estimate = estimatePlan(plan, inventedRatesIn['in-ft'])
const cutPlan = describeCutPlan(plan)
const priced = describeEstimate(wholeProgram(estimate), plan)
const metric = planOf(metricRows())
const large = planInventory(readInventory(madeInventory(400)), { date: '2026-03-02' })

const described: [string, SheetDescription][] = [
  ['the cut plan', cutPlan],
  ['the estimate', priced],
  ['a metric cut plan of one tree', describeCutPlan(metric)],
  ['a long cut plan', describeCutPlan(large)],
  ['a long estimate', describeEstimate(wholeProgram(estimatePlan(large)), large)]
]

function cellsIn({ rows }: SheetDescription, area: Area): Content[] {
  return rows
    .slice(area.row, area.row + area.rows)
    .flatMap((row) => Array.from({ length: area.columns }, (_, at) => row[area.column + at] ?? null))
}

const valueOf = (content: Content): unknown => (isFormula(content) ? content.value : content)

const overlap = (one: Area, other: Area): boolean =>
  one.row < other.row + other.rows &&
  other.row < one.row + one.rows &&
  one.column < other.column + other.columns &&
  other.column < one.column + one.columns

const heightOf = ({ heights }: SheetDescription, row: number): number =>
  heights.filter((each) => each.row <= row && row < each.row + each.rows).at(-1)?.points ?? 15

describe.each(described)('the charts of %s', (_name, description) => {
  const charts = description.charts!

  test('are there, cover no cell with content and stand clear of each other and of the tables', () => {
    expect(charts.length).toBeGreaterThan(0)
    charts.forEach((chart, index) => {
      const { area } = chart
      expect(cellsIn(description, area)).toEqual(Array(area.rows * area.columns).fill(null))
      for (const other of charts.slice(index + 1)) expect(overlap(area, other.area)).toBe(false)
      for (const table of description.tables) expect(overlap(area, table.area)).toBe(false)
    })
  })

  test('have as many values as labels, numbers or nothing, one label at least', () => {
    for (const { labels, series } of charts) {
      const names = cellsIn(description, labels)
      expect(names.length).toBeGreaterThan(0)
      for (const name of names) expect(typeof name).toBe('string')
      for (const { values } of series) {
        const found = cellsIn(description, values).map(valueOf)
        expect(found).toHaveLength(names.length)
        for (const value of found) if (value !== null) expect(Number.isFinite(value)).toBe(true)
        expect(found.some((value) => typeof value === 'number')).toBe(true)
      }
    }
  })

  test('tell their series apart by form, and say every label in their words', () => {
    for (const { series, alt, title, labels } of charts) {
      expect(series.filter(({ drawn }) => drawn === 'columns').length).toBeLessThan(2)
      expect(alt.startsWith(title)).toBe(true)
      for (const label of cellsIn(description, labels)) expect(alt).toContain(String(label))
    }
  })

  test('are as high as they are legible, and printed on one page', () => {
    const { breaks = [] } = description.page
    for (const { area } of charts) {
      const rows = Array.from({ length: area.rows }, (_, index) => area.row + index)
      expect(rows.reduce((sum, row) => sum + heightOf(description, row), 0)).toBeGreaterThanOrEqual(200)
      expect(breaks.filter((row) => row > area.row && row < area.row + area.rows)).toEqual([])
    }
  })
})

test('the charts of a cut plan stand below what of it is printed', () => {
  const plans = described.map(([, description]) => description).filter(({ kind }) => kind === 'cut-plan')
  expect(plans.length).toBeGreaterThan(1)
  for (const { page, charts = [] } of plans) {
    expect(charts.length).toBeGreaterThan(0)
    for (const { area } of charts) expect(area.row).toBeGreaterThanOrEqual(page.rows!)
  }
})

const column = (description: SheetDescription, { series }: SheetChart, name: RegExp) =>
  cellsIn(description, series.find((each) => name.test(each.name))!.values).map(valueOf)

describe('dose against allowance', () => {
  const [dose] = cutPlan.charts as [SheetChart, SheetChart]

  test('holds the dose of the next visit under its ceiling, trees by urgency', () => {
    const trees = byUrgency(plan).filter(({ visits }) => visits.length > 0)
    expect(cellsIn(cutPlan, dose.labels)).toEqual(trees.map(({ tree }) => tree.id))
    expect(column(cutPlan, dose, /^Foliage removed/)).toEqual(
      trees.map(({ visits }) => printedDose(visits[0]!))
    )
    const allowed = column(cutPlan, dose, /^Allowed/) as number[]
    expect(allowed).toEqual(trees.map(({ visits }) => visits[0]!.allowedRemoval))
    expect(trees.some(({ visits }) => visits[0]!.dose > 0)).toBe(true)
    expect(dose.series.map(({ drawn }) => drawn)).toEqual(['columns', 'points'])
    expect(dose.series[1]!.name).toContain('a ceiling, not a target')
  })

  test('shows the most urgent trees only, however many are planned', () => {
    const sheet = described[3]![1]
    const most = byUrgency(large)
      .filter(({ visits }) => visits.length > 0)
      .slice(0, mostCharted)
    expect(large.trees.length).toBeGreaterThan(mostCharted * 1.5)
    expect(cellsIn(sheet, sheet.charts![0]!.labels)).toEqual(most.map(({ tree }) => tree.id))
  })
})

describe('aspect ratios with and without pruning', () => {
  const [, ratio] = cutPlan.charts as [SheetChart, SheetChart]

  test('are those of each tree’s foremost limb now and at the end of its course', () => {
    const courses = byUrgency(plan)
      .filter(({ visits }) => visits.length > 0)
      .map((tree) => ratioCourses(tree).find(({ limb }) => limb === foremostLimb(tree))!)
    expect(column(cutPlan, ratio, /^Now/)).toEqual(courses.map(({ unpruned }) => unpruned[0]))
    expect(column(cutPlan, ratio, /^As planned/)).toEqual(courses.map(({ pruned }) => pruned.at(-1)))
    const alone = column(cutPlan, ratio, /^Left alone/) as number[]
    expect(alone).toEqual(courses.map(({ unpruned }) => unpruned.at(-1)))
    expect(new Set(alone).size).toBeGreaterThan(5)
  })

  test('are called a forecast, beside the figures, in the legend and in the words', () => {
    const above = cutPlan.rows.slice(0, ratio.area.row).flat()
    expect(above.filter((cell) => typeof cell === 'string').join(' ')).toContain(
      'a forecast by the growth rules, not a promise'
    )
    expect(ratio.series.slice(1).every(({ name }) => name.includes('forecast'))).toBe(true)
    expect(ratio.alt).toContain('A forecast by the growth rules, not a promise.')
  })

  test('a limb that is removed has no ratio to come, and the year is given', () => {
    const goes = (tree: TreePlan) =>
      tree.visits.find(({ limbs }) =>
        limbs.some(({ limb, decision }) => limb === foremostLimb(tree) && decision === 'remove')
      )
    const tree = large.trees.find((each) => goes(each) !== undefined)!
    const sheet = describeCutPlan({ ...large, trees: [tree] })
    const chart = sheet.charts![1]!
    expect(column(sheet, chart, /^As planned/)).toEqual([null])
    expect(column(sheet, chart, /^Left alone/)[0]).toBeGreaterThan(0)
    expect(chart.alt).toContain('none as planned')
    const year = String(goes(tree)!.year)
    expect(sheet.rows.flat().filter((cell) => String(cell).startsWith('Removed in'))).toEqual([
      expect.stringMatching(new RegExp(`^Removed in ${year}; left alone to \\d{4}$`))
    ])
  })

  const lone = (of: (rows: Cell[][]) => void) => {
    const rows = metricRows(['B', null, 11, 14, 2, 8])
    of(rows)
    return describeCutPlan(planOf(rows))
  }

  test('a tree whose limbs are all dead has figures and, as a chart would show nothing, no chart', () => {
    const sheet = lone((rows) => {
      rows[0]!.push('Status')
      rows[2]!.push('dead')
    })
    expect(sheet.charts ?? []).toEqual([])
    expect(sheet.rows.flat()).toContain('No limb of this tree is judged.')
    expect(sheet.rows.some(([label]) => label === 'Charts')).toBe(false)
  })

  test('trees that have nothing to spare have their ratios drawn, and no doses of nothing', () => {
    const sheet = lone((rows) => {
      rows[1]![6] = 'poor'
    })
    expect(sheet.charts!.map(({ title, area }) => [title.slice(0, 12), area.column])).toEqual([
      ['Aspect ratio', 0]
    ])
    expect(lone(() => undefined).charts).toHaveLength(2)
  })
})

describe('price by visit', () => {
  const [chart] = priced.charts as [SheetChart]

  test('is drawn from native formulas, a visit each, which sum to the subtotal', () => {
    const found = cellsIn(priced, chart.series[0]!.values) as { formula: string; value: number }[]
    const visits = [...new Set(estimate.lines.map(({ visit }) => visit))]
    expect(found).toHaveLength(visits.length)
    for (const { formula } of found) expect(formula).toMatch(/^=SUMIF\(\$B\$\d+:\$B\$\d+,\d,\$G\$/)
    const sum = found.reduce((all, { value }) => all + value, 0)
    expect(sum).toBeCloseTo(estimate.subtotal.toNumber(), 6)
    expect(chart.title).toContain('invented rates')
  })

  test('is not drawn where nothing is priced', () => {
    const none = { ...plan, trees: [] }
    const sheet = describeEstimate(wholeProgram(estimatePlan(none)), none)
    expect(sheet.charts).toBeUndefined()
    expect(describeCutPlan(none).charts).toEqual([])
    expect(describeCutPlan(none).rows.flat()).not.toContain('Charts')
  })
})
