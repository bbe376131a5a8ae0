import type { Unplanned } from '../inventory/inventory'
import { cutHeader, cutText } from '../plan/cutCells'
import type { CutColumnName, CutRow } from '../plan/cutColumns'
import { judgedOf, judgedWords, notJudgedLimbs } from '../plan/judged'
import { leftOut } from '../plan/leftOut'
import { byUrgency, type Plan, type TreePlan, type Visit } from '../plan/plan'
import { listedFoliage } from '../plan/listedFoliage'
import { outcomeWords } from '../plan/outcomeWords'
import { priorityBands, priorityText } from '../plan/priorityWords'
import { scaffoldSentence, treesNamed, withheldSentences } from '../plan/scaffold/scaffoldWords'
import { shownDoses } from '../plan/shownDoses'
import { describeTree } from '../plan/treeTitle'
import type { ChosenOffer } from '../price/offers'
import type { UnitSystem } from '../../shared/units'
import { version } from '../../shared/version'
import { counted } from '../../shared/words/counts'
import { ratio } from '../../shared/words/figures'
import { percent, wholePercent } from '../../shared/words/percent'
import { capital } from '../../shared/words/sentences'
import { rowsNamed } from '../../shared/words/some'
import { cautions, howToRead } from '../sheets/cautions'
import { shownChange } from '../plan/rules/ruleUnits'
import { closedSentences } from '../sheets/planBasis'
import { estimateLines } from './estimateText'
import { folded, row } from './textRows'

/** The columns of a table of cuts: what stands in each, two of a kind as "now > then", and how wide it is. */
const cutLayout: readonly (readonly [
  columns: readonly [CutColumnName, ...CutColumnName[]],
  width: number
])[] = [
  [['limb'], 12],
  [['cut'], 12],
  [['diameter'], -7],
  [['lateral'], -7],
  [['height'], -7],
  [['tip'], -7],
  [['dose'], -6],
  [['ratio', 'nextRatio'], -11],
  [['priority', 'nextPriority'], -11]
]

const cutWidths = [2, ...cutLayout.map(([, width]) => width)]

function headerLine(system: UnitSystem): string {
  return row(['', ...cutLayout.map(([[name]]) => cutHeader(name, system, 'terminal'))], cutWidths)
}

function cutLines(cells: CutRow, system: UnitSystem): string[] {
  const texts = cutLayout.map(([names]) =>
    names
      .map((name) => cutText(name, cells, system))
      .filter((text) => text !== '')
      .join(' > ')
  )
  const { cut } = cells
  const mark = cut.needsReason ? ' Write down why a cut this large is made.' : ''
  return [row(['', ...texts], cutWidths), ...folded(cut.reason + mark, 6)]
}

function visitLines({ tree }: TreePlan, visit: Visit, system: UnitSystem): string[] {
  const title = `  Visit ${String(visit.visit)}, ${String(visit.year)}`
  if (visit.cuts.length === 0) return [`${title}: no cut.`]
  const { cuts } = visit
  const doses = shownDoses(visit)
  const heading = `${title}: ${percent(doses.visit)} of the foliage, ${percent(doses.allowed)} allowed`
  return [heading, headerLine(system), ...cuts.flatMap((cut) => cutLines({ tree, visit, cut }, system))]
}

function judgedLines(plan: TreePlan): string[] {
  const judged = capital(judgedWords(plan))
  switch (judgedOf(plan)) {
    case 'all':
      return []
    case 'no limbs':
      return [`  ${judged}, so no cut can be chosen.`]
    case 'some':
      return folded(`${judged} (${notJudgedLimbs(plan)}): see ${notPlanned} below.`, 2)
    case 'none':
      return folded(`${judged}: survey them again, see ${notPlanned} below.`, 2)
  }
}

/** No cut is planned; what was not judged is not said to need none. */
function uncutLines(plan: TreePlan): string[] {
  const judged = judgedOf(plan)
  if (judged === 'all') return ['  No cut.']
  return judged === 'some' ? ['  No cut of the limbs that were judged.'] : []
}

