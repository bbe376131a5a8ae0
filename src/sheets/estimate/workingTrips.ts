import type { SheetDraft } from '../draft'
import { estimateColumn, type EstimateColumn } from './estimateColumns'
import { cell, down } from './estimateFormulas'
import type { SharedSum, WorkingLines, WorkingTrip } from './workingLines'
import { cellFormats } from '../cellFormats'
import { moneyFormat } from '../moneyFormat'
import { looks } from '../looks'
import { palette } from '../../../shared/palette'
import { asNumber, type Money } from '../../../shared/money'
import type { Content, NamedCells } from '../sheet'

/** A column of the trips stands under a column of the lines, so that the sheet has one set of widths. */
const headers: Partial<Record<EstimateColumn, string>> = {
  tree: 'Trip',
  visit: 'Number',
  year: 'Year',
  cuts: 'Lines',
  setUp: 'Crew days',
  cutting: 'Loads',
  hours: 'Crew hours',
  weight: 'Mobilization',
  loose: 'Travel',
  chips: 'Chips',
  crew: 'Disposal by load',
  disposal: 'To share',
  shared: 'In smallest units',
  cost: 'Left to give',
  charged: 'Charged',
  topUp: 'To least charge',
  price: 'Price',
  units: 'In smallest units',
  order: 'Given from',
  topUnits: 'Left to give',
  topOrder: 'Given from'
}

/** The names by which lines look up what belongs to their trip. */
const lookedUp: readonly (readonly [name: string, column: EstimateColumn])[] = [
  ['Trip_number', 'visit'],
  ['Trip_lines', 'cuts'],
  ['Trip_hours', 'hours'],
  ['Trip_units', 'shared'],
  ['Trip_order', 'order'],
  ['Trip_top_units', 'units'],
  ['Trip_top_order', 'topOrder'],
  ['Trip_price', 'price']
]

/** What budget figures, which are part of no trip, have none of. */
const ofTripsOnly: ReadonlySet<EstimateColumn> = new Set(['setUp', 'cutting', 'charged', 'price'])

interface Place {
  readonly row: number
  readonly firstLine: number
  readonly lineCount: number
}

/** The least key that gets one of the units left: as many of the trip's keys as are left, after those of later trips. */
function threshold(left: string, keys: string, { row, firstLine, lineCount }: Place): string {
  const trips = down('trip', firstLine, lineCount)
  return `IF(${left}>0,LARGE(${keys},COUNTIF(${trips},">"&${cell('visit', row)})+${left}),10^16)`
}

type Entry = readonly [EstimateColumn, string, number]

/** What a trip costs beside its trees, and how it is brought to its least charge. */
function costEntries({ trip }: WorkingTrip, at: Place, topUp: SharedSum): Entry[] {
  const of = (column: EstimateColumn) => cell(column, at.row)
  const sumOf = (column: EstimateColumn) => sumOfTrip(column, at)
  const value = (amount: (of: NonNullable<typeof trip>) => Money) =>
    trip === null ? 0 : asNumber(amount(trip))
  const money = (formula: string) => (trip === null ? '0' : `ROUND(${formula},Money_digits)`)
  return [
    ['weight', money('Mobilization_charge'), value(({ mobilization }) => mobilization)],
    ['loose', money(`${of('setUp')}*Travel_hours*Crew_hour`), value(({ travel }) => travel)],
    [
      'crew',
      money(`IF(Disposal_kind="load",${of('cutting')}*Load_charge,0)`),
      value(({ loadCharges }) => loadCharges)
    ],
    ['disposal', money(`${of('weight')}+${of('loose')}+${of('crew')}`), value(({ shared }) => shared)],
    ['charged', `ROUND(${sumOf('charged')},Money_digits)`, value(({ charged }) => charged)],
    ['topUp', money(`MAX(0,ROUND(Least_trip,Money_digits)-${of('charged')})`), value((each) => each.topUp)],
    [
      'price',
      `ROUND(${of('charged')}+${of('topUp')},Money_digits)`,
      value((each) => each.charged.plus(each.topUp))
    ],
    ['units', `ROUND(${of('topUp')}*10^Money_digits,0)`, topUp.units]
  ]
}

