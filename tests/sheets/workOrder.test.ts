import { wholeProgram } from '../../src/price/offers'
import type { Cut, Visit } from '../../src/plan/plan'
import { estimatePlan } from '../../src/price/estimatePlan'
import { cautions } from '../../src/sheets/cautions'
import { crewDays } from '../../src/sheets/crewDays'
import { describeWorkOrder } from '../../src/sheets/work-order/workOrder'
import { roundOf, type Stop } from '../../src/sheets/work-order/workOrderDays'
import { inSequence } from '../../src/sheets/work-order/workOrderTree'
import { metricRows, planOf, samplePlan, withClosedWindow } from './samplePlan'
import { formatAt, hasFormula, linesOf, promises, runningText } from './sheetTexts'

const plan = samplePlan()
const estimate = estimatePlan(plan)
const sheet = describeWorkOrder(plan, wholeProgram(estimate))
const text = runningText(sheet)

const headers = sheet.rows.find((row) => row[0] === 'Done')!.map(String)
const at = (header: string) => headers.indexOf(header)
/** Rows of the tables of cuts: a box and a number of the step. */
const cutRows = sheet.rows.filter((row) => row[0] === '☐' && typeof row[1] === 'number')

describe('the work order', () => {
  const stops = roundOf(plan, estimate, 2026)

  test('orders every cut of the year once, and no other', () => {
    const expected = stops.flatMap(({ visit }) => inSequence(visit.cuts).map(({ limb }) => limb.id))
    expect(cutRows.map((row) => row[at('Limb')])).toEqual(expected)
    const planned = plan.trees.flatMap(({ visits }) => visits[0]?.cuts ?? [])
    expect(expected.length).toBe(planned.length)
    expect(planned.length).toBeGreaterThan(20)
  })

  test('gives height, bearing, size, lateral and tip as numbers, the lateral never rounded down', () => {
    const cuts = stops.flatMap(({ visit }) => inSequence(visit.cuts))
    cuts.forEach((cut, index) => {
      const row = cutRows[index]!
      const size = row[at('Cut size (in)')]
      if (cut.cutDiameter === null) expect(size).toBeNull()
      else expect(Math.abs((size as number) - cut.cutDiameter / 25.4)).toBeLessThanOrEqual(0.05001)
      const height = cut.kind === 'remove' ? cut.limb.origin : cut.cutHeight
      if (height === null) expect(row[at('Height of cut (ft)')]).toBeNull()
      else
        expect(Math.abs((row[at('Height of cut (ft)')] as number) - height / 0.3048)).toBeLessThanOrEqual(
          0.05001
        )
      expect(row[at('Must')]).toBe(cut.must ? 'must' : 'if time allows')
      expect(row[at('Bearing from north')]).toBe(cut.limb.bearing)
      expect(row[at('Foliage')]).toBe(Math.round(cut.dose * 1000) / 1000)
      const lateral = row[at('Lateral at least (in)')]
      if (cut.lateralMin === null) expect(lateral).toBeNull()
      else expect(lateral).toBeGreaterThanOrEqual(cut.lateralMin / 25.4 - 1e-9)
      const tip = row[at('All ends below (ft)')]
      if (cut.tipAfter === null) expect(tip).toBeNull()
      else expect(tip).toBe(Math.floor((cut.tipAfter / 0.3048) * 10 + 1e-6) / 10)
    })
  })

  test('says the ceiling of each tree, never rounded above it, and names the leader', () => {
    for (const { tree, visit } of stops) {
      const live = visit.cuts.some((cut) => cut.live)
      const start = sheet.rows.findIndex((row) => String(row[0]).startsWith(`Tree ${tree.tree.id}:`))
      const block = sheet.rows.slice(start, start + 6)
      const dose = String(block.find((row) => row[0] === 'Foliage')![3])
      const ceiling = /^Not to exceed ([\d.]+) %/.exec(dose)
      if (live) expect(Number(ceiling![1]) / 100).toBeLessThanOrEqual(visit.allowedRemoval + 1e-9)
      else expect(dose).toContain('No live wood is cut')
      expect(String(block.find((row) => row[0] === 'Leader, not cut')![3])).toContain(
        tree.leader.limb === null ? 'The trunk' : `Limb ${tree.leader.limb.id}`
      )
    }
  })

  test('asks for a written reason for each cut that needs one, and only for these', () => {
    const expected = stops.flatMap(({ visit }) => inSequence(visit.cuts).filter((cut) => cut.needsReason))
    const asked = sheet.rows.filter((row) => String(row[0]).includes('reason before the cut'))
    expect(asked.length).toBe(expected.length)
    expect(expected.length).toBeGreaterThan(0)
  })

  test('gives every caution, what is never done, and the checks of each day', () => {
    for (const caution of cautions) expect(text).toContain(caution)
    for (const rule of ['leader', 'Inner and lower foliage stays', 'Nothing beyond the foliage', 'spurs'])
      expect(text).toContain(rule)
    expect(text).toContain('All other ends of this limb are kept below the tip shown.')
    expect(text).toContain('an undercut away from the final cut')
    const days = crewDays(stops, estimate.rates.dayHours).length
    for (const check of ['Wires:', 'Nests,', 'Traffic and walkers:', 'Saws, ropes'])
      expect(text.split(check).length - 1).toBe(days)
    expect(promises(text, cautions)).toEqual([])
  })

  test('is set in 12 points or more wherever something stands', () => {
    sheet.rows.forEach((row, r) => {
      row.forEach((cell, c) => {
        if (cell !== null) expect([r, c, Number(formatAt(sheet, r, c).size) >= 12]).toEqual([r, c, true])
      })
    })
  })

  test('prints as wide as a page of either paper at most, so that the type keeps its size', () => {
    // 7 pixels a character and 5 a column at 96 to the inch; 1.4 in of margins on 8.27 and 8.5 in of paper.
    const inches = sheet.widths.reduce((sum, width) => sum + width * 7 + 5, 0) / 96
    expect(inches).toBeLessThanOrEqual(8.27 - 1.4)
  })

  test('lists the trees and rows that it sends nobody to, with the reason', () => {
    expect(text).toContain('Tree T15: no limbs listed; survey them')
    expect(plan.unplanned.map(({ row }) => row)).toEqual([57, 58, 59, 63, 64])
    expect(text).toContain('Tree T13, rows 57 to 59 of the inventory: could not be planned as written')
    expect(text).toContain('Tree T14, row 63 of the inventory')
    expect(text).toContain('No tree named, row 64 of the inventory')
  })

  test('a limb held for the arborist is named with the tree', () => {
    const sample = samplePlan()
    const hold = (visit: Visit): Visit => ({
      ...visit,
      limbs: visit.limbs.map((state) =>
        state.limb.id === 'D'
          ? { ...state, decision: 'hold', reason: 'shortened further it would be a stub' }
          : state
      )
    })
    const held = {
      ...sample,
      trees: sample.trees.map((tree) =>
        tree.tree.id === 'T03' ? { ...tree, visits: tree.visits.map(hold) } : tree
      )
    }
    expect(runningText(describeWorkOrder(held, wholeProgram(estimate)))).toContain(
      'On site Limb D: shortened further it would be a stub. The arborist decides.'
    )
  })

  test('says at its head which windows are closed, with the source', () => {
    const closed = withClosedWindow()
    const order = runningText(describeWorkOrder(closed, wholeProgram(estimate)))
    expect(order).toContain('An invented window is closed. Source: invented for this test')
    expect(order.indexOf('An invented window')).toBeLessThan(order.indexOf('Cautions'))
    expect(text).not.toContain('An invented window')
  })

  test('has no formula, and a year without a cut orders nothing', () => {
    expect(sheet.rows.flat().some(hasFormula)).toBe(false)
    const quiet = describeWorkOrder(plan, wholeProgram(estimate), { year: 2027 })
    expect(runningText(quiet)).toContain('No cut is planned in 2027, so nothing is ordered.')
    expect(quiet.rows.some((row) => row[0] === 'Done')).toBe(false)
  })

  test('orders the visits of a later year by themselves', () => {
    const later = describeWorkOrder(plan, wholeProgram(estimate), { year: 2029 })
    const trees = linesOf(later).filter((line) => /^Tree T\d+:/.test(line)).length
    expect(trees).toBe(
      plan.trees.filter(({ visits }) => visits.some(({ year, cuts }) => year === 2029 && cuts.length > 0))
        .length
    )
    expect(trees).toBeGreaterThan(1)
  })

  test('refuses a day without hours', () => {
    expect(() => describeWorkOrder(plan, wholeProgram(estimate), { productiveHours: 0 })).toThrow(/above 0/)
    expect(() => describeWorkOrder(plan, wholeProgram(estimate), { productiveHours: NaN })).toThrow(/above 0/)
  })

  test('is in centimeters and meters for a metric inventory', () => {
    const metric = planOf(metricRows())
    const order = describeWorkOrder(metric, wholeProgram(estimatePlan(metric)))
    expect(order.rows.find((row) => row[0] === 'Done')).toContain('Cut size (cm)')
    expect(order.page.paper).toBe('a4')
  })

  test('shows the whole name of a limb, in a row as high as its lines', () => {
    const named = planOf(metricRows(['South scaffold', null, 11, 14, 2, 8]))
    const order = describeWorkOrder(named, wholeProgram(estimatePlan(named)))
    const row = order.rows.findIndex((cells) => cells[2] === 'South scaffold')
    expect(formatAt(order, row, 2).wrap).toBe(true)
    const heightOf = ({ heights }: typeof order, of: number) =>
      heights.find((each) => of >= each.row && of < each.row + each.rows)!.points
    const plainRow = sheet.rows.findIndex((cells) => cells[2] === 'B' && typeof cells[1] === 'number')
    expect(heightOf(order, row)).toBeGreaterThan(heightOf(sheet, plainRow) + 12)
  })

  test('begins each later day on a page of its own', () => {
    const several = describeWorkOrder(plan, wholeProgram(estimate), { productiveHours: 3 })
    const days = several.rows.flatMap((row, index) => (/^Day \d+: /.test(String(row[0])) ? [index] : []))
    expect(days.length).toBeGreaterThan(1)
    for (const row of days.slice(1)) expect(several.page.breaks).toContain(row)
  })
})

