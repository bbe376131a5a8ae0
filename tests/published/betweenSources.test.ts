/** Where the rules of the plan stand between sources that disagree. */
import { crownRatios } from './evidence/crownRatios'
import { logWeights } from './evidence/logWeights'
import { highestNamed, removalLimits, strictestLimit } from './evidence/removalLimits'
import { removalThresholds } from './evidence/removalThresholds'
import { newYorkGrowth, urbanGrowth } from './evidence/trunkGrowth'
import { choices, type LifeStage } from '../../shared/choices'
import { baseAllowance, defaultRules, ruleBook, type RuleName } from '../../shared/rules'
import { densityOf } from '../../src/formulas/speciesDensities'
import { convertLength } from '../../shared/units'
import { taperedVolume } from '../../src/formulas/brush'
import { orangeGirths } from './data/orange'
import { formFactors } from './sections/blackCherryTrees'
import { orangeInchesAYear } from './sections/growth'
import { mean } from './leastSquares'

describe('the rules between the sources', () => {
  it('allow no life stage more than the strictest general text does', () => {
    for (const stage of Object.keys(choices.lifeStage) as LifeStage[]) {
      expect([stage, baseAllowance(defaultRules, stage) <= strictestLimit(stage)]).toEqual([stage, true])
      const name = `allowed${stage[0]!.toUpperCase()}${stage.slice(1)}` as RuleName
      expect([stage, ruleBook[name].high <= highestNamed(stage)]).toEqual([stage, true])
    }
    for (const { source, certainty } of removalLimits) expect([source.length > 5, certainty]).toBeTruthy()
  })

  it('set the ratio for removal between the two species that were cut open', () => {
    // Eisner, Gilman & Grabosky 2002, J. Arboric. 28(2):99-105: 0.39 live oak, 0.59 red maple.
    const [low, high] = removalThresholds.map(({ ratio }) => ratio).sort()
    expect(defaultRules.removeUpToRatio).toBeGreaterThan(low!)
    expect(defaultRules.removeUpToRatio).toBeLessThan(high!)
  })

  it('hold a live-crown ratio that is one of the published goals and above what crowded trees have', () => {
    const goals = crownRatios.filter(({ kind }) => kind === 'goal').map(({ ratio }) => ratio)
    const found = crownRatios.filter(({ kind }) => kind === 'found').map(({ ratio }) => ratio)
    expect(goals).toContain(defaultRules.crownRatioGoal)
    expect(defaultRules.crownRatioGoal).toBeGreaterThan(Math.max(...found))
  })

  it('let trunks grow between the slowest street tree of New York and the upper quartile of 17 cities', () => {
    const slow = convertLength(defaultRules.growthSlow, 'mm', 'in')
    const fast = convertLength(defaultRules.growthFast, 'mm', 'in')
    expect(slow).toBeGreaterThanOrEqual(Math.min(...Object.values(newYorkGrowth)))
    expect(fast).toBeLessThanOrEqual(urbanGrowth.large.upper)
  })

  it('let five orange trees fall within the classes of growth, give or take the width of one', () => {
    const slow = convertLength(defaultRules.growthSlow, 'mm', 'in')
    const fast = convertLength(defaultRules.growthFast, 'mm', 'in')
    const grown = Object.values(orangeGirths).map(orangeInchesAYear)
    expect(Math.min(...grown)).toBeGreaterThan(slow)
    expect(Math.max(...grown)).toBeLessThan(fast)
  })

  it('take a cone for a limb, which black cherry trunks bracket from above and the paraboloid further up', () => {
    const cone = taperedVolume(1, 0, 1) / taperedVolume(1, 1, 1)
    const trunks = mean(formFactors())
    expect(cone).toBeLessThan(trunks)
    expect(trunks).toBeLessThan(0.5)
  })

  it('differ from the other table of log weights for yellow-poplar only', () => {
    // National Park Service log weights, second-hand: 38 lb/ft³ there, 48.7 by specific gravity and moisture.
    const off = Object.entries(logWeights).filter(
      ([species, pounds]) => Math.abs((densityOf(species)?.value ?? NaN) - pounds) > 2.2
    )
    expect(off.map(([species]) => species)).toEqual(['yellow-poplar'])
  })
})
