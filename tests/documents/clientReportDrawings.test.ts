import { byUrgency, type Plan } from '../../src/arbor/plan/plan'
import { estimatePlan } from '../../src/arbor/price/estimatePlan'
import { describeClientReport } from '../../src/documents/clientReport'
import { pageRoom } from '../../src/documents/pageBreaks'
import { sampleInventory } from '../../src/file/sampleInventory'
import { planOf, samplePlan } from './samplePlan'
import { runningText } from './sheetTexts'

const cover = { client: '', site: '', preparedBy: '', date: '2026-03-02', valid: '' }
const drawnReport = (plan: Plan) => describeClientReport(plan, estimatePlan(plan), cover, { drawings: true })
const withCuts = (plan: Plan) =>
  byUrgency(plan).filter(({ visits }) => visits.some(({ cuts }) => cuts.length > 0))

test('each drawing fits its area in proportion, says the same in words, and is on one page', () => {
  const report = drawnReport(samplePlan())
  const room = pageRoom(report.page, report.widths)
  expect(report.pictures!.length).toBeGreaterThan(20)
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

test('before and after stand beside each other in one row and at one scale', () => {
  const { pictures = [] } = drawnReport(samplePlan())
  for (let index = 0; index < pictures.length; index += 2) {
    const [before, after] = [pictures[index]!, pictures[index + 1]!]
    expect(after.area.row).toBe(before.area.row)
    expect(after.area.column).toBeGreaterThan(before.area.column + before.area.columns - 1)
    const ground = (picture: typeof before) =>
      picture.draw().shapes.find(({ look, kind }) => look === 'ground' && kind === 'line')
    expect(ground(after)).toEqual(ground(before))
  }
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
  expect(report.pictures).toHaveLength(120)
  report.pictures!.forEach(({ alt }, index) => {
    const { tree } = trees[Math.floor(index / 2)]!
    expect(alt).toContain(`Tree ${tree.id}, ${index % 2 === 0 ? 'before' : 'after'}`)
  })
  const sentence = `Drawn are the 60 most urgent of the ${String(trees.length)} trees with cuts`
  expect(runningText(report)).toContain(sentence)
  expect(runningText(drawnReport(samplePlan()))).not.toContain('Drawn are the')
})

test('a plan without cuts has no drawings and no heading for them', () => {
  const [headers = [], first = []] = sampleInventory
  const plan = planOf([headers, first])
  for (const tree of plan.trees) tree.visits = []
  const report = drawnReport(plan)
  expect(report.pictures).toBeUndefined()
  expect(runningText(report)).not.toContain('before and after')
})
