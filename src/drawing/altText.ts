import { counted } from '../../shared/words/counts'
import type { UnitSystem } from '../../shared/units'
import { showDiameter, showHeight } from '../../shared/words/lengths'
import { noCutWords } from '../plan/judged'
import type { TreePlan, Visit } from '../plan/plan'
import { captionOf, cutLines } from './cutLines'
import { doseWords } from './doseBar'

function treeWords({ tree }: TreePlan, system: UnitSystem): string {
  const facts = [
    tree.height === null ? 'height not known' : `height ${showHeight(tree.height, system)}`,
    tree.trunk === null ? 'trunk diameter not known' : `trunk ${showDiameter(tree.trunk, system)}`,
    tree.crownBase === null ? 'crown base not known' : `crown base at ${showHeight(tree.crownBase, system)}`
  ]
  if (tree.clearance !== null)
    facts.push(`clearance asked for ${showHeight(tree.clearance, system, 'at least')}`)
  return facts.join(', ')
}

function leaderWords({ leader }: TreePlan): string {
  const confirm = leader.confirm ? ', to be confirmed on site' : ''
  if (leader.limb !== null) return `Leader: limb ${leader.name}${confirm}`
  return leader.name === '' ? 'Leader: not judged' : `Leader: the ${leader.name}${confirm}`
}

function cutWords(plan: TreePlan, visit: Visit, when: 'before' | 'after', system: UnitSystem): string {
  const lines = cutLines(visit, when, system)
  if (lines.length === 0) return noCutWords(plan)
  return `${counted(lines.length, 'cut')}: ${lines.map(({ number, text }) => `${number}, limb ${text}`).join('; ')}`
}

/** Everything a drawing of a tree says, in words. */
export function altText(
  plan: TreePlan,
  visit: Visit | null,
  when: 'before' | 'after',
  system: UnitSystem,
  notDrawn: readonly string[],
  drawn: boolean
): string {
  const species = plan.tree.species.trim()
  const sentences = [
    `${captionOf(plan, visit, when)}${species === '' ? '' : `, ${species}`}`,
    `Side view with ${treeWords(plan, system)}`,
    leaderWords(plan)
  ]
  if (visit !== null) {
    sentences.push(cutWords(plan, visit, when, system), doseWords(visit))
    const held = visit.limbs.filter(({ decision }) => decision === 'hold')
    if (held.length > 0)
      sentences.push(`Hold, or decide on site: limb ${held.map(({ limb }) => limb.id).join(', ')}`)
  }
  if (!drawn) sentences.push('No drawing, because the height of the tree is not known')
  if (notDrawn.length > 0) sentences.push(`Not drawn: ${notDrawn.map((id) => `limb ${id}`).join(', ')}`)
  return `${sentences.join('. ')}.`
}
