import { listen } from './registrations'
import type { Problem } from '../../shared/problems'
import type { SheetArea } from './bookView'
import { inExcel, isProblem } from './failures'
import { findInventory, placeAddress, type KnownSheets } from './findInventory'
import type { Judge } from './judgeSheets'

/** A part of a sheet that would be read. */
export interface PlaceToRead {
  /** Its address with its sheet. */
  address: string
  /** Rows with the header row among them. */
  rows: number
  columns: number
}

/** What the selection would give if it were read now. */
export interface SelectionSummary {
  /** What would be read, sheet by sheet; empty where there is nothing. */
  places: readonly PlaceToRead[]
  /** The only range that would be read, or null where it is all of the inventory. */
  range: string | null
  /** How the selection was cut, or an empty text. */
  remark: string
  /** Why nothing can be read. */
  problem: Problem | null
  /** The selected cells themselves, also where they are no inventory; null where they are not one range. */
  cells: SheetArea | null
}

function unusable(found: Problem, cells: SheetArea | null): SelectionSummary {
  return { places: [], range: null, remark: '', problem: found, cells }
}

/** What is selected now, as the pane shows it; sheets that are known are not looked at again. */
export async function describeSelection(judge: Judge, known?: KnownSheets): Promise<SelectionSummary> {
  const selection = await inExcel((context) => findInventory(context, judge, known), { wait: true })
  if (isProblem(selection)) return unusable(selection, null)
  const { found, cells } = selection
  if (isProblem(found)) return unusable(found, cells)
  // What is certain comes first, as a long list is not named in full.
  const inTurn = [true, false].flatMap((certain) => found.places.filter((place) => place.certain === certain))
  const places = inTurn.map((place) => ({
    address: placeAddress(place),
    rows: place.rows,
    columns: place.columns
  }))
  return { places, range: found.range, remark: found.remark, problem: null, cells }
}

/**
 * Tells of each new selection until the function given back is called. While one is being described, further moves are
 * gathered into one, so that a person who runs through the sheet does not pile up work.
 */
export async function watchSelection(
  callback: (summary: SelectionSummary) => void,
  describe: () => Promise<SelectionSummary>
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
        const summary = await describe()
        if (!stopped) callback(summary)
      }
    } finally {
      busy = false
    }
  }
  const stop = await listen((context) => context.workbook.onSelectionChanged.add(follow))
  return () => {
    stopped = true
    return stop()
  }
}
