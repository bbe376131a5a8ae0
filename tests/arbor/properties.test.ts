/** What must hold of the formulas whatever is measured: bounds, direction in every input, units, order, never NaN. */
import fc from 'fast-check'
import { choices, type IncludedBark, type LifeStage, type Vigor } from '../../shared/choices'
import { isRefusal } from '../../shared/refusal'
import { baseAllowance, defaultRules } from '../../shared/rules'
import { convertLength, type LengthUnit } from '../../shared/units'
import { allowedRemoval } from '../../src/arbor/assess/allowedRemoval'
import { sharesAmong, sharesWithStems } from '../../src/arbor/assess/foliageShares'
import { lowAndHigh, priority } from '../../src/arbor/assess/priority'
import { standing, type Standing } from '../../src/arbor/assess/standing'
import { visitsNeeded } from '../../src/arbor/assess/visits'
import { scaffoldSpacing } from '../../src/arbor/assess/scaffoldSpacing'
import { yearsToRatio } from '../../src/arbor/assess/yearsToRatio'
import { aspectRatio, stemAbove } from '../../src/arbor/measure/aspectRatio'
import {
  cutDiameter,
  cutDose,
  cutHeight,
  cutShare,
  lateralFraction,
  lateralMin,
  tipAfterCut
} from '../../src/arbor/measure/cuts'
import { diameterFromGirth } from '../../src/arbor/measure/girth'
import { heightByPercent } from '../../src/arbor/measure/heightByPercent'
import { heightBySine } from '../../src/arbor/measure/heightBySine'
import { heightForClearance } from '../../src/arbor/measure/heightForClearance'
import { crownBaseMax, liveCrownRatio } from '../../src/arbor/measure/liveCrown'
import { stemsCombined } from '../../src/arbor/measure/stems'
import { treeHeight } from '../../src/arbor/measure/treeHeight'
import { growthAfterLoss, limbGrowth, projectedRatio } from '../../src/arbor/plan/growth'
import { brushKilograms, taperedVolume } from '../../src/arbor/price/brushWeight'
import { crewHours } from '../../src/arbor/price/crewHours'
import { priceWithMargin } from '../../src/arbor/price/priceWithMargin'
import { Money } from '../../shared/money'
import { always, between, falls, rises, valueOf } from './monotone'

const diameter = between(5, 1500)
const share = between(0, 1)
const someShare = between(0.001, 1)
const ratio = between(0.01, 1.6)
const bark = fc.constantFrom<IncludedBark>('none', 'partial', 'full')
const stages = Object.keys(choices.lifeStage) as LifeStage[]
const vigors = Object.keys(choices.vigor) as Vigor[]
const stage = fc.constantFrom(...stages)
const vigor = fc.constantFrom(...vigors)
const unit = fc.constantFrom<LengthUnit>('mm', 'cm', 'm', 'in', 'ft')

/** Heights of a limb and its tree that go together, in metres. */
const heights = fc
  .tuple(between(2, 40), between(0, 0.95), between(0, 0.95), share)
  .map(([height, base, start, reach]): [origin: number, tip: number, height: number, base: number] => [
    height * start,
    height * reach,
    height,
    height * base
  ])

const radian = Math.PI / 180

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

