import { keepCompiled } from '../../../shared/keepCompiled'
import { columnLetters } from '../../../shared/cells'
import type { EstimateLine } from '../../price/estimate'
import { estimateColumn, lineValues, type EstimateColumn, type Working } from './estimateColumns'
import type { Content } from '../sheet'

/** A cell of the sheet of workings by its column; rows count from 0. */
export function cell(column: EstimateColumn, row: number): string {
  return `${columnLetters(estimateColumn[column])}${String(row + 1)}`
}

/** A column of the table of workings from its first row to its last, fixed. */
export function down(column: EstimateColumn, first: number, count: number): string {
  const letters = columnLetters(estimateColumn[column])
  return `$${letters}$${String(first + 1)}:$${letters}$${String(first + count)}`
}

/** The key by which the smallest units left over are given out: trip, then remainder, then the earlier row. */
export function orderKey(trip: number, rest: number, row: number): number {
  return trip * 1e13 + rest * 1e5 + (1e5 - (row + 1))
}

/** Stands in the formulas of a line for its row. */
const ownRow = '¤'

/** A formula of every line, cut where the number of its row belongs. */
type RowFormula = readonly string[]

const onRow = (formula: string): RowFormula => `=${formula}`.split(ownRow)

/** A sum of the trip shared out by crew-hours: the whole part of the quota, the key for what is left, and the amount. */
function sharedOut(
  columns: { units: EstimateColumn; order: EstimateColumn },
  names: { units: string; order: string }
): { units: RowFormula; order: RowFormula; amount: RowFormula } {
  const of = (column: EstimateColumn) => `${columnLetters(estimateColumn[column])}${ownRow}`
  const ofTrip = (column: string) => `SUMIF(Trip_number,${of('trip')},${column})`
  const hours = `ROUND(${ofTrip('Trip_hours')}*100,0)`
  const own = `IF(${hours}>0,ROUND(${of('hours')}*100,0),1)`
  const all = `IF(${hours}>0,${hours},${ofTrip('Trip_lines')})`
  const quota = `${ofTrip(names.units)}*${own}`
  const units = of(columns.units)
  return {
    units: onRow(`INT(${quota}/${all})`),
    order: onRow(`${of('trip')}*10^13+(${quota}-${units}*${all})*10^5+10^5-ROW()`),
    amount: onRow(`(${units}+IF(${of(columns.order)}>=${ofTrip(names.order)},1,0))/10^Money_digits`)
  }
}

function rowFormulas() {
  const of = (column: EstimateColumn) => `${columnLetters(estimateColumn[column])}${ownRow}`
  const shared = sharedOut({ units: 'units', order: 'order' }, { units: 'Trip_units', order: 'Trip_order' })
  const topUp = sharedOut(
    { units: 'topUnits', order: 'topOrder' },
    { units: 'Trip_top_units', order: 'Trip_top_order' }
  )
  const cutting = `(${of('setUp')}+${of('cutting')})*${of('persons')}/Crew_persons`
  const charged = `${of('cost')}*(1+Contingency_rate)*(1+Overhead_rate)*Profit_factor`
  return {
    brush: onRow(`${of('weight')}/Brush_a_minute`),
    hours: onRow(`ROUND((${cutting}+${of('brush')})*${of('factor')}/60,2)`),
    loose: onRow(`ROUND(${of('weight')}/Loose_density,2)`),
    chips: onRow(`ROUND(${of('weight')}/Chip_density,2)`),
    crew: onRow(`ROUND(${of('hours')}*Crew_hour,Money_digits)`),
    disposal: onRow(`IF(Disposal_kind="load",0,ROUND(${of('weight')}*Disposal_rate,Money_digits))`),
    shared: shared.amount,
    cost: onRow(`ROUND(${of('crew')}+${of('disposal')}+${of('shared')},Money_digits)`),
    charged: onRow(`ROUND(MAX(${charged},Least_charge),Money_digits)`),
    topUp: topUp.amount,
    price: onRow(`ROUND(${of('charged')}+${of('topUp')},Money_digits)`),
    units: shared.units,
    order: shared.order,
    topUnits: topUp.units,
    topOrder: topUp.order
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

/**
 * What a budget figure has instead: minutes of one person by the trunk, over the persons of the crew. They are typed in
 * as they are published, times the trunk.
 */
function byTrunk(line: EstimateLine): Partial<Record<EstimateColumn, Content>> {
  const { persons, minutes } = line
  const minutesOf = (of: number): Content => ({
    formula: `=${String(Number((of * persons).toPrecision(12)))}/Crew_persons`,
    value: of
  })
  return { cutting: minutesOf(minutes.cutting), brush: minutesOf(minutes.brush) }
}

/** One line of the table at a row of the sheet: inputs as numbers, everything that follows from them as a formula. */
export function workingRow(
  line: EstimateLine,
  row: number,
  working: Working,
  crewPersons: number
): Content[] {
  const own: Partial<Record<EstimateColumn, Content>> = line.visit === 0 ? byTrunk(line) : {}
  const wholeCrew: Content = { formula: '=Crew_persons', value: crewPersons }
  return lineValues.map(([column, of]) => {
    if (own[column] !== undefined) return own[column]
    const value = of(line, working)
    if (column === 'persons' && !line.byPole) return wholeCrew
    const formula = formulas[column]
    return formula !== undefined && typeof value === 'number' ? new LineFormula(formula, row, value) : value
  })
}

keepCompiled(new LineFormula([], 0, 0.5))
