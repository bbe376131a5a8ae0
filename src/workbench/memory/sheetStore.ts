/** What a book in memory keeps by sheet: everything that the Book interface asks of one sheet's cells and looks. */
import type { Area, Cell } from '../../../shared/cells'
import {
  BookFault,
  type BookEvent,
  type CellFormat,
  type Chart,
  type ConditionalFormat,
  type PageLayout,
  type Picture,
  type ValidationTexts
} from '../book'
import type { MemorySheet } from './memorySheet'

export type Callback = (sheetId: string, changed?: Area) => void

export abstract class SheetStore {
  protected readonly sheetList: MemorySheet[] = []
  private readonly callbacks = new Map<BookEvent, Set<Callback>>()
  private lastId = 0

  usedArea(sheetId: string, valuesOnly: boolean): Area | null {
    return this.sheet(sheetId).usedArea(valuesOnly)
  }

  values(sheetId: string, area: Area): Cell[][] {
    return this.sheet(sheetId).cells.values(area)
  }

  formulas(sheetId: string, area: Area): Cell[][] {
    return this.sheet(sheetId).cells.formulas(area)
  }

  texts(sheetId: string, area: Area): string[][] {
    return this.sheet(sheetId).cells.texts(area)
  }

  numberFormats(sheetId: string, area: Area): string[][] {
    return this.sheet(sheetId).cells.numberFormats(area)
  }

  setValues(sheetId: string, area: Area, values: Cell[][]): void {
    const sheet = this.sheet(sheetId)
    values.forEach((row, down) => {
      row.forEach((value, across) => {
        sheet.write(area.row + down, area.column + across, value)
      })
    })
    this.tell('changed', sheetId, area)
  }

  setNumberFormats(sheetId: string, area: Area, formats: string[][]): void {
    const { cells } = this.sheet(sheetId)
    formats.forEach((row, down) => {
      row.forEach((format, across) => {
        cells.setNumberFormat(area.row + down, area.column + across, format)
      })
    })
  }

  clear(sheetId: string, area: Area): void {
    const sheet = this.sheet(sheetId)
    sheet.cells.clear(area)
    sheet.looks.clear(area)
    this.tell('changed', sheetId, area)
  }

  copyCells(from: string, area: Area, to: string, place: Area): void {
    const [source, goal] = [this.sheet(from), this.sheet(to)]
    goal.cells.copy(source.cells, area, place)
    goal.looks.copy(source.looks, area, place)
    this.tell('changed', to, place)
  }

  format(sheetId: string, area: Area): CellFormat {
    return this.sheet(sheetId).looks.read(area)
  }

  setFormat(sheetId: string, area: Area, format: Partial<CellFormat>): void {
    this.sheet(sheetId).looks.lay(area, format)
  }

  columnWidth(sheetId: string, column: number): number {
    return this.sheet(sheetId).columnWidth(column)
  }

  setColumnWidth(sheetId: string, column: number, columns: number, points: number): void {
    const { columnWidths } = this.sheet(sheetId)
    for (let index = column; index < column + columns; index++) columnWidths.set(index, points)
  }

  rowHeight(sheetId: string, row: number): number {
    return this.sheet(sheetId).rowHeight(row)
  }

  setRowHeight(sheetId: string, row: number, rows: number, points: number): void {
    const { rowHeights } = this.sheet(sheetId)
    for (let index = row; index < row + rows; index++) rowHeights.set(index, points)
  }

  rowHidden(sheetId: string, row: number): boolean {
    return this.sheet(sheetId).hiddenRows.has(row)
  }

  columnHidden(sheetId: string, column: number): boolean {
    return this.sheet(sheetId).hiddenColumns.has(column)
  }

  mergedAreas(sheetId: string): Area[] {
    return [...this.sheet(sheetId).merged]
  }

  freeze(sheetId: string, rows: number, columns: number): void {
    this.sheet(sheetId).frozen = { rows, columns }
  }

  frozen(sheetId: string) {
    return { ...this.sheet(sheetId).frozen }
  }

  gridlines(sheetId: string): boolean {
    return this.sheet(sheetId).gridlines
  }

