/**
 * The columns of the work order, each with its width in characters of the standard font. At one to one they fill a portrait
 * page of either paper; what follows `when` is not printed.
 */
const columns = [
  ['tick', 3.2],
  ['number', 3.2],
  ['limb', 7.5],
  ['side', 4.2],
  ['at', 9.2],
  ['what', 31.2],
  ['keep', 18.8],
  ['when', 11.8],
  ['tree', 14],
  ['limbKey', 10],
  ['visit', 7]
] as const

type OrderColumn = (typeof columns)[number][0]

export const orderWidths: number[] = columns.map(([, width]) => width)

/** Where a column stands, from 0. */
export const orderAt = Object.fromEntries(columns.map(([name], at) => [name, at])) as Readonly<
  Record<OrderColumn, number>
>

/** Columns that are printed. */
export const printedColumns = orderAt.tree

/**
 * Beside each box to tick, in columns that are not printed: of which tree, limb and visit it is, so that the ticks can be
 * read back as work that was done. They stand under these headers in the first row of the sheet; a box of a whole tree
 * has no limb.
 */
export const tickKeys = ['Tick of tree', 'Of limb', 'At visit'] as const

/** What a box holds before the work and after it; a typed letter will do. */
export const boxes = { open: '☐', done: ['☑', 'x'] } as const
