import { defaultRules } from '../../shared/rules'
import { estimatePlan } from '../../src/price/estimatePlan'
import { Money } from '../../shared/money'
import { doseChart } from '../../src/drawing/charts/doseChart'
import { priceChart } from '../../src/sheets/estimate/priceChart'
import { ratioChart } from '../../src/drawing/charts/ratioChart'
import { ratioCourse } from '../../src/drawing/charts/ratioCourse'
import { roundStep } from '../../src/drawing/paper'
import type { Drawing, Shape } from '../../src/drawing/shapes'
import { toSvg } from '../../src/drawing/paint/toSvg'
import { inventedPlan, samplePlan, treeNamed } from './inventedTrees'
import { partsOf } from './measured'

const sample = samplePlan()
const trees = [...sample.trees, ...inventedPlan().trees]
const options = { width: 300, height: 220, palette: 'color' } as const

function heights(drawing: Drawing, part: string): number[] {
  return partsOf(drawing, part).map((shape: Shape) => (shape.kind === 'rect' ? shape.height : NaN))
}

describe('dose against allowance', () => {
  it('draws a column and a frame a visit, to one scale', () => {
    const plan = treeNamed(sample, 'T10')
    const drawing = doseChart(plan, options)
    const [doses, frames] = [heights(drawing, 'column'), heights(drawing, 'ceiling')]
    expect(doses).toHaveLength(plan.visits.length)
    plan.visits.forEach((visit, index) => {
      expect(doses[index]! / frames[0]!).toBeCloseTo(visit.dose / plan.visits[0]!.allowedRemoval, 9)
      expect(frames[index]! / frames[0]!).toBeCloseTo(
        visit.allowedRemoval / plan.visits[0]!.allowedRemoval,
        9
      )
      expect(drawing.alt).toContain(`visit ${visit.visit}, ${visit.year}`)
    })
  })

  it('says so where nothing is allowed or planned', () => {
    expect(doseChart(treeNamed(sample, 'T08'), options).alt).toContain('No live wood this season')
    expect(doseChart(treeNamed(sample, 'T15'), options).alt).toContain('No visit is planned')
  })
})

describe('price by visit', () => {
  const estimate = estimatePlan(sample)

  it('adds the printed lines, and all columns together make the subtotal', () => {
    const drawing = priceChart(estimate, options)
    const shown = drawing.shapes.flatMap((shape) =>
      shape.kind === 'text' && /^[\d,]+\.\d\d$/.test(shape.text) ? [shape.text.replaceAll(',', '')] : []
    )
    const sum = shown.reduce((total, text) => total.plus(text), new Money(0))
    expect(shown.length).toBeGreaterThan(1)
    expect(sum.toFixed(2)).toBe(estimate.subtotal.toFixed(2))
    expect(drawing.title).toContain('invented rates')
  })

  it('shows one tree where it is named', () => {
    const own = estimate.lines.filter(({ tree }) => tree === 'T03')
    const drawing = priceChart(estimate, { ...options, tree: 'T03' })
    const columns = heights(drawing, 'column')
    expect(columns).toHaveLength(own.length)
    expect(columns[1]! / columns[0]!).toBeCloseTo(own[1]!.price.div(own[0]!.price).toNumber(), 9)
    expect(priceChart(estimate, { ...options, tree: 'nobody' }).alt).toContain('Nothing is priced')
  })
})

describe('the forecast of the aspect ratio', () => {
  it('agrees with the plan at every visit, for every limb', () => {
    let compared = 0
    for (const plan of trees)
      for (const { limb } of plan.visits[0]?.limbs ?? [])
        for (const [index, { year, ratio }] of ratioCourse(plan, limb, defaultRules)!.pruned.entries()) {
          const state = plan.visits[index]?.limbs.find((each) => each.limb === limb)
          if (state === undefined) continue
          expect([plan.tree.id, limb.id, year]).toEqual([plan.tree.id, limb.id, plan.visits[index]!.year])
          expect(ratio).toBeCloseTo(state.aspectRatio, 9)
          compared++
        }
    expect(compared).toBeGreaterThan(60)
  })

  it('ends where the plan projects the limb it cuts last', () => {
    let compared = 0
    for (const plan of trees)
      for (const cut of plan.visits.at(-1)?.cuts ?? []) {
        // A limb that is raised may be shortened at the same visit, and stands as that leaves it.
        const isLast =
          plan.visits
            .at(-1)
            ?.cuts.filter(({ limb }) => limb === cut.limb)
            .at(-1) === cut
        if (cut.projectedAspectRatio === null || !cut.live || !isLast) continue
        expect(ratioCourse(plan, cut.limb, defaultRules)!.pruned.at(-1)?.ratio).toBeCloseTo(
          cut.projectedAspectRatio,
          9
        )
        compared++
      }
    expect(compared).toBeGreaterThan(5)
  })

  it('never runs higher with the cuts than without them', () => {
    for (const plan of trees)
      for (const { limb } of plan.visits[0]?.limbs ?? []) {
        const course = ratioCourse(plan, limb, defaultRules)!
        for (const [index, { ratio }] of course.pruned.entries())
          expect(ratio).toBeLessThanOrEqual(course.unpruned[index]!.ratio + 1e-9)
      }
  })

  it('says both courses in words and marks a removal', () => {
    const plan = treeNamed(sample, 'T01')
    const chart = ratioChart(plan, options)
    expect(chart.alt).toMatch(/limb B.*As planned: 0\.85 in 2026.*Left alone: 0\.85 in 2026/)
    const removed = plan.tree.limbs.find(({ id }) => id === 'F')!
    const other = ratioChart(plan, { ...options, limb: removed })
    expect(other.alt).toContain('Removed in')
    expect(partsOf(other, 'removed')).toHaveLength(1)
    expect(partsOf(chart, 'removed')).toHaveLength(0)
    expect(ratioChart(treeNamed(sample, 'T15'), options).alt).toContain('No limb of this tree is judged')
  })
})

it('draws every chart of every tree with real numbers, narrow and wide', () => {
  for (const plan of trees)
    for (const width of [220, 480])
      for (const chart of [doseChart(plan, { ...options, width }), ratioChart(plan, { ...options, width })])
        expect(() => toSvg(chart)).not.toThrow()
})

it('divides an axis in round steps', () => {
  expect(roundStep(32, 9)).toBe(5)
  expect(roundStep(0.25, 4)).toBeCloseTo(0.1, 12)
  expect(roundStep(3000, 4)).toBe(1000)
})
