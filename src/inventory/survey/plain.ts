import type { Cell } from '../../../shared/cells'

/** A cell as it is compared with others: its text without case and the spaces around it. */
export function plain(cell: Cell | undefined): string {
  return String(cell ?? '')
    .trim()
    .toLowerCase()
}
