import { noDetails, type JobDetails } from '../../details/detailsBook'
import { addBusiness, footerOf, paperOf } from '../details/letterhead'
import { readSerial } from '../../../shared/dates'
import { judgedOf } from '../../plan/judged'
import { byUrgency, firstYearOf, type Plan } from '../../plan/plan'
import type { ChosenOffer } from '../../price/offers'
import { addCosts, addCostWords } from './clientReportCosts'
import { draftNotice } from '../cautions'
import { aboutDrawings, addDrawings } from './clientReportDrawings'
import { addApproval, addClosedWindows, addTerms } from './clientReportTerms'
import { describeTree } from '../../plan/treeTitle'
import { addTrees, numberColumns, wordWidths } from './clientReportTrees'
import { pricesAcross, yearSpans } from './clientReportYears'
import { titles } from '../ownSheets'
import { looks } from '../looks'
import { PrintedDraft } from '../printedDraft'
import { counted } from '../../../shared/words/counts'
import { dateFormat } from '../../../shared/words/dates'
import type { Content, SheetDescription } from '../sheet'

export interface ClientReportOptions {
  /** With a drawing of each tree before and after its first visit. */
  drawings?: boolean
}

function dateOrText(text: string): Content {
  const serial = readSerial(text)
  return serial === null ? text : { date: serial }
}

/** Gives the row from which on it names who and when; the costs stand beside that. An empty text leaves a line to write on. */
function addCover(
  draft: PrintedDraft,
  plan: Plan,
  { inventedRates, validUntil }: ChosenOffer,
  details: JobDetails
): number {
  const { reference, revision, season } = details
  draft.title(titles['client-report'])
  if (inventedRates) draft.prose(draftNotice, { ...looks.caution, size: draft.size, bold: true })
  addBusiness(draft, details)
  draft.prose('Structural pruning of shade trees: what they need, why, when, and at what price.')
  draft.blank()
  const top = draft.next
  draft.entry('Client', details.client, 3)
  draft.entry('Site', details.site, 3)
  draft.entry('Contact', details.contact, 3)
  draft.entry(
    'Reference',
    reference !== '' && revision !== '' ? `${reference}, revision ${revision}` : reference,
    3
  )
  const first = String(firstYearOf(plan))
  draft.entry('First work', season === '' ? first : `${season}, ${first}`, 3)
  for (const [label, text] of [
    ['Date', details.date === '' ? plan.date : details.date],
    ['Prices hold until', details.validUntil === '' ? validUntil : details.validUntil]
  ] as const) {
    const content = dateOrText(text)
    draft.entry(label, content, 3)
    if (typeof content === 'object') draft.format(draft.next - 1, 3, 1, 1, { numberFormat: dateFormat })
  }
  return top
}

/** How many trees need pruning by what was measured of them, and how many of these in the first year. */
function needWords(trees: number, pruned: number, now: number, year: number): string {
  if (trees === 0) return ''
  const [none, single] = trees === 1 ? ['it is not', 'It'] : ['none of the trees is', '1 of the trees']
  if (pruned === 0) return `By what was measured, ${none} to be pruned at present.`
  if (pruned === 1) return `${single} needs pruning, ${now === 1 ? 'in' : 'after'} ${String(year)}.`
  const due = now === pruned ? 'all' : now === 0 ? 'none' : String(now)
  return `${String(pruned)} of the trees need pruning, ${due} of them in ${String(year)}.`
}

