/**
 * A workbook in memory, for tests in Node. It does not calculate: a formula cell holds what `calculate` gives when the
 * formula is written, or an empty text. `faults` raises on demand what Excel can raise.
 */
import { type Area, sheetPrefix } from '../../shared/cells'
import type { Book, BookRequest, NameInfo, Selection, SheetInfo, TableInfo } from './book'
import { FaultSwitches } from './memory/faultSwitches'
import { MemorySheet } from './memory/memorySheet'
import { SheetStore } from './memory/sheetStore'
import type { Calculate } from './memory/sparseCells'

const firstCell: Area = { row: 0, column: 0, rows: 1, columns: 1 }

export class MemoryBook extends SheetStore implements Book {
  readonly faults = new FaultSwitches()
  calculate: Calculate | null = null

  private tableList: TableInfo[] = []
  private nameList: NameInfo[] = []
  private kept: Record<string, unknown> = {}
  private chosen: Selection
  private active: string

  constructor(firstSheet = 'Sheet1') {
    super()
    this.active = this.addSheet(firstSheet).id
    this.chosen = { sheetId: this.active, areas: [firstCell] }
  }

  beginRequest(request: BookRequest): void {
    this.faults.begin(request)
  }

  answering(cells: number): void {
    this.faults.count(cells)
  }

  /** What a user does beside the add-in; the client has no part in it. */
  mergeCells(sheetId: string, area: Area): void {
    this.sheet(sheetId).merge(area)
  }

  hideRows(sheetId: string, row: number, rows: number): void {
    for (let index = row; index < row + rows; index++) this.sheet(sheetId).hiddenRows.add(index)
  }

  hideColumns(sheetId: string, column: number, columns: number): void {
    for (let index = column; index < column + columns; index++) this.sheet(sheetId).hiddenColumns.add(index)
  }

  selectAreas(sheetId: string, areas: Area[]): void {
    this.active = this.sheet(sheetId).id
    this.chosen = { sheetId, areas }
    this.tell('selection', sheetId)
  }

  sheets(): SheetInfo[] {
    return this.sheetList.map(({ id, name, visible }) => ({ id, name, visible }))
  }

  addSheet(name: string): SheetInfo {
    const sheet = new MemorySheet(this.nextId('sheet'), name, () => this.calculate)
    this.sheetList.push(sheet)
    this.tell('sheets', sheet.id)
    return { id: sheet.id, name, visible: true }
  }

  /** Names that stood for cells of the sheet stand for #REF! then, as in Excel. */
  deleteSheet(id: string): void {
    const sheet = this.sheet(id)
    this.sheetList.splice(this.sheetList.indexOf(sheet), 1)
    this.tableList = this.tableList.filter(({ sheetId }) => sheetId !== id)
    this.replaceInNames(sheetPrefix(sheet.name), '#REF!')
    const next = this.sheetList.find(({ visible }) => visible)
    if (this.active === id && next) this.activateSheet(next.id)
    this.tell('sheets', id)
  }

  renameSheet(id: string, name: string): void {
    const sheet = this.sheet(id)
    this.replaceInNames(sheetPrefix(sheet.name), sheetPrefix(name))
    sheet.name = name
    this.tell('sheets', id)
  }

  activeSheet(): string {
    return this.active
  }

  activateSheet(id: string): void {
    if (id !== this.active) this.selectAreas(id, [firstCell])
  }

  isProtected(sheetId: string | null): boolean {
    return sheetId === null ? this.faults.protectedWorkbook : this.faults.protectedSheets.has(sheetId)
  }

  otherSheets(): string[] {
    return [...this.faults.chartSheets]
  }

  countsFrom1904(): boolean {
    return this.faults.countsFrom1904
  }

  refuses(member: string): boolean {
    return this.faults.refusedMembers.has(member)
  }

  tables(): TableInfo[] {
    return this.tableList.map((table) => ({ ...table }))
  }

  addTable(sheetId: string, area: Area, name: string): TableInfo {
    const id = this.nextId('table')
    const table = { id, name, sheetId, area, style: 'TableStyleMedium2', showFilter: true, banded: true }
    this.tableList.push(table)
    return { ...table }
  }

  changeTable(id: string, change: Partial<TableInfo>): void {
    this.tableList = this.tableList.map((table) => (table.id === id ? { ...table, ...change } : table))
  }

  deleteTable(id: string): void {
    this.tableList = this.tableList.filter((table) => table.id !== id)
  }

  names(): NameInfo[] {
    return this.nameList.map((name) => ({ ...name }))
  }

  addName(name: NameInfo): void {
    this.nameList.push({ ...name })
  }

  changeName(name: string, change: Partial<NameInfo>): void {
    this.nameList = this.nameList.map((known) => (known.name === name ? { ...known, ...change } : known))
  }

  deleteName(name: string): void {
    this.nameList = this.nameList.filter((known) => known.name !== name)
  }

  selection(): Selection {
    return { sheetId: this.chosen.sheetId, areas: [...this.chosen.areas] }
  }

  select(sheetId: string, area: Area): void {
    this.selectAreas(sheetId, [area])
  }

  settings(): Record<string, unknown> {
    return { ...this.kept }
  }

  setSetting(key: string, value: unknown): void {
    const others = Object.entries(this.kept).filter(([known]) => known !== key)
    this.kept = Object.fromEntries(value === undefined ? others : [...others, [key, value]])
  }

  settled(): Promise<void> {
    return Promise.resolve()
  }

  private replaceInNames(prefix: string, by: string): void {
    this.nameList = this.nameList.map((name) => ({ ...name, formula: name.formula.replaceAll(prefix, by) }))
  }
}
