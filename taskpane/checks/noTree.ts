import type { Limb, Tree } from '../../src/inventory/inventory'
import type { Plan } from '../../src/plan/plan'
import type { Check } from './checksSection'

const measuredOfLimbs = ['diameter', 'stem', 'origin', 'tip'] as const
const givenOfTrees = ['species', 'trunk', 'height', 'crownBase', 'caliper', 'spread'] as const

const isMeasured = (limb: Limb): boolean => measuredOfLimbs.some((field) => limb[field] !== null)

/** Rows that say next to nothing of a tree, such as a remark in the column of ids: at most one thing of it, and of no limb. */
function saysLittle(tree: Tree): boolean {
  const given = givenOfTrees.filter((field) => tree[field] !== null && tree[field] !== '')
  return given.length <= 1 && !tree.limbs.some(isMeasured)
}

/** The checks, each of a row that may be no tree with the id that stands there. */
export function withNoTrees(checks: readonly Check[], { inventory, unplanned }: Plan): Check[] {
  const ids = new Set(inventory.trees.filter(saysLittle).map(({ id }) => id))
  const byRow = new Map(
    unplanned.flatMap(({ tree, cell }) => (ids.has(tree) ? [[rowOf(cell), tree] as const] : []))
  )
  const offered = new Set<string>()
  return checks.map((check) => {
    const [cell] = check.cells
    const alone = cell !== undefined && check.cells.length === 1
    const noTree = alone ? byRow.get(rowOf(cell)) : undefined
    if (noTree === undefined || offered.has(noTree)) return check
    offered.add(noTree)
    return { ...check, noTree }
  })
}

/** The sheet and row of an address: Survey!B9 gives Survey!9. */
function rowOf(cell: string): string {
  const [, sheet = '', row = ''] = /^(.*!)?[A-Z]+(\d+)/i.exec(cell) ?? []
  return sheet + row
}
