/** Whether what a plan was made from still stands in the workbook, told by a formula of the document itself. */
import { absoluteArea, isErrorText, quotedPrefix, type Cell, type CellBlock } from '../../shared/cells'
import type { Inventory } from '../inventory/inventory'
import type { SheetCells } from '../inventory/survey/sheetCells'

/** The sheets that a plan was made from, as they were read. */
export interface Sources {
  readonly sheets: readonly SheetCells[]
  /** The Rules sheet, or null where there was none. */
  readonly rules: CellBlock | null
}

export const noSources: Sources = { sheets: [], rules: null }

/** Columns of numbers, by their references, with how many numbers there are and their sum. */
interface Numbers {
  readonly ranges: readonly string[]
  readonly count: number
  readonly sum: number
}

/** Shown as a day or a share, a number was read as a text: what a formula sees of such a column is not known here. */
const readAsText = /^\d{4}-\d\d-\d\d|%\s*$/

function numbersIn(cells: readonly Cell[]): { count: number; sum: number } | null {
  let [count, sum] = [0, 0]
  for (const cell of cells)
    if (typeof cell === 'number') {
      count += 1
      sum += cell
    } else if (typeof cell === 'string' && (isErrorText(cell) || readAsText.test(cell))) return null
  return { count, sum }
}

/** A reference in a formula that stays whole where its sheet is gone, and then gives an error. */
function reference(sheet: string, area: { row: number; column: number; rows: number }): string {
  const address = quotedPrefix(sheet) + absoluteArea({ ...area, columns: 1 })
  return `INDIRECT("${address.replaceAll('"', '""')}")`
}

/** More columns make a formula longer than it is worth. */
const mostColumns = 40

class Gathered implements Numbers {
  readonly ranges: string[] = []
  count = 0
  sum = 0

  add(sheet: string, column: number, row: number, cells: readonly Cell[]): void {
    const found = numbersIn(cells)
    if (found === null || found.count === 0 || this.ranges.length >= mostColumns) return
    this.ranges.push(reference(sheet, { row, column, rows: cells.length }))
    this.count += found.count
    this.sum += found.sum
  }
}

/** The numbers of the columns that were used; of rows that had to be rearranged none. */
function ofInventory({ parts }: Inventory, sheets: readonly SheetCells[]): Numbers {
  const gathered = new Gathered()
  const seen = new Set<string>()
  for (const { sheet: name, top, left, count, matches, placeOf } of parts) {
    const sheet = sheets.find((each) => each.name === name)
    if (sheet === undefined || placeOf !== undefined) continue
    for (const { column, field } of matches) {
      const at = `${name} ${String(top)} ${String(left + column)}`
      if (field === null || seen.has(at)) continue
      seen.add(at)
      const rows = sheet.rows.slice(top + 1 - sheet.top, top + count - sheet.top)
      gathered.add(
        name,
        left + column,
        top + 1,
        rows.map((row) => row[left + column - sheet.left] ?? null)
      )
    }
  }
  return gathered
}

function ofBlock(block: CellBlock | null): Numbers {
  const gathered = new Gathered()
  if (block === null) return gathered
  const columns = Math.max(0, ...block.rows.map((row) => row.length))
  for (let column = 0; column < columns; column++)
    gathered.add(
      block.sheet,
      block.left + column,
      block.top,
      block.rows.map((row) => row[column] ?? null)
    )
  return gathered
}

/** True as long as the numbers are what they were, or cannot be looked at. */
function stand({ ranges, count, sum }: Numbers): string | null {
  if (ranges.length === 0) return null
  const all = ranges.join(',')
  const least = Math.max(1, Math.abs(sum)) * 1e-9
  return `IFERROR(AND(COUNT(${all})=${String(count)},ABS(SUM(${all})-(${String(sum)}))<${least.toExponential(0).toUpperCase()}),TRUE)`
}

/** What has changed, as its document says it, by the condition that it has not. */
export type Age = readonly (readonly [stands: string, older: string])[]

/** Numbers of the inventory and of the Rules sheet; words and marks are not looked at, and nothing is claimed of them. */
export function ageOfBasis(inventory: Inventory, { sheets, rules }: Sources): Age {
  const told = [
    [
      stand(ofInventory(inventory, sheets)),
      'Measurements changed since: older than the inventory. Plan and write it again.'
    ],
    [stand(ofBlock(rules)), 'Rules changed since: older than the Rules sheet. Plan and write it again.']
  ] as const
  return told.flatMap(([stands, older]) => (stands === null ? [] : [[stands, older] as const]))
}

/** A formula that says which of several things changed first of all, or that none did. */
export function ageFormula(age: Age, same: string): string {
  return `=${age.reduceRight((rest, [stands, older]) => `IF(${stands},${rest},"${older}")`, `"${same}"`)}`
}
