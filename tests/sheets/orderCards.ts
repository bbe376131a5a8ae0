import type { Content } from '../../src/sheets/sheet'
import { orderAt } from '../../src/sheets/work-order/orderColumns'

/** Rows of a work order with a box to tick: those of trees, and those of cuts. */
const boxesIn = (rows: readonly Content[][]) =>
  rows.filter((row) => row[orderAt.tick] === '☐' && typeof row[orderAt.visit] === 'number')

/** The trees that an order has a card for. */
export function cardsOf(rows: readonly Content[][]): string[] {
  return boxesIn(rows)
    .filter((row) => row[orderAt.limbKey] === null)
    .map((row) => String(row[orderAt.tree]))
}

/** The lines of the cuts of an order. */
export function cutsOf(rows: readonly Content[][]): Content[][] {
  return boxesIn(rows).filter((row) => row[orderAt.limbKey] !== null)
}
