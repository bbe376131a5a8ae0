import { columnLetters } from '../../../shared/cells'
import { asNumber } from '../../../shared/money'
import { systems } from '../../../shared/units'
import type { EstimateLine } from '../../price/estimate'
import type { Offer } from '../../price/offers'
import { cellFormats } from '../cellFormats'
import { cellsOf, headersOf, widthsOf, type Column } from '../columns'
import { moneyFormat } from '../moneyFormat'
import type { PrintedDraft } from '../printedDraft'
import type { Content, Format, PageSetup } from '../sheet'

/** Columns of the Estimate that are printed, from the left. */
export const priceColumns = { tree: 0, visit: 1, year: 2, cuts: 3, hours: 4, brush: 5, price: 6 } as const

export type PriceColumn = keyof typeof priceColumns

/** A line with its place among the lines of the sheet of workings, from 1. */
interface PlacedLine {
  readonly line: EstimateLine
  readonly place: number
}

/** What a line on the sheet of workings has in one of its named columns. */
export function ofLine(name: 'Line_price' | 'Line_hours', place: number, value: number): Content {
  return { formula: `=INDEX(${name},${String(place)})`, value }
}

/** Narrow enough that a page holds them in a wider font too. */
function columnsOf({ currency, minorDigits, rates }: Offer): readonly Column<PlacedLine>[] {
  const right = { align: 'right' } as const
  return [
    { header: 'Tree', width: 20, format: { bold: true, wrap: true }, of: ({ line }) => line.tree },
    { header: 'Visit', width: 6, format: cellFormats.centered, of: ({ line }) => line.visit },
    { header: 'Year', width: 6, format: cellFormats.centered, of: ({ line }) => line.year },
    { header: 'Cuts', width: 6, format: { ...cellFormats.whole, ...right }, of: ({ line }) => line.cuts },
    {
      header: 'Crew hours',
      width: 10,
      format: cellFormats.hundredth,
      of: ({ line, place }) => ofLine('Line_hours', place, line.crewHours)
    },
    {
      header: `Brush (${systems[rates.system].weight})`,
      width: 11,
      format: cellFormats.whole,
      of: ({ line }) => line.brush.weight
    },
    {
      header: `Price (${currency})`,
      width: 14,
      format: { ...moneyFormat(minorDigits), bold: true },
      of: ({ line, place }) => ofLine('Line_price', place, asNumber(line.price))
    }
  ]
}

export function priceWidths(offer: Offer): number[] {
  return widthsOf(columnsOf(offer))
}

/** A cell of the Estimate by its column; rows count from 0. */
export function priceCell(column: PriceColumn, row: number): string {
  return `${columnLetters(priceColumns[column])}${String(row + 1)}`
}

/** Rows of the table, from the first line to the last, headers repeated on later pages among them. */
export interface LineRows {
  readonly from: number
  readonly to: number
}

/** A column of the table from its first line to its last, fixed. */
export function priceRange(column: PriceColumn, { from, to }: LineRows): string {
  const letters = columnLetters(priceColumns[column])
  return `$${letters}$${String(from + 1)}:$${letters}$${String(to + 1)}`
}

/** One row per tree and visit, the headers at the head of each page. */
export function addPriceLines(draft: PrintedDraft, offer: Offer, page: PageSetup): LineRows {
  const columns = columnsOf(offer)
  const body = offer.lines.map((line, index) => cellsOf(columns, { line, place: index + 1 }))
  const from = draft.next + 1
  draft.gridOverPages(headersOf(columns), body, 1, page, 0)
  return { from, to: draft.next - 1 }
}

/** A row with a label and contents in some of the columns. */
export function labeledRow(
  draft: PrintedDraft,
  label: string,
  contents: Partial<Record<PriceColumn, Content>>,
  look: Format
): number {
  const cells = Array.from({ length: draft.widths.length }, (): Content => null)
  cells[priceColumns.tree] = label
  for (const [column, content] of Object.entries(contents))
    cells[priceColumns[column as PriceColumn]] = content
  return draft.line(cells, { ...draft.body, ...look })
}
