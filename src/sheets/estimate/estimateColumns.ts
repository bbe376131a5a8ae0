import type { Estimate, EstimateLine } from '../../price/estimate'
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
type Naming = Pick<Estimate, 'rates' | 'currency' | 'minorDigits'>

/** What the working columns of a line hold. */
export interface Working {
  units: number
  order: number
}

/** How the values of a column look in a cell, and how a text writes them. */
type Kind = 'name' | 'text' | 'ordinal' | 'whole' | 'tenth' | 'hundredth' | 'money' | 'working' | 'mark'

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
  price: {
    header: inMoney('Price'),
    width: 13,
    kind: 'money',
    strong: true,
    of: ({ price }) => asNumber(price)
  },
  units: {
    header: 'Working: share in smallest units',
    width: 10,
    kind: 'working',
    of: (_line, { units }) => units
  },
  order: {
    header: 'Working: who gets the units left',
    width: 17,
    kind: 'working',
    of: (_line, { order }) => order
  },
  /** Marks what is offered; only where not everything is. */
  chosen: { header: 'Offered', width: 11, kind: 'mark', strong: true, of: () => null }
} as const satisfies Record<string, LineColumn>

export type EstimateColumn = keyof typeof columns

const names = Object.keys(columns) as EstimateColumn[]
const columnOf = (name: EstimateColumn): LineColumn => columns[name]

/** The columns of the sheet from the left; the last one stands only where visits are marked as offered. */
function placed(chosen: boolean): EstimateColumn[] {
  return names.filter((name) => chosen || name !== 'chosen')
}

/** Where each column of the estimate's table stands, from 0. */
export const estimateColumn = Object.fromEntries(names.map((name, index) => [name, index])) as Record<
  EstimateColumn,
  number
>

export function estimateWidths(chosen: boolean): number[] {
  return placed(chosen).map((name) => columns[name].width)
}

function formatOf({ kind, strong }: LineColumn, minorDigits: number): Format {
  const format: Record<Kind, () => Format> = {
    name: () => ({ bold: true }),
    text: () => ({ wrap: true }),
    ordinal: () => cellFormats.centered,
    whole: () => cellFormats.whole,
    tenth: () => cellFormats.tenth,
    hundredth: () => cellFormats.hundredth,
    money: () => moneyFormat(minorDigits),
    working: () => ({ ...cellFormats.whole, color: palette.quiet, size: 8 }),
    mark: () => ({ align: 'center' })
  }
  return strong === undefined ? format[kind]() : { ...format[kind](), bold: true }
}

/** The header of a column, its unit or currency in brackets. */
export function lineHeader(name: EstimateColumn, naming: Naming): string {
  const { header } = columnOf(name)
  return typeof header === 'string' ? header : header(naming)
}

/** Headers and looks of the sheet's table. Neighbors of one kind share one look, so that a long sheet stays small. */
export function estimateColumns(estimate: Estimate, chosen: boolean): TableColumn[] {
  const known = new Map<string, Format>()
  return placed(chosen).map((name) => {
    const column = columnOf(name)
    const key = `${column.kind} ${String(column.strong ?? false)}`
    const format = known.get(key) ?? formatOf(column, estimate.minorDigits)
    known.set(key, format)
    return { header: lineHeader(name, estimate), format }
  })
}

/** The values of the columns that have one before it is known what is offered, in the order of the sheet. */
export const lineValues: readonly (readonly [EstimateColumn, LineColumn['of']])[] = placed(false).map(
  (name) => [name, columnOf(name).of]
)

const noWorking: Working = { units: 0, order: 0 }

/** A cell of a line as a text in a column, as a terminal or the pane shows it. */
export function lineText(name: EstimateColumn, line: EstimateLine, { minorDigits }: Naming): string {
  const { kind, of } = columnOf(name)
  const value = of(line, noWorking)
  if (typeof value !== 'number') return value ?? ''
  if (kind === 'money') return showMoney(new Money(value), minorDigits)
  if (kind === 'tenth') return fixedTenth(value)
  return kind === 'hundredth' ? hours(value) : whole(value)
}
