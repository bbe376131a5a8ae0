/** What the evidence tables say and refuse. */
import { allEvidence } from './evidence/allEvidence'
import {
  aboveGroundBiomass,
  biomassGroups,
  branchRatio,
  foliageRatio,
  type BiomassGroup
} from './evidence/biomass'
import { shareOfRupture } from './evidence/breakingStress'
import { poundsPerCubicYard } from '../../src/formulas/brush'
import { leafArea } from './evidence/leafArea'
import { pullClasses, pullForce } from './evidence/pullForces'
import { stemForce } from './evidence/stemForces'
import { isRefusal } from '../../shared/refusal'

describe('the evidence', () => {
  it('names for every finding a source, how far it reaches and what may not be read from it', () => {
    expect(allEvidence.length).toBeGreaterThan(20)
    for (const { finding, source, range, caution } of allEvidence) {
      expect([finding, finding.length, source.length, range.length, caution.length]).toEqual([
        finding,
        ...[5, 8, 8, 20].map((least, at) => {
          const length = [finding, source, range, caution][at]!.length
          return length >= least ? length : `at least ${least}`
        })
      ])
    }
  })

  it('says nothing of a chance of failure and rates no risk', () => {
    for (const { finding } of allEvidence)
      expect(/probabilit|likelihood|risk|safe(?!ty)|will fail/i.test(finding)).toBe(false)
  })

  it('refuses every size outside what was published, with a sentence that says how far it reaches', () => {
    const outside = [
      pullForce(4.9, 0.5),
      pullForce(100, 0.5),
      pullForce(17, 1.1),
      pullForce(17, NaN),
      stemForce('with included bark', 2.3),
      stemForce('without included bark', 10),
      leafArea(9),
      leafArea(61),
      aboveGroundBiomass('pine', 2.4),
      aboveGroundBiomass('pine', 61),
      foliageRatio('hardwood', 0),
      branchRatio('softwood', 2)
    ]
    for (const [at, value] of outside.entries()) {
      expect([at, isRefusal(value)]).toEqual([at, true])
      if (isRefusal(value)) expect(value.sentence).toMatch(/ covers [\d.]+ to \d/)
    }
  })

  it('refuses a ratio of nothing and asks for the two diameters', () => {
    expect(pullForce(17, 0)).toEqual({
      refusal: 'wrong',
      sentence: expect.stringMatching(/measure the branch and the stem/)
    })
  })

  it('answers throughout the published range, also between two classes', () => {
    for (let tenths = 50; tenths <= 200; tenths++)
      expect([tenths, typeof pullForce(tenths / 10, 0.5)]).toEqual([tenths, 'number'])
    expect(pullForce(5.93, 0.5)).toBe(pullForce(5.9, 0.5))
    expect(pullForce(5.96, 0.5)).toBe(pullForce(6, 0.5))
  })

  it('shows less pull for a higher ratio in every class, and the R² within the printed .25 to .90', () => {
    for (const { from, slope, r2 } of pullClasses) {
      expect(slope).toBeGreaterThan(0)
      expect(pullForce(from, 0.9) as number).toBeLessThan(pullForce(from, 0.3) as number)
      expect(r2).toBeGreaterThanOrEqual(0.25)
      expect(r2).toBeLessThanOrEqual(0.9)
    }
  })

  it('shows less force with included bark at every diameter, the smaller stems losing the larger share', () => {
    let before = Infinity
    for (let tenths = 24; tenths <= 61; tenths++) {
      const without = stemForce('without included bark', tenths / 10) as number
      const loss = 1 - (stemForce('with included bark', tenths / 10) as number) / without
      expect(loss).toBeGreaterThan(0)
      expect(loss).toBeLessThan(before)
      before = loss
    }
  })

  it('makes an oval branch weaker on paper when it is taken for a circle', () => {
    expect(shareOfRupture.circle).toBeLessThan(shareOfRupture['ellipse outside bark'])
    expect(shareOfRupture['ellipse outside bark']).toBeLessThan(shareOfRupture['ellipse inside bark'])
  })

  it('lets biomass rise with the trunk in all ten groups, and the parts of it add up', () => {
    const groups = Object.keys(biomassGroups) as BiomassGroup[]
    expect(groups).toHaveLength(10)
    for (const group of groups)
      for (let trunk = 3; trunk < 60; trunk++)
        expect(aboveGroundBiomass(group, trunk + 1) as number).toBeGreaterThan(
          aboveGroundBiomass(group, trunk) as number
        )
  })

  it('puts its loose brush at the light end of what agencies print, from which volumes come out large', () => {
    // US EPA 2016: 250; Massachusetts: 500; CalRecycle: 600 lb/yd³ of loose yard waste.
    expect(poundsPerCubicYard['loose brush']).toBe(Math.min(250, 500, 600))
  })
})
