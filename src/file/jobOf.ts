import type { CellBlock } from '../../shared/cells'
import type { Problem } from '../../shared/problems'
import type { JobDetails } from '../details/detailsBook'
import { detailsFor } from '../details/detailsFor'
import { withDetails } from '../details/readDetails'
import { detailsOfDay } from '../details/settleDetails'
import type { Inventory } from '../inventory/inventory'
import { describeDetails } from '../sheets/details/detailsSheet'
import type { GivenDetails } from './detailsFile'
import type { PlannedFile } from './readPlannedFile'

/** Whose job it is: by the Job details sheet of the inventory and what was given besides. */
export interface Job {
  readonly details: JobDetails
  /** The details as a sheet, as they were read and given. */
  readonly block: CellBlock
  readonly problems: readonly Problem[]
}

/** A Job details sheet with nothing typed on it. */
function blankSheet({ system }: Inventory): CellBlock {
  const { name, rows } = describeDetails(system)
  const cells = rows.map((row) => row.map((content) => (typeof content === 'string' ? content : null)))
  return { sheet: name, rows: cells, top: 0, left: 0 }
}

/** The details of an inventory in a file, with those that were given in their place. */
export function jobOf(file: PlannedFile, inventory: Inventory, given: GivenDetails, date: string): Job {
  const sheets = inventory.parts.map(({ sheet }) => sheet)
  const chosen = detailsFor(file.details, sheets, file.names)
  const block = withDetails(chosen.block ?? blankSheet(inventory), given)
  const { details, problems } = detailsOfDay(block, date)
  // Without such a sheet there is no cell to go to.
  const told = chosen.block === null ? problems.map((found) => ({ ...found, cell: '' })) : problems
  return { details, block, problems: [...chosen.problems, ...told] }
}
