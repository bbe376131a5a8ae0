import { brushDensity, brushVolumeSource } from '../../formulas/brush'
import type { PriceBasis } from '../../price/estimate'
import { baseHeader } from '../../price/changedRates'
import { rateHeaders } from '../../price/ratesTable'
import { rateEntry, rateNames, type RateName } from '../../price/rateBook'
import type { RateEntry } from '../../price/rateEntry'
import type { RateKind } from '../../price/rateKinds'
import { crewHour, rateValues } from '../../price/rates'
import { Money } from '../../../shared/money'
import { systems } from '../../../shared/units'
import { cellFormats } from '../cellFormats'
import { moneyFormat } from '../moneyFormat'
import { looks } from '../looks'
import { palette } from '../../../shared/palette'
import { rateContent, rateRule } from '../rates/rateRule'
import type { Area } from '../../../shared/cells'
import type { CellRule, Content, Format, NamedCells } from '../sheet'

/** Beside the prices, where they are not printed: rate, value, unit, what the Rates sheet says, remark. */
const columns = { label: 0, value: 1, unit: 2, base: 3, remark: 4 } as const

export const rateWidths = [38, 13, 26, 16, 60] as const

interface NamedRate {
  name: string
  label: string
  content: Content
  base?: Content
  unit: string
  remark: Content
  format: Format
  /** Typed in, and so changed by typing; otherwise a formula. */
  input: boolean
  /** The rate of the Rates sheet that it is, whose range holds here too. */
  rate?: RateName
}

const follows = 'follows from the rows above'

/** A margin typed here that no price can hold is reported beside the factor, which then shows an error and no wrong price. */
const marginRemark: Content = {
  formula: `=IF(AND(Profit_kind<>"markup",Profit_rate>=1),"A margin stays below 100 %: at 100 % or more no price covers the cost.","${follows}")`,
  value: follows
}

const plain: Format = { align: 'right' }

/** How a rate's cell is written, by its kind; fine ones with more decimals. */
function formatOf({ kind, fine }: RateEntry, minorDigits: number): Format {
  const formats: Record<RateKind, Format> = {
    money: moneyFormat(fine ? Math.max(4, minorDigits) : minorDigits),
    share: fine ? cellFormats.taxRate : cellFormats.share,
    number: plain,
    whole: plain,
    diameter: plain,
    height: plain,
    choice: plain,
    code: plain
  }
  return formats[kind]
}

/** The cell of every rate of the book that the formulas call by name, in its order. */
function ownRates({ rates, minorDigits, currency }: PriceBasis): NamedRate[] {
  const values = rateValues(rates)
  const base = { ...values, ...rates.changedHere }
  return rateNames.flatMap((rate) => {
    const entry = rateEntry(rate)
    if (entry.cell === null) return []
    const unit = entry.unit[rates.system]
    return {
      name: entry.cell,
      label: entry.name,
      content: rateContent(entry, values[rate]),
      base: rateContent(entry, base[rate]),
      unit: entry.kind === 'money' ? `${currency}, ${unit}` : unit,
      remark: rates.invented.includes(rate) ? 'invented' : (entry.note ?? ''),
      format: formatOf(entry, minorDigits),
      input: true,
      rate
    }
  })
}

/** What the formulas call by name beside the rates: the rows of each stand below the rate that it follows from. */
function madeRates({ rates, minorDigits, currency }: PriceBasis): Partial<Record<RateName, NamedRate[]>> {
  const density = brushDensity(rates.system)
  const weight = systems[rates.system].weight
  const volume = rates.system === 'in-ft' ? 'yd³' : 'm³'
  const made = { format: moneyFormat(minorDigits), remark: follows, input: false }
  const sourced = {
    unit: `${weight} in a ${volume}`,
    remark: `Source: ${brushVolumeSource}`,
    format: cellFormats.tenth,
    input: true
  } as const
  const factor =
    rates.profitKind === 'markup'
      ? new Money(rates.profitRate).plus(1)
      : new Money(1).div(new Money(1).minus(rates.profitRate))
  return {
    equipmentHour: [
      {
        ...made,
        name: 'Crew_hour',
        label: 'Crew and equipment',
        content: {
          formula: '=ROUND(Crew_persons*Wage_hour*(1+Burden_rate)+Equipment_hour,Money_digits)',
          value: crewHour(rates).toNumber()
        },
        unit: `${currency}, an hour`
      }
    ],
    brushPerMinute: [
      { ...sourced, name: 'Loose_density', label: 'Loose brush weighs', content: density.loose },
      { ...sourced, name: 'Chip_density', label: 'Green chips weigh', content: density.chips }
    ],
    profitRate: [
      {
        ...made,
        name: 'Profit_factor',
        label: 'Cost to price',
        content: {
          formula: '=IF(Profit_kind="markup",1+Profit_rate,1/MAX(0,1-Profit_rate))',
          value: factor.toNumber()
        },
        unit: 'factor',
        remark: marginRemark,
        format: cellFormats.factor
      }
    ]
  }
}

function ratesOf(basis: PriceBasis): NamedRate[] {
  const made = madeRates(basis)
  return ownRates(basis).flatMap((own) => [own, ...((own.rate && made[own.rate]) ?? [])])
}

/** A block that stands beside the prices: rows, and everything that goes with them, counted from its first cell. */
export interface SideBlock {
  readonly rows: Content[][]
  readonly formats: { area: Area; format: Format }[]
  readonly names: NamedCells[]
  readonly rules: CellRule[]
}

const lead = [
  'Yellow cells may be changed here: the prices follow at once. Minutes of cuts stay as they were written.',
  'A change goes into the other documents when they are written again; change the Rates sheet to keep it for other jobs.'
]

/**
 * The rates that the formulas call by name. Changing a yellow cell recalculates the estimate, with or without the add-in; the
 * cell takes what the Rates sheet takes.
 */
export function ratesBlock(basis: PriceBasis): SideBlock {
  const width = rateWidths.length
  const headers: Content[] = [rateHeaders.name, rateHeaders.value, rateHeaders.unit, baseHeader, 'Remark']
  const block: SideBlock = {
    rows: [['Rates used'], ...lead.map((text) => [text]), headers],
    formats: [
      { area: { row: 0, column: 0, rows: 1, columns: width }, format: looks.section },
      { area: { row: 1, column: 0, rows: lead.length, columns: width }, format: looks.lead },
      { area: { row: lead.length + 1, column: 0, rows: 1, columns: width }, format: looks.header }
    ],
    names: [],
    rules: []
  }
  for (const each of ratesOf(basis)) addRate(block, each)
  return block
}

function addRate({ rows, formats, names, rules }: SideBlock, each: NamedRate): void {
  const { name, label, content, base = null, unit, remark, format, input, rate } = each
  const row = rows.push([label, content, unit, base, remark === '' ? null : remark]) - 1
  const at = (column: number, columns = 1): Area => ({ row, column, rows: 1, columns })
  const area = at(columns.value)
  formats.push(
    { area: at(0, rateWidths.length), format: looks.body },
    { area, format: { ...format, align: 'center' } },
    { area: at(columns.base), format: { ...format, align: 'center', color: palette.quiet } },
    { area: at(columns.remark), format: { color: palette.quiet } }
  )
  if (input) formats.push({ area, format: { fill: palette.inputFill } })
  const rule = rate === undefined ? null : rateRule(rateEntry(rate), area)
  if (rule !== null) rules.push(rule)
  names.push({ name, area })
}