function treeLines(plan: TreePlan, { system, rules }: Plan): string[] {
  const { tree, leader } = plan
  const crown = plan.liveCrownRatio === null ? 'unknown' : ratio(plan.liveCrownRatio)
  const name = describeTree(tree)
  const lead = leader.name === '' ? 'not judged' : leader.name
  const lines = [
    '',
    ...folded(`${tree.id}${name === '' ? '' : `  ${name}`}`, 0),
    ...folded(`Leader ${lead}; live-crown ratio ${crown}; allowed ${plan.allowedBasis}.`, 2),
    ...judgedLines(plan)
  ]
  const listed = listedFoliage(plan)
  if (listed !== null)
    lines.push(
      ...folded(`The limbs listed carry ${wholePercent(listed)} of the foliage, each known to ±30 %.`, 2)
    )
  const scaffold = scaffoldSentence(plan)
  if (scaffold !== '') lines.push(...folded(scaffold, 2))
  const isUncut = plan.visits.every(({ cuts }) => cuts.length === 0)
  const visits = isUncut ? [] : plan.visits.flatMap((visit) => visitLines(plan, visit, system))
  if (visits.length > 0) lines.push(...visits)
  else lines.push(...uncutLines(plan))
  for (const outcome of plan.outcomes) {
    const { limb, priority } = outcome
    lines.push(
      ...folded(`Limb ${limb.id}, priority ${priorityText(priority, rules)}: ${outcomeWords(outcome)}`, 2)
    )
  }
  return lines
}

/** Why no permanent limbs are chosen, each reason once with its trees. */
function scaffoldLines({ trees }: Plan): string[] {
  const withheld = withheldSentences(trees)
  if (withheld.length === 0) return []
  return [
    '',
    'PERMANENT LIMBS',
    ...withheld.flatMap(({ sentence, trees: some }) => folded(`${capital(treesNamed(some))}: ${sentence}`, 2))
  ]
}

const notPlanned = 'NOT PLANNED'

/** The one row by its first cell; of several, how many and which. */
function whichRows(rows: readonly Unplanned[]): string {
  const [first] = rows
  if (first === undefined || rows.length === 1) return first?.cell ?? ''
  return `${counted(rows.length, 'row')} (${rowsNamed(rows.map(({ row: number }) => number))})`
}

function problemLines(plan: Plan): string[] {
  const lines: string[] = []
  if (plan.unplanned.length > 0) lines.push('', notPlanned)
  const all = leftOut(plan)
  // What a check tells with its remedy, and with the rows that wait for it, is not told twice.
  const checked = all.filter(({ remedy }) => remedy !== '').flatMap(({ rows }) => rows)
  if (checked.length > 0) lines.push(...folded(`${whichRows(checked)}: the checks below say why.`, 2))
  for (const { rows, reason, remedy } of all)
    if (remedy === '') lines.push(...folded(`${whichRows(rows)}: ${reason}`, 2))
  const problems = plan.problems.filter(({ code }) => code !== 'closed-window')
  if (problems.length > 0) lines.push('', 'CHECKS')
  for (const { message, remedy, waits } of problems) {
    lines.push(...folded(`${message} ${remedy}`, 2))
    if (waits !== undefined) lines.push(...folded(waits, 6))
  }
  return lines
}

/** Rules that are not the defaults, and windows that the first visit falls in: shown before anything else. */
function basisLines(plan: Plan): string[] {
  const changed = (plan.ruleChanges ?? []).map((change) => {
    const { name, reason } = change
    const { unit, from, to } = shownChange(change, plan.system)
    const why = reason === '' ? '' : ` (${reason})`
    return `Rule changed: ${name}, ${from} to ${to} (${unit})${why}.`
  })
  const closed = closedSentences(plan).map((sentence) => `Closed window: ${sentence}`)
  return [...closed, ...changed].flatMap((sentence) => folded(sentence, 0))
}

/** There is anything that has a price, offered or not. */
function isPriced({ all, budgetFigures }: ChosenOffer): boolean {
  return all.lines.length > 0 || budgetFigures.length > 0
}

/** The plan as text in columns for a terminal, the cautions at its end. */
export function planText(plan: Plan, offer: ChosenOffer): string {
  const { inventory } = plan
  const from = `${counted(plan.trees.length, 'tree')} and ${counted(inventory.limbCount, 'limb')} from ${inventory.address}`
  const lines = [
    `Limbwright ${version}: cut plan of ${plan.date}`,
    ...folded(
      plan.trees.length === 0 ? `Nothing could be planned: ${from}.` : `${from}. Trees by urgency.`,
      0
    ),
    ...basisLines(plan),
    ...byUrgency(plan).flatMap((tree) => treeLines(tree, plan)),
    ...scaffoldLines(plan),
    ...(isPriced(offer) ? estimateLines(offer) : []),
    ...problemLines(plan),
    '',
    ...[...howToRead, priorityBands(plan.rules), ...cautions].flatMap((sentence) => folded(sentence, 0))
  ]
  return lines.join('\n')
}
