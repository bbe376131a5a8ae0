/** @jest-environment jsdom */
/**
 * What is signed is what is specified, ordered and priced: every document, the pane, the terminal and the JSON of a drawn
 * offer name the same visits at the same prices, and nothing that has no work specified is in any sum.
 */
import * as fc from 'fast-check'
import { printMoney } from '../../shared/money'
import { showMoney } from '../../shared/words/money'
import type { Plan } from '../../src/plan/plan'
import type { ChosenOffer } from '../../src/price/offers'
import { planJson } from '../../src/file/planJson'
import { planText } from '../../src/file/planText'
import { describeClientReport } from '../../src/sheets/client-report/clientReport'
import { describeEstimate } from '../../src/sheets/estimate/estimateSheet'
import { priceColumns } from '../../src/sheets/estimate/priceTable'
import { isFormula, type Content } from '../../src/sheets/sheet'
import { specify } from '../../src/sheets/specification/specification'
import { describeWorkOrder } from '../../src/sheets/work-order/workOrder'
import { offerView } from '../../taskpane/estimate/offerView'
import { drawnPlan, drawnRates, offersOf } from '../price/drawnOffers'
import { runningText } from './sheetTexts'
import { cardsOf } from './orderCards'

const stored = (content: Content | undefined) => (isFormula(content) ? content.value : content)

/** Tree, visit, year and price of each line, as texts. */
const told = (offer: ChosenOffer) =>
  offer.lines.map(({ tree, visit, year, price }) => [tree, visit, year, printMoney(price, offer.minorDigits)])

function inEstimate(plan: Plan, offer: ChosenOffer) {
  const { rows } = describeEstimate(offer, plan)
  const lines = rows.filter((row) => typeof row[priceColumns.visit] === 'number')
  return lines.map((row) => {
    const price = Number(stored(row[priceColumns.price])).toFixed(offer.minorDigits)
    return [row[priceColumns.tree], row[priceColumns.visit], row[priceColumns.year], price]
  })
}

function inJson(plan: Plan, offer: ChosenOffer) {
  return planJson(plan, offer).estimate.lines.map(({ tree, visit, year, price }) => [
    tree,
    visit,
    year,
    price
  ])
}

/** Tree and year of everything that is specified. */
function inSpecification(plan: Plan, offer: ChosenOffer): string[] {
  return specify(plan, offer).trees.flatMap(({ tree, clauses }) => {
    const cuts = clauses.find(({ label }) => label.startsWith('Cuts, '))!.label.slice(-4)
    const interval = clauses.find(({ label }) => label === 'Interval')!.lines
    const later = interval.flatMap((line) => /^(\d{4}): /.exec(line)?.[1] ?? [])
    return [cuts, ...later].map((year) => `${tree} ${year}`)
  })
}

/** Tree, year and crew-hours of everything that a crew is sent to. */
function inWorkOrders(plan: Plan, offer: ChosenOffer): string[] {
  const years = [...new Set(plan.trees.flatMap(({ visits }) => visits.map(({ year }) => year)))]
  return years.flatMap((year) => {
    const { rows } = describeWorkOrder(plan, offer, { year })
    const trees = cardsOf(rows)
    const hours = rows
      .flat()
      .flatMap((cell) => /, ([\d.]+) crew-hours, [\d,]+ (?:lb|kg) of brush/.exec(String(cell))?.[1] ?? [])
    return trees.map((tree, at) => `${tree} ${String(year)} ${hours[at] ?? '?'}`)
  })
}

function inPane(offer: ChosenOffer): string[][] {
  const place = document.createElement('div')
  place.append(...offerView(offer).filter((child) => child instanceof Node))
  return [...place.querySelectorAll('table.lines tbody tr')].map((row) => [
    row.querySelector('th')!.textContent,
    row.lastElementChild!.textContent
  ])
}

