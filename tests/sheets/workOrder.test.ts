import { numberedCuts } from '../../src/drawing/form/limbsAtVisit'
import { firstVisit, wholeProgram } from '../../src/price/offers'
import { noDetails } from '../../src/details/detailsBook'
import type { Visit } from '../../src/plan/plan'
import { estimatePlan } from '../../src/price/estimatePlan'
import { cautions } from '../../src/sheets/cautions'
import { crewDays } from '../../src/sheets/crewDays'
import { describeDocuments } from '../../src/sheets/describeDocuments'
import { withFreeNames } from '../../src/sheets/namedCells'
import { isFormula, type Content, type SheetDescription } from '../../src/sheets/sheet'
import { orderAt, tickKeys } from '../../src/sheets/work-order/orderColumns'
import { describeWorkOrder } from '../../src/sheets/work-order/workOrder'
import { roundOf, type Stop } from '../../src/sheets/work-order/workOrderDays'
import { cardsOf, cutsOf } from './orderCards'
import { metricRows, planOf, samplePlan, withClosedWindow } from './samplePlan'
import { formatAt, hasFormula, promises, runningText } from './sheetTexts'

const plan = samplePlan()
const estimate = estimatePlan(plan)
const sheet = describeWorkOrder(plan, wholeProgram(estimate))
const text = runningText(sheet)
const stops = roundOf(plan, estimate, 2026, estimate.rates.dayHours).days.flatMap(({ stops: own }) => own)

/** The number before a unit in a cell of a card. */
const numberIn = (cell: Content | undefined) => Number(/[\d.]+/.exec(String(cell))?.[0])