function sumOfTrip(column: EstimateColumn, { row, firstLine, lineCount }: Place): string {
  return `SUMIF(${down('trip', firstLine, lineCount)},${cell('visit', row)},${down(column, firstLine, lineCount)})`
}

function tripRow(
  trip: WorkingTrip,
  at: Place,
  { shared, topUp }: { shared: SharedSum; topUp: SharedSum },
  { lines }: WorkingLines
): Content[] {
  const of = (column: EstimateColumn) => cell(column, at.row)
  const sumOf = (column: EstimateColumn) => sumOfTrip(column, at)
  const keysOf = (column: EstimateColumn) => down(column, at.firstLine, at.lineCount)
  const sum = (amount: (line: (typeof lines)[number]) => number) =>
    trip.places.reduce(
      (all, place) => all + Math.round(amount(lines[place] as (typeof lines)[number]) * 100),
      0
    ) / 100
  const entries: Entry[] = [
    ['hours', `ROUND(${sumOf('hours')},2)`, sum(({ crewHours }) => crewHours)],
    ['chips', `ROUND(${sumOf('chips')},2)`, sum(({ brush }) => brush.chipVolume)],
    ['setUp', `ROUNDUP(ROUND(${of('hours')}/Day_hours,6),0)`, trip.trip?.crewDays ?? 0],
    ['cutting', `ROUNDUP(ROUND(${of('chips')}/Load_volume,6),0)`, trip.trip?.loads ?? 0],
    ...costEntries(trip, at, topUp),
    ['shared', `ROUND(${of('disposal')}*10^Money_digits,0)`, shared.units],
    ['cost', `${of('shared')}-${sumOf('units')}`, shared.left],
    ['order', threshold(of('cost'), keysOf('order'), at), shared.threshold],
    ['topUnits', `${of('units')}-${sumOf('topUnits')}`, topUp.left],
    ['topOrder', threshold(of('topUnits'), keysOf('topOrder'), at), topUp.threshold]
  ]
  const cells = Array.from({ length: estimateColumn.topOrder + 1 }, (): Content => null)
  cells[estimateColumn.tree] = trip.name
  cells[estimateColumn.visit] = trip.number
  cells[estimateColumn.year] = trip.trip?.year ?? null
  cells[estimateColumn.cuts] = trip.places.length
  for (const [column, formula, value] of entries)
    if (trip.trip !== null || !ofTripsOnly.has(column))
      cells[estimateColumn[column]] = { formula: `=${formula}`, value }
  return cells
}

/**
 * Mobilization, travel and loads of each trip, which its lines share by crew-hours, and what lifts it to its least charge.
 * Gives the columns that are looked up by trip, each by itself, since a formula may not depend on a block that it stands in.
 */
export function addTrips(
  draft: SheetDraft,
  working: WorkingLines,
  ofTrips: readonly { shared: SharedSum; topUp: SharedSum }[],
  firstLine: number,
  minorDigits: number
): NamedCells[] {
  draft.section('Trips: what their lines share by crew-hours')
  const head = Array.from({ length: draft.widths.length }, (): Content => null)
  for (const [column, text] of Object.entries(headers)) head[estimateColumn[column as EstimateColumn]] = text
  const header = draft.line(head, looks.header)
  draft.height(header, 1, 29)
  const top = draft.next
  working.trips.forEach((trip, index) => {
    const sums = ofTrips[index]
    if (sums === undefined) return
    const at = { row: top + index, firstLine, lineCount: working.lines.length }
    draft.line(tripRow(trip, at, sums, working), looks.body)
  })
  const rows = working.trips.length
  const format = (column: EstimateColumn, columns: number, look: Parameters<SheetDraft['format']>[4]) => {
    draft.format(top, estimateColumn[column], rows, columns, look)
  }
  format('hours', 1, cellFormats.hundredth)
  format('weight', 2, moneyFormat(minorDigits))
  format('chips', 1, cellFormats.hundredth)
  format('crew', 2, moneyFormat(minorDigits))
  format('shared', 2, cellFormats.whole)
  format('charged', 3, moneyFormat(minorDigits))
  format('units', 4, { ...cellFormats.whole, color: palette.quiet, size: 8 })
  return lookedUp.map(([name, column]) => ({
    name,
    area: { row: top, column: estimateColumn[column], rows, columns: 1 }
  }))
}
