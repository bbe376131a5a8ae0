/** The smallest trees on which the plan and the plain reference of `reference/` have differed, and who was right. */
import { engineTree } from './reference/enginePlan'

const young = { height: 10, crownBase: 2, stage: 'young', vigor: 'good', growth: 'medium' }

describe('a union', () => {
  it('takes all its limbs from the stem below, wherever the stems of the others were measured', () => {
    const { visits } = engineTree(
      young,
      { limb: 'A', diameter: 60, stem: 160, measured: 'below', origin: 3, tip: 9.5, bark: 'full' },
      { limb: 'B', diameter: 60, stem: 120, origin: 3.1, tip: 6 }
    )
    const cut = visits[0]!.cuts.find(({ limb }) => limb === 'A')!
    expect(cut.aspectRatio).toBeCloseTo(60 / Math.sqrt(160 ** 2 - 2 * 60 ** 2), 9)
  })
})

describe('broken wood', () => {
  it('ends as any cut does, by the lateral that is left', () => {
    const { visits } = engineTree(
      { ...young, height: 4.2, crownBase: 0.7 },
      { limb: 'A', diameter: 20, stem: 20, origin: 2.9, tip: 4.2, broken: 'yes', lateralHeight: 3.6 }
    )
    const [cut] = visits[0]!.cuts
    expect(cut).toMatchObject({ kind: 'reduce', obligation: 'broken', heightM: 3.6 })
    // A third of the cut: the tip is a third of the way back up from 3.6 to 4.2 m.
    const tip = 4.2 - (2 / 3) * 0.6
    const T = (tip / 4.2 - 0.8) / 0.2
    const A = (cut!.projectedAspectRatio! - 0.5) / 0.5
    expect(cut!.nextPriority).toBeCloseTo(100 * (0.45 * A + 0.1 * T), 6)
  })

  it('is not cut back to a limb with decay', () => {
    const { visits } = engineTree(
      young,
      { limb: 'A', diameter: 60, stem: 120, origin: 3, tip: 8, broken: 'yes' },
      { limb: 'B', diameter: 30, stem: 50, origin: 5, tip: 7, parent: 'A', decay: 'yes' }
    )
    expect(visits[0]!.cuts).toMatchObject([{ limb: 'A', kind: 'remove', obligation: 'broken', dose: 0 }])
  })

  it('keeps the limb to which it is cut back', () => {
    const { visits } = engineTree(
      { ...young, height: 3.1, crownBase: 0.9, stage: 'planting' },
      { limb: 'A', diameter: 12, stem: 17, origin: 1.5, tip: 3.1, broken: 'yes' },
      { limb: 'B', diameter: 11, stem: 11, origin: 2.2, tip: 2.9, parent: 'A' },
      { limb: 'C', diameter: 31, stem: 41, origin: 1, tip: 1 }
    )
    expect(visits[0]!.cuts[0]).toMatchObject({ limb: 'A', kind: 'reduce', heightM: 2.2 })
    expect(visits[0]!.cuts.filter(({ limb, kind }) => limb === 'B' && kind === 'remove')).toEqual([])
  })
})

describe('a broken limb on a broken limb', () => {
  it('goes with the one that carries it, in whatever order the rows stand', () => {
    const limbs = [
      { limb: 'B', diameter: 30, stem: 50, origin: 5, tip: 7, parent: 'A', broken: 'yes' },
      { limb: 'A', diameter: 60, stem: 120, origin: 3, tip: 8, parent: null, broken: 'yes' }
    ]
    for (const rows of [limbs, [...limbs].reverse()]) {
      const { visits, outcomes } = engineTree(young, ...rows)
      expect(visits[0]!.cuts.map(({ limb, kind }) => `${limb} ${kind}`)).toEqual(['A remove'])
      expect(outcomes.map(({ outcome }) => outcome)).toEqual(outcomes.map(() => 'removed'))
    }
  })
})

describe('an obligation on a limb with decay', () => {
  it.each([
    ['clearance', { ...young, clearance: 3 }, { origin: 2.2, tip: 2.8 }],
    ['rubbing', young, { origin: 4, tip: 6, rubbing: 'yes' }],
    ['broken', young, { origin: 4, tip: 6, broken: 'yes' }],
    ['temporary', young, { origin: 4, tip: 6, role: 'temporary', diameter: 55 }]
  ])('waits for an inspection: %s', (_what, tree, limb) => {
    const { visits, outcomes } = engineTree(tree, {
      limb: 'A',
      diameter: 30,
      stem: 120,
      decay: 'yes',
      ...limb
    })
    expect(visits[0]!.cuts).toEqual([])
    expect(outcomes).toMatchObject([{ limb: 'A', outcome: 'wait', heldBy: 'inspect first' }])
  })
})

