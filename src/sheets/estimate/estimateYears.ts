import type { Estimate } from '../../price/estimate'
import type { SheetDraft } from '../draft'
import { estimateColumn, type EstimateColumn, type Working } from './estimateColumns'
import { cell, down, orderKey } from './estimateFormulas'
import { cellFormats } from '../cellFormats'
import { moneyFormat } from '../moneyFormat'
import { looks } from '../looks'
import { palette } from '../../../shared/palette'
import type { Content, NamedCells } from '../sheet'

/** Higher than any order key: nothing is left to give out. */
const nobody = 1e16

/** What the rows of the years hold besides the engine's own numbers. */
interface YearWorking {
  units: number
  left: number
  threshold: number
}

/**
 * The working columns as the formulas make them: the whole part of each line's quota, and the key by which the rest is
 * given out. `row` is the sheet's row of the first line.
 */
export function workingOf(
  { lines, years, minorDigits }: Estimate,
  row: number
): { ofLines: Working[]; ofYears: YearWorking[] } {
  const hundredths = (hours: number) => Math.round(hours * 100)
  const units = years.map(({ shared }) => Math.round(shared.times(10 ** minorDigits).toNumber()))
  const ofLines = lines.map((line, index) => {
    const which = years.findIndex(({ year }) => year === line.year)
    const quota = (units[which] ?? 0) * hundredths(line.crewHours)
    const all = hundredths(years[which]?.crewHours ?? 0)
    const share = Math.floor(quota / all)
    return { units: share, order: orderKey(line.year, quota - share * all, row + index) }
  })
  const ofYears = years.map(({ year }, which) => {
    const own = ofLines.filter((_working, index) => lines[index]?.year === year)
    const left = (units[which] ?? 0) - own.reduce((sum, working) => sum + working.units, 0)
    const keys = own.map(({ order }) => order).sort((a, b) => b - a)
    return { units: units[which] ?? 0, left, threshold: keys[left - 1] ?? nobody }
  })
  return { ofLines, ofYears }
}

const headers: Partial<Record<EstimateColumn, string>> = {
  tree: 'Year of work',
  year: 'Year',
  hours: 'Crew hours',
  weight: 'Crew days',
  loose: 'Loads',
  chips: 'Chips',
  crew: 'Mobilization',
  disposal: 'Travel',
  shared: 'Disposal by load',
  cost: 'To share',
  price: 'In smallest units',
  units: 'Left to give',
  order: 'Given from'
}

/**
 * Mobilization, travel and loads of each year, which the lines share by crew-hours. Gives the columns that are looked up by
 * year, each by itself, since a formula may not depend on a block that it stands in.
 */
export function addYears(draft: SheetDraft, estimate: Estimate, first: number): NamedCells[] {
  const { years, minorDigits } = estimate
  if (years.length === 0) return []
  draft.section('Costs that the trees of a year share, by crew-hours')
  const head = Array.from({ length: draft.widths.length }, (): Content => null)
  for (const [column, text] of Object.entries(headers)) head[estimateColumn[column as EstimateColumn]] = text
  const header = draft.line(head, looks.header)
  draft.height(header, 1, 29)
  draft.format(header, estimateColumn.hours, 1, estimateColumn.order - estimateColumn.hours + 1, {
    align: 'right'
  })
  const top = draft.next
  const { ofYears } = workingOf(estimate, first)
  years.forEach((_year, index) => {
    draft.line(yearRow(estimate, index, top + index, first, ofYears[index] as YearWorking), looks.body)
  })
  const rows = years.length
  draft.format(top, estimateColumn.hours, rows, 1, cellFormats.hundredth)
  draft.format(top, estimateColumn.weight, rows, 2, cellFormats.whole)
  draft.format(top, estimateColumn.chips, rows, 1, cellFormats.hundredth)
  draft.format(top, estimateColumn.crew, rows, 4, moneyFormat(minorDigits))
  draft.format(top, estimateColumn.price, rows, 3, { ...cellFormats.whole, color: palette.quiet, size: 8 })
  const named = (name: string, column: EstimateColumn): NamedCells => ({
    name,
    area: { row: top, column: estimateColumn[column], rows, columns: 1 }
  })
  return [
    named('Work_years', 'year'),
    named('Year_hours', 'hours'),
    named('Year_units', 'price'),
    named('Year_order', 'order')
  ]
}

function yearRow(
  { lines, years }: Estimate,
  index: number,
  row: number,
  first: number,
  { units, left, threshold }: YearWorking
): Content[] {
  const year = years[index] as Estimate['years'][number]
  const of = (column: EstimateColumn) => cell(column, row)
  const range = (column: EstimateColumn) => down(column, first, lines.length)
  const sumOf = (column: EstimateColumn) => `SUMIF(${range('year')},${of('year')},${range(column)})`
  const entries: [EstimateColumn, string, number][] = [
    ['hours', `ROUND(${sumOf('hours')},2)`, year.crewHours],
    ['weight', `ROUNDUP(ROUND(${of('hours')}/Day_hours,6),0)`, year.crewDays],
    ['loose', `ROUNDUP(ROUND(${of('chips')}/Load_volume,6),0)`, year.loads],
    ['chips', sumOf('chips'), year.chipVolume],
    ['crew', `ROUND(Mobilization_charge,Money_digits)`, year.mobilization.toNumber()],
    ['disposal', `ROUND(${of('weight')}*Travel_hours*Crew_hour,Money_digits)`, year.travel.toNumber()],
    ['shared', `ROUND(${of('loose')}*Load_charge,Money_digits)`, year.loadCharges.toNumber()],
    ['cost', `ROUND(${of('crew')}+${of('disposal')}+${of('shared')},Money_digits)`, year.shared.toNumber()],
    ['price', `ROUND(${of('cost')}*10^Money_digits,0)`, units],
    ['units', `${of('price')}-${sumOf('units')}`, left],
    [
      'order',
      `IF(${of('units')}>0,LARGE(${range('order')},COUNTIF(${range('year')},">"&${of('year')})+${of('units')}),10^16)`,
      threshold
    ]
  ]
  const cells = Array.from({ length: estimateColumn.order + 1 }, (): Content => null)
  cells[estimateColumn.tree] = `Work of ${String(year.year)}`
  cells[estimateColumn.year] = year.year
  for (const [column, formula, value] of entries)
    cells[estimateColumn[column]] = { formula: `=${formula}`, value }
  return cells
}
