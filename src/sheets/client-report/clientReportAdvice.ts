import { defaultRules } from '../../../shared/rules'
import { counted } from '../../../shared/words/counts'
import { showHeight } from '../../../shared/words/lengths'
import { listed } from '../../../shared/words/lists'
import { percent, wholePercent } from '../../../shared/words/percent'
import { firstOf } from '../../../shared/words/some'
import { foremostLimb, ratioCourse } from '../../drawing/charts/ratioCourse'
import { firstYearOf, type Cut, type Plan } from '../../plan/plan'
import { shownDoses } from '../../plan/shownDoses'
import { byPurpose } from '../purposes'
import type { ReportedTree } from './reportedTrees'

/** Trees named in a sentence at most. */
const mostNamed = 6

interface Due {
  readonly trees: readonly ReportedTree[]
  readonly cuts: readonly Cut[]
}

/** The work that is due at the first visit, offered or not. */
function dueOf(trees: readonly ReportedTree[]): Due {
  const due = trees.filter(({ visit }) => visit?.visit === 1)
  return { trees: due, cuts: due.flatMap(({ visit }) => visit?.cuts ?? []) }
}

function limbsIn(cuts: readonly Cut[], chosen: (cut: Cut) => boolean): number {
  return new Set(cuts.filter(chosen).map(({ limb }) => limb)).size
}

/** "shorten 18 limbs to a side branch, take off 6, …". */
function workWords({ cuts }: Due): string {
  const acts: readonly (readonly [string, string, (cut: Cut) => boolean])[] = [
    ['shorten', 'to a side branch', ({ kind, live }) => live && kind === 'reduce'],
    ['take off', '', ({ kind, live }) => live && kind === 'remove'],
    ['take hanging branches off', '', ({ kind }) => kind === 'raise']
  ]
  const words = acts.flatMap(([verb, end, chosen]) => {
    const count = limbsIn(cuts, chosen)
    return count === 0 ? [] : [[verb, counted(count, 'limb'), end].filter(Boolean).join(' ')]
  })
  const dead = limbsIn(cuts, ({ live }) => !live)
  if (dead > 0) words.push(`take out ${counted(dead, 'dead or broken limb')}`)
  return listed(words)
}

/** The largest part of a tree's leaves that comes off at a first visit. */
function leavesWords({ trees }: Due): string {
  const most = Math.max(0, ...trees.map(({ visit }) => (visit === null ? 0 : shownDoses(visit).visit)))
  return most > 0
    ? `No tree loses more than ${percent(most)} of its living leaves at once, as leaves feed it.`
    : 'No living wood is cut.'
}

/** How far the clearances that are asked for are reached, by the year. */
function clearanceWords(trees: readonly ReportedTree[], { system }: Plan, now: number): string {
  const asked = trees.flatMap(({ tree: { tree, clearance, visits } }) =>
    clearance === null || visits.length === 0 ? [] : [{ id: tree.id, ...clearance }]
  )
  if (asked.length === 0) return ''
  const later = asked.filter(({ reachedYear }) => reachedYear !== null && reachedYear > now)
  const open = asked.filter(({ reachedYear }) => reachedYear === null)
  const reached = asked.length - later.length - open.length
  const name = ({ id, required }: (typeof asked)[number]) =>
    `${id} (${showHeight(required, system, 'at least')})`
  const parts = [
    reached > 0 ? `at ${counted(reached, 'tree')} in ${String(now)}` : '',
    later.length > 0
      ? `at ${firstOf(
          later.map((each) => `${name(each)} in ${String(each.reachedYear)}`),
          mostNamed
        )}`
      : '',
    open.length > 0 ? `not yet at ${firstOf(open.map(name), mostNamed)}` : ''
  ]
  return `The height you want kept clear is reached ${listed(parts.filter((part) => part !== ''))}.`
}

/** What should be done at the first visits, and what that comes to for the trees. */
export function adviceWords(plan: Plan, trees: readonly ReportedTree[]): string {
  const due = dueOf(trees)
  const year = firstYearOf(plan)
  if (due.trees.length === 0) {
    const next = trees.flatMap(({ visit }) => (visit === null ? [] : [visit.year]))
    return next.length === 0
      ? 'Nothing is to be cut. A tree that needs no cut is best left alone.'
      : `Nothing is to be cut in ${String(year)}; the next visit is due in ${String(Math.min(...next))}.`
  }
  const structural = due.cuts.some(({ live, kind }) => live && kind === 'reduce')
  return [
    `Prune ${counted(due.trees.length, 'tree')} in ${String(year)}: ${workWords(due)}.`,
    structural
      ? 'A limb shortened to a side branch grows more slowly than the main stem, and the wound stays small.'
      : '',
    leavesWords(due),
    clearanceWords(trees, plan, year)
  ]
    .filter((sentence) => sentence !== '')
    .join(' ')
}

/** How thick the foremost limb of a tree becomes if it is left alone: the first tree where that says something. */
function thickening(plan: Plan, trees: readonly ReportedTree[]): string {
  for (const { tree, visit } of trees) {
    const limb = visit === null ? null : foremostLimb(tree)
    const course = limb === null ? null : ratioCourse(tree, limb, plan.rules ?? defaultRules)
    const [now, then] = [course?.unpruned[0], course?.unpruned.at(-1)]
    if (course === null || now === undefined || then === undefined) continue
    const [today, later] = [wholePercent(now.ratio), wholePercent(then.ratio)]
    if (then.ratio <= now.ratio || today === later) continue
    return `Limb ${course.limb.id} of ${tree.tree.id} would be ${later} as thick as its stem by ${String(then.year)}, against ${today} now.`
  }
  return ''
}

/** What happens if nothing is done, without a word on whether anything breaks. */
export function otherwiseWords(plan: Plan, trees: readonly ReportedTree[]): string {
  const due = dueOf(trees)
  if (due.trees.length === 0) return ''
  const serves = (...purposes: readonly string[]) =>
    due.trees.some(({ tree, visit }) =>
      byPurpose(tree, visit?.cuts ?? []).some(({ purpose }) => purposes.includes(purpose))
    )
  return [
    'Nothing changes overnight.',
    serves('leader', 'reach')
      ? `The limbs that compete go on thickening with their stem. ${thickening(plan, due.trees)} The same cut is then larger, and a limb taken off when it is thick beside its stem discolors the trunk behind the wound (source 1).`
      : '',
    serves('clearance') ? 'Low branches go on hanging into the space to be kept clear.' : '',
    serves('dead', 'hurt') ? 'Dead, broken and rubbing limbs stay on the trees.' : ''
  ]
    .filter((sentence) => sentence !== '')
    .join(' ')
    .replaceAll('  ', ' ')
}
