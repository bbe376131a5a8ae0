import { columnOf, type Field } from '../../shared/columns'
import { problem, type FactsGiven, type Problem, type ProblemCode } from '../../shared/problems'
import { showHeight } from '../../shared/words/lengths'
import { atLeast, isOver, isUnder } from '../formulas/boundary'
import type { TreeHeights } from '../formulas/heights'
import { fieldAddress, type Inventory, type Limb, type Tree } from '../inventory/inventory'

/** A tree, and the inventory in whose cells its problems are shown. */
export interface SurveyedTree {
  readonly inventory: Inventory
  readonly tree: Tree
}

/** A limb that is not planned, or the tree's own row where it has no limb, and why. */
export interface Refusal {
  readonly limb: Limb | null
  readonly reason: string
}

/** What was found of a tree: its problems in the order in which they are told, and what is not planned. */
export interface Findings {
  readonly problems: readonly Problem[]
  readonly refused: readonly Refusal[]
}

/** A tree whose own measurements were checked; no heights where its limbs cannot be judged. */
export interface CheckedTree extends Findings {
  readonly heights: TreeHeights | null
}

/** A problem of a tree at a field of a row. */
export function treeProblem<Code extends ProblemCode>(
  { inventory, tree }: SurveyedTree,
  code: Code,
  row: number,
  field: Field,
  ...[facts]: FactsGiven<Code, 'tree'>
): Problem {
  const all = [{ tree: tree.id, ...facts }] as unknown as FactsGiven<Code>
  return problem(code, fieldAddress(inventory, row, field), ...all)
}

/** Problems of a whole column, which are told once for all trees. */
const ofColumns: ReadonlySet<ProblemCode> = new Set<ProblemCode>([
  'assumed-column',
  'needed-column',
  'no-crown-base-column'
])

/** Told before, of another tree. */
export function isTold({ code, message }: Problem, before: readonly Problem[]): boolean {
  return ofColumns.has(code) && before.some((told) => told.message === message)
}

export function hasColumn({ matches }: Inventory, field: Field): boolean {
  return matches.some((match) => match.field === field)
}

/** What the tree is planned as where a value is missing. */
export function assumed(surveyed: SurveyedTree, field: 'form' | 'stage' | 'vigor', value: string): Problem {
  const { name } = columnOf(field)
  const facts = { column: name.toLowerCase(), value }
  return hasColumn(surveyed.inventory, field)
    ? treeProblem(surveyed, 'assumed-value', surveyed.tree.row, field, facts)
    : problem('assumed-column', '', { ...facts, name })
}

/** Not planned, as it was read or as it was found since. */
export function isOut(limb: Limb, refused: readonly Refusal[]): boolean {
  if (limb.unplannable !== null) return true
  for (const each of refused) if (each.limb === limb) return true
  return false
}

/**
 * Checks what the plan needs of a tree: height and crown base, and each limb's heights against them. Where the tree's
 * limbs cannot be judged, all of them are refused with the reason.
 */
export function checkTree(surveyed: SurveyedTree): CheckedTree {
  const { tree } = surveyed
  const { height } = tree
  if (height === null) return unjudged(tree, [missingHeight(surveyed)])
  const { crownBase, problems } = neededCrownBase(surveyed, height)
  if (crownBase === null) return unjudged(tree, problems)
  const refused: Refusal[] = []
  const found = [...problems]
  for (const limb of tree.limbs) {
    const each = limbProblems(surveyed, limb, height)
    const [first] = each
    if (first === undefined) continue
    found.push(...each)
    if (first.code === 'origin-above-tree' && !isOut(limb, refused))
      refused.push({ limb, reason: first.message })
  }
  return { heights: { height, crownBase }, problems: found, refused }
}

/** The last of the problems is the reason. */
function unjudged({ limbs }: Tree, problems: readonly Problem[]): CheckedTree {
  const reason = problems.at(-1)?.message ?? ''
  const planned = limbs.filter((limb) => !isOut(limb, []))
  const refused = limbs.length === 0 ? [{ limb: null, reason }] : planned.map((limb) => ({ limb, reason }))
  return { heights: null, problems, refused }
}

function missingHeight(surveyed: SurveyedTree): Problem {
  const { name } = columnOf('height')
  const column = name.toLowerCase()
  return hasColumn(surveyed.inventory, 'height')
    ? treeProblem(surveyed, 'missing-tree-value', surveyed.tree.row, 'height', { column })
    : problem('needed-column', '', { column: `the ${column}`, name })
}

interface FoundCrownBase {
  readonly crownBase: number | null
  readonly problems: readonly Problem[]
}

