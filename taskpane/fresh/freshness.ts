import type { CellBlock } from '../../shared/cells'
import type { Problem } from '../../shared/problems'
import { sharedPart } from '../../shared/cells'
import type { Planned } from '../planning'
import type { SheetChange, Surface } from '../surface'
import { changedCells, changeName, changedSheets, type Change, type ReadCells } from './changes'

type Block = CellBlock | null

/** Whether what a plan was made and priced from still stands in the workbook. */
export class Freshness {
  private readonly found = new Map<string, Change>()

  constructor(
    private readonly surface: Surface,
    private planned: Planned
  ) {}

  /** What is known to have changed, inventory first. */
  get changes(): Change[] {
    return [...this.found.values()]
  }

  /**
   * The sheets of the inventory that the plan was made from. Where a sheet was read to its end, the blank row behind it is
   * looked at as well: that is where a person goes on.
   */
  private get inventory(): ReadCells[] {
    const { plan, read } = this.planned
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
      const whole = {
        row: before.top,
        column: before.left,
        rows: before.rows.length,
        columns: before.rows[0]?.length ?? 0
      }
      const part = area === null ? whole : sharedPart(area, whole)
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

function isWithin(
  { row, column }: { row: number; column: number },
  area: { row: number; column: number; rows: number; columns: number }
): boolean {
  return (
    row >= area.row &&
    row < area.row + area.rows &&
    column >= area.column &&
    column < area.column + area.columns
  )
}
