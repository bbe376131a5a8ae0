/** Ratios and stems: bounds, direction in every input, units, order, never NaN. */
import fc from 'fast-check'
import type { IncludedBark } from '../../../shared/choices'
import { isRefusal } from '../../../shared/refusal'
import { convertLength } from '../../../shared/units'
import { standing, type Standing } from '../../../src/formulas/priority'
import { aspectRatio, stemAbove, stemsCombined } from '../../../src/formulas/diameters'
import { always, falls, rises, valueOf } from './monotone'
import { diameter, ratio, bark, unit } from './domain'

describe('ASPECTRATIO', () => {
  it('rises with the limb and falls with the stem', () => {
    rises({ over: diameter, others: fc.tuple(diameter), formula: (limb, stem) => aspectRatio(limb, stem) })
    falls({ over: diameter, others: fc.tuple(diameter), formula: (stem, limb) => aspectRatio(limb, stem) })
  })

  it('is higher for a stem measured below than above, or refused where the limb is as thick', () => {
    always(fc.tuple(diameter, diameter), (limb, stem) => {
      const below = aspectRatio(limb, stem, 'below')
      if (limb >= stem) expect(isRefusal(below)).toBe(true)
      else expect(valueOf(below)).toBeGreaterThan(valueOf(aspectRatio(limb, stem)))
    })
  })

  it('conserves the section at a union, and any number of limbs', () => {
    always(fc.tuple(fc.array(diameter, { minLength: 1, maxLength: 5 }), diameter), (limbs, above) => {
      const below = stemsCombined([above, ...limbs])
      const squares = stemsCombined(limbs) ** 2
      expect(stemAbove(below, squares) / above).toBeCloseTo(1, 6)
    })
  })

  it('is the same in any unit', () => {
    always(fc.tuple(diameter, diameter, unit), (limb, stem, to) => {
      const inUnit = (value: number) => convertLength(value, 'mm', to)
      expect(valueOf(aspectRatio(inUnit(limb), inUnit(stem)))).toBeCloseTo(limb / stem, 9)
    })
  })
})

describe('STANDING', () => {
  const order: Standing[] = ['subordinate', 'gaining', 'competing', 'codominant']
  const rank = (of: number, included: IncludedBark) => order.indexOf(standing(of, included))

  it('never steps back as the ratio rises, and passes every step', () => {
    rises({ over: ratio, others: fc.tuple(bark), formula: rank, moves: () => false, steps: 4 })
  })

  it('never steps back for included bark', () => {
    always(fc.tuple(ratio), (of) => {
      expect(rank(of, 'partial')).toBeGreaterThanOrEqual(rank(of, 'none'))
      expect(rank(of, 'full')).toBe(rank(of, 'partial'))
    })
  })
})

describe('STEMSCOMBINED', () => {
  const stems = fc.array(diameter, { minLength: 1, maxLength: 8 })

  it('rises with every stem and lies between the thickest and their sum', () => {
    rises({ over: diameter, others: fc.tuple(stems), formula: (one, rest) => stemsCombined([one, ...rest]) })
    always(fc.tuple(stems), (list) => {
      const combined = valueOf(stemsCombined(list))
      expect(combined).toBeGreaterThanOrEqual(Math.max(...list) * (1 - 1e-12))
      expect(combined).toBeLessThanOrEqual(list.reduce((sum, one) => sum + one, 0) * (1 + 1e-12))
    })
  })

  it('does not depend on the order, and follows the unit', () => {
    always(fc.tuple(stems, unit), (list, to) => {
      const combined = stemsCombined(list)
      expect(stemsCombined([...list].reverse()) / combined).toBeCloseTo(1, 9)
      const inUnit = list.map((one) => convertLength(one, 'mm', to))
      expect(convertLength(stemsCombined(inUnit), to, 'mm') / combined).toBeCloseTo(1, 9)
    })
  })
})
