import { columnLetters } from '../../../shared/cells'
import type { EstimateLine } from '../../price/estimate'
import { estimateColumn, lineValues, type EstimateColumn, type Working } from './estimateColumns'
import type { Content } from '../sheet'

/** A cell of the sheet by its column; rows count from 0. */
export function cell(column: EstimateColumn, row: number): string {
  return `${columnLetters(estimateColumn[column])}${String(row + 1)}`
}

/** A column of the table from its first row to its last, fixed. */
export function down(column: EstimateColumn, first: number, count: number): string {
  const letters = columnLetters(estimateColumn[column])
  return `$${letters}$${String(first + 1)}:$${letters}$${String(first + count)}`
}

/** The key by which the smallest units left over are given out: year, then remainder, then the earlier row. */
export function orderKey(year: number, rest: number, row: number): number {
  return (year - 2000) * 1e13 + rest * 1e5 + (1e5 - (row + 1))
}

/** Stands in the formulas of a line for its row. */
const ownRow = '¤'

/** A formula of every line, cut where the number of its row belongs. */
type RowFormula = readonly string[]

const onRow = (formula: string): RowFormula => `=${formula}`.split(ownRow)

function rowFormulas() {
  const of = (column: EstimateColumn) => `${columnLetters(estimateColumn[column])}${ownRow}`
  const ofYear = (column: string) => `SUMIF(Work_years,${of('year')},${column})`
  const quota = `${ofYear('Year_units')}*ROUND(${of('hours')}*100,0)`
  const all = `ROUND(${ofYear('Year_hours')}*100,0)`
  const beforeFactor = `${of('setUp')}+${of('cutting')}+${of('brush')}`
  const charged = `${of('cost')}*(1+Contingency_rate)*(1+Overhead_rate)*Profit_factor`
  return {
    brush: onRow(`${of('weight')}/Brush_a_minute`),
    hours: onRow(`ROUND((${beforeFactor})*${of('factor')}/60,2)`),
    loose: onRow(`ROUND(${of('weight')}/Loose_density,2)`),
    chips: onRow(`ROUND(${of('weight')}/Chip_density,2)`),
    crew: onRow(`ROUND(${of('hours')}*Crew_hour,Money_digits)`),
    disposal: onRow(`ROUND(${of('weight')}*Disposal_rate,Money_digits)`),
    shared: onRow(`(${of('units')}+IF(${of('order')}>=${ofYear('Year_order')},1,0))/10^Money_digits`),
    cost: onRow(`ROUND(${of('crew')}+${of('disposal')}+${of('shared')},Money_digits)`),
    price: onRow(`ROUND(MAX(${charged},Least_charge),Money_digits)`),
    units: onRow(`INT(${quota}/${all})`),
    order: onRow(`(${of('year')}-2000)*10^13+(${quota}-${of('units')}*${all})*10^5+10^5-ROW()`)
  } satisfies Partial<Record<EstimateColumn, RowFormula>>
}

const formulas: Partial<Record<EstimateColumn, RowFormula>> = rowFormulas()

/** A formula of a line and its value; the text is put together when a writer asks, as a long estimate has many. */
class LineFormula {
  constructor(
    private readonly pieces: RowFormula,
    private readonly row: number,
    readonly value: number
  ) {}

  get formula(): string {
    return this.pieces.join(String(this.row + 1))
  }
}

/** Minutes of brush follow from its weight only where they were computed from it. */
const follows = (column: EstimateColumn, { brush }: EstimateLine): boolean =>
  column !== 'brush' || brush.byWeight

/** One line of the table at a row of the sheet: inputs as numbers, everything that follows from them as a formula. */
export function estimateRow(line: EstimateLine, row: number, working: Working): Content[] {
  return lineValues.map(([column, of]) => {
    const value = of(line, working)
    const formula = formulas[column]
    const computed = formula !== undefined && typeof value === 'number' && follows(column, line)
    return computed ? new LineFormula(formula, row, value) : value
  })
}
