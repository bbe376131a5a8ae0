import type { CellBlock } from '../../shared/cells'
import { problem, type Problem } from '../../shared/problems'
import type { ChosenDetails } from '../../src/details/detailsFor'
import { detailsOfDay } from '../../src/details/settleDetails'
import type { Plan, TreePlan } from '../../src/plan/plan'
import { planByRules } from '../../src/plan/rules/planByRules'
import type { PicturesRead } from '../../src/excel/readPictures'
import { describeUsersSheet, planDocuments } from '../../src/sheets/describeDocuments'
import { titles } from '../../src/sheets/ownSheets'
import type { SheetDescription } from '../../src/sheets/sheet'
import * as documents from '../../taskpane/documents'
import type { Engine } from '../../taskpane/engine'
import type {
  OwnSheet,
  Reading,
  Selected,
  Steps,
  Surface,
  WriteOptions,
  Wanted,
  Writing
} from '../../taskpane/surface'
import { areaOf, areaRead, sheetPrefix, type Cell, type ReadCells } from '../../shared/cells'
import type { SheetChange } from '../../src/excel/changes'
import type { SheetCells } from '../../src/inventory/survey/sheetCells'
import { inventedBlock, inventedEstimate, inventedPlan } from './inventedPlan'

const sheetOf = ({ sheet, rows, top, left }: CellBlock): SheetCells => ({ name: sheet, rows, top, left })

/** The address of a whole block of cells: Inventory!A1:P64. */
export function addressOf(block: CellBlock): string {
  const area = areaRead(sheetOf(block)) ?? { row: block.top, column: block.left, rows: 1, columns: 1 }
  return sheetPrefix(block.sheet) + areaOf(area)
}

/** The selection of a whole block. */
export function selectionOf(block: CellBlock): Selected {
  const rows = block.rows.length
  const columns = block.rows[0]?.length ?? 0
  return {
    places: [{ address: addressOf(block), rows, columns }],
    range: null,
    remark: '',
    problem: null,
    cells: { sheet: block.sheet, row: block.top, column: block.left, rows, columns }
  }
}

/** A spreadsheet of one block, which remembers what was asked of it. */
export class FakeSurface implements Surface {
  selected: Selected
  own: OwnSheet[] = []
  /** The workbook's Rules sheet, or null. */
  rules: CellBlock | Problem | null = null
  /** The workbook's Rates sheet, or null. */
  rates: CellBlock | Problem | null = null
  /** The Estimate that an earlier plan wrote. */
  estimate: CellBlock | Problem | null = null
  /** The Job details sheet of the inventory, or null. */
  details: CellBlock | null = null
  readonly asked: string[] = []
  written: SheetDescription[][] = []
  /** Thrown by the next call that reads or writes. */
  fault: Error | null = null
  readingProblems: Problem[] = []
  /** The only range that is read, or null for all of the inventory. */
  range: string | null = null
  /** Sheets that are read beside the block. */
  others: SheetCells[] = []
  /** The sheets that had to be unchanged at the last writing. */
  source: readonly SheetCells[] = []
  /** What the workbook keeps of answers. */
  kept: unknown = undefined
  /** Given back where answers are to be kept. */
  keepingProblem: Problem | null = null
  /** Answered when a cell is asked for. */
  goneCell: Problem | null = null
  /** Whether the sheet of the inventory is gone. */
  gone = false
  /** What the workbook keeps of the last plan. */
  lastPlan: unknown = undefined
  private changed: ((change: SheetChange) => void) | null = null
  private callback: ((selected: Selected) => void) | null = null

  constructor(public block: CellBlock | null = inventedBlock) {
    this.selected = selectionOf(block ?? inventedBlock)
  }

  describeSelection(): Promise<Selected> {
    return Promise.resolve(this.selected)
  }

  watchSelection(callback: (selected: Selected) => void): Promise<() => Promise<void>> {
    this.callback = callback
    return Promise.resolve(() => {
      this.callback = null
      return Promise.resolve()
    })
  }

  /** What a person does: selects one row of the block, from its headers at 0. */
  selectRow(row: number): void {
    const { sheet, top, left } = this.block ?? inventedBlock
    this.tell({ ...this.selected, cells: { sheet, row: top + row, column: left, rows: 1, columns: 1 } })
  }

  /** What a person does: selects something else. */
  tell(selected: Selected): void {
    this.selected = selected
    this.callback?.(selected)
  }

  watchChanges(callback: (change: SheetChange) => void): Promise<() => Promise<void>> {
    this.changed = callback
    return Promise.resolve(() => Promise.resolve())
  }

  /** What a person does: types into a cell of the block, rows and columns from its first. */
  type(row: number, column: number, value: Cell): void {
    const block = this.block ?? inventedBlock
    this.block = {
      ...block,
      rows: block.rows.map((cells, at) =>
        at === row ? cells.map((cell, c) => (c === column ? value : cell)) : cells
      )
    }
    const area = { row: block.top + row, column: block.left + column, rows: 1, columns: 1 }
    this.changed?.({ sheet: block.sheet, area })
  }

  /** What a person does elsewhere. */
  tellChange(change: SheetChange): void {
    this.changed?.(change)
  }

