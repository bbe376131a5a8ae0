import { brushDensity, brushVolumeSource } from '../../formulas/brush'
import type { Estimate } from '../../price/estimate'
import { rateEntry, type RateName } from '../../price/rateBook'
import { crewHour } from '../../price/rates'
import { Money } from '../../../shared/money'
import { systems } from '../../../shared/units'
import type { SheetDraft } from '../draft'
import { moneyFormat } from '../moneyFormat'
import { looks, palette } from '../palette'
import { rateRule } from '../rates/rateRule'
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

/** A margin typed here that no price can hold is said beside the factor, which then is an error and no wrong price. */
const marginRemark: Content = {
  formula: `=IF(AND(Profit_kind<>"markup",Profit_rate>=1),"A margin stays below 100 %: at 100 % or more no price covers the cost.","${follows}")`,
  value: follows
}

const plain = { align: 'right' } as const
const share = { numberFormat: '0.0%', align: 'right' } as const

function ratesOf(estimate: Estimate): NamedRate[] {
  const { rates, minorDigits, currency } = estimate
  const money = moneyFormat(minorDigits)
  const exact = moneyFormat(Math.max(4, minorDigits))
  const density = brushDensity(rates.system)
  const weight = systems[rates.system].weight
  const volume = rates.system === 'in-ft' ? 'yd³' : 'm³'
  const own = (name: string, rate: RateName, content: Content, format: Format): NamedRate => {
    const entry = rateEntry(rate)
    const remark = rates.invented.includes(rate) ? 'invented' : ''
    const unit =
      entry.kind === 'money' ? `${currency}, ${entry.unit[rates.system]}` : entry.unit[rates.system]
    return { name, label: entry.name, content, unit, remark, format, input: true, rate }
  }
  const made = (name: string, label: string, formula: string, value: number, unit: string): NamedRate => ({
    name,
    label,
    content: { formula, value },
    unit,
    remark: name === 'Profit_factor' ? marginRemark : follows,
    format: name === 'Crew_hour' ? money : { numberFormat: '0.0000', align: 'right' },
    input: false
  })
  const sourced = (name: string, label: string, value: number): NamedRate => ({
    name,
    label,
    content: value,
    unit: `${weight} in a ${volume}`,
    remark: `Source: ${brushVolumeSource}`,
    format: { numberFormat: '0.0', align: 'right' },
    input: true
  })
  const factor =
    rates.profitKind === 'markup'
      ? new Money(rates.profitRate).plus(1)
      : new Money(1).div(new Money(1).minus(rates.profitRate))
  return [
    own('Crew_persons', 'crewPersons', rates.crewPersons, plain),
    own('Wage_hour', 'wage', Number(rates.wage), money),
    own('Burden_rate', 'burdenRate', Number(rates.burdenRate), share),
    own('Equipment_hour', 'equipmentHour', Number(rates.equipmentHour), money),
    made(
      'Crew_hour',
      'Crew and equipment',
      '=ROUND(Crew_persons*Wage_hour*(1+Burden_rate)+Equipment_hour,Money_digits)',
      crewHour(rates).toNumber(),
      `${currency}, an hour`
    ),
    own('Day_hours', 'dayHours', rates.dayHours, plain),
    own('Brush_a_minute', 'brushPerMinute', rates.brushPerMinute, plain),
    sourced('Loose_density', 'Loose brush weighs', density.loose),
    sourced('Chip_density', 'Green chips weigh', density.chips),
    own('Disposal_rate', 'disposalPerWeight', Number(rates.disposalPerWeight), exact),
    own('Load_volume', 'loadVolume', rates.loadVolume, plain),
    own('Load_charge', 'loadCharge', Number(rates.loadCharge), money),
    own('Mobilisation_charge', 'mobilisation', Number(rates.mobilisation), money),
    own('Travel_hours', 'travelHours', rates.travelHours, plain),
    own('Contingency_rate', 'contingencyRate', Number(rates.contingencyRate), share),
    own('Overhead_rate', 'overheadRate', Number(rates.overheadRate), share),
    own('Profit_kind', 'profitKind', rates.profitKind, plain),
    own('Profit_rate', 'profitRate', Number(rates.profitRate), share),
    made(
      'Profit_factor',
      'Cost to price',
      '=IF(Profit_kind="markup",1+Profit_rate,1/MAX(0,1-Profit_rate))',
      factor.toNumber(),
      'factor'
    ),
    own('Least_charge', 'minimumPerTree', Number(rates.minimumPerTree), money),
    own('Tax_rate', 'taxRate', Number(rates.taxRate), { ...share, numberFormat: '0.00%' }),
    own('Money_digits', 'minorDigits', rates.minorDigits, plain)
  ]
}

/**
 * The rates that the formulas call by name. Changing a yellow cell reckons the estimate anew, with or without the add-in; the
 * cell takes what the Rates sheet takes.
 */
export function addRates(draft: SheetDraft, estimate: Estimate): { names: NamedCells[]; rules: CellRule[] } {
  draft.section('What it was reckoned with')
  draft.line(
    [
      'Yellow cells may be changed here: the sheet reckons anew. Minutes of the cuts were taken from the rates when it was written.'
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
