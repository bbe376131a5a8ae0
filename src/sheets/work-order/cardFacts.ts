import type { UnitSystem } from '../../../shared/units'
import { hours as hoursText, quantity } from '../../../shared/words/figures'
import { showDiameter, showHeight } from '../../../shared/words/lengths'
import { percent } from '../../../shared/words/percent'
import { capital, closed, sentence } from '../../../shared/words/sentences'
import { placesExplained } from '../../drawing/labels/letters'
import { judgedWords, notJudgedLimbs } from '../../plan/judged'
import type { TreePlan } from '../../plan/plan'
import { scaffoldSentence } from '../../plan/scaffold/scaffoldWords'
import { shownDoses } from '../../plan/shownDoses'
import { zoneWords } from '../../plan/treeTitle'
import type { Stop } from './workOrderDays'

/** The units of a card: lengths go by the plan, weights by the rates. */
export interface CardUnits {
  readonly system: UnitSystem
  readonly weight: 'lb' | 'kg'
}

/** A sentence of a card; what bounds the work is bold. */
export interface Fact {
  readonly text: string
  readonly bold: boolean
}

const parts: readonly (readonly [of: number, words: string])[] = [
  [1 / 20, 'a twentieth'],
  [1 / 10, 'a tenth'],
  [1 / 8, 'an eighth'],
  [1 / 5, 'a fifth'],
  [1 / 4, 'a quarter']
]

/** "a fifth of the live leaves (20 %)"; a share that is no simple part is a percentage only. */
function partOfLeaves(share: number): string {
  const simple = parts.find(([of]) => Math.abs(share - of) < 5e-4)
  return simple === undefined
    ? `${percent(share)} of the live leaves`
    : `${simple[1]} of the live leaves (${percent(share)})`
}

/** The ceiling in words, and what the cuts are computed to take. */
function foliage({ visit }: Stop): string {
  if (!visit.cuts.some(({ live }) => live)) return 'Dead wood only: no live wood is cut.'
  const { allowed, visit: taken } = shownDoses(visit)
  return `At most ${partOfLeaves(allowed)}; the cuts take ${percent(taken)}.`
}

function leaderWords({ leader, form }: TreePlan): string {
  const name =
    leader.limb === null ? (form === 'multi-stem' ? 'the stems' : 'the trunk') : `limb ${leader.limb.id}`
  return leader.confirm
    ? `Leader, never cut: ${name}. Confirm it first: ${closed(leader.reason)}`
    : `Leader, never cut: ${name}.`
}

/** What the clearance comes to at this visit; nothing that the plan does not reach is reported to be clear. */
function clearanceWords({ tree, clearance }: TreePlan, system: UnitSystem): string {
  if (tree.clearance === null) return ''
  const side = tree.clearanceSide === null ? '' : ` on the side ${tree.clearanceSide.text}`
  const wanted = `Clearance of ${showHeight(tree.clearance, system, 'at least')}${side}`
  if (clearance === null) return `${wanted}.`
  const { reachedNow, required, reachedYear } = clearance
  if (reachedNow >= required - 1e-6) return `${wanted}: nothing lower when you leave.`
  const now = showHeight(reachedNow, system, 'at most')
  const later = reachedYear === null ? '' : ` and in full in ${String(reachedYear)}`
  return `${wanted}: ${now} is reached now${later}.`
}

const accessWords = {
  open: 'open access',
  fenced: 'fenced yard',
  'no machine': 'no machine gets there'
} as const

function workWords({ tree, line }: Stop, { weight: unit }: CardUnits): string {
  const { access } = tree.tree
  const who = line.byPole ? 'One person with a pole' : `Crew of ${String(line.persons)}`
  const weight = `${quantity(line.brush.weight)} ${unit} of brush`
  return sentence(
    [who, `${hoursText(line.crewHours)} crew-hours`, weight, accessWords[access ?? 'open']].join(', ')
  )
}

/** What is known of a tree beside its id and species. */
function measuresOf({ tree: { tree } }: Stop, system: UnitSystem): string {
  return [
    ...(tree.trunk === null ? [] : [`trunk ${showDiameter(tree.trunk, system)}`]),
    ...(tree.height === null ? [] : [`${showHeight(tree.height, system)} high`])
  ].join(', ')
}

/** The id of a tree, its species and its measures, for the title of its card. */
export function cardTitle(stop: Stop, system: UnitSystem): [id: string, ...about: string[]] {
  const { id, species } = stop.tree.tree
  return [id, ...[species.trim(), measuresOf(stop, system)].filter((part) => part !== '')]
}

/** Notes of the tree and of the limbs that are cut, those of a limb with several cuts once. */
function notesOf({ tree, visit }: Stop): string[] {
  const limbs = new Set(visit.cuts.map(({ limb }) => limb))
  return [
    tree.tree.notes,
    ...[...limbs].map(({ id, notes }) => (notes.trim() === '' ? '' : `Limb ${id}: ${notes}`))
  ].filter((text) => text.trim() !== '')
}

/** The zone and the location, as far as they are known. */
function whereIs({ zone, site }: TreePlan['tree']): string {
  return [zoneWords(zone), site.trim()].filter((part) => part !== '').join(', ')
}

/** What a crew has to know of a tree before its cuts, a sentence each. */
export function cardFacts(stop: Stop, units: CardUnits): Fact[] {
  const { tree, visit } = stop
  const { system } = units
  const fact = (text: string, bold = false): Fact[] => (text === '' ? [] : [{ text, bold }])
  const names = placesExplained(tree)
  const held = visit.limbs.filter(({ decision }) => decision === 'hold')
  return [
    ...fact(sentence(whereIs(tree.tree))),
    ...fact(leaderWords(tree), true),
    ...fact(foliage(stop), true),
    ...fact(names === '' ? '' : `In the drawing ${names}.`),
    ...fact(clearanceWords(tree, system)),
    ...fact(workWords(stop, units)),
    ...fact(scaffoldSentence(tree)),
    ...(tree.notJudged.length === 0
      ? []
      : fact(`${capital(judgedWords(tree))}: leave ${notJudgedLimbs(tree)} and survey again.`, true)),
    ...held.flatMap(({ limb }) => fact(`Limb ${limb.id}: the arborist decides on site.`, true)),
    ...notesOf(stop).flatMap((text) => fact(sentence(text)))
  ]
}
