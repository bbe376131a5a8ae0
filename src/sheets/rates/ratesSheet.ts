import { allowedRange } from '../../price/readRate'
import { rateHeaders } from '../../price/ratesTable'
import { rateEntry, rateNames, startValues, type RateName } from '../../price/rateBook'
import type { RateEntry } from '../../price/rateEntry'
import { inventedRatesIn, rateValues, type Rates } from '../../price/rates'
import type { UnitSystem } from '../../../shared/units'
import { SheetDraft } from '../draft'
import { moneyFormat } from '../moneyFormat'
import { titles } from '../ownSheets'
import { looks } from '../looks'
import { palette } from '../../../shared/palette'
import { rateContent, rateRule } from './rateRule'
import { ratesLooks } from './ratesLooks'
import type { CellRule, Format, SheetDescription } from '../sheet'
import { linesNeeded, pointsForLines } from '../wrapping'

const widths = [42, 13, 24, 26, 8, 16, 58]
const columns = { name: 0, value: 1, unit: 2, range: 3, mine: 4, start: 5, note: 6 } as const

const headers = [
  rateHeaders.name,
  rateHeaders.value,
  rateHeaders.unit,
  rateHeaders.range,
  rateHeaders.checked,
  'Invented start',
  rateHeaders.note
]

const lead: readonly (readonly [string, string])[] = [
  [
    'Whose it is',
    'This sheet is yours: type your own rates into the column Value. It is read for every estimate and never replaced.'
  ],
  [
    'Invented',
    'Every start value is invented, so that the arithmetic shows. Use none of them to quote before you have put in your own.'
  ],
  [
    'Italic or bold',
    'A value in italics on a tint is still the invented one; in bold on yellow it is yours. A blank counts as invented.'
  ],
  [
    'Mine',
    'A rate that you change counts as yours. Where the start value happens to be right for you, say so with yes.'
  ],
  [
    'Rounding',
    'Every printed line is rounded half up to the decimals of the currency; totals add up printed lines.'
  ]
]

function formatOf({ kind }: RateEntry, minorDigits: number): Format {
  if (kind === 'share') return { numberFormat: '0.0%', align: 'right' }
  return kind === 'money' ? { ...moneyFormat(Math.max(2, minorDigits)), align: 'right' } : { align: 'right' }
}

function addRate(
  draft: SheetDraft,
  rules: CellRule[],
  name: RateName,
  value: string,
  start: string,
  rates: Rates
): void {
  const entry = rateEntry(name)
  const same = rateContent(entry, value) === rateContent(entry, start)
  const mine = same && !rates.invented.includes(name) ? 'yes' : null
  const row = draft.line(
    [
      entry.name,
      rateContent(entry, value),
      entry.unit[rates.system],
      allowedRange(entry),
      mine,
      rateContent(entry, start),
      entry.note === '' ? null : entry.note
    ],
    looks.body
  )
  const format = formatOf(entry, rates.minorDigits)
  draft.format(row, columns.value, 1, 1, {
    ...format,
    align: 'center',
    fill: palette.inputFill
  })
  draft.format(row, columns.mine, 1, 1, { fill: palette.inputFill, align: 'center' })
  draft.format(row, columns.start, 1, 1, { ...format, align: 'center', color: palette.quiet })
  draft.format(row, columns.note, 1, 1, { wrap: true, color: palette.quiet })
  draft.height(row, 1, pointsForLines(Math.max(1, linesNeeded(entry.note, widths[columns.note] ?? 9)), 10))
  const rule = rateRule(entry, { row, column: columns.value, rows: 1, columns: 1 })
  if (rule !== null) rules.push(rule)
  rules.push({
    area: { row, column: columns.mine, rows: 1, columns: 1 },
    takes: { values: ['yes'] },
    sentence: 'Type yes where the value is right for your business, or leave it blank.'
  })
}

/** The rates as a sheet that a person then owns: each with its value, unit, allowed range and invented start value. */
export function describeRates(rates: Rates): SheetDescription {
  const draft = new SheetDraft(widths)
  const rules: CellRule[] = []
  const values = rateValues(rates)
  const start = startValues(rates.system)
  draft.title(titles.rates)
  for (const [label, sentence] of lead) draft.labeled(label, sentence)
  draft.labeled(
    'Still invented',
    `${String(rates.invented.length)} of ${String(rateNames.length)} rates when this sheet was written.`,
    { ...looks.caution, bold: true }
  )
  draft.section('Rates')
  const titleRow = draft.line(headers, looks.header)
  draft.height(titleRow, 1, pointsForLines(1, 9))
  for (const column of [columns.value, columns.mine, columns.start])
    draft.format(titleRow, column, 1, 1, { align: 'center' })
  let group = ''
  for (const name of rateNames) {
    const entry = rateEntry(name)
    if (entry.group !== group) {
      group = entry.group
      draft.line([group], { ...looks.section, size: 11, underline: palette.rule })
    }
    addRate(draft, rules, name, values[name], start[name], rates)
  }
  return {
    ...draft.finish({
      kind: 'rates',
      name: titles.rates,
      freezeRows: 0,
      freezeColumns: 1,
      page: {
        orientation: 'landscape',
        paper: rates.system === 'in-ft' ? 'letter' : 'a4',
        titleRow,
        footer: 'Rates. Start values are invented.'
      }
    }),
    rules,
    conditionalLooks: ratesLooks(titleRow + 1, draft.next - titleRow - 1, columns)
  }
}

/** A Rates sheet as a business first gets it: every value invented. */
export function describeStartRates(system: UnitSystem): SheetDescription {
  return describeRates(inventedRatesIn[system])
}