/** The crown base as measured, or the lowest foliage that is known; null where it is not below the top. */
function neededCrownBase(surveyed: SurveyedTree, height: number): FoundCrownBase {
  const { inventory, tree } = surveyed
  const { crownBase, row } = tree
  const show = (meters: number) => ({ value: showHeight(meters, inventory.system) })
  const below = (base: number, problems: readonly Problem[]): FoundCrownBase =>
    isUnder(base, height)
      ? { crownBase: base, problems }
      : {
          crownBase: null,
          problems: [
            ...problems,
            treeProblem(surveyed, 'crown-base-above-top', row, 'crownBase', show(height))
          ]
        }
  if (crownBase !== null) return below(crownBase, [])
  const known = tree.limbs.flatMap((limb) => (limb.dead ? [] : (limb.lowestFoliage ?? limb.origin ?? [])))
  const lowest = Math.min(...known)
  if (!hasColumn(inventory, 'crownBase')) {
    const noColumn = [problem('no-crown-base-column', '')]
    return known.length === 0 ? { crownBase: null, problems: noColumn } : below(lowest, noColumn)
  }
  if (known.length > 0)
    return below(lowest, [treeProblem(surveyed, 'crown-base-assumed', row, 'crownBase', show(lowest))])
  const column = 'crown base height'
  const missing = treeProblem(surveyed, 'missing-tree-value', row, 'crownBase', { column })
  return { crownBase: null, problems: [missing] }
}

const none: readonly Problem[] = []

/** What is wrong with a limb's heights; a limb that starts above the tree has that problem alone, and is refused. */
function limbProblems(surveyed: SurveyedTree, limb: Limb, height: number): readonly Problem[] {
  const { origin, tip, row, id } = limb
  const facts = () => ({ limb: id, value: showHeight(height, surveyed.inventory.system) })
  if (origin !== null && atLeast(origin, height) && !limb.dead)
    return limb.role === 'leader'
      ? none
      : [treeProblem(surveyed, 'origin-above-tree', row, 'origin', facts())]
  if (tip === null || limb.unplannable !== null) return none
  const tooHigh = isOver(tip, height * 1.0005)
  const drooping = origin !== null && isUnder(tip, origin)
  if (!tooHigh && !drooping) return none
  return [
    ...(tooHigh ? [treeProblem(surveyed, 'tip-above-tree', row, 'tip', facts())] : []),
    ...(drooping ? [treeProblem(surveyed, 'tip-below-origin', row, 'tip', facts())] : [])
  ]
}

/**
 * Refuses limbs whose parent is not listed or dead, or whose chain of parents has no end, besides those already refused. What
 * grows on a dead limb would go with it, or the limb is not dead as far as there: it is asked.
 */
export function checkParents(surveyed: SurveyedTree, before: readonly Refusal[]): Findings {
  const { limbs } = surveyed.tree
  const problems: Problem[] = []
  const refused: Refusal[] = []
  if (limbs.every((limb) => limb.parent === null)) return { problems, refused }
  const byId = new Map(limbs.map((limb) => [limb.id, limb]))
  for (const limb of limbs) {
    if (limb.parent === null || isOut(limb, before)) continue
    const code = parentFault(limb, byId) ?? (isOnDead(limb, byId) ? 'parent-dead' : null)
    if (code === null) continue
    const found = treeProblem(surveyed, code, limb.row, 'parent', { limb: limb.id, text: limb.parent })
    problems.push(found)
    refused.push({ limb, reason: found.message })
  }
  return { problems, refused }
}

/** What is wrong with the chain of a limb's parents, or null. */
function parentFault(limb: Limb, byId: ReadonlyMap<string, Limb>): 'parent-unknown' | 'parent-loop' | null {
  if (limb.parent === null) return null
  let above = byId.get(limb.parent)
  if (above === undefined) return 'parent-unknown'
  const seen = new Set<string>([limb.id])
  while (above !== undefined && above.parent !== null && !seen.has(above.id)) {
    seen.add(above.id)
    above = byId.get(above.parent)
  }
  return above !== undefined && seen.has(above.id) ? 'parent-loop' : null
}

/** A live limb on one that is dead; a dead leader is asked about by itself. The chain of its parents ends. */
function isOnDead({ dead, parent }: Limb, byId: ReadonlyMap<string, Limb>): boolean {
  if (dead) return false
  let above = parent === null ? undefined : byId.get(parent)
  while (above !== undefined) {
    if (above.dead && above.role !== 'leader') return true
    above = above.parent === null ? undefined : byId.get(above.parent)
  }
  return false
}
