import type { Field } from '../../shared/columns'
import { quoted } from '../../shared/cells'
import { problem, type Problem } from '../../shared/problems'
import { isOver, isUnder } from '../formulas/boundary'
import type { Building } from './columnReaders'
import type { Limb, Tree } from './inventory'
import type { OpenPart } from './openParts'

/** Where the cells of a limb are read from, and where what is wrong with them is told. */
interface AlongLimb {
  readonly open: OpenPart
  readonly inventory: { readonly problems: Problem[] }
}

/**
 * What is measured along a limb lies between its origin and its tip, and its foliage does not start above its tip;
 * a height that cannot be so is told and left out. A limb with a break height is broken.
 */
export function checkAlongLimb(
  reader: AlongLimb,
  tree: Pick<Tree, 'id'>,
  limb: Building<Limb>,
  row: number
): void {
  if (limb.breakHeight !== null) limb.broken = true
  const { origin, tip, lowestFoliage, lateralHeight, breakHeight } = limb
  // Of a limb whose tip is below its origin it is asked whether the two are right.
  if (origin === null || tip === null || isUnder(tip, origin)) return
  const isOutside = (height: number | null): boolean =>
    height !== null && (isUnder(height, origin) || isOver(height, tip))
  if (lowestFoliage !== null && isOver(lowestFoliage, tip)) {
    tell(reader, tree, limb, row, 'lowestFoliage')
    limb.lowestFoliage = null
  }
  if (isOutside(lateralHeight)) {
    tell(reader, tree, limb, row, 'lateralHeight')
    limb.lateralHeight = null
  }
  if (isOutside(breakHeight)) {
    tell(reader, tree, limb, row, 'breakHeight')
    limb.breakHeight = null
  }
}

function tell(
  { open, inventory }: AlongLimb,
  tree: Pick<Tree, 'id'>,
  limb: Pick<Limb, 'id'>,
  row: number,
  field: Field
): void {
  const column = open.readers.get(field)
  if (column === undefined) return
  const code = field === 'lowestFoliage' ? 'foliage-above-tip' : 'outside-limb'
  const facts = {
    column: column.column.name,
    limb: limb.id,
    tree: tree.id,
    text: quoted(column.raw(row))
  }
  inventory.problems.push(problem(code, column.address(row), facts))
}
