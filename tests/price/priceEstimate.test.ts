import { Money, printMoney } from '../../shared/money'
import { brushVolumes } from '../../src/formulas/brush'
import { estimatePlan } from '../../src/price/estimatePlan'
import { firstVisit, firstVisits, someTrees, wholeProgram } from '../../src/price/offers'
import { priceOf } from '../../src/price/priceLines'
import { withinBudget } from '../../src/price/withinBudget'
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
  test('has lines, later years and a tree without limbs, so that the checks below mean something', () => {
    expect(estimate.lines.length).toBeGreaterThan(15)
    expect(estimate.years.length).toBeGreaterThan(2)
    expect(estimate.budgetFigures.map(({ tree }) => tree)).toEqual(['T15'])
    expect(estimate.lines.map(({ tree }) => tree)).not.toContain('T15')
  })

  test('a budget figure says where the trunk is outside the range of its source', () => {
    const of = (inches: number) => {
      const sized = samplePlan()
      const tree = sized.trees.find((each) => each.tree.limbs.length === 0)!
      Object.assign(tree.tree, { trunk: inches * 25.4 })
      return estimatePlan(sized, rates).budgetFigures[0]!
    }
    for (const inches of [4, 16])
      expect([of(inches).outside, of(inches).work.basis.includes('outside')]).toEqual([false, false])
    for (const inches of [3.9, 16.1])
      expect([of(inches).outside, of(inches).work.basis.includes('outside its range')]).toEqual([true, true])
  })

  test('the shares of a year add up to its mobilization, travel and loads, to the cent', () => {
    for (const year of estimate.years) {
      const own = estimate.lines.filter((line) => line.year === year.year)
      expect(sum(own.map(({ money }) => money.shared)).toString()).toBe(year.shared.toString())
      expect(year.shared.toString()).toBe(sum([year.mobilization, year.travel, year.loadCharges]).toString())
    }
  })

  test('a trip is charged at its least charge at least, shared by its lines to the cent, and no more', () => {
    const least = new Money('600')
    const dear = estimatePlan(plan, { ...rates, minimumPerTrip: '600' })
    const trips = dear.years.map((trip) => ({
      ...trip,
      price: sum(dear.lines.filter(({ year }) => year === trip.year).map(({ price }) => price))
    }))
    expect(trips.some(({ topUp }) => topUp.greaterThan(0))).toBe(true)
    expect(trips.some(({ topUp }) => topUp.isZero())).toBe(true)
    for (const { price, charged, topUp } of trips) {
      expect(price.toString()).toBe(Money.max(charged, least).toString())
      expect(price.toString()).toBe(charged.plus(topUp).toString())
    }
  })

  test('one person with a pole does what can be reached from the ground, the crew the rest', () => {
    const [byPole, byCrew] = [true, false].map((is) => estimate.lines.filter((line) => line.byPole === is))
    expect([byPole!.length > 0, byCrew!.length > 0]).toEqual([true, true])
    for (const line of byPole!)
      expect([line.persons, line.minutes.setUp]).toEqual([1, rates.setUpPole + rates.betweenTrees])
    for (const line of byCrew!) expect(line.persons).toBe(rates.crewPersons)
    const never = estimatePlan(plan, { ...rates, poleHeight: 0 })
    expect(never.lines.some((line) => line.byPole)).toBe(false)
    expect(never.subtotal.greaterThan(estimate.subtotal)).toBe(true)
  })

  test('disposal is charged by weight or by load and never by both', () => {
    const both = { ...rates, disposalPerWeight: '1', loadCharge: '70' }
    const byWeight = estimatePlan(plan, { ...both, disposalKind: 'weight' })
    const byLoad = estimatePlan(plan, { ...both, disposalKind: 'load' })
    expect(sum(byWeight.years.map(({ loadCharges }) => loadCharges)).isZero()).toBe(true)
    expect(sum(byWeight.lines.map(({ money }) => money.disposal)).greaterThan(0)).toBe(true)
    expect(sum(byLoad.lines.map(({ money }) => money.disposal)).isZero()).toBe(true)
    expect(sum(byLoad.years.map(({ loadCharges }) => loadCharges)).greaterThan(0)).toBe(true)
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
    expect(dear.lines.some(({ money }) => money.charged.equals(150))).toBe(true)
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
  const spent = (budget: number | string) => withinBudget(estimate, new Money(budget))

  test('the first visit, and every visit, are sums of printed lines with tax on them', () => {
    for (const offer of [firstVisit(estimate), wholeProgram(estimate)]) {
      expect(offer.total.equals(offer.subtotal.plus(offer.tax))).toBe(true)
      expect(offer.subtotal.equals(sum(offer.lines.map(({ price }) => price)))).toBe(true)
    }
    expect(firstVisit(estimate).lines.every(({ visit }) => visit === 1)).toBe(true)
    expect(wholeProgram(estimate).total.equals(estimate.total)).toBe(true)
    expect(wholeProgram(estimate).forecast).toBeNull()
  })

  test('later visits that are not bought are a range around what they would cost, to two figures', () => {
    const { forecast } = firstVisit(estimate)
    const later = estimate.lines.filter(({ visit }) => visit > 1)
    expect(forecast!.lines.map(({ tree, visit }) => [tree, visit])).toEqual(
      later.map(({ tree, visit }) => [tree, visit])
    )
    expect(later.length).toBeGreaterThan(2)
    for (const each of [forecast!, ...forecast!.by]) {
      const { low, high, total } = each
      expect(low.lessThanOrEqualTo(total.times('0.7'))).toBe(true)
      expect(high.greaterThanOrEqualTo(total.times('1.3'))).toBe(true)
      for (const end of [low, high]) expect(end.toSignificantDigits(2).equals(end)).toBe(true)
      expect(low.greaterThan(total.times('0.63'))).toBe(true)
      expect(high.lessThan(total.times('1.43'))).toBe(true)
    }
  })

  test('some trees bear their own trip: all of its shared costs, and never the prices that assume the others', () => {
    const [tree] = firstVisits(estimate).filter(({ byPole }) => !byPole)
    const offer = someTrees(estimate, new Set([tree!.tree]))
    const [line] = offer.lines
    expect(offer.lines).toHaveLength(1)
    expect(line!.money.shared.equals(offer.years[0]!.shared)).toBe(true)
    expect(line!.price.greaterThan(tree!.price)).toBe(true)
    expect(offer.waiting).toHaveLength(firstVisits(estimate).length - 1)
    expect(offer.forecast === null || offer.forecast.lines.every((each) => each.tree === tree!.tree)).toBe(
      true
    )
  })

  test('a budget is never exceeded, tax included, at prices that assume no other tree', () => {
    for (const budget of [0, 59.99, 250, 400, 1000, 1500, 3333.33]) {
      const offer = spent(budget)
      expect(offer.total.toNumber()).toBeLessThanOrEqual(budget)
      const again = someTrees(estimate, new Set(offer.lines.map(({ tree }) => tree)))
      expect(again.total.equals(offer.total)).toBe(true)
      expect(offer.lines.every(({ visit }) => visit === 1)).toBe(true)
    }
  })

  test('a budget below the cheapest visit offers nothing and says what that visit costs, trip and tax included', () => {
    const { cheapest, lines, total } = spent('1')
    expect([lines.length, total.toString()]).toEqual([0, '0'])
    const each = firstVisits(estimate).map(({ tree }) => someTrees(estimate, new Set([tree])).total)
    expect(cheapest!.total.toString()).toBe(each.reduce((a, b) => Money.min(a, b)).toString())
    expect(spent(cheapest!.total.toString()).lines).toHaveLength(1)
    expect(spent(cheapest!.total.minus('0.01').toString()).lines).toEqual([])
  })

  test('enough money buys the first visit to every tree and no more', () => {
    const offer = spent(100_000)
    expect(offer.total.equals(firstVisit(estimate).total)).toBe(true)
    expect(offer.waiting).toEqual([])
    expect(offer.relief).toBeCloseTo(offer.reliefOfAll, 6)
    expect(offer.reliefOfAll).toBeGreaterThan(0)
  })

  test('trees without limbs are part of no offer', () => {
    for (const offer of [firstVisit(estimate), wholeProgram(estimate), spent(2000)]) {
      expect(offer.lines.map(({ tree }) => tree)).not.toContain('T15')
      expect(offer.budgetFigures.map(({ tree }) => tree)).toEqual(['T15'])
    }
  })
})

describe('the hour of a crew', () => {
  test('three persons at 28.00 with 40 % burden and 34.00 of equipment, all invented, cost 151.60', () => {
    expect(crewHour(rates).toString()).toBe('151.6')
  })
})
