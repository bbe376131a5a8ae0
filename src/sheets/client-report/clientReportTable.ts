import { systems } from '../../../shared/units'
import { counted } from '../../../shared/words/counts'
import { printedDiameter } from '../../../shared/words/lengths'
import { capital } from '../../../shared/words/sentences'
import { judgedOf, judgedWords } from '../../plan/judged'
import type { Cut, Plan } from '../../plan/plan'
import { describeTree } from '../../plan/treeTitle'
import { cellFormats } from '../cellFormats'
import type { TableColumn } from '../draft'
import { looks } from '../looks'
import { moneyFormat } from '../moneyFormat'
import type { ChosenOffer } from '../offered'
import type { PrintedDraft } from '../printedDraft'
import type { Content, Format, PageSetup } from '../sheet'
import { priceOf } from './clientReportYears'
import type { ReportedTree } from './reportedTrees'

const top = { vertical: 'top' } as const
const wrapped: Format = { wrap: true, ...top }

/** Limbs named in a line at most; more are counted. */
const mostNamed = 4

function limbs(cuts: readonly Cut[]): string {
  const ids = [...new Set(cuts.map(({ limb }) => limb.id))]
  const named = ids.join(', ')
  return ids.length > mostNamed || named.length > 24 ? counted(ids.length, 'limb') : named
}

/** What is done to a tree, as short as a line of a table asks: "Shorten B, C; take off F". */
export function shortWork({ tree, visit, lines }: ReportedTree): string {
  if (tree.tree.limbs.length === 0) return 'Measure its limbs first'
  if (judgedOf(tree) === 'none') return 'Not judged yet: survey its limbs again'
  const unknown = judgedOf(tree) === 'some' ? `; ${judgedWords(tree)}` : ''
  const waits = tree.outcomes.some(({ heldBy }) => heldBy === 'leader')
  if (visit === null)
    return `${waits ? 'No cut until the stem that leads is chosen' : 'No cut now'}${unknown}`
  const acts: readonly (readonly [string, (cut: Cut) => boolean])[] = [
    ['shorten', ({ kind, live }) => live && kind === 'reduce'],
    ['take off', ({ kind, live }) => live && kind === 'remove'],
    ['raise', ({ kind }) => kind === 'raise'],
    ['dead or broken:', ({ live }) => !live]
  ]
  const words = acts.flatMap(([verb, chosen]) => {
    const cuts = visit.cuts.filter(chosen)
    return cuts.length === 0 ? [] : [`${verb} ${limbs(cuts)}`]
  })
  const text = words.join('; ')
  const work = `${capital(text)}${unknown}`
  return lines.length === 0 ? `${work} (not offered)` : work
}

/** The year of the next visit after those that are offered. */
function nextYear({ tree, lines }: ReportedTree): number | null {
  const offered = new Set(lines.map(({ visit }) => visit))
  return tree.visits.find(({ visit, cuts }) => cuts.length > 0 && !offered.has(visit))?.year ?? null
}

function headers({ system }: Plan, { minorDigits }: ChosenOffer): TableColumn[] {
  return [
    { header: 'Tree', format: { bold: true, ...wrapped } },
    { header: 'Species, place', format: wrapped },
    {
      header: `Trunk (${systems[system].diameter})`,
      format: { ...cellFormats.tenth, align: 'center', ...top }
    },
    { header: 'Work', format: wrapped },
    { header: 'Urgency', format: { align: 'center', ...top } },
    { header: 'Next', format: { align: 'center', ...top } },
    { header: 'Price', format: { ...moneyFormat(minorDigits), bold: true, ...top } }
  ]
}

function cells(each: ReportedTree, plan: Plan, { minorDigits }: ChosenOffer): Content[] {
  const { tree } = each.tree
  return [
    tree.id,
    describeTree(tree),
    tree.trunk === null ? null : printedDiameter(tree.trunk, plan.system),
    shortWork(each),
    each.urgency ?? '–',
    nextYear(each) === null ? null : String(nextYear(each)),
    each.lines.length === 0 ? null : priceOf(each.lines, minorDigits).toNumber()
  ]
}

/** One line per tree, most urgent first, the headers at the head of each page, and their sum. */
export function addTable(
  draft: PrintedDraft,
  plan: Plan,
  offer: ChosenOffer,
  trees: readonly ReportedTree[],
  page: Pick<PageSetup, 'paper' | 'orientation' | 'margins'>
): void {
  const start = draft.next
  draft.heading('Tree by tree')
  draft.prose(
    `Most urgent first; prices in ${offer.currency} before tax, for the work that is offered. Urgency is high where a limb is about as thick as its stem, is broken or rubs, or hangs into the space to be kept clear. Next is the year of the next visit that is recommended and not in this price.`
  )
  const body = trees.map((each) => cells(each, plan, offer))
  draft.gridOverPages(headers(plan, offer), body, 1, page, start)
  const sum = priceOf(offer.lines, offer.minorDigits).toNumber()
  const row = draft.line(['All trees', null, null, null, null, null, sum], {
    ...looks.total,
    size: draft.size
  })
  draft.format(row, 6, 1, 1, moneyFormat(offer.minorDigits))
}