describe('crew days', () => {
  const stop = (hours: number): Stop => ({
    tree: plan.trees[0]!,
    visit: plan.trees[0]!.visits[0]!,
    hours
  })
  const hoursOf = (list: number[], limit: number) =>
    crewDays(list.map(stop), limit).map(({ stops: own }) => own.map(({ hours }) => hours))

  test('are filled in order and never beyond the productive hours', () => {
    expect(hoursOf([3, 3, 2, 4, 1], 7)).toEqual([
      [3, 3],
      [2, 4, 1]
    ])
  })

  test('a day filled exactly is not split by the arithmetic of tenths', () => {
    expect(hoursOf([0.1, 0.2, 0.3, 0.4], 1)).toEqual([[0.1, 0.2, 0.3, 0.4]])
  })

  test('a tree longer than a day stands alone, and its day says so', () => {
    expect(hoursOf([2, 9, 2], 7)).toEqual([[2], [9], [2]])
    const long = runningText(describeWorkOrder(plan, wholeProgram(estimate), { productiveHours: 0.5 }))
    const split = crewDays(roundOf(plan, estimate, 2026), 0.5)
    const planned = [...long.matchAll(/longer than a day: plan (\d+) days/g)].map(([, days]) => Number(days))
    expect(planned.length).toBeGreaterThan(2)
    // The head counts the days as the days themselves do.
    const more = planned.reduce((sum, days) => sum + days - 1, 0)
    expect(long).toContain(` in ${String(split.length + more)} crew days.`)
  })

  test('keep every tree once, whatever the hours', () => {
    const stops = roundOf(plan, estimate, 2026)
    for (const limit of [0.3, 1, 2.5, 7, 100])
      expect(crewDays(stops, limit).flatMap(({ stops: own }) => own)).toEqual(stops)
  })

  test('trees of one place follow each other', () => {
    const sites = roundOf(plan, estimate, 2026).map(({ tree }) => tree.tree.site)
    const runs = sites.filter((site, index) => site !== sites[index - 1])
    expect(runs.length).toBe(new Set(sites).size)
  })
})

describe('the order of cuts on a tree', () => {
  test('is dead and broken wood first, then what must be done, then the rest, each from the top down', () => {
    const [base] = plan.trees[0]!.visits[0]!.cuts
    const cut = (id: string, cutHeight: number, more: Partial<Cut> = {}): Cut => ({
      ...base!,
      kind: 'reduce',
      obligation: null,
      must: false,
      ...more,
      cutHeight,
      limb: { ...base!.limb, id }
    })
    const cuts = [
      cut('low', 2),
      cut('dead', 1, { live: false }),
      cut('top', 9),
      cut('must', 4, { must: true }),
      cut('broken', 3, { obligation: 'broken', must: true })
    ]
    expect(inSequence(cuts).map(({ limb }) => limb.id)).toEqual(['broken', 'dead', 'must', 'top', 'low'])
  })
})
