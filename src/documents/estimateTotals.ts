import type { Estimate, EstimateLine } from '../arbor/price/estimate'
import { columnLetters } from '../../shared/cells'
import { Money } from '../../shared/money'
import type { SheetDraft } from './draft'
import { looks, palette } from './palette'
import type { Content, Format } from './sheet'

/** Where the estimate's table has the columns that are summed. */
export const summed = { year: 2, hours: 9, weight: 10, price: 11 } as const

/** The currency's digits, thousands in groups; the currency itself stands in the header. */
export function moneyFormat(minorDigits: number): Format {
  const numberFormat = minorDigits === 0 ? '#,##0' : `#,##0.${'0'.repeat(minorDigits)}`
  return { numberFormat, align: 'right' }
}

const price = columnLetters(summed.price)
const rate = columnLetters(summed.weight)

function totalRow(draft: SheetDraft, label: string, entries: [number, Content][], look: Format): number {
  const row: Content[] = [label, ...Array<null>(draft.widths.length - 1).fill(null)]
  for (const [column, content] of entries) row[column] = content
  return draft.line(row, look)
}

function pricesOf(lines: EstimateLine[]): number {
  return lines.reduce((sum, line) => sum.plus(line.price), new Money(0)).toNumber()
}

const add = (values: number[]): number => values.reduce((sum, value) => sum + value, 0)

/** What falls in each calendar year, since visits lie years apart. */
function addYears(draft: SheetDraft, lines: EstimateLine[], down: (column: number) => string): void {
  const years = [...new Set(lines.map((line) => line.year))].sort((a, b) => a - b)
  for (const year of years) {
    const formula = `=SUMIF(${down(summed.year)},${String(year)},${down(summed.price)})`
    const value = pricesOf(lines.filter((line) => line.year === year))
    totalRow(draft, `Work of ${String(year)}`, [[summed.price, { formula, value }]], looks.body)
  }
}

/**
 * Subtotal, tax and total as native formulas, each with the engine's value until the spreadsheet calculates. `first` is
 * the first row of the table's body; weights are shown in units of so many kilograms.
 */
export function addTotals(draft: SheetDraft, estimate: Estimate, first: number, kilograms: number): void {
  const { lines, minorDigits } = estimate
  const rows = [String(first + 1), String(first + lines.length)] as const
  const down = (column: number) => `${columnLetters(column)}${rows[0]}:${columnLetters(column)}${rows[1]}`
  const sum = (column: number, value: number): [number, Content] => [
    column,
    { formula: `=SUM(${down(column)})`, value }
  ]
  const start = draft.next
  addYears(draft, lines, down)

  const sums: [number, Content][] = [
    sum(summed.hours, add(lines.map((line) => line.crewHours))),
    sum(summed.weight, add(lines.map((line) => line.brushKilograms)) / kilograms),
    sum(summed.price, estimate.subtotal.toNumber())
  ]
  const subtotal = totalRow(draft, 'Subtotal', sums, looks.total)
  draft.format(subtotal, summed.hours, 1, 1, { numberFormat: '0.00', align: 'right' })
  draft.format(subtotal, summed.weight, 1, 1, { numberFormat: '0', align: 'right' })

  const taxOf = `=ROUND(${price}${String(subtotal + 1)}*${rate}${String(subtotal + 2)},${String(minorDigits)})`
  const taxes: [number, Content][] = [
    [summed.weight, estimate.taxRate],
    [summed.price, { formula: taxOf, value: estimate.tax.toNumber() }]
  ]
  const tax = totalRow(draft, 'Tax, rate shown', taxes, looks.body)
  draft.format(tax, summed.weight, 1, 1, {
    numberFormat: '0.00%',
    align: 'right',
    fill: palette.inputFill
  })

  const formula = `=${price}${String(subtotal + 1)}+${price}${String(tax + 1)}`
  const totals: [number, Content][] = [[summed.price, { formula, value: estimate.total.toNumber() }]]
  const total = totalRow(draft, `Total (${estimate.currency})`, totals, { ...looks.total, size: 13 })
  draft.height(total, 1, 22)
  draft.format(start, summed.price, total - start + 1, 1, moneyFormat(minorDigits))
}