describe('the work order', () => {
  const lines = cutsOf(sheet.rows)
  const cuts = stops.flatMap(({ tree, visit }) =>
    numberedCuts(visit).map(({ number, cut }) => ({ tree, visit, number, cut }))
  )

  test('orders every cut of the year once, and no other, each with the number of its drawing', () => {
    expect(lines.map((row) => row[orderAt.number])).toEqual(cuts.map(({ number }) => number))
    const planned = plan.trees.flatMap(({ visits }) => visits[0]?.cuts ?? [])
    expect(lines.length).toBe(planned.length)
    expect(planned.length).toBeGreaterThan(20)
  })

  test('says beside each box of which tree, limb and visit it is, outside of what is printed', () => {
    expect(sheet.rows[0]!.slice(orderAt.tree)).toEqual([...tickKeys])
    expect(sheet.page.columns).toBe(orderAt.tree)
    expect(lines.map((row) => row.slice(orderAt.tree))).toEqual(
      cuts.map(({ tree, visit, cut }) => [tree.tree.id, cut.limb.id, visit.visit])
    )
    expect(cardsOf(sheet.rows)).toEqual(stops.map(({ tree }) => tree.tree.id))
    const [rule] = sheet.rules!
    sheet.rows.forEach((row, at) => {
      if (typeof row[orderAt.visit] !== 'number') return
      expect(row[orderAt.tick]).toBe('☐')
      expect(at >= rule!.area.row && at < rule!.area.row + rule!.area.rows).toBe(true)
    })
  })

  test('gives a cut in one line: limb, side, place, side branch never rounded down, tip never up, must', () => {
    cuts.forEach(({ cut }, index) => {
      const row = lines[index]!
      expect(String(row[orderAt.limb])).toContain(cut.limb.id)
      expect(row[orderAt.side] === '').toBe(cut.limb.bearing === null)
      expect(String(row[orderAt.when]).startsWith(cut.must ? 'must' : 'if time')).toBe(true)
      const what = String(row[orderAt.what])
      if (cut.lateralMin !== null && cut.obligation !== 'broken')
        expect(numberIn(/≥ (.*)/.exec(what)?.[1])).toBeGreaterThanOrEqual(cut.lateralMin / 25.4 - 1e-9)
      const keep = String(row[orderAt.keep])
      if (cut.kind === 'raise') expect(keep).toMatch(/^nothing under [\d.]+ ft$/)
      else if (cut.tipAfter !== null && cut.obligation !== 'clearance')
        expect(keep).toBe(`keep below ${String(Math.floor((cut.tipAfter / 0.3048) * 10 + 1e-6) / 10)} ft`)
      const height = cut.kind === 'remove' ? cut.limb.origin : cut.kind === 'raise' ? null : cut.cutHeight
      if (height !== null && cut.count === 1)
        expect(Math.abs(numberIn(row[orderAt.at]) - height / 0.3048)).toBeLessThanOrEqual(0.05001)
    })
    expect(lines.map((row) => String(row[orderAt.what]))).toEqual(
      expect.arrayContaining([
        expect.stringContaining('cut to side branch ≥'),
        expect.stringContaining('dead: remove at the collar'),
        expect.stringContaining('take off hanging side branches')
      ])
    )
  })

  test('never tells a crew to keep a limb below a clearance that is not reached', () => {
    for (const { cut } of cuts.filter((each) => each.cut.obligation === 'clearance')) {
      const at = cuts.findIndex((each) => each.cut === cut)
      expect(String(lines[at]![orderAt.keep])).not.toContain('keep below')
    }
  })

  test('says the ceiling of each tree, never rounded above it, and names the leader', () => {
    const starts = sheet.rows.flatMap((row, at) =>
      typeof row[orderAt.visit] === 'number' && row[orderAt.limbKey] === null ? [at] : []
    )
    stops.forEach(({ tree, visit }, index) => {
      const card = sheet.rows
        .slice(starts[index], starts[index + 1])
        .flat()
        .join(' ')
      const ceiling = /of the live leaves.*?([\d.]+) %/.exec(card)
      if (visit.cuts.some((cut) => cut.live))
        expect(Number(ceiling![1]) / 100).toBeLessThanOrEqual(visit.allowedRemoval + 1e-9)
      else expect(card).toContain('no live wood is cut')
      expect(card).toContain(
        `Leader, never cut: ${tree.leader.limb === null ? 'the' : `limb ${tree.leader.limb.id}`}`
      )
    })
  })

  test('asks for a written reason for each cut that needs one, and only for these', () => {
    const expected = cuts.filter(({ cut }) => cut.needsReason)
    const asked = sheet.rows.flat().filter((cell) => String(cell).includes('reason before the cut'))
    expect(asked.length).toBe(expected.length)
    expect(expected.length).toBeGreaterThan(0)
  })

  test('gives every caution, the checks of a day and what is never done once, on the last page', () => {
    const last = sheet.page.breaks!.at(-1)!
    const rules = runningText({ ...sheet, rows: sheet.rows.slice(last) })
    for (const caution of cautions) expect(rules).toContain(caution)
    for (const rule of ['leader', 'Inner and lower foliage stays', 'Nothing beyond the live leaves', 'spurs'])
      expect(rules).toContain(rule)
    for (const once of ['Wires:', 'Nests,', 'Traffic and walkers:', 'an undercut away from the final cut'])
      expect(text.split(once).length - 1).toBe(1)
    expect(promises(text, cautions)).toEqual([])
  })

  test('tells a crew nothing of sources, rows of the inventory and open questions of the plan', () => {
    expect(text).not.toMatch(/[Ss]ource|no source|from memory|of the inventory|Ask \(/)
  })

  test('is set in 12 points or more where cuts are read, and nowhere under 10', () => {
    sheet.rows.forEach((row, r) => {
      row.slice(0, orderAt.tree).forEach((cell, c) => {
        if (cell === null || cell === '') return
        const size = Number(formatAt(sheet, r, c).size)
        expect([r, c, size >= 10]).toEqual([r, c, true])
        if (typeof row[orderAt.visit] === 'number' && c >= orderAt.at && c <= orderAt.keep)
          expect([r, c, size >= 12]).toEqual([r, c, true])
      })
    })
  })

  test('prints as wide as a page of either paper at most, and shrinks where columns come out wider', () => {
    // 7 pixels a character and 5 a column at 96 to the inch; 28 points of margins on either side of 595.
    const inches = sheet.widths.slice(0, orderAt.tree).reduce((sum, width) => sum + width * 7 + 5, 0) / 96
    expect(inches * 72).toBeLessThanOrEqual(595 - 56)
    expect(sheet.page.fitsWidth).toBe(true)
  })

  test('has a drawing on each card, in an area that stands before the sentences', () => {
    expect(sheet.pictures!.length).toBe(stops.length)
    sheet.pictures!.forEach((picture, at) => {
      const { visit } = stops[at]!
      const marks = picture.draw().shapes.filter(({ depicts }) => depicts?.part === 'badge')
      expect(marks.length).toBeGreaterThan(0)
      expect(marks.length).toBeLessThanOrEqual(visit.cuts.length)
      expect(picture.area.columns).toBe(orderAt.what)
    })
  })

  test('never breaks a page within a card', () => {
    const starts = new Set(
      sheet.rows.flatMap((row, at) =>
        String(row[0]).startsWith('Day ') || row[orderAt.limbKey] === null ? [at] : []
      )
    )
    const cards = sheet.page.breaks!.slice(0, -1)
    expect(cards.length).toBeGreaterThan(2)
    for (const row of cards) expect(starts.has(row)).toBe(true)
  })

  test('lists the trees and limbs that it sends nobody to, with the reason', () => {
    expect(text).toContain('Tree T15: no limbs listed; survey them')
    for (const id of ['T13', 'T14']) {
      const count = plan.unplanned.filter(({ tree }) => tree === id).length
      expect(count).toBeGreaterThan(0)
      expect(text).toContain(
        `Tree ${id}: ${String(count)} ${count === 1 ? 'limb' : 'limbs'} could not be planned as written. Leave`
      )
    }
  })

  test('has a first page with address, contact, phone, emergency line, equipment, brush and the order', () => {
    const details = {
      ...noDetails,
      site: '1 College Way (invented)',
      contact: 'J. Doe (invented)',
      phone: '555-0100',
      emergency: '555-0199, Invented Hospital'
    }
    const order = describeWorkOrder(plan, wholeProgram(estimate), { details })
    const page = runningText({ ...order, rows: order.rows.slice(0, order.page.breaks![0]) })
    for (const words of Object.values(details).filter((value) => typeof value === 'string'))
      expect(page).toContain(words)
    for (const label of ['Equipment', 'Brush', 'Crew', 'Order of trees', 'Day 1'])
      expect(page).toContain(label)
    for (const { tree } of stops) expect(page).toContain(tree.tree.id)
    expect(text).not.toContain('undefined')
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
      'Limb D: the arborist decides on site.'
    )
  })

  test('says on its first page which windows are closed', () => {
    const order = runningText(describeWorkOrder(withClosedWindow(), wholeProgram(estimate)))
    expect(order).toContain('An invented window is closed.')
    expect(order.indexOf('An invented window')).toBeLessThan(order.indexOf('Order of trees'))
    expect(text).not.toContain('An invented window')
  })

  test('has no formula, and a year without a cut orders nothing', () => {
    expect(sheet.rows.flat().some(hasFormula)).toBe(false)
    const quiet = describeWorkOrder(plan, wholeProgram(estimate), { year: 2027 })
    expect(runningText(quiet)).toContain('No cut is planned in 2027, so nothing is ordered.')
    expect(cardsOf(quiet.rows)).toEqual([])
  })

  test('tells when rates are changed on the Estimate that is written with it, under whatever names that has', () => {
    const offer = wholeProgram(estimate)
    const written = describeDocuments(['estimate', 'work-order'], plan, offer)
    const formulaIn = (descriptions: readonly SheetDescription[]) =>
      descriptions
        .find(({ kind }) => kind === 'work-order')!
        .rows.flat()
        .find(isFormula)!.formula
    expect(formulaIn(written)).toContain(`ROUND(Offer_total-${offer.total.toFixed(2)},Money_digits)`)
    expect(formulaIn(withFreeNames(written, new Set(['offer_total'])))).toContain('Offer_total_2-')
  })

  test('orders the visits of a later year by themselves', () => {
    const later = cardsOf(describeWorkOrder(plan, wholeProgram(estimate), { year: 2029 }).rows)
    expect(later.length).toBe(
      plan.trees.filter(({ visits }) => visits.some(({ year, cuts }) => year === 2029 && cuts.length > 0))
        .length
    )
    expect(later.length).toBeGreaterThan(1)
  })

  test('refuses a day without hours', () => {
    expect(() => describeWorkOrder(plan, wholeProgram(estimate), { productiveHours: 0 })).toThrow(/above 0/)
    expect(() => describeWorkOrder(plan, wholeProgram(estimate), { productiveHours: NaN })).toThrow(/above 0/)
  })

  test('is in centimeters, meters and kilograms for a metric inventory', () => {
    const metric = planOf(metricRows())
    const order = describeWorkOrder(metric, wholeProgram(estimatePlan(metric)))
    expect(String(cutsOf(order.rows)[0]![orderAt.what])).toMatch(/^[\d.]+ cm cut to side branch ≥ [\d.]+ cm$/)
    expect(order.page.paper).toBe('a4')
  })

  test('shows the whole name of a limb, in a row as high as its lines', () => {
    const named = planOf(metricRows(['South scaffold', null, 11, 14, 2, 8]))
    const order = describeWorkOrder(named, wholeProgram(estimatePlan(named)))
    const heightOf = ({ rows, heights }: typeof order, limb: string) => {
      const of = rows.findIndex((cells) => cells[orderAt.limb] === limb)
      return heights.find((each) => of >= each.row && of < each.row + each.rows)!.points
    }
    expect(heightOf(order, 'South scaffold')).toBeGreaterThan(heightOf(sheet, 'limb B') + 12)
  })

  test('says which limb the drawing means by a number, where a picture has no room or no letters for its name', () => {
    const named = planOf(metricRows(['东枝', null, 11, 14, 2, 8]))
    const order = describeWorkOrder(named, wholeProgram(estimatePlan(named)))
    expect(runningText(order)).toMatch(/In the drawing #\d is 东枝\./)
    expect(text).not.toContain('In the drawing')
  })

  test('tells a long id and species in full', () => {
    const rows = metricRows()
    const id = 'PARK-NORTH-2026-00000000000000000000000000000000000000000000000000000000000005'
    rows[1]![0] = id
    rows[2]![0] = id
    const long = planOf(rows)
    const order = describeWorkOrder(long, wholeProgram(estimatePlan(long)))
    const card = order.rows
      .slice(order.page.breaks![0])
      .map((row) => row[orderAt.number] ?? '')
      .join('')
    expect(card).toContain(id)
    expect(runningText(order)).toContain('Sycamore, trunk 22 cm, 9 m high.')
  })
})

describe('crew days', () => {
  const [first] = stops
  const stop = (hours: number): Stop => ({ ...first!, hours })
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
    const split = roundOf(plan, estimate, 2026, 0.5).days
    const planned = [...long.matchAll(/crew-hours: plan (\d+) days/g)].map(([, days]) => Number(days))
    expect(planned.length).toBeGreaterThan(2)
    // The head counts the days as the days themselves do.
    const more = planned.reduce((sum, days) => sum + days - 1, 0)
    expect(long).toContain(` in ${String(split.length + more)} crew days, `)
  })

  test('keep every tree once, whatever the hours', () => {
    for (const limit of [0.3, 1, 2.5, 7, 100])
      expect(crewDays(stops, limit).flatMap(({ stops: own }) => own)).toEqual(stops)
  })

  test('trees of one place follow each other', () => {
    const places = stops.map(({ place }) => place)
    const runs = places.filter((place, index) => place !== places[index - 1])
    expect(runs.length).toBe(new Set(places).size)
  })
})

