import { Money, printMoney } from '../../shared/money'
import { brushVolumes } from '../../src/formulas/brush'
import type { Estimate } from '../../src/price/estimate'
import { estimatePlan, priceOf } from '../../src/price/estimatePlan'
import { thisVisit, wholeProgram, withinBudget } from '../../src/price/offers'
import { marginOfMarkup, markupOfMargin, priceWithMargin, priceWithMarkup } from '../../src/formulas/price'
import { rateNames } from '../../src/price/rateBook'
import { crewHour, inventedRatesIn, type Rates } from '../../src/price/rates'
import { wholeUp } from '../../src/formulas/boundary'
import { samplePlan } from '../sheets/samplePlan'

const plan = samplePlan()
const rates: Rates = { ...inventedRatesIn['in-ft'], taxRate: '0.0825' }
const estimate = estimatePlan(plan, rates)
const sum = (amounts: Money[]) => amounts.reduce((total, amount) => total.plus(amount), new Money(0))

describe('the estimate of the invented sample', () => {
  test('has lines, later years and trees budgeted by their trunk, so that the checks below mean something', () => {
    expect(estimate.lines.length).toBeGreaterThan(15)
    expect(estimate.years.length).toBeGreaterThan(2)
    expect(estimate.lines.some(({ relief }) => relief === null)).toBe(true)
  })

  test('a budget by trunk says where the trunk is outside the range of its source', () => {
    const of = (inches: number) => {
      const sized = samplePlan()
      const tree = sized.trees.find((each) => each.tree.limbs.length === 0)!
      Object.assign(tree.tree, { trunk: inches * 25.4 })
      return estimatePlan(sized, rates).lines.find((line) => line.tree === tree.tree.id)!.basis
    }
    for (const inches of [4, 16]) expect(of(inches)).not.toContain('outside')
    for (const inches of [3.9, 16.1]) expect(of(inches)).toMatch(/4 to 16 in trunks\); .*outside that range$/)
  })

  test('the shares of a year add up to its mobilization, travel and loads, to the cent', () => {
    for (const year of estimate.years) {
      const own = estimate.lines.filter((line) => line.year === year.year)
      expect(sum(own.map(({ money }) => money.shared)).toString()).toBe(year.shared.toString())
      expect(year.shared.toString()).toBe(sum([year.mobilization, year.travel, year.loadCharges]).toString())
    }
  })

  test('every printed amount is whole in cents and the cost is the sum of what is printed', () => {
    for (const { money, price } of estimate.lines) {
      for (const amount of [...Object.values(money), price]) expect(amount.times(100).isInteger()).toBe(true)
      expect(money.cost.equals(sum([money.crew, money.disposal, money.shared]))).toBe(true)
    }
  })

  test('totals are sums of printed lines', () => {
    expect(estimate.subtotal.equals(sum(estimate.lines.map(({ price }) => price)))).toBe(true)
    expect(estimate.total.equals(estimate.subtotal.plus(estimate.tax))).toBe(true)
  })

  test('crew days and loads are whole, and enough', () => {
    for (const { crewHours, crewDays, loads, chipVolume } of estimate.years) {
      expect(crewDays * rates.dayHours).toBeGreaterThanOrEqual(crewHours)
      expect((crewDays - 1) * rates.dayHours).toBeLessThan(crewHours)
      expect(loads * rates.loadVolume).toBeGreaterThanOrEqual(chipVolume)
    }
    expect([wholeUp(2.1 / 0.7), wholeUp(3.0001), wholeUp(0)]).toEqual([3, 4, 0])
  })

  test('no line is charged less than the least charge', () => {
    const dear = estimatePlan(plan, { ...rates, minimumPerTree: '150.00' })
    for (const { price } of dear.lines) expect(price.toNumber()).toBeGreaterThanOrEqual(150)
    expect(dear.lines.some(({ price }) => price.equals(150))).toBe(true)
  })

  test('says how many rates are still invented', () => {
    expect([estimate.inventedRates, estimate.inventedCount, estimate.rateCount]).toEqual([
      true,
      rateNames.length,
      rateNames.length
    ])
    const owned = estimatePlan(plan, { ...rates, invented: ['taxRate'] })
    expect([owned.inventedRates, owned.inventedCount]).toEqual([true, 1])
    expect(estimatePlan(plan, { ...rates, invented: [] }).inventedRates).toBe(false)
  })

  test('holds for the days of the rates, over the end of a month', () => {
    expect(estimate.validUntil).toBe('2026-04-01')
    expect(estimatePlan(plan, { ...rates, validityDays: 365 }).validUntil).toBe('2027-03-02')
  })

  test('a currency without minor units has no fractions anywhere', () => {
    const yen = estimatePlan(plan, { ...rates, minorDigits: 0, currency: 'JPY' })
    for (const { price, money } of yen.lines)
      expect([price.isInteger(), money.shared.isInteger()]).toEqual([true, true])
    expect(yen.tax.isInteger()).toBe(true)
  })
})

