import { brushDensity, brushVolumeSource } from '../../formulas/brush'
import type { Estimate } from '../../price/estimate'
import { rateEntry, rateNames, type RateName } from '../../price/rateBook'
import type { RateEntry } from '../../price/rateEntry'
import type { RateKind } from '../../price/rateKinds'
import { crewHour, rateValues } from '../../price/rates'
import { Money } from '../../../shared/money'
import { systems } from '../../../shared/units'
import type { SheetDraft } from '../draft'
import { cellFormats } from '../cellFormats'
import { moneyFormat } from '../moneyFormat'
import { looks } from '../looks'
import { palette } from '../../../shared/palette'
import { rateContent, rateRule } from '../rates/rateRule'
import type { CellRule, Content, Format, NamedCells } from '../sheet'

/** Label, value, unit and remark; the columns between stay empty so that texts run over them. */
const columns = { label: 0, value: 5, unit: 6, remark: 9 } as const

interface NamedRate {
  name: string
  label: string
  content: Content
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
function ownRates({ rates, minorDigits, currency }: Estimate): NamedRate[] {
  const values = rateValues(rates)
  return rateNames.flatMap((rate) => {
    const entry = rateEntry(rate)
    if (entry.cell === null) return []
    const unit = entry.unit[rates.system]
    return {
      name: entry.cell,
      label: entry.name,
      content: rateContent(entry, values[rate]),
      unit: entry.kind === 'money' ? `${currency}, ${unit}` : unit,
      remark: rates.invented.includes(rate) ? 'invented' : '',
      format: formatOf(entry, minorDigits),
      input: true,
      rate
    }
  })
}

/** What the formulas call by name beside the rates: the rows of each stand below the rate that it follows from. */
function madeRates({ rates, minorDigits, currency }: Estimate): Partial<Record<RateName, NamedRate[]>> {
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

function ratesOf(estimate: Estimate): NamedRate[] {
  const made = madeRates(estimate)
  return ownRates(estimate).flatMap((own) => [own, ...((own.rate && made[own.rate]) ?? [])])
}

/**
 * The rates that the formulas call by name. Changing a yellow cell recalculates the estimate, with or without the add-in; the
 * cell takes what the Rates sheet takes.
 */
export function addRates(draft: SheetDraft, estimate: Estimate): { names: NamedCells[]; rules: CellRule[] } {
  draft.section('Rates used')
  draft.line(
    [
      'Yellow cells may be changed here: the sheet recalculates. Minutes of the cuts were taken from the rates when it was written.'
    ],
    looks.lead
  )
  const rules: CellRule[] = []
  const names = ratesOf(estimate).map(({ name, label, content, unit, remark, format, input, rate }) => {
    const cells = Array.from({ length: draft.widths.length }, (): Content => null)
    cells[columns.label] = label
    cells[columns.value] = content
    cells[columns.unit] = unit
    cells[columns.remark] = remark === '' ? null : remark
    const row = draft.line(cells, looks.body)
    const area = { row, column: columns.value, rows: 1, columns: 1 }
    draft.format(row, columns.value, 1, 1, { ...format, align: 'center' })
    if (input) draft.format(row, columns.value, 1, 1, { fill: palette.inputFill })
    draft.format(row, columns.remark, 1, 1, { color: palette.quiet })
    const rule = rate === undefined ? null : rateRule(rateEntry(rate), area)
    if (rule !== null) rules.push(rule)
    return { name, area }
  })
  return { names, rules }
}
