/** Foliage and cuts: bounds, direction in every input, units, order, never NaN. */
import fc from 'fast-check'
import { convertLength } from '../../../shared/units'
import { sharesAmong, sharesWithStems } from '../../../src/formulas/crown'
import {
  cutDiameter,
  cutDose,
  cutHeight,
  cutShare,
  lateralFraction,
  lateralMin,
  tipAfterCut
} from '../../../src/formulas/cuts'
import { always, between, falls, rises, valueOf } from './monotone'
import { diameter, share, someShare, unit } from './domain'

describe('FOLIAGESHARE', () => {
  const limbs = fc.array(fc.record({ diameter, stem: diameter, origin: between(0, 20) }), {
    minLength: 1,
    maxLength: 12
  })
  const diametersOf = (list: { diameter: number }[]) => list.map((limb) => limb.diameter)
  const sum = (values: number[]) => values.reduce((total, value) => total + valueOf(value), 0)

  it('adds up to 1 among the limbs, and to no more than 1 with their stems', () => {
    always(fc.tuple(limbs), (list) => {
      expect(sum(sharesAmong(diametersOf(list)))).toBeCloseTo(1, 9)
      expect(sum(sharesWithStems(list))).toBeLessThan(1)
    })
  })

  it('gives no limb more with the stems than without', () => {
    always(fc.tuple(limbs), (list) => {
      const among = sharesAmong(diametersOf(list))
      sharesWithStems(list).forEach((found, at) => expect(found).toBeLessThanOrEqual(among[at]!))
    })
  })

  it('rises with the limb’s own diameter and falls with another’s', () => {
    const others = fc.tuple(diameter)
    rises({ over: diameter, others, formula: (own, other) => sharesAmong([own, other])[0]! })
    falls({ over: diameter, others, formula: (other, own) => sharesAmong([own, other])[0]! })
  })

  it('does not depend on the order of the rows or on the unit', () => {
    always(fc.tuple(limbs, unit), (list, to) => {
      const turned = sharesWithStems([...list].reverse()).reverse()
      const inUnit = (value: number) => convertLength(value, 'mm', to)
      const converted = sharesWithStems(
        list.map((limb) => ({ ...limb, diameter: inUnit(limb.diameter), stem: inUnit(limb.stem) }))
      )
      sharesWithStems(list).forEach((found, at) => {
        expect(turned[at]).toBeCloseTo(found, 9)
        expect(converted[at]).toBeCloseTo(found, 9)
      })
    })
  })
})

describe('CUTDIAMETER, CUTDOSE and LATERALMIN', () => {
  it('cut thicker for a larger share, and never thicker than the limb', () => {
    rises({ over: someShare, others: fc.tuple(diameter), formula: (taken, limb) => cutDiameter(limb, taken) })
    rises({ over: diameter, others: fc.tuple(someShare), formula: cutDiameter })
    always(fc.tuple(diameter, someShare), (limb, taken) => {
      expect(cutDiameter(limb, taken)).toBeLessThanOrEqual(limb)
      expect(cutShare(cutDiameter(limb, taken), limb)).toBeCloseTo(taken, 9)
    })
  })

  it('take a dose that rises with the cut and the share, falls with the limb and stays within the share', () => {
    const valid = (cut: number, limb: number) => cut <= limb
    rises({ over: diameter, others: fc.tuple(diameter, someShare), formula: cutDose, valid })
    rises({
      over: someShare,
      others: fc.tuple(diameter, diameter),
      formula: (limbShare, cut, limb) => cutDose(cut, limb, limbShare)
    })
    falls({
      over: diameter,
      others: fc.tuple(diameter, someShare),
      formula: (limb, cut, limbShare) => cutDose(cut, limb, limbShare)
    })
    always(fc.tuple(diameter, someShare, share), (limb, taken, limbShare) => {
      expect(cutDose(cutDiameter(limb, taken), limb, limbShare)).toBeLessThanOrEqual(limbShare + 1e-12)
    })
  })

  it('ask for a thicker lateral at a thicker cut, never thicker than the cut', () => {
    rises({ over: diameter, others: fc.tuple(someShare), formula: lateralMin })
    rises({ over: someShare, others: fc.tuple(diameter), formula: (part, cut) => lateralMin(cut, part) })
    rises({
      over: diameter,
      others: fc.constant<[]>([]),
      formula: (cut) => lateralMin(cut, lateralFraction(cut))
    })
    always(fc.tuple(diameter), (cut) => {
      expect(lateralMin(cut)).toBeLessThan(cut)
      expect(lateralMin(cut, lateralFraction(cut)) / cut).toBeGreaterThanOrEqual(1 / 3 - 1e-12)
    })
  })

  it('lower the tip and the cut the more is taken, the tip always above the cut', () => {
    const upright = fc.tuple(between(1, 10), between(11, 30))
    const formula = (taken: number, origin: number, tip: number) => tipAfterCut({ origin, tip }, taken, 1 / 3)
    falls({ over: someShare, others: upright, formula })
    falls({
      over: someShare,
      others: upright,
      formula: (taken, origin, tip) => cutHeight({ origin, tip }, taken)
    })
    always(fc.tuple(someShare, share, upright), (taken, lateral, [origin, tip]) => {
      const after = valueOf(tipAfterCut({ origin, tip }, taken, lateral))
      expect(after).toBeGreaterThanOrEqual(cutHeight({ origin, tip }, taken) - 1e-9)
      expect(after).toBeLessThanOrEqual(tip + 1e-9)
    })
  })
})
