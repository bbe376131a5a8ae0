import type { Cut, TreePlan, Visit } from '../../src/plan/plan'
import { inventedPlan, samplePlan, treeNamed } from './inventedTrees'
import { distance, drawn, endsOf, middleOf, partOf, partsOf, pointsOf, rounded, rulerOf } from './measured'

const plans = [samplePlan(), inventedPlan()]
const trees = plans.flatMap(({ trees: all }) => all)

/** Every visit of every tree whose height is known, with the height of its leader's tip. */
const visits: { plan: TreePlan; visit: Visit; tip: number; name: string }[] = trees.flatMap((plan) =>
  plan.tree.height === null
    ? []
    : plan.visits.map((visit) => ({
        plan,
        visit,
        tip: plan.leader.limb?.tip ?? plan.tree.height!,
        name: `${plan.tree.id}, visit ${visit.visit}`
      }))
)

const reductions = visits.flatMap((each) =>
  each.visit.cuts
    .filter(({ kind }) => kind === 'reduce')
    .map((cut): { cut: Cut } & typeof each => ({ ...each, cut }))
)

it('has something to measure', () => {
  expect(visits.length).toBeGreaterThan(20)
  expect(reductions.length).toBeGreaterThan(20)
  expect(reductions.filter(({ cut }) => cut.cutHeight === null).length).toBeGreaterThan(0)
})

describe('a limb in a drawing', () => {
  it('starts at its origin height', () => {
    let measured = 0
    for (const { plan, visit, tip, name } of visits) {
      const drawing = drawn(plan, visit, 'before')
      const heightAt = rulerOf(drawing, tip)
      for (const shape of partsOf(drawing, 'limb')) {
        const limb = plan.tree.limbs.find(({ id }) => id === shape.depicts?.limb)!
        const height = heightAt(endsOf(shape).base.y)
        expect([name, limb.id, height.toFixed(3)]).toEqual([name, limb.id, limb.origin!.toFixed(3)])
        measured++
      }
    }
    expect(measured).toBeGreaterThan(60)
  })

  it('stands on its true side: looking north, toward the east to the right', () => {
    let measured = 0
    for (const { plan, visit, name } of visits) {
      const drawing = drawn(plan, visit, 'before')
      for (const shape of partsOf(drawing, 'limb')) {
        const limb = plan.tree.limbs.find(({ id }) => id === shape.depicts?.limb)!
        const east = limb.bearing === null ? 0 : Math.sin((limb.bearing * Math.PI) / 180)
        if (Math.abs(east) < 0.01) continue
        const { base } = endsOf(shape)
        const points = pointsOf(shape)
        const middle = points.reduce((sum, { x }) => sum + x, 0) / points.length
        expect([name, limb.id, middle > base.x]).toEqual([name, limb.id, east > 0])
        measured++
      }
    }
    expect(measured).toBeGreaterThan(40)
  })

  it('is as thick to another limb as their diameters are, and to the trunk at breast height', () => {
    for (const { plan, visit } of visits) {
      const drawing = drawn(plan, visit, 'before')
      const scales = partsOf(drawing, 'limb').map((shape) => {
        const limb = plan.tree.limbs.find(({ id }) => id === shape.depicts?.limb)!
        return endsOf(shape).baseWidth / limb.diameter!
      })
      const trunk = pointsOf(partOf(drawing, 'trunk'))
      if (plan.tree.trunk !== null) scales.push(distance(trunk[2]!, trunk.at(-3)!) / plan.tree.trunk)
      for (const scale of scales) expect(scale / scales[0]!).toBeCloseTo(1, 6)
    }
  })

  it('ends at its tip height where it is kept', () => {
    const plan = treeNamed(plans[0]!, 'T04')
    const visit = plan.visits[0]!
    const heightAt = rulerOf(drawn(plan, visit, 'before'), plan.tree.height!)
    const kept = visit.limbs.filter(({ decision }) => decision === 'retain' || decision === 'hold')
    expect(kept.length).toBeGreaterThan(0)
    for (const { limb } of kept) {
      const { end, endWidth } = endsOf(partOf(drawn(plan, visit, 'before'), 'limb', limb.id))
      expect(heightAt(end.y)).toBeCloseTo(limb.tip!, 6)
      expect(endWidth).toBeCloseTo(0, 6)
    }
  })
})

