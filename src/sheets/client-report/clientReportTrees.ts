import { byUrgency, type Plan, type TreePlan } from '../../plan/plan'
import type { Estimate, EstimateLine } from '../../price/estimate'
import { systems } from '../../../shared/units'
import { describeTree } from '../cutTable'
import { moneyFormat } from '../estimate/estimateTotals'
import type { TableColumn } from '../draft'
import type { ChosenOffer } from '../offered'
import type { PrintedDraft } from '../printedDraft'
import { printedDiameter, printedHeight } from '../printedLengths'
import { looks } from '../looks'
import type { Content, PageSetup } from '../sheet'
import { whatItNeeds, whenItIs, whyItNeeds } from './clientReportWords'
import { pricesAcross, yearSpans, type YearSpan } from './clientReportYears'

/** Columns before the numbers: tree, species and place, what, why, with narrow gaps before what and why. */
export const wordWidths = [7, 15, 1, 28, 1, 30]

/** Columns of numbers: the prices, and before them what else is known of a tree where there is room. */
export const numberColumns = 6

const gap: TableColumn = { header: '' }

/** A column of numbers with what stands in it for a tree. */
interface Fact {
  column: TableColumn
  of(tree: TreePlan): Content
}

function factsOf({ system }: Plan): Fact[] {
  const { diameter, height } = systems[system]
  const tenth = { numberFormat: '0.0', align: 'right' } as const
  return [
    {
      column: { header: `Height (${height})`, format: tenth },
      of: ({ tree }) => (tree.height === null ? null : printedHeight(tree.height, system))
    },
    {
      column: { header: `Trunk (${diameter})`, format: tenth },
      of: ({ tree }) => (tree.trunk === null ? null : printedDiameter(tree.trunk, system))
    },
    {
      column: { header: 'Cuts', format: { numberFormat: '0', align: 'right' } },
      of: ({ visits }) => visits.find(({ cuts }) => cuts.length > 0)?.cuts.length ?? null
    },
    { column: { header: 'Stage', format: { align: 'right' } }, of: ({ stage }) => stage },
    { column: { header: 'Vigor', format: { align: 'right' } }, of: ({ vigor }) => vigor }
  ]
}

/** Lines by tree, found at once for long inventories. */
function byTree(lines: readonly EstimateLine[]): Map<string, EstimateLine[]> {
  const found = new Map<string, EstimateLine[]>()
  for (const line of lines) {
    const before = found.get(line.tree)
    if (before === undefined) found.set(line.tree, [line])
    else before.push(line)
  }
  return found
}

/** The prices of the years and their sum; a single year needs no sum beside it. */
function priceColumns(spans: readonly YearSpan[], { minorDigits }: Estimate, sum: string): TableColumn[] {
  const money = moneyFormat(minorDigits)
  const years = spans.map(({ header }): TableColumn => ({ header, format: money }))
  const strong = { ...money, bold: true }
  if (spans.length < 2) return [{ header: spans[0]?.header ?? 'Price', format: strong }]
  return [...years, { header: sum, format: strong }]
}

function prices(
  lines: readonly EstimateLine[],
  spans: readonly YearSpan[],
  { minorDigits }: Estimate
): (number | null)[] {
  const across = pricesAcross(lines, spans, minorDigits)
  return spans.length < 2 ? across.slice(-1) : across
}

/** `own` are the lines of the tree that are offered. */
function whatAndWhen(tree: TreePlan, plan: Plan, own: readonly EstimateLine[]): string {
  const offered = (visit: number) => own.some((line) => line.visit === visit)
  const what = `${whatItNeeds(tree, plan.system)} ${whenItIs(tree, offered)}`
  if (tree.tree.limbs.length > 0) return what.trim()
  if (own.length === 0) return 'Measure its limbs first.'
  return 'Measure its limbs first. The price is a budget by trunk size for the work that is then chosen.'
}

/**
 * One row a tree, most urgent first: what, why, and the price of each year across, the headers on each page. `estimate`
 * holds the lines that are offered.
 */
export function addTrees(
  draft: PrintedDraft,
  plan: Plan,
  estimate: Estimate,
  offer: ChosenOffer,
  page: Pick<PageSetup, 'paper' | 'orientation'>
): void {
  const start = draft.next
  const spans = yearSpans(estimate)
  const lines = byTree(estimate.lines)
  const priced = priceColumns(
    spans,
    estimate,
    offer.kind === 'whole programme' ? 'All visits' : 'All offered'
  )
  const facts = factsOf(plan).slice(0, numberColumns - priced.length)
  const body = byUrgency(plan).map((tree): Content[] => {
    const own = lines.get(tree.tree.id) ?? []
    return [
      tree.tree.id,
      describeTree(tree.tree),
      null,
      whatAndWhen(tree, plan, own),
      null,
      whyItNeeds(tree),
      ...facts.map(({ of }) => of(tree)),
      ...prices(own, spans, estimate)
    ]
  })
  draft.heading('Tree by tree: what, why, when, and the price')
  const without =
    offer.kind === 'whole programme'
      ? 'A year without a price is a year without a visit.'
      : 'What has no price is not in this offer.'
  draft.prose(`Prices in ${estimate.currency} before tax, most urgent trees first. ${without}`)
  const columns: TableColumn[] = [
    { header: 'Tree', format: { bold: true, wrap: true, vertical: 'top' } },
    { header: 'Species, place', format: { wrap: true, vertical: 'top' } },
    gap,
    { header: 'What and when', format: { wrap: true, vertical: 'top' } },
    gap,
    { header: 'Why', format: { wrap: true, vertical: 'top' } },
    ...[...facts.map(({ column }) => column), ...priced].map(({ header, format }): TableColumn => ({
      header,
      format: { ...format, vertical: 'top' }
    }))
  ]
  draft.gridOverPages(columns, body, 2, page, start)
  const sums = prices(estimate.lines, spans, estimate)
  const before = columns.length - sums.length - 1
  const row = draft.line(['All trees', ...Array<null>(before).fill(null), ...sums], {
    ...looks.total,
    size: draft.size
  })
  draft.format(row, before + 1, 1, sums.length, moneyFormat(estimate.minorDigits))
}
