import type { Estimate, EstimateLine } from '../../price/estimate'
import { asNumber } from '../../../shared/money'
import { columnLetters } from '../../../shared/cells'
import { systems } from '../../../shared/units'
import type { TableColumn } from '../draft'
import { moneyFormat } from '../moneyFormat'
import { palette } from '../../../shared/palette'
import type { Content } from '../sheet'

/** Where the columns of the estimate's table stand, from 0. */
export const at = {
  tree: 0,
  visit: 1,
  year: 2,
  basis: 3,
  cuts: 4,
  setUp: 5,
  cutting: 6,
  brush: 7,
  factor: 8,
  hours: 9,
  weight: 10,
  loose: 11,
  chips: 12,
  crew: 13,
  disposal: 14,
  shared: 15,
  cost: 16,
  price: 17,
  units: 18,
  order: 19,
  chosen: 20
} as const

export type EstimateColumn = keyof typeof at

export const estimateWidths = [13, 11, 7, 36, 6, 9, 8, 9, 8, 8, 9, 9, 9, 11, 10, 11, 11, 13, 10, 17]

/** A cell of the sheet by its column; rows count from 0. */
export function cell(column: EstimateColumn, row: number): string {
  return `${columnLetters(at[column])}${String(row + 1)}`
}

/** A column of the table from its first row to its last, fixed. */
export function down(column: EstimateColumn, first: number, count: number): string {
  const letters = columnLetters(at[column])
  return `$${letters}$${String(first + 1)}:$${letters}$${String(first + count)}`
}

const centred = { numberFormat: '0', align: 'center' } as const
const whole = { numberFormat: '0', align: 'right' } as const
const tenth = { numberFormat: '0.0', align: 'right' } as const
const hundredth = { numberFormat: '0.00', align: 'right' } as const
const working = { numberFormat: '0', align: 'right', color: palette.quiet, size: 8 } as const

export function estimateColumns({ rates, currency, minorDigits }: Estimate, chosen: boolean): TableColumn[] {
  const { weight } = systems[rates.system]
  const volume = rates.system === 'in-ft' ? 'yd³' : 'm³'
  const money = moneyFormat(minorDigits)
  const columns: TableColumn[] = [
    { header: 'Tree', format: { bold: true } },
    { header: 'Visit', format: centred },
    { header: 'Year', format: centred },
    { header: 'How it was reckoned', format: { wrap: true } },
    { header: 'Cuts', format: whole },
    { header: 'Set-up (min)', format: whole },
    { header: 'Cutting (min)', format: tenth },
    { header: 'Brush (min)', format: tenth },
    { header: 'Site factor', format: hundredth },
    { header: 'Crew hours', format: hundredth },
    { header: `Brush (${weight})`, format: whole },
    { header: `Loose (${volume})`, format: hundredth },
    { header: `Chips (${volume})`, format: hundredth },
    { header: `Crew (${currency})`, format: money },
    { header: `Disposal (${currency})`, format: money },
    { header: `Shared costs (${currency})`, format: money },
    { header: `Cost (${currency})`, format: money },
    { header: `Price (${currency})`, format: { ...money, bold: true } },
    { header: 'Working: share in smallest units', format: working },
    { header: 'Working: who gets the units left', format: working }
  ]
  if (chosen) columns.push({ header: 'Offered', format: { align: 'center', bold: true } })
  return columns
}

/** The key by which the smallest units left over are given out: year, then remainder, then the earlier row. */
export function orderKey(year: number, rest: number, row: number): number {
  return (year - 2000) * 1e13 + rest * 1e5 + (1e5 - (row + 1))
}

/** What the working columns of a line hold. */
export interface Working {
  units: number
  order: number
}

/** Stands in the formulas of a line for its row. */
const ownRow = '¤'

/** A formula of every line, cut where the number of its row belongs. */
type RowFormula = readonly string[]

const onRow = (formula: string): RowFormula => `=${formula}`.split(ownRow)

function rowFormulas() {
  const of = (column: EstimateColumn) => `${columnLetters(at[column])}${ownRow}`
  const ofYear = (column: string) => `SUMIF(Work_years,${of('year')},${column})`
  const quota = `${ofYear('Year_units')}*ROUND(${of('hours')}*100,0)`
  const all = `ROUND(${ofYear('Year_hours')}*100,0)`
  const beforeFactor = `${of('setUp')}+${of('cutting')}+${of('brush')}`
  const charged = `${of('cost')}*(1+Contingency_rate)*(1+Overhead_rate)*Profit_factor`
  return {
    brush: onRow(`${of('weight')}/Brush_a_minute`),
    hours: onRow(`ROUND((${beforeFactor})*${of('factor')}/60,2)`),
    loose: onRow(`${of('weight')}/Loose_density`),
    chips: onRow(`${of('weight')}/Chip_density`),
    crew: onRow(`ROUND(${of('hours')}*Crew_hour,Money_digits)`),
    disposal: onRow(`ROUND(${of('weight')}*Disposal_rate,Money_digits)`),
    shared: onRow(`(${of('units')}+IF(${of('order')}>=${ofYear('Year_order')},1,0))/10^Money_digits`),
    cost: onRow(`ROUND(${of('crew')}+${of('disposal')}+${of('shared')},Money_digits)`),
    price: onRow(`ROUND(MAX(${charged},Least_charge),Money_digits)`),
    units: onRow(`INT(${quota}/${all})`),
    order: onRow(`(${of('year')}-2000)*10^13+(${quota}-${of('units')}*${all})*10^5+10^5-ROW()`)
  } as const satisfies Partial<Record<EstimateColumn, RowFormula>>
}

const formulas = rowFormulas()

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

/** One line of the table at a row of the sheet: inputs as numbers, everything that follows from them as a formula. */
export function estimateRow(line: EstimateLine, row: number, { units, order }: Working): Content[] {
  const { minutes, brush, money } = line
  const reckoned = (column: keyof typeof formulas, value: number): Content =>
    new LineFormula(formulas[column], row, value)
  return [
    line.tree,
    line.visit,
    line.year,
    line.basis,
    line.cuts,
    minutes.setUp,
    minutes.cutting,
    brush.byWeight ? reckoned('brush', minutes.brush) : minutes.brush,
    line.accessFactor,
    reckoned('hours', line.crewHours),
    brush.weight,
    reckoned('loose', brush.looseVolume),
    reckoned('chips', brush.chipVolume),
    reckoned('crew', asNumber(money.crew)),
    reckoned('disposal', asNumber(money.disposal)),
    reckoned('shared', asNumber(money.shared)),
    reckoned('cost', asNumber(money.cost)),
    reckoned('price', asNumber(line.price)),
    reckoned('units', units),
    reckoned('order', order)
  ]
}
