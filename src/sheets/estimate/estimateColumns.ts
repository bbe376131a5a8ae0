import type { EstimateLine, PriceBasis } from '../../price/estimate'
import { asNumber } from '../../../shared/money'
import { palette } from '../../../shared/palette'
import { systems } from '../../../shared/units'
import { fixedTenth, hours, whole } from '../../../shared/words/figures'
import { showMoney } from '../../../shared/words/money'
import { Money } from '../../../shared/money'
import { cellFormats } from '../cellFormats'
import type { TableColumn } from '../draft'
import { moneyFormat } from '../moneyFormat'
import type { Format } from '../sheet'

/** What the headers of an estimate name. */
type Naming = Pick<PriceBasis, 'rates' | 'currency' | 'minorDigits'>

/** Whole units of a sum that is shared out, and the key by which the units left over are given. */
export interface Part {
  readonly units: number
  readonly order: number
}

/** What the working columns of a line hold: of the shared costs, and of what lifts the trip to its least charge. */
export interface Working {
  readonly trip: number
  readonly shared: Part
  readonly topUp: Part
}

/** How the values of a column look in a cell, and how a text writes them. */
type Kind = 'name' | 'text' | 'ordinal' | 'whole' | 'tenth' | 'hundredth' | 'money' | 'working'

/** A column of the table of lines: every surface chooses among these by name. */
interface LineColumn {
  readonly header: string | ((naming: Naming) => string)
  /** Characters on the sheet. */
  readonly width: number
  readonly kind: Kind
  readonly strong?: true
  readonly of: (line: EstimateLine, working: Working) => string | number | null
}

const volume = ({ rates }: Naming): string => (rates.system === 'in-ft' ? 'yd³' : 'm³')
const inMoney =
  (words: string) =>
  ({ currency }: Naming): string =>
    `${words} (${currency})`

const columns = {
  tree: { header: 'Tree', width: 13, kind: 'name', of: ({ tree }) => tree },
  visit: { header: 'Visit', width: 11, kind: 'ordinal', of: ({ visit }) => visit },
  year: { header: 'Year', width: 7, kind: 'ordinal', of: ({ year }) => year },
  basis: { header: 'How it was calculated', width: 36, kind: 'text', of: ({ basis }) => basis },
  cuts: { header: 'Cuts', width: 6, kind: 'whole', of: ({ cuts }) => cuts },
  persons: { header: 'Persons', width: 8, kind: 'whole', of: ({ persons }) => persons },
  setUp: { header: 'Set-up (min)', width: 9, kind: 'whole', of: ({ minutes }) => minutes.setUp },
  cutting: { header: 'Cutting (min)', width: 8, kind: 'tenth', of: ({ minutes }) => minutes.cutting },
  brush: { header: 'Brush (min)', width: 9, kind: 'tenth', of: ({ minutes }) => minutes.brush },
  factor: { header: 'Site factor', width: 8, kind: 'hundredth', of: ({ accessFactor }) => accessFactor },
  hours: { header: 'Crew hours', width: 8, kind: 'hundredth', of: ({ crewHours }) => crewHours },
  weight: {
    header: ({ rates }) => `Brush (${systems[rates.system].weight})`,
    width: 9,
    kind: 'whole',
    of: ({ brush }) => brush.weight
  },
  loose: {
    header: (naming) => `Loose (${volume(naming)})`,
    width: 9,
    kind: 'hundredth',
    of: ({ brush }) => brush.looseVolume
  },
  chips: {
    header: (naming) => `Chips (${volume(naming)})`,
    width: 9,
    kind: 'hundredth',
    of: ({ brush }) => brush.chipVolume
  },
  crew: { header: inMoney('Crew'), width: 11, kind: 'money', of: ({ money }) => asNumber(money.crew) },
  disposal: {
    header: inMoney('Disposal'),
    width: 10,
    kind: 'money',
    of: ({ money }) => asNumber(money.disposal)
  },
  shared: {
    header: inMoney('Shared costs'),
    width: 11,
    kind: 'money',
    of: ({ money }) => asNumber(money.shared)
  },
  cost: { header: inMoney('Cost'), width: 11, kind: 'money', of: ({ money }) => asNumber(money.cost) },
  charged: {
    header: inMoney('Charged'),
    width: 11,
    kind: 'money',
    of: ({ money }) => asNumber(money.charged)
  },
  topUp: {
    header: inMoney('To least charge for the trip'),
    width: 11,
    kind: 'money',
    of: ({ money }) => asNumber(money.topUp)
  },
  price: {
    header: inMoney('Price'),
    width: 13,
    kind: 'money',
    strong: true,
    of: ({ price }) => asNumber(price)
  },
  trip: { header: 'Trip', width: 6, kind: 'ordinal', of: (_line, { trip }) => trip },
  units: {
    header: 'Working: share in smallest units',
    width: 10,
    kind: 'working',
    of: (_line, { shared }) => shared.units
  },
  order: {
    header: 'Working: who gets the units left',
    width: 17,
    kind: 'working',
    of: (_line, { shared }) => shared.order
  },
  topUnits: {
    header: 'Working: least charge in smallest units',
    width: 10,
    kind: 'working',
    of: (_line, { topUp }) => topUp.units
  },
  topOrder: {
    header: 'Working: who gets the units left of it',
    width: 17,
    kind: 'working',
    of: (_line, { topUp }) => topUp.order
  }
} as const satisfies Record<string, LineColumn>

