import type { Problem } from '../../shared/problems'
import { areaRead, sharedPart, type Area, type CellBlock, type ReadCells } from '../../shared/cells'
import type { Planned } from '../planning'
import type { SheetChange } from '../../src/excel/changes'
import type { Surface } from '../surface'
import { changedCells, changeName, changedSheets, type Change } from './changes'

type Block = CellBlock | null

const isWithin = (cell: Pick<Area, 'row' | 'column'>, area: Area): boolean =>
  sharedPart({ row: cell.row, column: cell.column, rows: 1, columns: 1 }, area) !== null

/**
 * The sheets of the inventory that a plan was made from. Where a sheet was read to its end, the blank row behind it is
 * looked at as well: that is where a person goes on.
 */
function inventoryOf({ plan, read }: Planned): ReadCells[] {
  const planned = new Set(plan.inventory.parts.map(({ sheet }) => sheet))
  return read.sheets
    .filter(({ name }) => planned.has(name))
    .map(({ name, rows, top, left }) => ({
      sheet: name,
      rows: read.range === null && rows[0] !== undefined ? [...rows, rows[0].map(() => null)] : rows,
      top,
      left
    }))
}

/** Whether what a plan was made and priced from still stands in the workbook. */
export class Freshness {
  private readonly found = new Map<string, Change>()
  private readonly inventory: readonly ReadCells[]

  constructor(
    private readonly surface: Surface,
    private planned: Planned
  ) {
    this.inventory = inventoryOf(planned)
  }

  /** What is known to have changed, inventory first. */
  get changes(): Change[] {
    return [...this.found.values()]
  }

  /** The sheets beside the inventory, each as it was read and as it is read now. */
  private beside(): readonly (readonly [Block, () => Promise<Block | Problem>])[] {
    const { surface, planned } = this
    const sheets = planned.read.sheets.map(({ name }) => name)
    const details = async (): Promise<Block | Problem> => {
      const chosen = await surface.readDetails(sheets)
      return 'code' in chosen ? chosen : chosen.block
    }
    return [
      [planned.rulesSheet, () => surface.readRules()],
      [planned.ratesSheet, () => surface.readRates()],
      [planned.estimateSheet, () => surface.readEstimate(sheets)],
      [planned.detailsSheet, details]
    ]
  }

  /** Reads all of it again; null, or the problem that kept it from being read. */
  async check(): Promise<Problem | null> {
    const found: Change[] = []
    for (const before of this.inventory) {
      const now = await this.surface.readAgain(before)
      if (now !== null && 'code' in now) return now
      found.push(...changedSheets(before, now))
    }
    for (const [before, read] of this.beside()) {
      const now = await read()
      if (now !== null && 'code' in now) return now
      found.push(...changedSheets(before, now))
    }
    this.found.clear()
    for (const change of found) this.found.set(changeName(change), change)
    return null
  }

  /** Looks at what somebody changed; true where the list of changes is another one now. */
  async look({ sheet, area }: SheetChange): Promise<boolean> {
    const before = this.inventory.find((each) => each.sheet === sheet)
    const known = [...this.found.keys()].join()
    if (before === undefined) await this.lookBeside(sheet)
    else {
      const whole = areaRead(before)
      const part = whole === null || area === null ? whole : sharedPart(area, whole)
      if (part === null) return false
      const then: ReadCells = {
        sheet,
        top: part.row,
        left: part.column,
        rows: before.rows
          .slice(part.row - before.top, part.row - before.top + part.rows)
          .map((row) => row.slice(part.column - before.left, part.column - before.left + part.columns))
      }
      const now = await this.surface.readAgain(then)
      if (now !== null && 'code' in now) return false
      this.forget((change) => change.kind === 'cell' && change.sheet === sheet && isWithin(change, part))
      for (const change of now === null ? changedSheets(then, null) : changedCells(then, now))
        this.found.set(changeName(change), change)
    }
    return [...this.found.keys()].join() !== known
  }

  private async lookBeside(sheet: string): Promise<void> {
    for (const [before, read] of this.beside()) {
      if (before?.sheet !== sheet) continue
      const now = await read()
      if (now !== null && 'code' in now) return
      this.forget((change) => change.sheet === sheet)
      for (const change of changedSheets(before, now)) this.found.set(changeName(change), change)
    }
  }

  private forget(which: (change: Change) => boolean): void {
    for (const [name, change] of this.found) if (which(change)) this.found.delete(name)
  }

  /** An Estimate that was written from the plan stands for it from now on. */
  async wrote(): Promise<void> {
    const sheets = this.planned.read.sheets.map(({ name }) => name)
    const estimateSheet = await this.surface.readEstimate(sheets)
    if (estimateSheet !== null && 'code' in estimateSheet) return
    this.planned = { ...this.planned, estimateSheet }
    this.forget((change) => change.sheet === estimateSheet?.sheet)
  }
}