describe('PRIORITY', () => {
  const others = fc.tuple(heights, bark)

  it('rises with the aspect ratio, truly so above 0.5', () => {
    rises({
      over: ratio,
      others,
      formula: (of, [origin, tip, height, base], included) =>
        priority(of, origin, tip, height, base, included),
      moves: (of) => of > 0.5
    })
  })

  it('rises with the tip, truly so in the top fifth of the tree', () => {
    rises({
      over: share,
      others: fc.tuple(ratio, heights, bark),
      formula: (part, of, [origin, , height, base], included) =>
        priority(of, origin, height * part, height, base, included),
      moves: (part) => part > 0.8
    })
  })

  it('falls with the origin, truly so below half the height where the tip is high', () => {
    falls({
      over: between(0, 0.95),
      others: fc.tuple(ratio, heights, bark),
      formula: (part, of, [, tip, height, base], included) =>
        priority(of, height * part, tip, height, base, included),
      moves: (part, _of, [, tip, height, base]) => part < 0.5 && lowAndHigh(0, tip, height, base) > 1e-3
    })
  })

  it('falls with the crown base, which moves the upper third up', () => {
    falls({
      over: between(0, 0.95),
      others: fc.tuple(ratio, heights, bark),
      formula: (part, of, [origin, tip, height], included) =>
        priority(of, origin, tip, height, height * part, included),
      moves: (part, _of, [origin, tip, height]) =>
        tip < height && lowAndHigh(origin, tip, height, height * part) > 1e-3
    })
  })

  it('rises with included bark', () => {
    always(fc.tuple(ratio, heights), (of, [origin, tip, height, base]) => {
      const [none, partial, full] = (['none', 'partial', 'full'] as const).map((included) =>
        valueOf(priority(of, origin, tip, height, base, included))
      )
      expect(partial!).toBeGreaterThan(none!)
      expect(full!).toBeGreaterThan(partial!)
    })
  })

  it('stays from 0 to 100 up to a ratio of 1, and is not clamped above', () => {
    always(fc.tuple(ratio, heights, bark), (of, [origin, tip, height, base], included) => {
      const points = valueOf(priority(of, origin, tip, height, base, included))
      expect(points).toBeGreaterThanOrEqual(0)
      expect(points).toBeLessThanOrEqual(100 + Math.max(0, of - 1) * 90 + 1e-9)
    })
    expect(priority(1.4, 0, 10, 10, 2, 'full')).toBeCloseTo(136, 9)
  })

  it('is the same whatever unit the heights are in', () => {
    always(fc.tuple(ratio, heights, bark, unit), (of, limb, included, to) => {
      const [origin, tip, height, base] = limb
      const given = limb.map((value) => convertLength(value, 'm', to)) as typeof limb
      expect(priority(of, ...given, included)).toBeCloseTo(
        priority(of, origin, tip, height, base, included),
        4
      )
    })
  })
})

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
    const formula = (taken: number, origin: number, tip: number) => tipAfterCut(origin, tip, taken, 1 / 3)
    falls({ over: someShare, others: upright, formula })
    falls({
      over: someShare,
      others: upright,
      formula: (taken, origin, tip) => cutHeight(origin, tip, taken)
    })
    always(fc.tuple(someShare, share, upright), (taken, lateral, [origin, tip]) => {
      const after = valueOf(tipAfterCut(origin, tip, taken, lateral))
      expect(after).toBeGreaterThanOrEqual(cutHeight(origin, tip, taken) - 1e-9)
      expect(after).toBeLessThanOrEqual(tip + 1e-9)
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

describe('TREEHEIGHT', () => {
  const distance = between(5, 100)
  const top = between(1, 80)
  const base = between(-60, 0)

  it('rises with the distance and the top angle and falls with the base angle', () => {
    rises({ over: distance, others: fc.tuple(top, base), formula: treeHeight })
    rises({
      over: top,
      others: fc.tuple(distance, base),
      formula: (up, far, down) => treeHeight(far, up, down)
    })
    falls({
      over: base,
      others: fc.tuple(distance, top),
      formula: (down, far, up) => treeHeight(far, up, down)
    })
  })

  it('agrees with the percent scale and with slant distances where the top stands over the base', () => {
    always(fc.tuple(distance, top, base), (far, up, down) => {
      const height = valueOf(treeHeight(far, up, down))
      const percent = (angle: number) => 100 * Math.tan(angle * radian)
      const slant = (angle: number) => far / Math.cos(angle * radian)
      expect(valueOf(heightByPercent(far, percent(up), percent(down))) / height).toBeCloseTo(1, 9)
      expect(valueOf(heightBySine(slant(up), up, slant(down), down)) / height).toBeCloseTo(1, 9)
    })
  })

  it('is refused, with a sentence, where the top is not above the base', () => {
    always(fc.tuple(distance, top), (far, angle) => {
      expect(isRefusal(treeHeight(far, angle, angle))).toBe(true)
      expect(isRefusal(heightByPercent(far, angle, angle + 1))).toBe(true)
      expect(isRefusal(heightBySine(far, -angle, far, angle))).toBe(true)
    })
  })
})

describe('PROJECTEDRATIO and growth', () => {
  const years = between(0, 30)
  const yearly = between(0.1, 20)

  it('rises with the limb’s growth and falls with the stem’s', () => {
    const others = fc.tuple(diameter, diameter, years, yearly)
    rises({
      over: yearly,
      others,
      formula: (limbs, limb, stem, after, stems) => projectedRatio(limb, stem, after, limbs, stems),
      moves: (_limbs, _limb, _stem, after) => after > 0.1
    })
    falls({
      over: yearly,
      others,
      formula: (stems, limb, stem, after, limbs) => projectedRatio(limb, stem, after, limbs, stems),
      moves: (_stems, _limb, _stem, after) => after > 0.1
    })
  })

  it('goes towards 1 where both grow alike, and never past it', () => {
    always(fc.tuple(diameter, diameter, years, yearly), (limb, stem, after, both) => {
      const now = limb / stem
      const then = valueOf(projectedRatio(limb, stem, after, both, both))
      expect(Math.abs(1 - then)).toBeLessThanOrEqual(Math.abs(1 - now) + 1e-12)
      expect((then - 1) * (now - 1)).toBeGreaterThanOrEqual(0)
    })
  })

  it('reaches the goal in the years that it takes, or says that it never does', () => {
    always(
      fc.tuple(diameter, diameter, between(0.2, 0.9), yearly, yearly),
      (limb, stem, goal, limbs, stems) => {
        const needed = yearsToRatio(limb, stem, goal, limbs, stems)
        if (limb / stem <= goal) expect(needed).toBe(0)
        else if (limbs >= goal * stems) expect(isRefusal(needed)).toBe(true)
        else expect(projectedRatio(limb, stem, valueOf(needed), limbs, stems)).toBeCloseTo(goal, 6)
      }
    )
  })

  it('lets a limb gain less the more it lost, and never less than nothing', () => {
    const whole = fc.integer({ min: 0, max: 10 })
    falls({
      over: share,
      others: fc.tuple(yearly, whole),
      formula: (lost, grown, after) => growthAfterLoss(grown, lost, after),
      moves: (_lost, _grown, after) => after > 0
    })
    rises({ over: yearly, others: fc.tuple(ratio), formula: (stem, of) => limbGrowth(stem, of, false) })
    always(fc.tuple(yearly, share, whole, ratio), (grown, lost, after, of) => {
      const gained = valueOf(growthAfterLoss(grown, lost, after))
      expect(gained).toBeGreaterThanOrEqual(0)
      expect(gained).toBeLessThanOrEqual(grown * after * (1 + 1e-12))
      expect(limbGrowth(grown, of, true)).toBeLessThanOrEqual(grown)
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

describe('BRUSHWEIGHT and CREWHOURS', () => {
  const cut = between(5, 400)
  const length = between(0.2, 12)
  const species = fc.constantFrom('red maple', 'live oak', 'basswood', 'hardwood')

  it('weighs more for a thicker and a longer piece', () => {
    rises({ over: cut, others: fc.tuple(length, species), formula: brushKilograms })
    rises({
      over: length,
      others: fc.tuple(cut, species),
      formula: (long, thick, of) => brushKilograms(thick, long, of)
    })
  })

  it('weighs twice as much at twice the length and four times at twice the diameter', () => {
    always(fc.tuple(cut, length, species), (thick, long, of) => {
      const once = valueOf(brushKilograms(thick, long, of))
      expect(valueOf(brushKilograms(thick, 2 * long, of)) / once).toBeCloseTo(2, 9)
      expect(valueOf(brushKilograms(2 * thick, long, of)) / once).toBeCloseTo(4, 9)
    })
  })

  it('gives a piece more volume the thicker either end is', () => {
    const others = fc.tuple(cut, length)
    rises({ over: cut, others, formula: (one, other, long) => taperedVolume(one, other, long) })
    always(fc.tuple(cut, cut, length), (butt, tip, long) => {
      expect(taperedVolume(butt, tip, long) / taperedVolume(tip, butt, long)).toBeCloseTo(1, 9)
    })
  })

  it('takes no less time for a thicker or a higher cut, and more for one cut more', () => {
    const level = () => false
    const high = between(0, 20)
    const atTen = fc.constant<[number]>([10])
    const hours = (thick: number, up: number) => crewHours([{ diameter: thick, height: up }])
    rises<[number]>({ over: cut, others: atTen, formula: hours, moves: level, steps: 3 })
    rises<[number]>({
      over: high,
      others: fc.constant<[number]>([30]),
      formula: (up, thick) => hours(thick, up),
      moves: level,
      steps: 3
    })
    always(fc.tuple(cut, high, cut, high), (a, aHigh, b, bHigh) => {
      const one = [{ diameter: a, height: aHigh }]
      const two = [...one, { diameter: b, height: bHigh }]
      expect(crewHours(two)).toBeGreaterThan(crewHours(one))
      expect(crewHours(one, 'no machine')).toBeGreaterThan(crewHours(one, 'open'))
    })
  })
})

describe('PRICE', () => {
  const price = (cost: number, overhead: number, margin: number, least = 0) =>
    priceWithMargin(new Money(cost), new Money(overhead), new Money(margin), new Money(least)).toNumber()
  const cost = between(10, 5000)
  const rate = between(0, 0.9)

  it('rises with the cost, the overhead, the margin and the minimum', () => {
    rises({ over: cost, others: fc.tuple(rate, rate), formula: price })
    rises({
      over: rate,
      others: fc.tuple(cost, rate),
      formula: (over, of, margin) => price(of, over, margin)
    })
    rises({
      over: rate,
      others: fc.tuple(cost, rate),
      formula: (margin, of, over) => price(of, over, margin)
    })
    rises({
      over: cost,
      others: fc.tuple(cost, rate, rate),
      formula: (least, of, over, margin) => price(of, over, margin, least),
      moves: (least, of, over, margin) => least > price(of, over, margin)
    })
  })

  it('never lies below the cost with its overhead', () => {
    always(fc.tuple(cost, rate, rate), (of, over, margin) => {
      expect(valueOf(price(of, over, margin))).toBeGreaterThanOrEqual(of * (1 + over) - 1e-9)
    })
  })
})

describe('girth and spacing', () => {
  it('rise with what they are taken from, in its unit', () => {
    rises({ over: diameter, others: fc.constant<[]>([]), formula: diameterFromGirth })
    rises({ over: between(3, 40), others: fc.constant<[]>([]), formula: scaffoldSpacing })
    always(fc.tuple(diameter, unit), (girth, to) => {
      const inUnit = diameterFromGirth(convertLength(girth, 'mm', to))
      expect(convertLength(inUnit, to, 'mm') / diameterFromGirth(girth)).toBeCloseTo(1, 9)
    })
  })
})
