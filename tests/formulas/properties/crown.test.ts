/** The crown and what may come off it: bounds, direction in every input, never NaN. */
import fc from 'fast-check'
import { baseAllowance, defaultRules } from '../../../shared/rules'
import { allowedRemoval, visitsNeeded } from '../../../src/formulas/removal'
import { heightForClearance, crownBaseMax, liveCrownRatio } from '../../../src/formulas/crown'
import { always, between, falls, rises, valueOf } from './monotone'
import { share, stages, vigors, stage, vigor } from './domain'

describe('LIVECROWN', () => {
  it('falls with the crown base, rises with the height and stays from 0 to 1', () => {
    falls({
      over: between(0, 40),
      others: fc.tuple(between(1, 40)),
      formula: (base, height) => liveCrownRatio(height, base),
      valid: (base, height) => base <= height
    })
    rises({
      over: between(1, 40),
      others: fc.tuple(between(0, 40)),
      formula: (height, base) => liveCrownRatio(height, base),
      valid: (height, base) => base <= height,
      moves: (_height, base) => base > 0
    })
    always(fc.tuple(between(1, 40), share), (height, part) => {
      const found = valueOf(liveCrownRatio(height, height * part))
      expect(found).toBeGreaterThanOrEqual(0)
      expect(found).toBeLessThanOrEqual(1)
    })
  })

  it('gives back the ratio that CROWNBASEMAX keeps, and the height that a clearance asks for', () => {
    always(fc.tuple(between(1, 40), between(0.05, 0.95)), (height, kept) => {
      const base = crownBaseMax(height, kept)
      expect(valueOf(liveCrownRatio(height, base))).toBeCloseTo(kept, 9)
      expect(heightForClearance(base, kept)).toBeCloseTo(height, 9)
    })
  })

  it('asks for a taller tree the higher the clearance and the ratio', () => {
    rises({ over: between(1, 8), others: fc.tuple(between(0, 0.9)), formula: heightForClearance })
    rises({
      over: between(0, 0.9),
      others: fc.tuple(between(1, 8)),
      formula: (kept, clearance) => heightForClearance(clearance, kept)
    })
  })
})

describe('ALLOWEDREMOVAL', () => {
  it('falls with what was removed already and rises with the local limit', () => {
    const little = between(0, 0.25)
    falls({
      over: little,
      others: fc.tuple(stage, vigor, share),
      formula: (removed, age, health, limit) => allowedRemoval(age, health, removed, limit),
      moves: (removed, age, health, limit) => allowedRemoval(age, health, 0, limit) - removed > 1e-6
    })
    rises({
      over: little,
      others: fc.tuple(stage, vigor, little),
      formula: (limit, age, health, removed) => allowedRemoval(age, health, removed / 5, limit),
      moves: (limit, age, health, removed) => limit > removed / 5 && limit < allowedRemoval(age, health)
    })
  })

  it('is never above the life stage’s base, the local limit or what is left, and never below 0', () => {
    always(fc.tuple(stage, vigor, share, share), (age, health, removed, limit) => {
      const allowed = valueOf(allowedRemoval(age, health, removed, limit))
      expect(allowed).toBeGreaterThanOrEqual(0)
      expect(allowed).toBeLessThanOrEqual(Math.min(baseAllowance(defaultRules, age), limit))
      if (allowed > 0) expect(allowed + removed).toBeLessThanOrEqual(limit + 1e-12)
    })
  })

  it('never rises with age or with failing vigor', () => {
    always(fc.tuple(share, share), (removed, limit) => {
      const byAge = stages.map((age) => allowedRemoval(age, 'good', removed, limit))
      expect([...byAge].sort((a, b) => b - a)).toEqual(byAge)
      for (const age of stages) {
        const byVigor = vigors.map((health) => allowedRemoval(age, health, removed, limit))
        expect([...byVigor].sort((a, b) => b - a)).toEqual(byVigor)
      }
    })
  })
})

describe('VISITSNEEDED', () => {
  it('rises with what is needed and falls with what is allowed', () => {
    const level = () => false
    rises<[number]>({
      over: share,
      others: fc.tuple(between(0.01, 1)),
      formula: visitsNeeded,
      moves: level,
      steps: 3
    })
    falls<[number]>({
      over: between(0.01, 1),
      others: fc.constant<[number]>([0.42]),
      formula: (allowed, needed) => visitsNeeded(needed, allowed),
      moves: level,
      steps: 3
    })
  })
})
