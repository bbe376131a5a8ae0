import { byUrgency, type Plan, type TreePlan } from '../../plan/plan'
import type { EstimateLine } from '../../price/estimate'
import { systems } from '../../../shared/units'
import { printedDiameter, printedHeight } from '../../../shared/words/lengths'
import { describeTree } from '../../plan/treeTitle'
import { cellFormats } from '../cellFormats'
import { cellsOf, headersOf, widthsOf, type Column } from '../columns'
import { moneyFormat } from '../moneyFormat'
import type { TableColumn } from '../draft'
import type { ChosenOffer } from '../offered'
import type { PrintedDraft } from '../printedDraft'
import { looks } from '../looks'
import type { Content, Format, PageSetup } from '../sheet'
import { whatItNeeds, whenItIs, whyItNeeds } from './clientReportWords'
import { pricesAcross, yearSpans, type YearSpan } from './clientReportYears'

/** A tree with the lines of it that are offered, and its prices across the years. */
interface TreeRow {
  plan: Plan
  tree: TreePlan
  own: readonly EstimateLine[]
}

type Figures = Omit<Column<TreeRow>, 'width'>

const top = { vertical: 'top' } as const
const wrapped: Format = { wrap: true, ...top }
const gap: Column<TreeRow> = { header: '', width: 1, of: () => null }

/** Columns before the numbers, with narrow gaps before what and why. */
const wordColumns: readonly Column<TreeRow>[] = [
  { header: 'Tree', width: 7, format: { bold: true, ...wrapped }, of: ({ tree }) => tree.tree.id },
  { header: 'Species, place', width: 15, format: wrapped, of: ({ tree }) => describeTree(tree.tree) },
  gap,
  { header: 'What and when', width: 28, format: wrapped, of: whatAndWhen },
  gap,
  { header: 'Why', width: 30, format: wrapped, of: ({ tree }) => whyItNeeds(tree) }
]

export const wordWidths = widthsOf(wordColumns)

/** Columns of numbers: the prices, and before them what else is known of a tree where there is room. */
export const numberColumns = 6

function factsOf({ system }: Plan): Figures[] {
  const { diameter, height } = systems[system]
  const tenth = { ...cellFormats.tenth, ...top }
  const right = { align: 'right', ...top } as const
  return [
    {
      header: `Height (${height})`,
      format: tenth,
      of: ({ tree: { tree } }) => (tree.height === null ? null : printedHeight(tree.height, system))
    },
    {
      header: `Trunk (${diameter})`,
      format: tenth,
      of: ({ tree: { tree } }) => (tree.trunk === null ? null : printedDiameter(tree.trunk, system))
    },
    {
      header: 'Cuts',
      format: { ...cellFormats.whole, ...top },
      of: ({ tree }) => tree.visits.find(({ cuts }) => cuts.length > 0)?.cuts.length ?? null
    },
    { header: 'Stage', format: right, of: ({ tree }) => tree.stage },
    { header: 'Vigor', format: right, of: ({ tree }) => tree.vigor }
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
function priceHeaders(spans: readonly YearSpan[], { minorDigits }: ChosenOffer, sum: string): TableColumn[] {
  const money = { ...moneyFormat(minorDigits), ...top }
  const strong = { ...money, bold: true }
  if (spans.length < 2) return [{ header: spans[0]?.header ?? 'Price', format: strong }]
  return [...spans.map(({ header }) => ({ header, format: money })), { header: sum, format: strong }]
}

function prices(
  lines: readonly EstimateLine[],
  spans: readonly YearSpan[],
  { minorDigits }: ChosenOffer
): (number | null)[] {
  const across = pricesAcross(lines, spans, minorDigits)
  return spans.length < 2 ? across.slice(-1) : across
}

function whatAndWhen({ tree, plan, own }: TreeRow): string {
  const offered = (visit: number) => own.some((line) => line.visit === visit)
  const what = `${whatItNeeds(tree, plan.system)} ${whenItIs(tree, offered)}`
  if (tree.tree.limbs.length > 0) return what.trim()
  return 'Measure its limbs first.'
}

/**
 * One row per tree, most urgent first: what, why, and the price of each year across, the headers on each page.
 */
export function addTrees(
  draft: PrintedDraft,
  plan: Plan,
  offer: ChosenOffer,
  page: Pick<PageSetup, 'paper' | 'orientation'>
): void {
  const start = draft.next
  const spans = yearSpans(offer)
  const lines = byTree(offer.lines)
  const priced = priceHeaders(spans, offer, offer.kind === 'whole program' ? 'All visits' : 'All offered')
  const told = [...wordColumns, ...factsOf(plan).slice(0, numberColumns - priced.length)]
  const body = byUrgency(plan).map((tree): Content[] => {
    const own = lines.get(tree.tree.id) ?? []
    return [...cellsOf(told, { plan, tree, own }), ...prices(own, spans, offer)]
  })
  draft.heading('Tree by tree: what, why, when, and the price')
  const without =
    offer.kind === 'whole program'
      ? 'A year without a price is a year without a visit.'
      : 'What has no price is not in this offer.'
  draft.prose(`Prices in ${offer.currency} before tax, most urgent trees first. ${without}`)
  const columns = [...headersOf(told), ...priced]
  draft.gridOverPages(columns, body, 2, page, start)
  const sums = prices(offer.lines, spans, offer)
  const before = columns.length - sums.length - 1
  const row = draft.line(['All trees', ...Array<null>(before).fill(null), ...sums], {
    ...looks.total,
    size: draft.size
  })
  draft.format(row, before + 1, 1, sums.length, moneyFormat(offer.minorDigits))
}
