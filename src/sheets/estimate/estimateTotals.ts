import type { Estimate, EstimateLine } from '../../price/estimate'
import type { SheetDraft } from '../draft'
import { estimateColumn, type EstimateColumn } from './estimateColumns'
import { cell, down } from './estimateFormulas'
import { cellFormats } from '../cellFormats'
import { moneyFormat } from '../moneyFormat'
import { looks } from '../looks'
import type { Content, Format } from '../sheet'

type Entry = [EstimateColumn, string, number]

/** A row with a label and formulas in some of the table's columns. */
export function formulaRow(draft: SheetDraft, label: string, entries: Entry[], look: Format): number {
  const row = Array.from({ length: draft.widths.length }, (): Content => null)
  row[estimateColumn.tree] = label
  for (const [column, formula, value] of entries)
    row[estimateColumn[column]] = { formula: `=${formula}`, value }
  return draft.line(row, look)
}

/**
 * The sum of the printed amounts of a column, exact since they are added in whole smallest units; of one year where it is
 * given. `first` is the sheet's row of the first line.
 */
function printedSum(
  { rows }: SheetDraft,
  { lines, minorDigits }: Estimate,
  first: number,
  column: EstimateColumn,
  year?: number
): number {
  const unit = 10 ** minorDigits
  let units = 0
  lines.forEach((line, index) => {
    if (year !== undefined && line.year !== year) return
    const content = rows[first + index]?.[estimateColumn[column]]
    if (typeof content !== 'object' || content === null || !('value' in content))
      throw new Error(`A line of the estimate has no formula for its ${column}.`)
    units += Math.round(Number(content.value) * unit)
  })
  return units / unit
}

/** A quantity of a line as it is printed, to a hundredth at most. */
type Amount = (line: EstimateLine) => number

const summed: [EstimateColumn, Amount, Format][] = [
  ['hours', (line) => line.crewHours, cellFormats.hundredth],
  ['weight', (line) => line.brush.weight, cellFormats.whole],
  ['loose', (line) => line.brush.looseVolume, cellFormats.hundredth],
  ['chips', (line) => line.brush.chipVolume, cellFormats.hundredth]
]

const moneys = ['crew', 'disposal', 'shared', 'cost', 'price'] as const satisfies EstimateColumn[]

/**
 * What falls in each year, subtotal, tax and total as native formulas, each with the engine's value until the spreadsheet
 * calculates. `first` is the sheet's row of the first line. Where not all is offered, the labels say that these sums are of
 * all visits, and the sum offered stands out instead.
 */
export function addTotals(draft: SheetDraft, estimate: Estimate, first: number, allOffered: boolean): void {
  const { lines, years, minorDigits } = estimate
  const range = (column: EstimateColumn) => down(column, first, lines.length)
  const start = draft.next
  for (const { year } of years) {
    const formula = `SUMIF(${range('year')},${String(year)},${range('price')})`
    const value = printedSum(draft, estimate, first, 'price', year)
    formulaRow(draft, `Price of ${String(year)}`, [['price', formula, value]], looks.body)
  }
  const subtotal = formulaRow(
    draft,
    allOffered ? 'Subtotal' : 'Subtotal of all visits',
    [
      ...summed.map(([column, amount]): Entry => {
        const value = lines.reduce((sum, line) => sum + Math.round(amount(line) * 100), 0) / 100
        return [column, `SUM(${range(column)})`, value]
      }),
      ...moneys.map((column): Entry => [
        column,
        `SUM(${range(column)})`,
        printedSum(draft, estimate, first, column)
      ])
    ],
    looks.total
  )
  for (const [column, , format] of summed) draft.format(subtotal, estimateColumn[column], 1, 1, format)

  const taxOf = `ROUND(${cell('price', subtotal)}*Tax_rate,Money_digits)`
  const tax = formulaRow(
    draft,
    'Tax, rate shown',
    [
      ['cost', 'Tax_rate', estimate.taxRate],
      ['price', taxOf, estimate.tax.toNumber()]
    ],
    looks.body
  )
  const sum = `${cell('price', subtotal)}+${cell('price', tax)}`
  const total = formulaRow(
    draft,
    allOffered ? `Total (${estimate.currency})` : `Total of all visits (${estimate.currency})`,
    [['price', sum, estimate.total.toNumber()]],
    allOffered ? { ...looks.total, size: 13 } : looks.total
  )
  draft.height(total, 1, 22)
  draft.format(
    start,
    estimateColumn.crew,
    total - start + 1,
    estimateColumn.price - estimateColumn.crew + 1,
    moneyFormat(minorDigits)
  )
  draft.format(tax, estimateColumn.cost, 1, 1, cellFormats.taxRate)
}
