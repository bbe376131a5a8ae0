/** Whether a cut for structure is worth its foliage and its wound, and how limbs are shortened. */
import type { Cell } from '../../shared/cells'
import { pointsForFoliage, pointsNeeded } from '../../src/formulas/worth'
import { severalCuts } from '../../src/formulas/cuts'
import type { TreePlan } from '../../src/plan/plan'
import { block, limbHeaders, limbRow, planOf } from './trees'

const headers = `${limbHeaders} | Length (m) | Lowest foliage (m) | Foliage share`
const row = (cells: Cell[], length: Cell = null, lowest: Cell = null, share: Cell = null): Cell[] => [
  ...cells,
  length,
  lowest,
  share
]
const leader = (stage: string): Cell[] => row(limbRow('A', null, null, null, null, { role: 'leader', stage }))
const tree = (stage: string, ...rows: Cell[][]): TreePlan =>
  planOf(block(headers, leader(stage), ...rows)).trees[0]!

describe('the worth of a cut', () => {
  it('is 2 points, 1 for each 2 % of the foliage, and more for its size', () => {
    expect(pointsForFoliage(0.01)).toBe(2)
    expect(pointsForFoliage(0.1)).toBeCloseTo(5, 12)
    expect(pointsNeeded({ dose: 0.01, cutDiameter: 50.8, priority: 20 })).toBe(2)
    expect(pointsNeeded({ dose: 0.01, cutDiameter: 51, priority: 20 })).toBe(5)
    expect(pointsNeeded({ dose: 0.01, cutDiameter: 102, priority: 20 })).toBe(10)
    expect(pointsNeeded({ dose: 0.01, cutDiameter: 102, priority: 40 })).toBe(2)
  })

  it('keeps what is left of the allowance on the tree', () => {
    const plan = tree('young', row(limbRow('B', 40, 100, 3, 8, { stage: 'young' })))
    expect(plan.visits).toHaveLength(1)
    expect(plan.visits[0]!.cuts).toEqual([])
    expect(plan.visits[0]!.dose).toBe(0)
  })

  it('leaves a settled limb alone: at most half its stem, only its included bark speaks for a cut', () => {
    const plan = tree('young', row(limbRow('B', 45, 100, 5.2, 8, { stage: 'young', bark: 'full' })))
    expect(plan.visits[0]!.cuts).toEqual([])
    expect(plan.outcomes.map(({ limb, outcome, visit }) => [limb.id, outcome, visit])).toEqual([
      ['B', 'settled', 1]
    ])
  })
})

describe('how a limb is shortened', () => {
  it('makes several cuts of at most 2 in on a mature tree', () => {
    // 4 in is as much as four cuts of 2 in: equal cross-section, equal foliage (house rule).
    expect(severalCuts(101.6, 50.8)).toEqual({ count: 4, diameter: 50.8 })
    expect(severalCuts(50.8, 50.8)).toEqual({ count: 1, diameter: 50.8 })
    const stage = 'mature'
    const plan = tree(stage, row(limbRow('B', 200, 230, 2.5, 10, { stage, bark: 'full' }), null, null, 0.2))
    const [cut] = plan.visits[0]!.cuts
    expect(cut!.count).toBeGreaterThan(1)
    expect(cut!.cutDiameter).toBeLessThanOrEqual(50.8 + 1e-9)
    expect([cut!.cutHeight, cut!.distance, cut!.needsReason]).toEqual([null, null, false])
    expect(cut!.tipAfter).toBeCloseTo(2.5 + 7.5 * (1 - cut!.share), 9)
  })

  it('cuts a limb that is bare inside above its lowest foliage only, and takes half of it at most', () => {
    const stage = 'young'
    const plan = tree(stage, row(limbRow('B', 130, 150, 2.5, 10, { stage, bark: 'full' }), null, 7, 0.2))
    const cuts = plan.visits.flatMap((visit) => visit.cuts)
    expect(cuts.length).toBeGreaterThan(0)
    for (const cut of cuts) expect(cut.share).toBeLessThanOrEqual(0.5)
    expect(cuts[0]!.cutHeight).toBeGreaterThan(7)
    // Its foliage lies evenly from 7 m to its tip at 10 m.
    expect(cuts[0]!.cutHeight).toBeCloseTo(10 - cuts[0]!.share * 3, 9)
  })

  it('places a cut on a level limb by its distance from the union', () => {
    const stage = 'medium'
    const plan = tree(stage, row(limbRow('B', 140, 150, 3, 5, { stage }), 6, null, 0.2))
    const [cut] = plan.visits[0]!.cuts
    expect(cut!.cutHeight).toBeNull()
    expect(cut!.distance).toBeCloseTo(6 * (1 - Math.sqrt(cut!.share)), 9)
  })

  it('is the same plan in inches, centimeters and millimeters where a value lies on a boundary', () => {
    const inUnit = (unit: string, per: number): unknown =>
      planOf(
        block(
          limbHeaders.replaceAll('(mm)', `(${unit})`),
          limbRow('A', null, null, null, null, { role: 'leader' }),
          limbRow('B', (0.9 * 25.4) / per, (1.5 * 25.4) / per, 3, 9.5),
          limbRow('C', (4 * 25.4) / per, (5 * 25.4) / per, 4, 9.5)
        )
      ).trees[0]!.visits.map(({ cuts, limbs }) => [
        cuts.map(({ limb, kind, share, marked, needsReason }) => [limb.id, kind, share, marked, needsReason]),
        limbs.map(({ standing }) => standing)
      ])
    const metric = inUnit('mm', 1)
    expect(inUnit('in', 25.4)).toEqual(metric)
    expect(inUnit('cm', 10)).toEqual(metric)
  })
})

describe('later visits', () => {
  it('give no position of a limb that was cut before: it is measured then', () => {
    const stage = 'medium'
    const limbs = ['B', 'C'].map((id) => row(limbRow(id, 130, 140, 2.5, 10, { stage, bark: 'full' })))
    const plan = tree(stage, ...limbs)
    const again = plan.visits.slice(1).flatMap(({ cuts }) => cuts.filter(({ kind }) => kind === 'reduce'))
    expect(again.length).toBeGreaterThan(0)
    for (const { cutDiameter, lateralMin, cutHeight, tipAfter, work } of again) {
      expect([cutDiameter, lateralMin, cutHeight, tipAfter]).toEqual([null, null, null, null])
      expect(work.diameter).toBeGreaterThan(10)
      expect(work.part).toBeLessThan(1)
    }
  })

  it('one year apart are done together in the later year', () => {
    const limb = (name: string, stage: string) => [
      limbRow('A', null, null, null, null, { role: 'leader', stage, tree: name }),
      ...['B', 'C'].map((id) => limbRow(id, 130, 140, 2.5, 10, { stage, bark: 'full', tree: name }))
    ]
    const { trees } = planOf(block(limbHeaders, ...limb('T1', 'young'), ...limb('T2', 'medium')))
    const years = trees.map(({ visits }) => visits.map(({ year }) => year))
    expect(years[0]![0]).toBe(2030)
    for (const year of years.flat()) expect(years.flat()).not.toContain(year + 1)
  })
})
