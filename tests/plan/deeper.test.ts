import type { Cell } from '../../shared/cells'
import { readInventory } from '../../src/inventory/readInventory'
import { outcomeWords } from '../../src/plan/outcomeWords'
import { confidenceOf, ratioCourses } from '../../src/plan/outlook'
import { planInventory } from '../../src/plan/planInventory'
import { closePairs, scaffoldSpacing } from '../../src/plan/scaffold/spacing'
import { block, limbHeaders, limbRow, planOf } from './trees'

const leader = limbRow('A', null, null, null, null, { role: 'leader' })
const date = '2030-03-01'

describe('limbs on limbs', () => {
  const headers = `${limbHeaders} | Parent limb`
  const on = (row: Cell[], parent: string | null): Cell[] => [...row, parent]

  it('cuts back to a listed limb that is thick enough to take over, which becomes the tip', () => {
    // The parent tapers from 80 mm over 8 m; halfway up it is 40 mm thick and the lateral of 30 mm is 3/4 of it.
    // Only a quarter of its foliage, some 9 % of the tree's, fits under the local limit.
    const local = (row: Cell[], parent: string | null): Cell[] => [...on(row, parent), 0.11]
    const plan = planOf(
      block(
        `${headers} | Local limit`,
        local(leader, null),
        local(limbRow('B', 80, 100, 2, 10), null),
        local(limbRow('B1', 30, 40, 6, 8), 'B')
      ),
      { visits: 1 }
    )
    const options = plan.trees[0]!.visits[0]!.cuts.find(({ limb }) => limb.id === 'B')!
    expect(options.share).toBeCloseTo(0.25, 12)
    expect(options.tipAfter).toBeCloseTo(8, 12)
    expect(options.reason).toContain('back to limb B1')
  })

  it('are held by the limits of the tree alone', () => {
    // B carries 30 %: 18 % on two competing limbs near its origin, 10 % on one beyond two-thirds, 2 % along it.
    const shares = new Map([
      ['B', 0.3],
      ['B1', 0.1],
      ['B2', 0.08],
      ['B3', 0.1]
    ])
    const row = (cells: Cell[], parent: string | null): Cell[] => [
      ...on(cells, parent),
      shares.get(String(cells[6])) ?? null
    ]
    const plan = planOf(
      block(
        `${headers} | Foliage share`,
        row(leader, null),
        row(limbRow('B', 45, 100, 2.5, 7), null),
        row(limbRow('B1', 24, 26, 2.7, 9.9), 'B'),
        row(limbRow('B2', 24, 26, 2.9, 9.9), 'B'),
        row(limbRow('B3', 10, 30, 6.2, 6.9), 'B')
      ),
      { visits: 1 }
    )
    const { cuts } = plan.trees[0]!.visits[0]!
    expect(cuts.map(({ limb, kind }) => [limb.id, kind]).sort()).toEqual([
      ['B1', 'remove'],
      ['B2', 'remove']
    ])
  })
})

describe('measured below the union', () => {
  it('takes the limbs of a whorl together', () => {
    const headers = `${limbHeaders} | Measured`
    const below = (id: string, origin: number): Cell[] => [...limbRow(id, 60, 130, origin, 8), 'below']
    const plan = planOf(block(headers, [...leader, null], below('B', 3), below('C', 3.05), below('D', 6)))
    const ratio = new Map(plan.trees[0]!.visits[0]!.limbs.map((state) => [state.limb.id, state.aspectRatio]))
    // B and C share a union: above it √(130² − 2·60²) = 98.5; D stands alone: √(130² − 60²) = 115.3.
    expect(ratio.get('B')).toBeCloseTo(60 / Math.sqrt(130 ** 2 - 2 * 60 ** 2), 12)
    expect(ratio.get('C')).toBe(ratio.get('B'))
    expect(ratio.get('D')).toBeCloseTo(60 / Math.sqrt(130 ** 2 - 60 ** 2), 12)
  })

  it('refuses a union whose limbs are as thick as the stem below it', () => {
    const plan = planOf(
      block(`${limbHeaders} | Measured`, [...leader, null], [...limbRow('B', 100, 100, 3, 8), 'below'])
    )
    expect(plan.problems.map(({ code }) => code)).toContain('union-impossible')
    expect(plan.unplanned.map(({ row }) => row)).toEqual([3])
  })
})

