import { noDetails, type JobDetails } from '../../details/detailsBook'
import { footerOf, paperOf } from '../details/letterhead'
import type { Plan } from '../../plan/plan'
import type { ChosenOffer } from '../../price/offers'
import { otherwiseWords, adviceWords } from './clientReportAdvice'
import { addCosts } from './clientReportCosts'
import { addDecision } from './clientReportDecision'
import { foundWords } from './clientReportFound'
import { addHead } from './clientReportHead'
import { addTreePages } from './clientReportPages'
import { addSums } from './clientReportSums'
import { addTable } from './clientReportTable'
import { addTerms } from './clientReportTerms'
import { gridWidths } from './reportGrid'
import { noPhotographs, type TreePhotographs } from './photographs'
import { reportedTrees } from './reportedTrees'
import { titles } from '../ownSheets'
import { PrintedDraft } from '../printedDraft'
import type { SheetDescription } from '../sheet'

export interface ClientReportOptions {
  /** With a drawing of each tree before and after its first visit. */
  drawings?: boolean
  /** A photograph stands beside the drawing of its tree. */
  photographs?: TreePhotographs
}

/** Points of running text, and of the tables. */
const sizes = { text: 9.2, tables: 9, heading: 11.5 } as const

/**
 * The client report as a sheet: on its first page what was found, what is recommended, what happens otherwise, what it costs
 * and where to sign; then a line per tree with sums, pages for the trees that need explaining, and what was assumed. Values
 * only. Lengths in the units of the plan's system.
 */
export function describeClientReport(
  plan: Plan,
  offer: ChosenOffer,
  details: JobDetails = noDetails,
  { drawings = false, photographs = noPhotographs }: ClientReportOptions = {}
): SheetDescription {
  const page = {
    orientation: 'portrait',
    paper: paperOf(details, plan),
    margins: 'narrow',
    centered: true
  } as const
  const trees = reportedTrees(plan, offer)
  const draft = new PrintedDraft(gridWidths(page, trees, offer), sizes.text)
  draft.leading = -0.1
  addHead(draft, plan, offer, details)
  draft.heading('What was found', sizes.heading)
  draft.prose(foundWords(plan, trees))
  draft.heading('What we recommend', sizes.heading)
  draft.prose(adviceWords(plan, trees))
  const otherwise = otherwiseWords(plan, trees)
  if (otherwise !== '') {
    draft.heading('If nothing is done', sizes.heading)
    draft.prose(otherwise)
  }
  draft.keepTogether()
  addCosts(draft, plan, offer)
  addDecision(draft, plan, offer, details)
  draft.resize(sizes.tables)
  if (trees.length > 0) {
    draft.newPage()
    addTable(draft, plan, offer, trees, page)
    addSums(draft, plan, offer, trees)
  }
  if (drawings) addTreePages(draft, plan, offer, trees, { page, details, photographs })
  draft.newPage()
  draft.resize(sizes.text)
  addTerms(draft, plan)
  const about = `Client report, ${plan.date}. A qualified arborist on site decides.`
  return draft.finish({
    kind: 'client-report',
    name: titles['client-report'],
    freezeRows: 0,
    freezeColumns: 0,
    page: draft.page({
      ...page,
      titleRow: null,
      footer: footerOf(details, offer.inventedRates ? `Draft, no offer. ${about}` : about)
    })
  })
}