describe('the days of an inventory', () => {
  const headers = 'Tree | Zone | Address | Trunk dia (in) | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Role | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)' // prettier-ignore

  /** Invented trees: each has a zone, an address, and a limb that competes the more the larger it is. */
  const trees = (places: readonly (readonly [zone: string | null, address: string | null])[]) =>
    planOf([
      headers.split(' | '),
      ...places.flatMap(([zone, address], at) => {
        const id = `T${String(at + 1)}`
        const tree = [id, zone, address, 9, 34, 7, 'young', 'good']
        const limb = 3 + ((at * 7) % 11) / 6
        return [
          [...tree, 'A', 'leader', 7, null, 7, 34],
          [id, ...Array<null>(7).fill(null), 'B', null, limb, 5, 10, 31]
        ]
      })
    ])
  const zones = Array.from({ length: 40 }, (_none, at) => 'ABCD'.charAt((at * 3) % 4))
  const roundIn = (planned: ReturnType<typeof planOf>, hours = 2) =>
    roundOf(planned, firstVisit(estimatePlan(planned)), 2026, hours)

  test('stay in a zone until it is done, and go to its worst tree first', () => {
    const planned = trees(zones.map((zone) => [zone, null]))
    const { days, taken, least } = roundIn(planned)
    const order = days.flatMap(({ stops: own }) => own)
    expect(order.length).toBe(40)
    const runs = order.filter(({ place }, at) => place !== order[at - 1]?.place)
    expect(runs.map(({ place }) => place)).toEqual([...new Set(runs.map(({ place }) => place))])
    expect(runs.length).toBe(4)
    for (const { stops: own, hours } of days) {
      expect(hours).toBeLessThanOrEqual(2 + 1e-9)
      own.slice(1).forEach((stop, at) => {
        if (stop.place === own[at]!.place)
          expect(stop.tree.urgency).toBeLessThanOrEqual(own[at]!.tree.urgency)
      })
    }
    expect(taken).toBe(days.length)
    expect(taken).toBeGreaterThanOrEqual(least)
  })

  test('go along a street by the tags, though a worse tree stands further on', () => {
    const planned = trees(
      Array.from({ length: 24 }, (_none, at) => [
        null,
        `${String(2 * at + 1)} ${at % 2 === 0 ? 'Elm' : 'Ash'} Street`
      ])
    )
    const order = roundIn(planned).days.flatMap(({ stops: own }) => own)
    for (const street of ['Elm Street', 'Ash Street']) {
      const own = order
        .filter(({ place }) => place === street)
        .map(({ tree }) => Number(tree.tree.id.slice(1)))
      expect(own.length).toBe(12)
      expect(own).toEqual([...own].sort((a, b) => a - b))
    }
  })

  test('follow the tags where no place is known', () => {
    const order = roundIn(trees(Array.from({ length: 12 }, () => [null, null])))
    const own = order.days.flatMap(({ stops: some }) => some.map(({ tree }) => Number(tree.tree.id.slice(1))))
    expect(own).toEqual([...own].sort((a, b) => a - b))
  })

  test('are stated to be the fewest, or how few there might be', () => {
    const planned = trees(zones.map((zone) => [zone, null]))
    const offer = firstVisit(estimatePlan(planned))
    for (const hours of [0.4, 0.7, 1, 2, 7]) {
      const { taken, least } = roundOf(planned, offer, 2026, hours)
      const words = runningText(describeWorkOrder(planned, offer, { productiveHours: hours }))
      expect(words).toContain(
        taken === least ? 'Fewer days would not do.' : `By the hours alone ${String(least)} day`
      )
    }
  })
})