describe('a reduction cut in a drawing', () => {
  it('lies on the limb at the height of the cut', () => {
    for (const { plan, visit, tip, cut, name } of reductions) {
      const drawing = drawn(plan, visit, 'before')
      const bar = partOf(drawing, 'cut', cut.limb.id)
      const at = middleOf(pointsOf(bar)[0]!, pointsOf(bar)[1]!)
      const { end } = endsOf(partOf(drawing, 'limb', cut.limb.id))
      expect([name, cut.limb.id, distance(at, end) < 0.01]).toEqual([name, cut.limb.id, true])
      if (cut.cutHeight !== null) expect(rulerOf(drawing, tip)(at.y)).toBeCloseTo(cut.cutHeight, 4)
    }
  })

  it('crosses the limb where it is as thick as the plan says', () => {
    const first = reductions.filter(({ visit, cut }) => visit.visit === 1 && cut.count === 1)
    expect(first.length).toBeGreaterThan(10)
    for (const { plan, visit, cut } of first) {
      const { baseWidth, endWidth } = endsOf(partOf(drawn(plan, visit, 'before'), 'limb', cut.limb.id))
      expect(endWidth / baseWidth).toBeCloseTo(cut.cutDiameter! / cut.limb.diameter!, 4)
    }
  })

  it('leaves a lateral that reaches the tip height of the plan', () => {
    for (const { plan, visit, tip, cut } of reductions) {
      const drawing = drawn(plan, visit, 'after')
      const { end } = endsOf(partOf(drawing, 'lateral', cut.limb.id))
      expect(rulerOf(drawing, tip)(end.y)).toBeCloseTo(cut.endsAt!, 4)
    }
  })

  it('leaves a lateral no thinner than the least one asked for, where none was measured and the limb rises', () => {
    const assumed = reductions.filter(({ cut }) => cut.limb.lateral === null && cut.cutHeight !== null)
    for (const { plan, visit, cut } of assumed) {
      const drawing = drawn(plan, visit, 'after')
      const lateral = endsOf(partOf(drawing, 'lateral', cut.limb.id)).baseWidth
      const perMillimeter = endsOf(partOf(drawing, 'limb', cut.limb.id)).baseWidth / cut.limb.diameter!
      expect(lateral / perMillimeter).toBeCloseTo(cut.lateralMin!, 4)
    }
  })
})

describe('before and after', () => {
  it('stand at the same scale: the leader does not move', () => {
    for (const { plan, visit } of visits) {
      const [before, after] = [drawn(plan, visit, 'before'), drawn(plan, visit, 'after')]
      expect(before.height).toBe(after.height)
      expect(rounded(partOf(before, 'leader'))).toBe(rounded(partOf(after, 'leader')))
    }
  })

  it('show what comes off before, and nothing of it after', () => {
    for (const { plan, visit } of visits) {
      const before = drawn(plan, visit, 'before')
      const after = drawn(plan, visit, 'after')
      for (const { limb, kind } of visit.cuts) {
        if (limb.origin === null || limb.tip === null || kind === 'raise') continue
        expect(partsOf(before, 'off', limb.id)).toHaveLength(1)
        const own = visit.cuts.filter((cut) => cut.limb === limb)
        expect(partsOf(before, 'badge', limb.id)).toHaveLength(own.length)
        expect(partsOf(after, 'limb', limb.id)).toHaveLength(kind === 'remove' ? 0 : 1)
      }
      expect(partsOf(after, 'off')).toHaveLength(0)
      expect(partsOf(after, 'cut')).toHaveLength(0)
    }
  })

  it('carry what an earlier visit removed or shortened into the next', () => {
    const plan = treeNamed(plans[0]!, 'T03')
    const [first, second] = [plan.visits[0]!, plan.visits[1]!]
    const shortened = first.cuts.find(({ kind }) => kind === 'reduce')!
    const drawing = drawn(plan, second, 'before')
    const off = partsOf(drawing, 'off', shortened.limb.id)[0] ?? partOf(drawing, 'limb', shortened.limb.id)
    expect(rulerOf(drawing, plan.tree.height!)(endsOf(off).end.y)).toBeCloseTo(shortened.tipAfter!, 4)
    const dead = treeNamed(plans[0]!, 'T06')
    expect(partsOf(drawn(dead, dead.visits[0]!, 'before'), 'off', 'E')).toHaveLength(1)
    expect(partsOf(drawn(dead, dead.visits[1]!, 'before'), 'off', 'E')).toHaveLength(0)
  })
})