describe('a rubbing limb', () => {
  const other = { limb: 'B', diameter: 96, stem: 210, origin: 4, tip: 8, rubbing: 'yes' }

  it.each([
    ['broken', { broken: 'yes' }],
    ['dead', { live: 'dead' }]
  ])('is left alone once the other is off, which was %s', (_how, one) => {
    const { visits } = engineTree(
      { ...young, stage: 'medium', height: 15, crownBase: 1.5 },
      { limb: 'A', diameter: 140, stem: 170, origin: 6.7, tip: 8, rubbing: 'yes', ...one },
      other
    )
    const cuts = visits.flatMap((visit) => visit.cuts)
    expect(cuts.map(({ limb, kind }) => ({ limb, kind }))).toEqual([{ limb: 'A', kind: 'remove' }])
  })
})

describe('a listed limb that is left as the lateral', () => {
  it('is not removed at the visit that cuts back to it', () => {
    const { visits } = engineTree(
      { ...young, height: 3.3, crownBase: 0.33, stage: 'planting' },
      { limb: 'A', diameter: 17, stem: 24, origin: 1.886, tip: 1.561 },
      { limb: 'B', diameter: 10, stem: 10, origin: 1.758, tip: 2.8, parent: 'A' },
      { limb: 'C', diameter: 40, stem: 37, origin: 1.4, tip: 1.1 }
    )
    const [first] = visits
    expect(first!.cuts.find(({ limb }) => limb === 'B')).toMatchObject({ kind: 'remove' })
    expect(first!.cuts.filter(({ limb }) => limb === 'A')).toEqual([])
  })

  it('is cut back to in one cut, and not in several small ones', () => {
    const { visits } = engineTree(
      { height: 20, crownBase: 4, stage: 'mature', vigor: 'good', growth: 'slow', localLimit: 0.045 },
      { limb: 'A', diameter: 150, stem: 160, origin: 5, tip: 18, bark: 'full', foliageShare: 0.2 },
      { limb: 'B', diameter: 40, stem: 70, origin: 12.19, tip: 16, parent: 'A' }
    )
    const several = visits[0]!.cuts.filter(({ count }) => count > 1)
    expect(several.length).toBeGreaterThan(0)
    for (const { share } of several) expect([1 / 8, 2 / 8]).toContain(share)
  })
})

describe('the foliage that cuts take', () => {
  it('adds up to no more than the allowance, limbs on limbs with the limbs that carry them', () => {
    const { visits, allowedRemoval } = engineTree(
      { ...young, height: 8.8, crownBase: 2.8, growth: 'slow' },
      { limb: 'A', diameter: 36.55, stem: 64, origin: 2.7, tip: 8.8, lowestFoliage: 4.9 },
      { limb: 'B', diameter: 23, stem: 24, origin: 6.1, tip: 8.8, parent: 'A', foliageShare: 0.19 }
    )
    const doses = visits[0]!.cuts.map(({ dose }) => dose)
    expect(doses.length).toBeGreaterThan(0)
    expect(doses.reduce((sum, dose) => sum + dose, 0)).toBeLessThanOrEqual(allowedRemoval + 1e-9)
  })

  it('goes by the share that was observed, also of a limb with a last cut on record', () => {
    const { visits } = engineTree(
      { height: 19, crownBase: 6.4, stage: 'mature', vigor: 'good', growth: 'fast' },
      {
        limb: 'A',
        diameter: 110,
        stem: 110,
        origin: 14,
        tip: 19,
        lastCutShare: 0.25,
        lastCutDate: 2027,
        foliageShare: 0.18
      }
    )
    const [cut] = visits[0]!.cuts
    expect(cut!.dose).toBeCloseTo(cut!.share * 0.18, 9)
  })
})

describe('a later visit to a limb that was shortened before', () => {
  it('has no place of its cut, a removal either', () => {
    const { visits } = engineTree(
      { height: 4.1, crownBase: 1.4, stage: 'planting', vigor: 'good', growth: 'medium' },
      { limb: 'A', diameter: 44, stem: 52, origin: 1.4, tip: 2.3, role: 'temporary' }
    )
    const later = visits.slice(1).flatMap(({ cuts }) => cuts)
    expect(later.some(({ kind }) => kind === 'remove')).toBe(true)
    for (const cut of later)
      expect(cut).toMatchObject({ cutDiameterMm: null, heightM: null, lateralMinMm: null })
  })
})
