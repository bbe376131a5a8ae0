import { csv, type CsvFile } from './csvFile'
import type { Expected, ExpectedLimb, ExpectedTree } from './expected'

/** The first of the ids that are allowed; any id at all has to be called something. */
const named = (id: string, at: number) => (id === '*' ? `any ${String(at + 1)}` : (id.split('|')[0] ?? id))

/**
 * What an inventory says, written in the shape of our own sample: one row per limb, our headers. A reader that understood the
 * inventory plans both alike.
 */
export function canonicalFile({ units, trees }: Expected): CsvFile {
  const [small, tall] = units.split('-')
  const treeMore = [...new Set(trees.flatMap(({ more }) => Object.keys(more)))]
  const limbMore = [...new Set(trees.flatMap(({ limbs }) => limbs.flatMap(({ more }) => Object.keys(more))))]
  const headers = [
    'Tree',
    `Trunk dia (${String(small)})`,
    `Height (${String(tall)})`,
    `Crown base (${String(tall)})`,
    'Life stage',
    'Vigor',
    ...treeMore,
    'Limb',
    `Limb dia (${String(small)})`,
    `Stem dia (${String(small)})`,
    `Origin (${String(tall)})`,
    `Tip (${String(tall)})`,
    'Included bark',
    ...limbMore
  ]
  const ofTree = (tree: ExpectedTree, at: number) => [
    named(tree.id, at),
    tree.trunk,
    tree.height,
    tree.crownBase,
    tree.stage,
    tree.vigor,
    ...treeMore.map((header) => tree.more[header] ?? null)
  ]
  const ofLimb = (limb: ExpectedLimb, at: number) => [
    named(limb.id, at),
    limb.diameter,
    limb.stem,
    limb.origin,
    limb.tip,
    limb.bark,
    ...limbMore.map((header) => limb.more[header] ?? null)
  ]
  const noLimb = headers.slice(6 + treeMore.length).map(() => null)
  const rows = trees.flatMap((tree, at) => {
    const limbs = tree.limbs.length === 0 ? [noLimb] : tree.limbs.map(ofLimb)
    return limbs.map((limb) => [...ofTree(tree, at), ...limb])
  })
  return csv([headers, ...rows].map((row) => row.map((cell) => cell ?? '').join(',')).join('\n'))
}