/** What the report charges for each tree, and what it asks to be signed for. */
function inReport(plan: Plan, offer: ChosenOffer) {
  const report = describeClientReport(plan, offer)
  const from = report.rows.findIndex(([first, second]) => first === 'Tree' && second === 'Species, place')
  const to = report.rows.findIndex(([first]) => first === 'All trees')
  const rows = report.rows.slice(from + 1, to).filter(([first]) => first !== 'Tree' && first !== undefined)
  const prices = rows.map((row): [string, number] => [String(row[0]), Number(row.at(-1) ?? 0)])
  const approval = report.rows.findIndex(([first]) => first === 'What you decide')
  const ticks = approval < 0 ? [] : report.rows.slice(approval).filter(([first]) => first === '☐')
  return { prices, ticks: ticks.map((row) => String(row[1])), text: runningText(report) }
}

const sorted = <T>(list: readonly T[]): T[] => [...list].sort()

function check(plan: Plan, offer: ChosenOffer): void {
  const lines = told(offer)
  expect(inEstimate(plan, offer)).toEqual(lines)
  expect(inJson(plan, offer)).toEqual(lines)
  const years = offer.lines.map(({ tree, year }) => `${tree} ${String(year)}`)
  expect(sorted(inSpecification(plan, offer))).toEqual(sorted(years))
  const hours = offer.lines.map(
    ({ tree, year, crewHours }) => `${tree} ${String(year)} ${crewHours.toFixed(2)}`
  )
  expect(sorted(inWorkOrders(plan, offer))).toEqual(sorted(hours))
  const prices = offer.lines.map(({ tree, price }) => [tree, showMoney(price, offer.minorDigits)].join())
  expect(sorted(inPane(offer).map((row) => row.join()))).toEqual(sorted(prices))
  checkReport(plan, offer)
  checkApart(plan, offer)
}

function checkReport(plan: Plan, offer: ChosenOffer): void {
  const { prices, ticks } = inReport(plan, offer)
  const unit = 10 ** offer.minorDigits
  const of = (tree: string) =>
    offer.lines.reduce(
      (sum, line) => (line.tree === tree ? sum + Math.round(Number(line.price) * unit) : sum),
      0
    )
  if (offer.lines.length > 0)
    for (const [tree, price] of prices) expect([tree, Math.round(price * unit)]).toEqual([tree, of(tree)])
  const total = `${showMoney(offer.total, offer.minorDigits)} ${offer.currency} with tax`
  if (offer.lines.length === 0) expect(ticks).toEqual([])
  else expect(ticks.at(-1)).toContain(total)
  // Nothing can be signed for but what is offered: the program alone can be signed for by its first year too.
  expect(ticks.length).toBeLessThanOrEqual(offer.kind === 'whole program' ? 2 : 1)
}

/** Trees without limbs and later visits: told, and part of no line. */
function checkApart(plan: Plan, offer: ChosenOffer): void {
  const bare = plan.trees.filter(({ tree }) => tree.limbs.length === 0).map(({ tree }) => tree.id)
  expect(offer.lines.filter(({ tree }) => bare.includes(tree))).toEqual([])
  for (const { tree, price } of offer.budgetFigures)
    expect(planText(plan, offer).replace(/\s+/g, ' ')).toContain(
      `${tree} ${showMoney(price, offer.minorDigits)}`
    )
  const cut = plan.trees.flatMap(({ tree, visits }) =>
    visits.flatMap(({ visit, cuts }) => (cuts.length > 0 ? [`${tree.id} ${String(visit)}`] : []))
  )
  for (const { tree, visit } of offer.lines) expect(cut).toContain(`${tree} ${String(visit)}`)
  if (offer.kind === 'whole program') expect(offer.lines).toHaveLength(cut.length)
}

test('holds for every kind of offer of drawn inventories, currencies and rates', () => {
  const kinds = new Map<string, number>()
  fc.assert(
    fc.property(drawnPlan, drawnRates, (plan, rates) => {
      for (const offer of offersOf(plan, rates)) {
        check(plan, offer)
        kinds.set(offer.kind, (kinds.get(offer.kind) ?? 0) + (offer.lines.length > 0 ? 1 : 0))
      }
    }),
    { numRuns: 25 }
  )
  expect([...kinds.keys()].sort()).toEqual(['first visit', 'some trees', 'whole program', 'within budget'])
  for (const [kind, count] of kinds) expect([kind, count > 4]).toEqual([kind, true])
})