export type EstimateColumn = keyof typeof columns

const names = Object.keys(columns) as EstimateColumn[]
const columnOf = (name: EstimateColumn): LineColumn => columns[name]

/** Where each column of the estimate's table stands, from 0. */
export const estimateColumn = Object.fromEntries(names.map((name, index) => [name, index])) as Record<
  EstimateColumn,
  number
>

export const estimateWidths: readonly number[] = names.map((name) => columns[name].width)

function formatOf({ kind, strong }: LineColumn, minorDigits: number): Format {
  const format: Record<Kind, () => Format> = {
    name: () => ({ bold: true }),
    text: () => ({ wrap: true }),
    ordinal: () => cellFormats.centered,
    whole: () => cellFormats.whole,
    tenth: () => cellFormats.tenth,
    hundredth: () => cellFormats.hundredth,
    money: () => moneyFormat(minorDigits),
    working: () => ({ ...cellFormats.whole, color: palette.quiet, size: 8 })
  }
  return strong === undefined ? format[kind]() : { ...format[kind](), bold: true }
}

/** The header of a column, its unit or currency in brackets. */
export function lineHeader(name: EstimateColumn, naming: Naming): string {
  const { header } = columnOf(name)
  return typeof header === 'string' ? header : header(naming)
}

/** Headers and looks of the sheet's table. Neighbors of one kind share one look, so that a long sheet stays small. */
export function estimateColumns(estimate: Naming): TableColumn[] {
  const known = new Map<string, Format>()
  return names.map((name) => {
    const column = columnOf(name)
    const key = `${column.kind} ${String(column.strong ?? false)}`
    const format = known.get(key) ?? formatOf(column, estimate.minorDigits)
    known.set(key, format)
    return { header: lineHeader(name, estimate), format }
  })
}

/** The values of the columns, in the order of the sheet. */
export const lineValues: readonly (readonly [EstimateColumn, LineColumn['of']])[] = names.map((name) => [
  name,
  columnOf(name).of
])

const noPart: Part = { units: 0, order: 0 }
const noWorking: Working = { trip: 0, shared: noPart, topUp: noPart }

/** A cell of a line as a text in a column, as a terminal or the pane shows it. */
export function lineText(name: EstimateColumn, line: EstimateLine, { minorDigits }: Naming): string {
  const { kind, of } = columnOf(name)
  const value = of(line, noWorking)
  if (typeof value !== 'number') return value ?? ''
  if (kind === 'money') return showMoney(new Money(value), minorDigits)
  if (kind === 'tenth') return fixedTenth(value)
  return kind === 'hundredth' ? hours(value) : whole(value)
}