describe('trees as they come', () => {
  it('combines the stems of a trunk forked below breast height and names the method', () => {
    const inventory = readInventory(block('Tree | Trunk dia (in) | Height (ft)', ['T1', '5 + 6 + 8', 30]))
    // Published check: stems 5, 6, 8 give 11.180 (square root of the sum of squares, forestry and valuation use).
    expect(inventory.trees[0]!.trunk! / 25.4).toBeCloseTo(11.18, 3)
    expect(inventory.problems.map(({ code }) => code)).toEqual(['stems-combined'])
  })

  it('gives a tree without limbs its allowance, crown ratio and interval', () => {
    const plan = planOf(
      block('Tree | Height (m) | Crown base (m) | Life stage | Vigor', ['T1', 12, 3, 'medium', 'good'])
    )
    expect(plan.trees[0]).toMatchObject({
      allowedRemoval: 0.2,
      liveCrownRatio: 0.75,
      interval: 3,
      visits: []
    })
    expect(plan.problems.map(({ code }) => code)).toEqual(['no-limbs'])
  })

  it('says how tall a tree has to be before a clearance keeps its crown ratio', () => {
    const plan = planOf(
      block(
        `${limbHeaders} | Clearance (m)`,
        [...leader, 5],
        [...limbRow('B', 40, 100, 2, 6), null],
        [...limbRow('C', 40, 100, 2.1, 6), null],
        [...limbRow('D', 20, 90, 6, 8), null]
      )
    )
    const held = plan.problems.filter(({ code }) => code === 'clearance-held')
    expect(held.length).toBeGreaterThan(0)
    for (const { message } of held) expect(message).toContain('12.5 m tall')
    for (const visit of plan.trees[0]!.visits)
      expect(visit.liveCrownRatioAfter).toBeGreaterThanOrEqual(0.6 - 1e-9)
  })

  it('finds permanent limbs that are too close on the same side', () => {
    const headers = `${limbHeaders} | Bearing | Mature height (m)`
    const inventory = readInventory(
      block(
        headers,
        [...leader, null, 20],
        [...limbRow('B', 40, 100, 3, 7), 90, null],
        [...limbRow('C', 30, 95, 3.5, 7), 120, null],
        [...limbRow('D', 30, 95, 3.5, 7), 270, null]
      )
    )
    // 3 % of a mature height of 20 m is 0.6 m (ISA consumer brochure, Pruning Young Trees: 3 % of eventual height).
    expect(scaffoldSpacing(20)).toBeCloseTo(0.6, 12)
    expect(closePairs(inventory.trees[0]!).map(({ upper, lower }) => [upper.id, lower.id])).toEqual([
      ['C', 'B']
    ])
  })
})

describe('the outlook', () => {
  const inventory = readInventory(
    block(limbHeaders, leader, limbRow('B', 85, 100, 3, 10, { bark: 'full' }), limbRow('C', 50, 95, 4, 8))
  )
  const plan = planInventory(inventory, { date }).trees[0]!

  it('shows the ratios with the plan below those without pruning', () => {
    const course = ratioCourses(plan).find(({ limb }) => limb.id === 'B')!
    expect(course.years).toHaveLength(plan.visits.length + 1)
    expect(course.unpruned[0]).toBeCloseTo(0.85, 12)
    expect(course.pruned[0]).toBeCloseTo(0.85, 12)
    for (let at = 1; at < course.years.length; at++)
      expect(course.pruned[at]!).toBeLessThan(course.unpruned[at]!)
    // Without pruning, equal growth carries the ratio toward 1.
    expect(course.unpruned.at(-1)!).toBeGreaterThan(0.85)
  })

  it('plans both ends of the error of the foliage shares and says which cuts change', () => {
    const confidence = confidenceOf(plan)
    expect(confidence.error).toBe(0.3)
    const dose = (cuts: typeof confidence.low): number => cuts.reduce((sum, { share }) => sum + share, 0)
    expect(dose(confidence.low)).toBeGreaterThanOrEqual(dose(confidence.high))
    expect(confidence.changes.length).toBeGreaterThan(0)
    expect(confidence.changes[0]).toMatch(/^Limb B: reduced by five-eighths of its foliage .* if more\.$/)
  })

  it('says how a shortened limb is expected to end, and gives every cut its source', () => {
    const end = plan.outcomes.find(({ limb }) => limb.id === 'B')!
    expect(end.outcome).toBe('expected')
    expect(outcomeWords(end)).toMatch(
      /by growth alone: measure again\. Its union has included bark: inspect the union\.$/
    )
    for (const { cuts } of plan.visits) for (const cut of cuts) expect(cut.source).toMatch(/house|practice/)
  })
})
