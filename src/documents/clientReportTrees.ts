import { byUrgency, type Plan, type TreePlan } from '../arbor/plan/plan'
import type { Estimate, EstimateLine } from '../arbor/price/estimate'
import { describeTree } from './cutTable'
import { moneyFormat } from './estimateTotals'
import type { TableColumn } from './draft'
import type { PrintedDraft } from './printedDraft'
import { looks } from './palette'
import type { Content } from './sheet'
import { whatItNeeds, whenItIs, whyItNeeds } from './clientReportWords'
import { pricesAcross, yearSpans, type YearSpan } from './clientReportYears'

/** Columns before the years: tree, species and place, what, why, with narrow gaps before what and why. */
export const wordWidths = [8, 16, 1, 31, 1, 33]

const gap: TableColumn = { header: '' }

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

function columnsOf(spans: readonly YearSpan[], estimate: Estimate): TableColumn[] {
  const money = moneyFormat(estimate.minorDigits)
  return [
    { header: 'Tree', format: { bold: true } },
    { header: 'Species, place', format: { wrap: true } },
    gap,
    { header: 'What and when', format: { wrap: true } },
    gap,
    { header: 'Why', format: { wrap: true } },
    ...spans.map(({ header }): TableColumn => ({ header, format: money })),
    { header: 'All visits', format: { ...money, bold: true } }
  ]
}

function whatAndWhen(tree: TreePlan, plan: Plan, priced: boolean): string {
  const what = `${whatItNeeds(tree, plan.system)} ${whenItIs(tree)}`.trim()
  if (tree.tree.limbs.length > 0 || !priced) return what
  return 'Measure its limbs first. The price is a budget by trunk size for the work that is then chosen.'
}

/** One row a tree, most urgent first: what, why, and the price of each year across. */
export function addTrees(draft: PrintedDraft, plan: Plan, estimate: Estimate): number {
  const spans = yearSpans(estimate)
  const lines = byTree(estimate.lines)
  const body = byUrgency(plan).map((tree): Content[] => {
    const own = lines.get(tree.tree.id) ?? []
    return [
      tree.tree.id,
      describeTree(tree.tree),
      null,
      whatAndWhen(tree, plan, own.length > 0),
      null,
      whyItNeeds(tree),
      ...pricesAcross(own, spans)
    ]
  })
  draft.heading('Tree by tree: what, why, when, and the price of each year')
  draft.prose(
    `Prices in ${estimate.currency} before tax, most urgent trees first. A year without a price is a year without a visit.`
  )
  const top = draft.grid(columnsOf(spans, estimate), body, 2)
  const sums: Content[] = ['All trees', null, null, null, null, null, ...pricesAcross(estimate.lines, spans)]
  const row = draft.line(sums, { ...looks.total, size: draft.size })
  draft.format(row, wordWidths.length, 1, spans.length + 1, moneyFormat(estimate.minorDigits))
  return top
}