function summary(plan: Plan): string[] {
  const { trees, inventory } = plan
  const year = firstYearOf(plan)
  const pruned = trees.filter(({ visits }) => visits.some(({ cuts }) => cuts.length > 0))
  const now = pruned.filter(({ visits }) =>
    visits.some((visit) => visit.year === year && visit.cuts.length > 0)
  )
  const unmeasured = trees.filter(({ tree }) => tree.limbs.length === 0).length
  const due = new Set(now)
  const first = byUrgency(plan).find((tree) => due.has(tree))
  const unjudged = trees.filter((tree) => judgedOf(tree) === 'none').length
  const need = needWords(trees.length - unjudged, pruned.length, now.length, year)
  const counts = [
    `${counted(trees.length, 'tree')} and ${counted(inventory.limbCount, 'limb')} were looked at.`,
    need
  ]
    .filter(Boolean)
    .join(' ')
  const rest = [
    unmeasured > 0 && ` The limbs of ${counted(unmeasured, 'tree')} have not been measured yet.`,
    unjudged > 0 &&
      ` The limbs of ${counted(unjudged, 'tree')} could not be judged and are to be surveyed again.`
  ]
    .filter(Boolean)
    .join('')
  const named =
    first === undefined ? '' : [first.tree.id, describeTree(first.tree)].filter(Boolean).join(', ')
  const foremost = trees.length > 1 && now.length > 0 ? ` The tree that needs it most is ${named}.` : ''
  return [
    counts + rest + foremost,
    'Structural pruning means cutting a tree so that it grows one main stem (the leader) and well-spaced limbs much thinner than that stem. A limb nearly as thick as its stem competes with it, and taking it off later leaves a large wound that discolors the trunk (Eisner, Gilman & Grabosky 2002, J. Arboric. 28(2):99-105). Most cuts shorten a limb to a side branch, which slows it and leaves a small wound.',
    'It is done in steps, because leaves feed the tree: at each visit only a part of them comes off. Young trees are visited more often than old ones, and cuts made early stay small.'
  ]
}

/** As many columns of numbers as there are charts' figures and prices, wide enough for the largest amount. */
function widthsOf(offer: ChosenOffer): number[] {
  const largest = Math.max(
    0,
    ...pricesAcross(offer.lines, yearSpans(offer), offer.minorDigits).map((price) => price ?? 0)
  )
  const digits = Math.floor(largest).toString().length
  const width = Math.max(8.5, digits + Math.floor((digits - 1) / 3) + offer.minorDigits + 2)
  return [...wordWidths, ...Array<number>(numberColumns).fill(width)]
}

/** Points of running text, and of the tables and pages of trees that hold more. */
const sizes = { text: 10.5, tables: 10 } as const

/**
 * The client report as a sheet: cover, summary and costs by year, one row per tree with the price of each year across, a page
 * for each tree that is drawn, then assumptions, limits, season, cautions and approval. Values only. Lengths in the units of
 * the plan's system.
 */
export function describeClientReport(
  plan: Plan,
  offer: ChosenOffer,
  details: JobDetails = noDetails,
  { drawings = false }: ClientReportOptions = {}
): SheetDescription {
  const draft = new PrintedDraft(widthsOf(offer), sizes.text)
  const paper = { orientation: 'landscape', paper: paperOf(details, plan) } as const
  draft.measure = wordWidths.length
  const besideCover = addCover(draft, plan, offer, details)
  draft.blank()
  draft.heading('In short')
  for (const text of summary(plan)) draft.prose(text)
  addClosedWindows(draft, plan)
  addCostWords(draft, plan, offer)
  const charts = addCosts(draft, besideCover, offer)
  draft.measure = draft.widths.length
  draft.resize(sizes.tables)
  if (plan.trees.length > 0) {
    draft.newPage()
    addTrees(draft, plan, offer, paper)
  }
  const drawn = drawings ? addDrawings(draft, plan, paper, offer) : { pictures: [], charts: [] }
  charts.push(...drawn.charts)
  draft.newPage()
  addTerms(draft, plan, drawings ? aboutDrawings(plan, offer) : [])
  addApproval(draft, plan, offer, details)
  const about = `Client report, ${plan.date}. Not a tree risk assessment nor a promise of safety; a qualified arborist on site decides.`
  return draft.finish({
    kind: 'client-report',
    name: titles['client-report'],
    freezeRows: 0,
    freezeColumns: 0,
    ...(drawn.pictures.length === 0 ? {} : { pictures: drawn.pictures }),
    ...(charts.length === 0 ? {} : { charts }),
    page: draft.page({
      ...paper,
      titleRow: null,
      footer: footerOf(details, offer.inventedRates ? `Draft, not an offer. ${about}` : about)
    })
  })
}