  setGridlines(sheetId: string, shown: boolean): void {
    this.sheet(sheetId).gridlines = shown
  }

  tabColor(sheetId: string): string {
    return this.sheet(sheetId).tabColor
  }

  setTabColor(sheetId: string, color: string): void {
    this.sheet(sheetId).tabColor = color
  }

  hideSheet(sheetId: string, hidden = true): void {
    this.sheet(sheetId).visible = !hidden
  }

  validations(sheetId: string) {
    return [...this.sheet(sheetId).validations]
  }

  setValidation(sheetId: string, area: Area, rule: unknown, texts?: ValidationTexts): void {
    this.sheet(sheetId).validate(rule === null ? area : { area, rule, texts })
  }

  conditionalFormats(sheetId: string): ConditionalFormat[] {
    return this.sheet(sheetId).conditionalFormats.map((format) => structuredClone(format))
  }

  addConditionalFormat(sheetId: string, area: Area): ConditionalFormat {
    const format = { id: this.nextId('conditional-format'), areas: [area], formula: '', look: {} }
    this.sheet(sheetId).conditionalFormats.unshift(format)
    return structuredClone(format)
  }

  changeConditionalFormat(sheetId: string, id: string, change: Partial<ConditionalFormat>): void {
    const sheet = this.sheet(sheetId)
    sheet.conditionalFormats = sheet.conditionalFormats.map((known) =>
      known.id === id ? { ...known, ...change } : known
    )
  }

  deleteConditionalFormat(sheetId: string, id: string): void {
    const sheet = this.sheet(sheetId)
    sheet.conditionalFormats = sheet.conditionalFormats.filter((known) => known.id !== id)
  }

  page(sheetId: string): PageLayout {
    return { ...this.sheet(sheetId).page }
  }

  setPage(sheetId: string, change: Partial<PageLayout>): void {
    Object.assign(this.sheet(sheetId).page, change)
  }

  pictures(sheetId: string): Picture[] {
    return this.sheet(sheetId).pictures.map((picture) => ({ ...picture }))
  }

  addPicture(sheetId: string, image: string): Picture {
    const id = this.nextId('picture')
    const picture = { id, sheetId, image, left: 0, top: 0, width: 100, height: 100, alt: '' }
    this.sheet(sheetId).pictures.push(picture)
    return { ...picture }
  }

  changePicture(id: string, change: Partial<Picture>): void {
    for (const sheet of this.sheetList)
      sheet.pictures = sheet.pictures.map((known) => (known.id === id ? { ...known, ...change } : known))
  }

  deletePicture(id: string): void {
    for (const sheet of this.sheetList) sheet.pictures = sheet.pictures.filter((known) => known.id !== id)
  }

  charts(sheetId: string): Chart[] {
    return structuredClone(this.sheet(sheetId).charts)
  }

  addChart(sheetId: string, chart: Omit<Chart, 'id' | 'sheetId'>): Chart {
    const added = { ...chart, id: this.nextId('chart'), sheetId }
    this.sheet(sheetId).charts.push(added)
    return added
  }

  changeChart(id: string, change: Partial<Chart>): void {
    for (const sheet of this.sheetList)
      sheet.charts = sheet.charts.map((known) => (known.id === id ? { ...known, ...change } : known))
  }

  deleteChart(id: string): void {
    for (const sheet of this.sheetList) sheet.charts = sheet.charts.filter((known) => known.id !== id)
  }

  on(event: BookEvent, callback: Callback): () => void {
    const callbacks = this.callbacks.get(event) ?? new Set()
    this.callbacks.set(event, callbacks.add(callback))
    return () => callbacks.delete(callback)
  }

  protected tell(event: BookEvent, sheetId: string, changed?: Area): void {
    for (const callback of this.callbacks.get(event) ?? []) callback(sheetId, changed)
  }

  protected sheet(id: string): MemorySheet {
    const sheet = this.sheetList.find((known) => known.id === id)
    if (!sheet) throw new BookFault('ItemNotFound', `There is no sheet of the id ${id}.`)
    return sheet
  }

  protected nextId(kind: string): string {
    this.lastId += 1
    return `${kind}-${this.lastId}`
  }
}
