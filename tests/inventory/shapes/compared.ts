/** Inventories side by side: what differs, apart from where it stood. */
import { columnOf } from '../../../shared/columns'
import { rowPlace, type Inventory, type Limb, type Tree } from '../../../src/inventory/inventory'
import type { ShapeSheet } from './shape'

const near = (a: number, b: number): boolean =>
  Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a), Math.abs(b))

function same(a: unknown, b: unknown): boolean {
  if (typeof a === 'number' && typeof b === 'number') return near(a, b)
  return JSON.stringify(a) === JSON.stringify(b)
}

function differing(
  what: string,
  got: Tree | Limb,
  wanted: Tree | Limb,
  asked: ReadonlySet<string>
): string[] {
  const ignored = new Set(['row', 'limbs', ...asked])
  const keys = Object.keys(wanted) as (keyof typeof wanted)[]
  return keys.flatMap((key) => {
    if (ignored.has(key)) return []
    const [mine, theirs] = [got[key], wanted[key]]
    // The reason names the cell.
    const isSame =
      (key as string) === 'unplannable' ? (mine === null) === (theirs === null) : same(mine, theirs)
    return isSame ? [] : [`${key}: ${what} has ${JSON.stringify(mine)} and not ${JSON.stringify(theirs)}`]
  })
}

/** What a column that means nothing was taken for with a question at its header. */
export function askedOf(inventory: Inventory, names: readonly string[]): Set<string> {
  return new Set(
    inventory.matches.flatMap(({ header, field, confidence }) => {
      if (field === null || confidence !== 'likely' || !names.includes(header)) return []
      const column = columnOf(field)
      return [column.into ?? field]
    })
  )
}

/** What is not the same in the trees, but for the order of a tree's limbs and what is asked about. */
export function differentTrees(
  got: readonly Tree[],
  wanted: readonly Tree[],
  asked: ReadonlySet<string> = new Set()
): string[] {
  const ids = (trees: readonly Tree[]): string => trees.map(({ id }) => id).join(', ')
  if (ids(got) !== ids(wanted)) return [`trees: ${ids(got)} and not ${ids(wanted)}`]
  return wanted.flatMap((tree, at) => {
    const mine = got[at]!
    const limbsOf = (each: Tree): string =>
      each.limbs
        .map(({ id }) => id)
        .sort()
        .join(', ')
    if (limbsOf(mine) !== limbsOf(tree))
      return [`limbs: ${tree.id} has ${limbsOf(mine)} and not ${limbsOf(tree)}`]
    return [
      ...differing(tree.id, mine, tree, asked),
      ...tree.limbs.flatMap((limb) =>
        differing(
          `${tree.id} ${limb.id}`,
          mine.limbs.find(({ id }) => id === limb.id)!,
          limb,
          asked
        )
      )
    ]
  })
}

/** Numbers that are none, wherever they stand in a value. */
export function brokenNumbers(value: unknown, path = ''): string[] {
  if (typeof value === 'number')
    return Number.isFinite(value) && !Object.is(value, -0) ? [] : [`${path} ${value}`]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, each]) => brokenNumbers(each, `${path}.${key}`))
}

/** Rows that a sentence names: "rows 3, 5 to 7 and 12". */
function namedIn(message: string): number[] {
  const [, list = ''] = /\brows? ((?:\d+(?: to \d+)?(?:, | and )?)+)/i.exec(message) ?? []
  return [...list.matchAll(/(\d+)(?: to (\d+))?/g)].flatMap(([, from = '0', to = from]) =>
    Array.from({ length: Number(to) - Number(from) + 1 }, (_none, at) => Number(from) + at)
  )
}

/** Rows of data that are neither a tree's nor a limb's, and that nothing names. */
export function lostRows(shape: readonly ShapeSheet[], inventory: Inventory): string[] {
  const told = new Set<string>()
  const sheetOf = (cell: string): string => /^'?(.*?)'?!/.exec(cell)?.[1] ?? shape[0]?.name ?? ''
  const add = (row: number): void => {
    const { sheet, number } = rowPlace(inventory, row)
    told.add(`${sheet}!${String(number)}`)
  }
  for (const tree of inventory.trees) for (const { row } of [tree, ...tree.limbs]) add(row)
  for (const { at } of inventory.unplanned) add(at)
  for (const { cell, message } of inventory.problems) {
    const row = /(\d+)$/.exec(cell)?.[1]
    for (const number of [...(row === undefined ? [] : [Number(row)]), ...namedIn(message)])
      told.add(`${sheetOf(cell)}!${String(number)}`)
  }
  return shape.flatMap(({ name, rows }) =>
    rows.flatMap(({ kind }, at) => {
      const row = `${name}!${String(at + 1)}`
      return kind === 'data' && !told.has(row) ? [row] : []
    })
  )
}
