import { readSerial } from '../../shared/serialDate'
import { byUrgency, type Plan } from '../arbor/plan/plan'
import type { Estimate } from '../arbor/price/estimate'
import { addCosts } from './clientReportCosts'
import { addDrawings } from './clientReportDrawings'
import { addApproval, addTerms } from './clientReportTerms'
import { addTrees, wordWidths } from './clientReportTrees'
import { pricesAcross, yearSpans } from './clientReportYears'
import { titles } from './ownSheets'
import { PrintedDraft } from './printedDraft'
import { counted } from './sentences'
import type { Content, SheetDescription } from './sheet'

/** Who the report is for and from. An empty text leaves a line to write on. */
export interface Cover {
  client: string
  site: string
  preparedBy: string
  /** ISO date of the report. */
  date: string
  /** Until when the prices hold: an ISO date or words. */
  valid: string
}

export interface ClientReportOptions {
  /** With a drawing of each tree before and after its first visit. */
  drawings?: boolean
}

function dateOrText(text: string): Content {
  const serial = readSerial(text)
  return serial === null ? text : { date: serial }
}

function addCover(draft: PrintedDraft, cover: Cover): void {
  draft.title(titles['client-report'])
  draft.prose('Structural pruning of shade trees: what they need, why, when, and at what price.')
  draft.blank()
  draft.entry('Client', cover.client, 3)
  draft.entry('Site', cover.site, 3)
  draft.entry('Prepared by', cover.preparedBy, 3)
  for (const [label, text] of [
    ['Date', cover.date],
    ['Prices hold until', cover.valid]
  ] as const) {
    const content = dateOrText(text)
    draft.entry(label, content, 3)
    if (typeof content === 'object') draft.format(draft.next - 1, 3, 1, 1, { numberFormat: 'yyyy-mm-dd' })
  }
}

function summary(plan: Plan): string[] {
  const { trees, date, inventory } = plan
  const year = Number(date.slice(0, 4))
  const pruned = trees.filter(({ visits }) => visits.some(({ cuts }) => cuts.length > 0))
  const now = pruned.filter(({ visits }) =>
    visits.some((visit) => visit.year === year && visit.cuts.length > 0)
  )
  const unmeasured = trees.filter(({ tree }) => tree.limbs.length === 0).length
  const [first] = byUrgency(plan)
  const counts = `${counted(trees.length, 'tree')} and ${counted(inventory.limbCount, 'limb')} were looked at. ${String(pruned.length)} of the trees need pruning, ${String(now.length)} of them in ${String(year)}.`
  const rest =
    unmeasured === 0 ? '' : ` The limbs of ${counted(unmeasured, 'tree')} have not been measured yet.`
  return [
    counts + rest,
    ...(now.length > 0 && first !== undefined ? [`The tree that needs it most is ${first.tree.id}.`] : []),
    'Structural pruning means cutting a tree so that it grows one main stem (the leader) and well-spaced limbs much thinner than that stem. A limb nearly as thick as its stem competes with it, and taking it off later leaves a large wound that discolours the trunk (Eisner, Gilman & Grabosky 2002, J. Arboric. 28(2):99-105). Most cuts shorten a limb to a side branch, which slows it and leaves a small wound.',
    'It is done in steps, because leaves feed the tree: at each visit only a part of them comes off. Young trees are visited more often than old ones, and cuts made early stay small.'
  ]
}

function widthsOf(estimate: Estimate): number[] {
  const spans = yearSpans(estimate)
  const largest = Math.max(0, ...pricesAcross(estimate.lines, spans).map((price) => price ?? 0))
  const digits = Math.floor(largest).toString().length
  const width = Math.max(8.5, digits + Math.floor((digits - 1) / 3) + estimate.minorDigits + 2)
  return [...wordWidths, ...Array<number>(spans.length + 1).fill(width)]
}

/**
 * The client report as a sheet: cover, summary, costs by year, assumptions, limits, cautions, approval, then one row a
 * tree with the price of each year across. Values only. Lengths in the units of the plan's system.
 */
export function describeClientReport(
  plan: Plan,
  estimate: Estimate,
  cover: Cover,
  options: ClientReportOptions = {}
): SheetDescription {
  const draft = new PrintedDraft(widthsOf(estimate), 10)
  const paper = { orientation: 'landscape', paper: plan.system === 'in-ft' ? 'letter' : 'a4' } as const
  addCover(draft, cover)
  draft.blank()
  draft.heading('In short')
  for (const text of summary(plan)) draft.prose(text)
  draft.blank()
  addCosts(draft, plan, estimate)
  addTerms(draft, plan)
  addApproval(draft, plan.date.slice(0, 4))
  const pictures = options.drawings === true ? addDrawings(draft, plan, paper) : []
  draft.newPage()
  const titleRow = plan.trees.length === 0 ? null : addTrees(draft, plan, estimate)
  return draft.finish({
    kind: 'client-report',
    name: titles['client-report'],
    freezeRows: 0,
    freezeColumns: 0,
    ...(pictures.length === 0 ? {} : { pictures }),
    page: draft.page({
      ...paper,
      titleRow,
      footer: `Client report, ${cover.date}. Not a tree risk assessment nor a promise of safety; a qualified arborist on site decides.`
    })
  })
}