describe('margin and markup', () => {
  const cost = new Money(600)
  const none = new Money(0)

  // Common bookkeeping arithmetic: P = C(1 + m), P = C/(1 − g), g = m/(1 + m), m = g/(1 − g).
  test('25 % markup on 600 is 750.00, a 25 % margin 800.00, which is a markup of a third', () => {
    expect(printMoney(priceWithMarkup(cost, none, new Money('0.25')), 2)).toBe('750.00')
    expect(printMoney(priceWithMargin(cost, none, new Money('0.25')), 2)).toBe('800.00')
    expect(printMoney(markupOfMargin(new Money('0.25')).times(100), 2)).toBe('33.33')
  })

  // Bookkeeping example: cost 40, markup 50 %, price 60, margin 33.33 %.
  test('a markup of 50 % on 40 is a price of 60 and a margin of 33.33 %', () => {
    expect(priceWithMarkup(new Money(40), none, new Money('0.5')).toString()).toBe('60')
    expect(printMoney(marginOfMarkup(new Money('0.5')).times(100), 2)).toBe('33.33')
  })

  test('each is the way back of the other, and both give one price', () => {
    for (const share of ['0', '0.1', '0.25', '0.4', '0.95']) {
      const margin = new Money(share)
      expect(marginOfMarkup(markupOfMargin(margin)).minus(margin).abs().lessThan('1e-24')).toBe(true)
      const both = [
        priceWithMargin(cost, none, margin),
        priceWithMarkup(cost, none, markupOfMargin(margin))
      ] as const
      expect(both[0].minus(both[1]).abs().lessThan('1e-20')).toBe(true)
    }
  })

  test('the profit of the rates is taken as it is given', () => {
    const bare = {
      ...rates,
      contingencyRate: '0',
      overheadRate: '0',
      profitRate: '0.25',
      minimumPerTree: '0'
    }
    expect(printMoney(priceOf(cost, { ...bare, profitKind: 'margin' }), 2)).toBe('800.00')
    expect(printMoney(priceOf(cost, { ...bare, profitKind: 'markup' }), 2)).toBe('750.00')
  })
})

describe('the volume of brush', () => {
  // Oregon DEQ conversion factors: loose yard debris 250, green chips 473 lb/yd³; arithmetic ours.
  test('600 lb fill 2.400 yd³ loose and 1.268 yd³ as green chips', () => {
    const { loose, chips } = brushVolumes(600, 'in-ft')
    expect([loose.toFixed(3), chips.toFixed(3)]).toEqual(['2.400', '1.268'])
  })

  // NIST SP 811, exact by definition, from memory: 1 lb = 0.45359237 kg, 1 yd³ = 0.764554857984 m³.
  test('the same weight in kilograms fills the same room in cubic meters', () => {
    const metric = brushVolumes(600 * 0.45359237, 'cm-m')
    expect(metric.loose / 0.764554857984).toBeCloseTo(2.4, 10)
    expect(metric.chips / 0.764554857984).toBeCloseTo(600 / 473, 10)
  })
})

describe('what a client can choose', () => {
  const spent = (budget: number, of: Estimate = estimate) => withinBudget(of, new Money(budget))

  test('the first visit, and every visit, are sums of printed lines with tax on them', () => {
    const now = thisVisit(estimate)
    expect(now.lines.every(({ visit }) => visit === 1)).toBe(true)
    expect(now.total.equals(now.subtotal.plus(now.tax))).toBe(true)
    expect(wholeProgram(estimate).total.equals(estimate.total)).toBe(true)
    expect(wholeProgram(estimate).uncovered.isZero()).toBe(true)
  })

  test('a budget is never exceeded, tax included, and visits of a tree are bought in order', () => {
    for (const budget of [0, 59.99, 250, 1000, 2000, 3333.33]) {
      const offer = spent(budget)
      expect(offer.total.toNumber()).toBeLessThanOrEqual(budget)
      for (const line of offer.lines) {
        const before = estimate.lines.filter(({ tree, visit }) => tree === line.tree && visit < line.visit)
        for (const each of before) expect(offer.lines).toContain(each)
      }
    }
  })

  test('enough money relieves everything that can be relieved', () => {
    const offer = spent(100_000)
    expect(offer.relief).toBeCloseTo(offer.reliefOfAll, 6)
    expect(offer.reliefOfAll).toBeGreaterThan(0)
  })

  test('the tax fits to the cent: a cent less buys less', () => {
    const offer = spent(2000)
    const exact = withinBudget(estimate, offer.total)
    expect(exact.lines).toEqual(offer.lines)
    expect(withinBudget(estimate, offer.total.minus('0.01')).relief).toBeLessThanOrEqual(offer.relief)
  })

  test('trees without limbs are named, not ranked', () => {
    const bare = estimate.lines.filter(({ relief }) => relief === null).map(({ tree }) => tree)
    expect(spent(2000).unranked).toEqual(bare)
    expect(spent(2000).lines.some(({ relief }) => relief === null)).toBe(false)
  })
})

describe('the hour of a crew', () => {
  test('three persons at 28.00 with 40 % burden and 34.00 of equipment, all invented, cost 151.60', () => {
    expect(crewHour(rates).toString()).toBe('151.6')
  })
})
