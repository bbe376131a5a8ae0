import { noDetails } from '../../src/details/detailsBook'
import { wholeProgram } from '../../src/price/offers'
import { byUrgency, type Plan } from '../../src/plan/plan'
import { estimatePlan } from '../../src/price/estimatePlan'
import { describeClientReport } from '../../src/sheets/client-report/clientReport'
import { numberedCuts } from '../../src/drawing/form/limbsAtVisit'
import { gainOf } from '../../src/drawing/charts/gainChart'
import type { SheetDescription } from '../../src/sheets/sheet'
import { pageRoom } from '../../src/sheets/pageBreaks'
import { sampleInventory } from '../../src/file/sampleInventory'
import { planOf, samplePlan } from './samplePlan'
import { runningText } from './sheetTexts'

const drawnReport = (plan: Plan, treePages = 'all') =>
  describeClientReport(
    plan,
    wholeProgram(estimatePlan(plan)),
    { ...noDetails, treePages },
    { drawings: true }
  )
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
    const shapes = picture.draw().shapes.filter(({ look, kind }) => look === 'ground' && kind === 'line')
    const [before, after] = shapes.map((shape) => shape as Extract<typeof shape, { kind: 'line' }>)
    expect(after!.from.y).toBe(before!.from.y)
    expect(after!.from.x).toBeGreaterThan(before!.to.x)
    expect(after!.to.x - after!.from.x).toBeCloseTo(before!.to.x - before!.from.x, 6)
  }
})

/** The rows of a tree: from its heading to its drawing. */
function blockOf({ rows, pictures = [] }: SheetDescription, id: string): string[][] {
  const from = rows.findIndex(([first]) => String(first ?? '').startsWith(`Tree ${id}`))
  const end = pictures.map(({ area }) => area.row).find((row) => row > from)
  return rows.slice(from, end).map((row) => row.map((cell) => String(cell ?? '')))
}

test('each tree lists its cuts as the drawing numbers them, and no cut twice', () => {
  const plan = samplePlan()
  const report = drawnReport(plan)
  for (const { tree, visits } of withCuts(plan)) {
    const cuts = numberedCuts(visits.find((visit) => visit.cuts.length > 0)!)
    const lines = blockOf(report, tree.id).filter(([first]) => /^\d+$/.test(first!))
    expect(lines.map(([number, text]) => [Number(number), text!.split(/[ :]/)[0]])).toEqual(
      cuts.map(({ number, cut }) => [number, cut.limb.id])
    )
  }
})

test('the bars show the limb now, after the work and left alone, against the goal', () => {
  const plan = samplePlan()
  let seen = 0
  for (const tree of withCuts(plan)) {
    const visit = tree.visits.find(({ cuts }) => cuts.length > 0)!
    const gain = gainOf(tree, visit, plan.system, plan.rules!)
    if (!visit.cuts.some(({ live }) => live)) {
      expect(gain).toBeNull()
      continue
    }
    for (const { title, bars, goal } of gain!.panels) {
      if (!title.startsWith('Top of limb')) continue
      seen += 1
      const limb = tree.tree.limbs.find(({ id }) => title.includes(`limb ${id} `))!
      const cut = visit.cuts.find((each) => each.limb === limb && each.kind !== 'raise')!
      const feet = (meters: number) => meters / 0.3048
      expect(bars[0]!.value).toBeCloseTo(feet(limb.tip!), 6)
      expect(bars[1]!.value).toBeCloseTo(cut.kind === 'remove' ? 0 : feet(cut.endsAt!), 6)
      const { height, crownBase } = tree.tree
      expect(goal!.value).toBeCloseTo(feet(height! - (height! - crownBase!) / 3), 6)
    }
  }
  expect(seen).toBeGreaterThan(5)
})

/** The sample's trees so many times over. */
function copies(count: number): Plan {
  const [headers = [], ...below] = sampleInventory
  const rows = Array.from({ length: count }, (_, copy) =>
    below.map(([tree = null, ...rest]) => [tree === null ? null : `${String(tree)}-${String(copy)}`, ...rest])
  )
  return planOf([headers, ...rows.flat()])
}

const pagesOf = ({ page }: SheetDescription) => (page.breaks ?? []).length + 1

test('15 trees take at most 12 pages and 120 at most 25; the most urgent are explained, and the rest counted', () => {
  const few = drawnReport(samplePlan(), '')
  expect(pagesOf(few)).toBeLessThanOrEqual(12)
  const plan = copies(8)
  expect(plan.trees).toHaveLength(120)
  const many = drawnReport(plan, '')
  expect(pagesOf(many)).toBeLessThanOrEqual(25)
  const shown = many.pictures!.length
  expect(shown).toBeGreaterThan(10)
  const offered = withCuts(plan).length
  expect(runningText(many)).toContain(`Shown are ${String(shown)} of the ${String(offered)} trees`)
})

test.each([
  ['none', []],
  ['T09, t03', ['T03', 'T09']]
] as const)('the Job details choose the trees that are explained: %s', (wanted, drawn) => {
  const { pictures = [] } = drawnReport(samplePlan(), wanted)
  expect(pictures.map(({ alt }) => /^Tree (\S+),/.exec(alt)![1]).sort()).toEqual(drawn)
})

test('a plan without cuts has no drawings and no heading for them', () => {
  const [headers = [], first = []] = sampleInventory
  const plan = planOf([headers, first])
  const report = drawnReport({ ...plan, trees: plan.trees.map((tree) => ({ ...tree, visits: [] })) })
  expect(report.pictures).toBeUndefined()
  expect(runningText(report)).not.toContain('The trees that need explaining')
})

test('a limb whose name no picture can write on every machine is drawn by its place, which is explained', () => {
  const [headers = [], ...below] = sampleInventory.slice(0, 7)
  const at = headers.indexOf('Limb')
  const rows = below.map((row) => row.map((cell, column) => (column === at && cell === 'B' ? '北枝' : cell)))
  const report = drawnReport(planOf([headers, ...rows]))
  const texts = report.pictures!.flatMap(({ draw }) =>
    draw().shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))
  )
  expect(texts.join(' ')).not.toMatch(/[\u2e80-\uffff]/)
  expect(texts).toContain('#2')
  expect(runningText(report)).toContain('In the drawing #2 is 北枝.')
})
