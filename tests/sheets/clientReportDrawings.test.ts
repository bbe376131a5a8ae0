import { noDetails } from '../../src/details/detailsBook'
import { wholeProgram } from '../../src/price/offers'
import type { Area } from '../../shared/cells'
import { printedDose } from './printedDose'
import { byUrgency, type Plan } from '../../src/plan/plan'
import { estimatePlan } from '../../src/price/estimatePlan'
import { describeClientReport } from '../../src/sheets/client-report/clientReport'
import { numberedCuts } from '../../src/drawing/form/limbsAtVisit'
import { foremostLimb, ratioCourse } from '../../src/drawing/charts/ratioCourse'
import { pageRoom } from '../../src/sheets/pageBreaks'
import { sampleInventory } from '../../src/file/sampleInventory'
import { planOf, samplePlan } from './samplePlan'
import { runningText } from './sheetTexts'

const drawnReport = (plan: Plan) =>
  describeClientReport(plan, wholeProgram(estimatePlan(plan)), noDetails, { drawings: true })
const withCuts = (plan: Plan) =>
  byUrgency(plan).filter(({ visits }) => visits.some(({ cuts }) => cuts.length > 0))

test('each drawing fits its area in proportion, says the same in words, and is on one page', () => {
  const report = drawnReport(samplePlan())
  const room = pageRoom(report.page, report.widths)
  expect(report.pictures!.length).toBeGreaterThan(10)
  for (const { area, width, height, alt, draw } of report.pictures!) {
    expect(height).toBeLessThanOrEqual(room)
    const inside = report.page.breaks!.filter((row) => row > area.row && row < area.row + area.rows)
    expect(inside).toEqual([])
    const heights = report.heights.filter(({ row, rows }) => row <= area.row && row + rows > area.row)
    expect(heights.map(({ points }) => points * area.rows)).toEqual([height])
    const drawing = draw()
    expect(drawing.alt).toBe(alt)
    expect(drawing.width / drawing.height).toBeCloseTo(width / height, 6)
  }
})

test('before and after stand beside each other in one picture, on one ground and at one scale', () => {
  const { pictures = [] } = drawnReport(samplePlan())
  for (const picture of pictures) {
    const grounds = picture.draw().shapes.filter(({ look, kind }) => look === 'ground' && kind === 'line')
    const [before, after] = grounds.map((shape) => shape as Extract<typeof shape, { kind: 'line' }>)
    expect(grounds).toHaveLength(2)
    expect(after!.from.y).toBe(before!.from.y)
    expect(after!.from.x).toBeGreaterThan(before!.to.x)
    expect(after!.to.x - after!.from.x).toBeCloseTo(before!.to.x - before!.from.x, 6)
  }
})

test('each page lists the cuts as the drawing numbers them, and no cut twice', () => {
  const plan = samplePlan()
  const report = drawnReport(plan)
  report.pictures!.forEach(({ area }, index) => {
    const { visits } = withCuts(plan)[index]!
    const cuts = numberedCuts(visits.find((visit) => visit.cuts.length > 0)!)
    const below = report.rows.slice(area.row + area.rows).findIndex((row) => row[0] === 'Cut') + 1
    const rows = report.rows.slice(area.row + area.rows + below, area.row + area.rows + below + cuts.length)
    expect(rows.map((row) => [row[0], String(row[1]).split(',')[0]])).toEqual(
      cuts.map(({ number, cut }) => [number, cut.limb.id])
    )
    cuts.forEach(({ cut }, at) => {
      const done = String(rows[at]![3])
      expect(done.startsWith(cut.kind === 'reduce' ? 'Shorten' : 'Take off')).toBe(true)
      expect(done.includes('a large cut')).toBe(cut.needsReason)
    })
  })
})

test('the charts of a tree show its doses against the ceiling and its foremost limb with and without pruning', () => {
  const plan = samplePlan()
  const report = drawnReport(plan)
  const room = pageRoom(report.page, report.widths)
  const pointsOf = (from: number, to: number) =>
    report.heights.reduce(
      (sum, { row, rows, points }) =>
        sum + points * Math.max(0, Math.min(to, row + rows) - Math.max(from, row)),
      0
    )
  const columnOf = (area: Area) =>
    report.rows.slice(area.row, area.row + area.rows).map((row) => row[area.column] as number | null)
  for (const tree of withCuts(plan)) {
    const index = withCuts(plan).indexOf(tree)
    const { area: page } = report.pictures![index]!
    const next = report.page.breaks!.find((row) => row > page.row)!
    const charts = report.charts!.filter(({ area }) => area.row >= page.row && area.row < next)
    const doses = charts.find(({ title }) => title.includes('leaves taken'))
    expect(doses === undefined).toBe(tree.visits.length < 2)
    if (doses !== undefined) {
      expect(columnOf(doses.labels)).toEqual(tree.visits.map(({ year }) => year))
      expect(columnOf(doses.series[0]!.values)).toEqual(tree.visits.map(printedDose))
      expect(columnOf(doses.series[1]!.values)).toEqual(tree.visits.map((visit) => visit.allowedRemoval))
    }
    const limb = foremostLimb(tree)!
    const course = ratioCourse(tree, limb, plan.rules!)!
    const ratios = charts.find(({ title }) => title.startsWith(`Limb ${limb.id}`))!
    expect(columnOf(ratios.series[1]!.values)).toEqual(course.unpruned.map(({ ratio }) => ratio))
    expect(columnOf(ratios.series[0]!.values).filter((ratio) => ratio !== null)).toEqual(
      course.pruned.map(({ ratio }) => ratio)
    )
    for (const { area, series } of charts) {
      expect(pointsOf(area.row, area.row + area.rows)).toBeGreaterThan(120)
      expect(area.row + area.rows).toBeLessThanOrEqual(ratios.labels.row - 2)
      // Told apart without color.
      expect(new Set(series.map(({ drawn }) => drawn)).size).toBe(series.length)
    }
    expect(pointsOf(page.row, next)).toBeLessThanOrEqual(room)
    const words = report.rows.slice(page.row, next).flat().join(' ')
    expect(words).toContain('a forecast by the')
    expect(words).toContain('measured again')
  }
  expect(report.charts!.length).toBeGreaterThan(15)
})

test('a report on more than 60 trees with cuts draws the 60 most urgent, and says so', () => {
  const [headers = [], ...below] = sampleInventory
  const copies = Array.from({ length: 5 }, (_, copy) =>
    below.map(([tree = null, ...rest]) => [tree === null ? null : `${String(tree)}-${String(copy)}`, ...rest])
  )
  const plan = planOf([headers, ...copies.flat()])
  const trees = withCuts(plan)
  expect(trees.length).toBeGreaterThan(60)
  const report = drawnReport(plan)
  expect(report.pictures).toHaveLength(60)
  report.pictures!.forEach(({ alt }, index) => {
    const { tree } = trees[index]!
    expect(alt).toContain(`Tree ${tree.id}, before`)
    expect(alt).toContain(`Tree ${tree.id}, after`)
  })
  const sentence = `Drawn are the 60 most urgent of the ${String(trees.length)} trees with cuts`
  expect(runningText(report)).toContain(sentence)
  expect(runningText(drawnReport(samplePlan()))).not.toContain('Drawn are the')
})

test('a plan without cuts has no drawings and no heading for them', () => {
  const [headers = [], first = []] = sampleInventory
  const plan = planOf([headers, first])
  const report = drawnReport({ ...plan, trees: plan.trees.map((tree) => ({ ...tree, visits: [] })) })
  expect(report.pictures).toBeUndefined()
  expect(runningText(report)).not.toContain('before and after')
})
