import { byUrgency, type Cut, type Plan, type TreePlan, type Visit } from '../plan/plan'
import type { Estimate } from '../price/estimate'
import { convertLength, systems, type UnitSystem } from '../../shared/units'
import { version } from '../../shared/version'
import { cautions, howToRead } from '../sheets/cautions'
import { showRule } from '../plan/rules/ruleChanges'
import { closedSentences } from '../sheets/planBasis'
import { describeTree } from '../sheets/cutTable'
import { estimateLines } from './estimateText'
import { folded, row } from './textRows'

const percent = (share: number): string => `${(share * 100).toFixed(0)} %`

const cutWidths = [2, 12, 6, -8, -8, -9, -9, -5, -12, -11]

function cutHeader(system: UnitSystem): string {
  const { diameter, height } = systems[system]
  const names = ['', 'Limb', 'Cut', `at ${diameter}`, `lat. ${diameter}`, `cut ${height}`, `tip ${height}`]
  return row([...names, 'dose', 'ratio', 'priority'], cutWidths)
}

function cutLines(cut: Cut, system: UnitSystem): string[] {
  const { diameter, height } = systems[system]
  const thick = (value: number | null) =>
    value === null ? '' : convertLength(value, 'mm', diameter).toFixed(1)
  const high = (value: number | null) => (value === null ? '' : convertLength(value, 'm', height).toFixed(1))
  const ratios = [cut.aspectRatio, cut.projectedAspectRatio].flatMap((value) => value?.toFixed(2) ?? [])
  const cells = [
    '',
    cut.limb.id,
    cut.kind,
    thick(cut.cutDiameter),
    thick(cut.lateralMin),
    high(cut.cutHeight),
    high(cut.tipAfter),
    percent(cut.dose),
    ratios.join(' > '),
    `${cut.priority.toFixed(0)} > ${cut.nextPriority.toFixed(0)}`
  ]
  const mark = cut.needsReason ? ' Write down why a cut this large is made.' : ''
  return [row(cells, cutWidths), ...folded(cut.reason + mark, 6)]
}

function visitLines(visit: Visit, system: UnitSystem): string[] {
  if (visit.cuts.length === 0) return []
  const cuts = [...visit.cuts].sort((a, b) => b.priority - a.priority || a.limb.row - b.limb.row)
  const heading = `  Visit ${String(visit.visit)}, ${String(visit.year)}: dose ${percent(visit.dose)} of the ${percent(visit.allowedRemoval)} allowed`
  return [heading, cutHeader(system), ...cuts.flatMap((cut) => cutLines(cut, system))]
}

function treeLines(plan: TreePlan, system: UnitSystem): string[] {
  const { tree, leader } = plan
  const crown = plan.liveCrownRatio === null ? 'unknown' : plan.liveCrownRatio.toFixed(2)
  const name = describeTree(tree)
  const lines = [
    '',
    ...folded(`${tree.id}${name === '' ? '' : `  ${name}`}`, 0),
    ...folded(`Leader ${leader.name}; live-crown ratio ${crown}; allowed ${plan.allowedBasis}.`, 2)
  ]
  const visits = plan.visits.flatMap((visit) => visitLines(visit, system))
  lines.push(...(visits.length === 0 ? ['  No cut.'] : visits))
  for (const { limb, priority, clearedByVisit } of plan.remaining) {
    const until =
      clearedByVisit === null ? 'not settled within the plan' : `settled by visit ${String(clearedByVisit)}`
    lines.push(...folded(`Remains: limb ${limb.id}, priority ${priority.toFixed(0)}, ${until}.`, 2))
  }
  return lines
}

function problemLines(plan: Plan): string[] {
  const lines: string[] = []
  if (plan.unplanned.length > 0) lines.push('', 'NOT PLANNED')
  for (const { cell, reason } of plan.unplanned) lines.push(...folded(`${cell}: ${reason}`, 2))
  const problems = plan.problems.filter(({ code }) => code !== 'closed-window')
  if (problems.length > 0) lines.push('', 'CHECKS')
  for (const { message, remedy } of problems) lines.push(...folded(`${message} ${remedy}`, 2))
  return lines
}

/** Rules that are not the defaults, and windows that the first visit falls in: said before anything else. */
function basisLines(plan: Plan): string[] {
  const changed = (plan.ruleChanges ?? []).map(({ name, from, to, reason }) => {
    const why = reason === '' ? '' : ` (${reason})`
    return `Rule changed: ${name}, ${showRule(from)} to ${showRule(to)}${why}.`
  })
  const closed = closedSentences(plan).map((sentence) => `Closed window: ${sentence}`)
  return [...closed, ...changed].flatMap((sentence) => folded(sentence, 0))
}

/** The plan as text in columns for a terminal, the cautions at its end. */
export function planText(plan: Plan, estimate: Estimate): string {
  const { inventory } = plan
  const from = `${String(plan.trees.length)} trees and ${String(inventory.limbCount)} limbs from ${inventory.address}`
  const lines = [
    `Limbwright ${version}: cut plan of ${plan.date}`,
    ...folded(
      plan.trees.length === 0 ? `Nothing could be planned: ${from}.` : `${from}. Trees by urgency.`,
      0
    ),
    ...basisLines(plan),
    ...byUrgency(plan).flatMap((tree) => treeLines(tree, plan.system)),
    ...(estimate.lines.length === 0 ? [] : estimateLines(estimate, plan.system)),
    ...problemLines(plan),
    '',
    ...[...howToRead, ...cautions].flatMap((sentence) => folded(sentence, 0))
  ]
  return lines.join('\n')
}
