import { noDetails, type JobDetails } from '../../details/detailsBook'
import { defaultRules } from '../../../shared/rules'
import { judgedOf } from '../../plan/judged'
import { priorityBands } from '../../plan/priorityWords'
import { byUrgency, type Plan, type TreePlan } from '../../plan/plan'
import { cautions, howToRead } from '../cautions'
import { cutPlanLooks, sayCutPlanLooks } from './cutPlanLooks'
import {
  addConfidence,
  addLeftOver,
  addOnSite,
  addProblems,
  addSources,
  addUncut,
  addUnplanned,
  addWeighed,
  SourceTally
} from './cutPlanRemarks'
import { breaksForBlock } from '../chartRoom'
import { addCutPlanCharts, hasCharts } from './cutPlanCharts'
import { addScaffold } from './cutPlanScaffold'
import { addLetterhead, footerOf, paperOf } from '../details/letterhead'
import { headersOf } from '../columns'
import { addCutRows, cutWidths, planColumns, printedCutColumns } from '../cutTable'
import { SheetDraft } from '../draft'
import { titles } from '../ownSheets'
import { looks } from '../looks'
import { addRuleChanges, addTiming, closedSentences } from '../planBasis'
import { counted } from '../../../shared/words/counts'
import type { Content, PageSetup, SheetDescription } from '../sheet'

/** Points of type at least: where columns come out a quarter wider the page is shrunk, and 8 are left (measured). */
const leastSize = 10

/** What has to be known before the first cut, in as few lines as leave the table on the first screen. */
function addHead(draft: SheetDraft, plan: Plan, cuts: number, details: JobDetails): void {
  const { inventory } = plan
  const read = `${counted(plan.trees.length, 'tree')} and ${counted(inventory.limbCount, 'limb')}`
  draft.title(titles['cut-plan'])
  addLetterhead(draft, details, plan.date, leastSize, printedCutColumns)
  draft.dated(plan.date)
  draft.labeled('Inventory', `${read}, read from ${inventory.address}. ${counted(cuts, 'cut')} planned.`)
  for (const sentence of closedSentences(plan)) draft.labeled('Closed window', sentence, looks.caution)
  for (const sentence of cautions.slice(0, 2)) draft.labeled('Caution', sentence, looks.caution)
}

/** How the table is read, and the cautions in full: below it. */
function addHowToRead(draft: SheetDraft, plan: Plan, cuts: number): void {
  draft.section('How to read this plan')
  draft.labeled('Order', 'Trees by urgency; for each tree by visit, then by priority.')
  if (cuts > 0) {
    draft.labeled(
      'On paper',
      'The table of cuts up to “Foliage removed”. Its other columns and what stands below it are for the screen.'
    )
    draft.labeled('Cut', 'The number that it has in the drawing, in the report and on the work order.')
    sayCutPlanLooks(draft)
  }
  draft.labeled('Large cuts', 'Marked ✓. One that needs a reason is made only with the reason written down.')
  if (hasCharts(byUrgency(plan))) draft.labeled('Charts', 'Of the most urgent trees, below.')
  for (const sentence of [priorityBands(plan.rules), ...howToRead]) draft.labeled('How to read', sentence)
  for (const sentence of cautions) draft.labeled('Caution', sentence, looks.caution)
}

/** Why the table of cuts is empty; what was not judged is not said to need no cut. */
function nothingCut(trees: readonly TreePlan[]): string {
  const judged = new Set(trees.map(judgedOf))
  if (judged.has('all') || judged.has('some')) return 'No cut is planned; the reasons stand below.'
  return judged.has('none')
    ? 'Limbs not judged, so nothing could be planned; the reasons stand below.'
    : 'No limbs are listed, so no cut can be chosen.'
}

/**
 * The cut plan as a sheet: a table of cuts by urgency, how to read it, cautions, the most urgent trees in figures and charts, then trees
 * without a cut, limbs to decide on site, what remains, rows that could not be planned and every problem. Lengths in the
 * units of the plan's system.
 */
export function describeCutPlan(plan: Plan, details: JobDetails = noDetails): SheetDescription {
  const draft = new SheetDraft(cutWidths)
  const trees = byUrgency(plan)
  const body: Content[][] = []
  // Rows of the table that end a tree, from its first.
  const ends: number[] = []
  const tally = new SourceTally()
  for (const tree of trees) if (addCutRows(body, tree, plan, tally) > 0) ends.push(body.length)
  addHead(draft, plan, body.length, details)

  draft.blank()
  draft.height(draft.next - 1, 1, 6)
  let titleRow: number | null = null
  if (body.length === 0) draft.line([nothingCut(trees)], looks.body)
  else {
    titleRow = draft.table(headersOf(planColumns(plan.system)), body, 3, leastSize)
    draft.tables.push({
      name: 'CutPlan',
      area: { row: titleRow, column: 0, rows: body.length + 1, columns: cutWidths.length }
    })
    for (const end of ends) draft.format(titleRow + end, 0, 1, cutWidths.length, looks.groupEnd)
  }
  const printed = titleRow === null ? {} : { rows: draft.next }
  addHowToRead(draft, plan, body.length)
  const figures = addCutPlanCharts(draft, trees, plan.rules ?? defaultRules)
  addUncut(draft, trees)
  addOnSite(draft, trees)
  addWeighed(draft, trees, plan)
  addLeftOver(draft, trees)
  addScaffold(draft, trees)
  addConfidence(draft, trees, plan.rules ?? defaultRules)
  addSources(draft, tally)
  addTiming(draft, plan)
  addRuleChanges(draft, plan)
  addUnplanned(draft, plan)
  addProblems(draft, plan)

  const page: PageSetup = {
    orientation: 'landscape',
    paper: paperOf(details, plan),
    margins: 'narrow',
    columns: printedCutColumns,
    ...printed,
    titleRow,
    footer: footerOf(
      details,
      `Cut plan, ${plan.date}. Not a tree risk assessment; a qualified arborist on site decides.`
    )
  }
  return draft.finish({
    kind: 'cut-plan',
    name: titles['cut-plan'],
    freezeRows: 0,
    freezeColumns: 1,
    conditionalLooks: titleRow === null ? [] : cutPlanLooks(titleRow, body.length),
    charts: figures.charts,
    page:
      titleRow === null ? { ...page, breaks: breaksForBlock(draft, page, figures.from, figures.to) } : page
  })
}
