/** What the client was offered, in every document that says or uses it. */
import { noDetails } from '../../src/details/detailsBook'
import { Money } from '../../shared/money'
import { firstVisit, someTrees, wholeProgram, type ChosenOffer } from '../../src/price/offers'
import { withinBudget } from '../../src/price/withinBudget'
import { estimatePlan } from '../../src/price/estimatePlan'
import { inventedRatesIn } from '../../src/price/rates'
import { showMoney } from '../../shared/words/money'
import { describeDocuments, planDocuments } from '../../src/sheets/describeDocuments'
import type { SheetDescription } from '../../src/sheets/sheet'
import { samplePlan } from './samplePlan'
import { cardsOf } from './orderCards'
import { runningText } from './sheetTexts'

const plan = samplePlan()
const estimate = estimatePlan(plan, { ...inventedRatesIn['in-ft'], taxRate: '0.0825' })
const first = firstVisit(estimate)
const budget = withinBudget(estimate, new Money(1200))
const some = someTrees(estimate, new Set(['T01', 'T05', 'T13']))

function documentsOf(offer: ChosenOffer): Record<string, SheetDescription> {
  const cover = {
    ...noDetails,
    client: 'Quarry trust (invented)',
    site: 'Mill road (invented)'
  }
  const sheets = describeDocuments(planDocuments, plan, offer, cover)
  return Object.fromEntries(sheets.map((sheet) => [sheet.kind, sheet]))
}

const documents = {
  whole: documentsOf(wholeProgram(estimate)),
  first: documentsOf(first),
  budget: documentsOf(budget),
  some: documentsOf(some)
}
type Case = keyof typeof documents
const cases: [Case, ChosenOffer][] = [
  ['whole', wholeProgram(estimate)],
  ['first', first],
  ['budget', budget],
  ['some', some]
]

test('the three offers are three, so that the cases below differ', () => {
  expect(budget.lines.length).toBeGreaterThan(2)
  expect(budget.lines.length).toBeLessThan(first.lines.length)
  expect(first.lines.length).toBeLessThan(estimate.lines.length)
})

describe.each(cases)('the client report that offers %s', (name, offer) => {
  const report = documents[name]['client-report']!
  const from = report.rows.findIndex(([first, second]) => first === 'Tree' && second === 'Species, place')
  const to = report.rows.findIndex(([first]) => first === 'All trees')
  const table = report.rows.slice(from + 1, to).filter(([first]) => first !== 'Tree')

  test('prices what is offered and nothing else, tree by tree and in all', () => {
    expect(table).toHaveLength(plan.trees.length)
    for (const row of table) {
      const own = offer.lines.filter(({ tree }) => tree === row[0])
      const sum = own.reduce((all, { price }) => all.plus(price), new Money(0)).toNumber()
      expect([row[0], (row.at(-1) as number | null) ?? 0]).toEqual([row[0], sum])
    }
    const total = report.rows.find((row) => /^Price with tax/.test(String(row[0])))!
    expect(total.at(-1)).toBe(offer.total.toNumber())
  })

  test('asks the client to sign for the sum that it names', () => {
    const approval = report.rows.findIndex((row) => row[0] === 'What you decide')
    const ticks = report.rows.slice(approval).filter((row) => row[0] === '☐')
    expect(ticks.map((row) => String(row[1])).join(' ')).toContain(
      `: ${showMoney(offer.total, 2)} USD with tax`
    )
  })

  test('draws, of all that are asked for, the trees whose visit is offered', () => {
    const details = { ...noDetails, treePages: 'all' }
    const [all] = describeDocuments(['client-report'], plan, offer, details)
    const drawn = new Set(all!.pictures!.map(({ alt }) => /^Tree (\S+),/.exec(alt)![1]))
    const wanted = plan.trees.filter(
      ({ tree, visits }) =>
        visits.some(({ cuts }) => cuts.length > 0) && offer.lines.some((line) => line.tree === tree.id)
    )
    expect(drawn).toEqual(new Set(wanted.map(({ tree }) => tree.id)))
    expect(report.pictures!.length).toBeLessThanOrEqual(drawn.size)
  })
})

test('the report on the first visit recommends the later ones by year, without a price', () => {
  const report = documents.first['client-report']!
  const text = runningText(report)
  expect(text).toContain('Later, not in this price')
  const later = estimate.lines.filter(({ visit }) => visit > 1)
  for (const { year } of later)
    expect(text).toMatch(new RegExp(`${String(year)} about [\\d,.]+ to [\\d,.]+ USD \\(\\d+ trees?\\)`))
  for (const { tree, year, price } of later.filter(({ visit }) => visit === 2)) {
    const row = report.rows.find((cells) => cells[0] === tree && cells.length > 6)!
    expect(row[5]).toBe(String(year))
    expect(row).not.toContain(price.toNumber())
  }
  expect(runningText(documents.whole['client-report']!)).not.toContain('Later, not in this price')
})

test('the report on a budget says what it buys and what waits', () => {
  const report = documents.budget['client-report']!
  const text = runningText(report)
  expect(text).toContain('within a budget of 1,200.00 USD with tax')
  expect(text).toContain('Due now and not in this price')
  const bought = new Set(budget.lines.map(({ tree }) => tree))
  const waiting = plan.trees.find(
    ({ tree, visits }) => !bought.has(tree.id) && visits.some(({ cuts }) => cuts.length > 0)
  )!
  const row = report.rows.find((cells) => cells[0] === waiting.tree.id && cells.length > 6)!
  expect(String(row[3])).toContain('(not offered)')
})

describe.each(cases)('the work order for %s', (name, offer) => {
  const order = documents[name]['work-order']!

  test('sends the crew to the visits that are offered, and names the other trees', () => {
    const sent = cardsOf(order.rows)
    const due = plan.trees.filter(({ visits }) =>
      visits.some(({ year, cuts }) => year === 2026 && cuts.length > 0)
    )
    const offered = due.filter(({ tree }) =>
      offer.lines.some((line) => line.tree === tree.id && line.year === 2026)
    )
    expect(new Set(sent)).toEqual(new Set(offered.map(({ tree }) => tree.id)))
    const text = runningText(order)
    const left = / Trees? ([^:]*): work not in what was ordered\./.exec(text)?.[1] ?? ''
    expect(new Set(left.match(/T\d+/g) ?? [])).toEqual(
      new Set(due.filter((each) => !offered.includes(each)).map(({ tree }) => tree.id))
    )
    expect(text).toMatch(/Client: Quarry trust \(invented\)[ ·]+Site: Mill road \(invented\)/)
  })
})
