/**
 * Numbers of ours against numbers that others published, one test per number. The rows stand by section of the trade
 * under sections/, each with its source, its printed precision and how surely it is known.
 */
import { agrees, exactly, printed, type Check } from './check'
import { bark } from './sections/bark'
import { biomass } from './sections/biomass'
import { blackCherryTrees } from './sections/blackCherryTrees'
import { cuts } from './sections/cuts'
import { dose } from './sections/dose'
import { estimating } from './sections/estimating'
import { foliage } from './sections/foliage'
import { growth } from './sections/growth'
import { liveCrown } from './sections/liveCrown'
import { measurement } from './sections/measurement'
import { money } from './sections/money'
import { ratios } from './sections/ratios'
import { spacing } from './sections/spacing'
import { weights } from './sections/weights'
import { wind } from './sections/wind'
import { wires } from './sections/wires'

const sections: Record<string, Check[]> = {
  ratios,
  'live crown': liveCrown,
  dose,
  cuts,
  spacing,
  bark,
  foliage,
  biomass,
  weights,
  'black cherry': blackCherryTrees,
  wind,
  growth,
  measurement,
  wires,
  estimating,
  money
}

const all = Object.values(sections).flat()

for (const [section, checks] of Object.entries(sections))
  describe(`published numbers on ${section}`, () => {
    test.each(checks.map((check) => [check.what, check.expected, check.source, check] as const))(
      '%s: %s (%s)',
      (_what, _expected, _source, check) => {
        const { got, expected, within } = check
        const verdict = agrees(check) ? 'agrees' : { got: got(), expected, within }
        expect(verdict).toBe('agrees')
      }
    )
  })

describe('the rows of published numbers', () => {
  it('each name a source, and say so where it is memory or common practice', () => {
    for (const { what, source, certainty } of all) {
      expect([what, source.length > 12]).toEqual([what, true])
      expect([what, source.includes('common practice, no source')]).toEqual([what, certainty === 'practice'])
      if (certainty === 'memory')
        expect([what, source]).toEqual([what, expect.stringContaining('from memory')])
    }
  })

  it('are each named once, and are at least 70', () => {
    const names = Object.entries(sections).flatMap(([section, rows]) =>
      rows.map(({ what }) => `${section}: ${what}`)
    )
    expect(new Set(names).size).toBe(names.length)
    expect(names.length).toBeGreaterThanOrEqual(70)
    for (const [section, rows] of Object.entries(sections))
      expect([section, rows.length >= 5]).toEqual([section, true])
  })

  it('would fail on a number off by one unit of the last printed digit, on NaN and on a refusal', () => {
    const row = (got: Check['got']): Check => ({
      what: 'a row',
      got,
      ...printed('12.3'),
      source: 'none',
      certainty: 'read'
    })
    expect(agrees(row(() => 12.349))).toBe(true)
    expect(agrees(row(() => 12.4))).toBe(false)
    expect(agrees(row(() => NaN))).toBe(false)
    expect(agrees(row(() => ({ refusal: 'wrong', sentence: 'No.' })))).toBe(false)
    expect(agrees({ ...row(() => 1 + 1e-9), ...exactly(1) })).toBe(false)
  })

  it('say why, wherever a number may be off by more than a tenth', () => {
    for (const { what, expected, within, because } of all)
      if (within > Math.max(Math.abs(expected) / 10, 1e-6))
        expect([what, because]).toEqual([what, expect.stringMatching(/.{20}/)])
  })
})
