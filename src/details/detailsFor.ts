import { isBlank, type CellBlock } from '../../shared/cells'
import { problem, type Problem } from '../../shared/problems'
import { inventoriesOf } from './readDetails'

/** A Job details sheet of a workbook. */
export interface DetailsSheet {
  readonly block: CellBlock
  /** The sheet of the inventory that it was written for, whatever that is called by now; null where that is not known. */
  readonly of: string | null
}

/** The Job details sheet of an inventory, or null, and what is wrong with the choice. */
export interface ChosenDetails {
  readonly block: CellBlock | null
  readonly problems: readonly Problem[]
}

const among = (sheets: readonly string[], name: string): boolean =>
  sheets.some((sheet) => sheet.toLowerCase() === name.toLowerCase())

/** The sheets that details are for: as typed; where no sheet is called so any more, the one that they were written for. */
function sheetsFor({ block, of }: DetailsSheet, sheets: readonly string[]): readonly string[] {
  const { names } = inventoriesOf(block)
  if (names.length === 0 || names.some((name) => among(sheets, name))) return names
  return of === null ? names : [...names, of]
}

/**
 * Of the Job details sheets of a workbook that of an inventory: the first that is for one of its sheets, else the first that
 * names none. `inventory` are the sheets that were read, `sheets` all of the workbook, in any order.
 */
export function detailsFor(
  written: readonly DetailsSheet[],
  inventory: readonly string[],
  sheets: readonly string[]
): ChosenDetails {
  const filled = written
    .filter(({ block }) => block.rows.some((row) => !row.every(isBlank)))
    .map((each) => ({ block: each.block, names: sheetsFor(each, sheets), typed: inventoriesOf(each.block) }))
  const own = filled.filter(({ names }) => names.some((name) => among(inventory, name)))
  const [first, other] = own.length > 0 ? own : filled.filter(({ names }) => names.length === 0)
  if (first === undefined)
    return {
      block: null,
      problems: filled
        .filter(({ names }) => !names.some((name) => among(sheets, name)))
        .map(({ typed }) => problem('details-nowhere', typed.cell, { text: typed.names[0] ?? '' }))
    }
  const facts = other && { sheet: first.block.sheet, other: other.block.sheet }
  return {
    block: first.block,
    problems: other && facts ? [problem('details-several', other.typed.cell, facts)] : []
  }
}