  readAgain({ sheet, rows, top, left }: ReadCells): Promise<ReadCells | Problem | null> {
    const { block } = this
    if (this.gone || block === null) return Promise.resolve(null)
    const now = rows.map((row, r) =>
      row.map((_cell, c) => block.rows[top + r - block.top]?.[left + c - block.left] ?? null)
    )
    return Promise.resolve({ sheet, rows: now, top, left })
  }

  readLastPlan(): unknown {
    return this.lastPlan
  }

  keepLastPlan(text: string): Promise<Problem | null> {
    this.lastPlan = text
    return Promise.resolve(null)
  }

  readInventory(wanted: Wanted, steps: Steps): Promise<Reading> {
    this.asked.push(`read ${typeof wanted === 'string' ? wanted : wanted.range}`)
    if (this.fault !== null) return Promise.reject(this.fault)
    steps.onProgress(1, this.block?.rows.length ?? 1)
    const read = this.block && {
      sheets: [sheetOf(this.block), ...this.others],
      range: this.range
    }
    return Promise.resolve({ read, problems: this.readingProblems })
  }

  readAnswers(): unknown {
    return this.kept
  }

  keepAnswers(text: string | null): Promise<Problem | null> {
    this.asked.push(text === null ? 'forget' : 'keep')
    if (this.keepingProblem === null) this.kept = text ?? undefined
    return Promise.resolve(this.keepingProblem)
  }

  readRules(): Promise<CellBlock | Problem | null> {
    return Promise.resolve(this.rules)
  }

  writeRules({ name }: SheetDescription): Promise<string | Problem> {
    if (this.fault !== null) return Promise.reject(this.fault)
    this.asked.push('write rules')
    this.rules = { rows: [], sheet: name, top: 0, left: 0 }
    return Promise.resolve(name)
  }

  readRates(): Promise<CellBlock | Problem | null> {
    return Promise.resolve(this.rates)
  }

  readEstimate(): Promise<CellBlock | Problem | null> {
    return Promise.resolve(this.estimate)
  }

  writeRates({ name }: SheetDescription): Promise<string | Problem> {
    if (this.fault !== null) return Promise.reject(this.fault)
    this.asked.push('write rates')
    this.rates = { rows: [], sheet: name, top: 0, left: 0 }
    return Promise.resolve(name)
  }

  /** Pictures on the sheets, as they are read before a writing. */
  pictures: PicturesRead = { logo: null, photographs: new Map(), problems: [] }

  readPictures(): Promise<PicturesRead> {
    return Promise.resolve(this.pictures)
  }

  readDetails(): Promise<ChosenDetails | Problem> {
    return Promise.resolve({ block: this.details, problems: [] })
  }

  writeDetails({ name }: SheetDescription, inventory: readonly string[]): Promise<string | Problem> {
    if (this.fault !== null) return Promise.reject(this.fault)
    this.asked.push(`write details of ${inventory.join()}`)
    this.details = { rows: [], sheet: name, top: 0, left: 0 }
    return Promise.resolve(name)
  }

  findOwnSheets(): Promise<OwnSheet[] | Problem> {
    return Promise.resolve(this.own)
  }

  writeSheets(descriptions: SheetDescription[], options: WriteOptions, steps: Steps): Promise<Writing> {
    if (this.fault !== null) return Promise.reject(this.fault)
    this.source = options.source
    if (options.source[0]?.rows !== this.block?.rows)
      return Promise.resolve({ written: [], problems: [problem('range-changed', 'Survey!B3:F9')] })
    steps.onProgress(1, 2)
    this.asked.push(options.replace ? 'replace' : 'write')
    this.written.push(descriptions)
    this.own = descriptions.map(({ kind, name }) => ({ kind, sheetName: name }))
    return Promise.resolve({ written: descriptions.map(({ name }) => name), problems: [] })
  }

  goToCell(address: string): Promise<Problem | null> {
    this.asked.push(`go to ${address}`)
    return Promise.resolve(this.goneCell)
  }

  explain(error: unknown): Problem {
    return problem('spreadsheet-failed', '', { text: error instanceof Error ? error.message : String(error) })
  }
}

function description(kind: SheetDescription['kind'], name: string): SheetDescription {
  return {
    kind,
    name,
    rows: [],
    formats: [],
    tables: [],
    widths: [],
    heights: [],
    freezeRows: 0,
    freezeColumns: 0,
    page: { orientation: 'portrait', paper: 'a4', titleRow: null, footer: '' }
  }
}

/** An engine that gives a plan made by hand; `eachTree` runs before every tree. */
export function fakeEngine(plan: Plan = inventedPlan(), eachTree: () => void = () => undefined): Engine {
  return {
    readSheets: () => plan.inventory,
    planByRules,
    detailsOfDay,
    weighing: () => documents,
    *planTrees(): Generator<TreePlan, Plan> {
      for (const tree of plan.trees) {
        eachTree()
        yield tree
      }
      return plan
    },
    priceByRates: () => ({ estimate: inventedEstimate(), problems: [] }),
    describeUsersSheet,
    specificationOf: documents.treeSpecificationText,
    drawings: () => Promise.resolve(documents),
    describeDocuments: (wanted) => {
      const chosen = new Set(wanted)
      return planDocuments.filter((kind) => chosen.has(kind)).map((kind) => description(kind, titles[kind]))
    }
  }
}
