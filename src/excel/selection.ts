import type { Area } from '../../shared/cells'
import type { Problem } from '../../shared/problems'
import { inExcel, isProblem } from './failures'
import { findSelectedBlock } from './findBlock'

/** What the selection would give if it were read now. */
export interface SelectionSummary {
  /** False where nothing can be read; `problem` says why. */
  usable: boolean
  /** Address of the block that would be read, with its sheet. */
  address: string
  sheet: string
  /** Rows with the header row among them. */
  rows: number
  columns: number
  /** One sentence: why it cannot be used, or how the selection was cut or widened; empty where there is nothing to say. */
  sentence: string
  problem: Problem | null
  /** The selected cells themselves, also where they are no inventory; null where they are not one range. */
  cells: (Area & { sheet: string }) | null
}

function unusable(found: Problem, cells: SelectionSummary['cells']): SelectionSummary {
  const sentence = `${found.message} ${found.remedy}`
  const address = found.cell
  return { usable: false, address, sheet: '', rows: 0, columns: 0, sentence, problem: found, cells }
}

/** What is selected now, as the pane shows it. */
export async function describeSelection(): Promise<SelectionSummary> {
  const found = await inExcel(findSelectedBlock, { wait: true })
  if (isProblem(found)) return unusable(found, null)
  const { block, cells } = found
  if (isProblem(block)) return unusable(block, cells)
  const { address, sheet, area, remark } = block
  const { rows, columns } = area
  return { usable: true, address, sheet, rows, columns, sentence: remark, problem: null, cells }
}

/**
 * Tells of each new selection until the function given back is called. While one is being described, further moves are
 * gathered into one, so that a person who runs through the sheet does not pile up work.
 */
export async function watchSelection(
  callback: (summary: SelectionSummary) => void
): Promise<() => Promise<void>> {
  let stopped = false
  let busy = false
  let again = false
  const follow = async (): Promise<void> => {
    again = true
    if (busy) return
    busy = true
    try {
      while (again && !stopped) {
        again = false
        const summary = await describeSelection()
        if (!stopped) callback(summary)
      }
    } finally {
      busy = false
    }
  }
  const registration = await Excel.run(async (context) => {
    const added = context.workbook.onSelectionChanged.add(follow)
    await context.sync()
    return added
  })
  return async () => {
    stopped = true
    await Excel.run(registration.context as Excel.RequestContext, async (context) => {
      registration.remove()
      await context.sync()
    })
  }
}
