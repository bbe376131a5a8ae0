/** One sheet in memory: cells, looks, sizes and the rest that the add-in sets. */
import { type Area, sharedPart } from '../../../shared/cells'
import type { Chart, ConditionalFormat, PageLayout, Picture, Validation } from '../book'
import { boundingArea } from '../../../shared/a1Notation'
import { plainPage } from '../plainPage'
import { FormatLayers } from './formatLayers'
import { SparseCells, type Calculate } from './sparseCells'

/** Excel's sizes of a new sheet in points, from memory. */
const columnPoints = 48
const rowPoints = 15

export class MemorySheet {
  readonly cells: SparseCells
  readonly looks = new FormatLayers()
  readonly columnWidths = new Map<number, number>()
  readonly rowHeights = new Map<number, number>()
  readonly hiddenRows = new Set<number>()
  readonly hiddenColumns = new Set<number>()
  readonly merged: Area[] = []
  validations: Validation[] = []
  conditionalFormats: ConditionalFormat[] = []
  pictures: Picture[] = []
  charts: Chart[] = []
  frozen = { rows: 0, columns: 0 }
  gridlines = true
  tabColor = ''
  visible = true
  page: PageLayout = plainPage()

  constructor(
    readonly id: string,
    public name: string,
    calculate: () => Calculate | null
  ) {
    this.cells = new SparseCells(calculate)
  }

  usedArea(valuesOnly: boolean): Area | null {
    let used: Area | null = null
    const stretch = (area: Area) => {
      used = used ? boundingArea(used, area) : area
    }
    for (const { row, column } of this.cells.places(!valuesOnly))
      stretch({ row, column, rows: 1, columns: 1 })
    if (!valuesOnly) for (const area of this.looks.areas()) stretch(area)
    return used
  }

  /** Cells hidden under a merged area keep nothing, as in Excel. */
  write(row: number, column: number, value: Parameters<SparseCells['write']>[2]): void {
    const cell = { row, column, rows: 1, columns: 1 }
    const over = this.merged.find((area) => sharedPart(area, cell) !== null)
    if (!over || (over.row === row && over.column === column)) this.cells.write(row, column, value)
  }

  /** A merged area keeps the value of its first cell only. */
  merge(area: Area): void {
    const [first] = this.cells.formulas({ ...area, rows: 1, columns: 1 }).flat()
    this.cells.clear(area)
    this.cells.write(area.row, area.column, first ?? null)
    this.merged.push(area)
  }

  validate(validation: Validation | Area): void {
    const area = 'rule' in validation ? validation.area : validation
    this.validations = this.validations.filter((old) => !same(old.area, area))
    if ('rule' in validation) this.validations.push(validation)
  }

  columnWidth(column: number): number {
    return this.columnWidths.get(column) ?? columnPoints
  }

  rowHeight(row: number): number {
    return this.rowHeights.get(row) ?? rowPoints
  }
}

function same(one: Area, other: Area): boolean {
  return (
    one.row === other.row &&
    one.column === other.column &&
    one.rows === other.rows &&
    one.columns === other.columns
  )
}
