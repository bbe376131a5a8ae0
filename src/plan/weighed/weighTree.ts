import { defaultRules, type Rules } from '../../../shared/rules'
import type { UnitSystem } from '../../../shared/units'
import { atLeast } from '../../formulas/boundary'
import type { Limb } from '../../inventory/inventory'
import type { AssessedLimb } from '../assessLimb'
import { chooseForVisit, cutOf, type VisitChoice } from '../chooseForVisit'
import { firstVisit, prepareAgain } from '../firstVisit'
import type { TreePlan } from '../plan'
import { planVisits } from '../planVisits'
import { atOnce } from '../turns'
import type { VisitConditions } from '../visitConditions'
import { obligationWords, waitingWords } from './obligationWords'
import { structureWords } from './structureWords'

/** Why this and not more, in sentences, for every limb with a claim at a visit: cut, left or waiting. */
export type Weighed = ReadonlyMap<Limb, readonly string[]>

/** How a tree is weighed again: by the rules and in the units of its plan. */
export interface Weighing {
  readonly rules?: Rules | undefined
  readonly system: UnitSystem
}

/**
 * What was weighed and refused for the limbs of a tree, visit by visit, and by which rule. The visits are planned once more
 * by the engine itself and looked at while it chooses, so that nothing here judges by rules of its own.
 */
export function weighTree(plan: TreePlan, { rules = defaultRules, system }: Weighing): readonly Weighed[] {
  const [first] = plan.visits
  if (first === undefined) return []
  const date = `${String(first.year)}-01-01`
  const prepared = prepareAgain(plan.tree, rules, date, system)
  if (prepared === null) return []
  const weighed: Weighed[] = []
  atOnce(
    planVisits(prepared, plan.allowedRemoval, {
      rules,
      date,
      year: first.year,
      visits: rules.horizonVisits,
      watch: (choice, conditions) => {
        weighed.push(weighVisit(choice, conditions))
      }
    })
  )
  return weighed
}

/** The same for the first visit only, which documents of many trees show. */
export function weighFirstVisit(plan: TreePlan, { rules = defaultRules, system }: Weighing): Weighed {
  const [first] = plan.visits
  const date = `${String(first?.year)}-01-01`
  const seen =
    first === undefined ? null : firstVisit(plan.tree, { rules, date, allowed: plan.allowedRemoval, system })
  return seen === null ? nothing : weighVisit(chooseForVisit(seen.tree, seen.conditions), seen.conditions)
}

const nothing: Weighed = new Map()

/** A plan is a value, and the pane asks for the same visits limb by limb. */
const known = new WeakMap<TreePlan, readonly Weighed[]>()

/** What was weighed for a limb at a visit counted from 1; nothing where the limb has no claim. One plan has one set of rules. */
export function weighedFor(plan: TreePlan, visit: number, limb: Limb, weighing: Weighing): readonly string[] {
  let visits = known.get(plan)
  if (visits === undefined) known.set(plan, (visits = weighTree(plan, weighing)))
  return visits[visit - 1]?.get(limb) ?? []
}

function weighVisit(choice: VisitChoice, conditions: VisitConditions): Weighed {
  const after = new Map(choice.assessed.map((each) => [each.limb, each]))
  const weighed = new Map<Limb, readonly string[]>()
  for (const before of choice.before) {
    const { limb, priority } = before
    const isClaim =
      atLeast(priority, conditions.rules.clearedBelow) ||
      choice.pass.obliged.has(limb) ||
      cutOf(choice, limb) !== undefined
    if (!isClaim) continue
    weighed.set(limb.surveyed, weighLimb(before, after.get(limb), choice, conditions))
  }
  return weighed
}

function weighLimb(
  before: AssessedLimb,
  after: AssessedLimb | undefined,
  choice: VisitChoice,
  conditions: VisitConditions
): string[] {
  const { limb, priority } = before
  const made = choice.pass.made.filter((each) => each.limb === limb)
  const hold = choice.pass.obliged.get(limb) ?? null
  const sentences = made.flatMap((obliged) =>
    obligationWords({ assessed: obliged.assessed ?? before, choice, conditions }, obliged, hold)
  )
  if (hold !== null && made.length === 0)
    sentences.push(waitingWords({ assessed: before, choice, conditions }, hold))
  const isReduced = made.some(({ cut }) => cut.kind !== 'raise')
  if (hold === 'allowance' && choice.pass.left <= 0) return sentences
  if (after !== undefined && !isReduced)
    sentences.push(...structureWords({ assessed: after, choice, conditions }, priority))
  else if (after === undefined && made.length === 0)
    sentences.push(`Goes with limb ${limb.parent?.surveyed.id ?? ''}.`)
  return sentences
}
