import { problem, type FactsGiven, type Problem, type ProblemCode } from '../../shared/problems'
import { showHeight } from '../../shared/words/lengths'
import { columnOf, type Field } from '../../shared/columns'
import {
  fieldAddress,
  leaveUnplanned,
  type Limb,
  type Tree,
  type UnplannedList
} from '../inventory/inventory'

/** A tree whose own measurements can be planned with. Heights in m. */
export interface CheckedTree {
  tree: Tree
  height: number
  crownBase: number
}

/** Gathers a tree's problems; `refuse` also takes the limb out of the plan. */
export class TreeCheck {
  constructor(
    readonly inventory: UnplannedList,
    readonly tree: Tree,
    readonly problems: Problem[]
  ) {}

  note<Code extends ProblemCode>(
    code: Code,
    row: number,
    field: Field,
    ...[facts]: FactsGiven<Code, 'tree'>
  ): Problem {
    const all = [{ tree: this.tree.id, ...facts }] as unknown as FactsGiven<Code>
    const found = problem(code, fieldAddress(this.inventory, row, field), ...all)
    this.problems.push(found)
    return found
  }

  /** Says once for all trees what a missing column means for them; null where the inventory has the column. */
  noteColumn(field: Field, found: Problem): Problem | null {
    if (this.inventory.matches.some((match) => match.field === field)) return null
    const said = this.problems.find(({ message }) => message === found.message)
    if (said === undefined) this.problems.push(found)
    return said ?? found
  }

  /** Says what the tree is planned as where a value is missing. */
  assume(field: 'stage' | 'vigor', value: string): void {
    const { name } = columnOf(field)
    const facts = { column: name.toLowerCase(), value }
    if (this.noteColumn(field, problem('assumed-column', '', { ...facts, name })) === null)
      this.note('assumed-value', this.tree.row, field, facts)
  }

  /** Limbs taken out while planning; the inventory itself stays as it was read. */
  private out: Set<Limb> | null = null

  isOut(limb: Limb): boolean {
    return limb.unplannable !== null || this.out?.has(limb) === true
  }

  refuse(limb: Limb, reason: string): void {
    if (this.isOut(limb)) return
    this.out ??= new Set()
    this.out.add(limb)
    leaveUnplanned(this.inventory, this.tree.id, limb.row, reason)
  }

  show(meters: number): string {
    return showHeight(meters, this.inventory.system)
  }
}

/**
 * Checks what the plan needs of a tree: height and crown base, and each limb's heights against them. Null where the
 * tree's limbs cannot be judged; they are then listed with the reason.
 */
export function checkTree(check: TreeCheck): CheckedTree | null {
  const { tree } = check
  const height = neededHeight(check)
  if (height === null) return null
  const crownBase = neededCrownBase(check, height)
  if (crownBase === null) return null
  for (const limb of tree.limbs) checkLimb(check, limb, height)
  return { tree, height, crownBase }
}

function refuseAll(check: TreeCheck, reason: string): null {
  for (const limb of check.tree.limbs) check.refuse(limb, reason)
  if (check.tree.limbs.length === 0) leaveUnplanned(check.inventory, check.tree.id, check.tree.row, reason)
  return null
}

function neededHeight(check: TreeCheck): number | null {
  const { height, row } = check.tree
  if (height !== null) return height
  const { name } = columnOf('height')
  const column = name.toLowerCase()
  const missing =
    check.noteColumn('height', problem('needed-column', '', { column: `the ${column}`, name })) ??
    check.note('missing-tree-value', row, 'height', { column })
  return refuseAll(check, missing.message)
}

function neededCrownBase(check: TreeCheck, height: number): number | null {
  const { crownBase, limbs, row } = check.tree
  if (crownBase !== null) {
    if (crownBase < height) return crownBase
    return refuseAll(
      check,
      check.note('crown-base-above-top', row, 'crownBase', { value: check.show(height) }).message
    )
  }
  const known = limbs.flatMap((limb) => (limb.dead ? [] : (limb.lowestFoliage ?? limb.origin ?? [])))
  const noColumn = check.noteColumn('crownBase', problem('no-crown-base-column', ''))
  if (known.length === 0) {
    const missing =
      noColumn ?? check.note('missing-tree-value', row, 'crownBase', { column: 'crown base height' })
    return refuseAll(check, missing.message)
  }
  const lowest = Math.min(...known)
  if (noColumn === null) check.note('crown-base-assumed', row, 'crownBase', { value: check.show(lowest) })
  return lowest < height
    ? lowest
    : refuseAll(
        check,
        check.note('crown-base-above-top', row, 'crownBase', { value: check.show(height) }).message
      )
}

function checkLimb(check: TreeCheck, limb: Limb, height: number): void {
  const facts = { limb: limb.id, value: check.show(height) }
  if (limb.origin !== null && limb.origin >= height && !limb.dead) {
    if (limb.role !== 'leader')
      check.refuse(limb, check.note('origin-above-tree', limb.row, 'origin', facts).message)
    return
  }
  if (limb.tip === null || check.isOut(limb)) return
  if (limb.tip > height * 1.0005) check.note('tip-above-tree', limb.row, 'tip', facts)
  if (limb.origin !== null && limb.tip < limb.origin) check.note('tip-below-origin', limb.row, 'tip', facts)
}

/** Takes out limbs whose parent is not listed or whose chain of parents has no end. */
export function checkParents(check: TreeCheck): void {
  if (check.tree.limbs.every((limb) => limb.parent === null)) return
  const byId = new Map(check.tree.limbs.map((limb) => [limb.id, limb]))
  for (const limb of check.tree.limbs) {
    if (limb.parent === null || check.isOut(limb)) continue
    const facts = { limb: limb.id, text: limb.parent }
    if (!byId.has(limb.parent)) {
      check.refuse(limb, check.note('parent-unknown', limb.row, 'parent', facts).message)
      continue
    }
    const seen = new Set<string>([limb.id])
    let above = byId.get(limb.parent)
    while (above !== undefined && above.parent !== null && !seen.has(above.id)) {
      seen.add(above.id)
      above = byId.get(above.parent)
    }
    if (above !== undefined && seen.has(above.id))
      check.refuse(limb, check.note('parent-loop', limb.row, 'parent', facts).message)
  }
}
