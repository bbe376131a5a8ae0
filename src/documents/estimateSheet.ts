import type { Plan } from '../arbor/plan/plan'
import type { Estimate } from '../arbor/price/estimate'
import { kilogramsPerPound, systems } from '../../shared/units'
import { cautions, inventedRatesNotice } from './cautions'
import { SheetDraft, type TableColumn } from './draft'
import { addTotals, moneyFormat } from './estimateTotals'
import { titles } from './ownSheets'
import { looks } from './palette'
import type { Content, SheetDescription } from './sheet'

const widths = [16, 11, 8, 48, 7, 9, 9, 9, 9, 10, 11, 14]

const centred = { numberFormat: '0', align: 'center' } as const
const whole = { numberFormat: '0', align: 'right' } as const
const hundredth = { numberFormat: '0.00', align: 'right' } as const

function columnsOf(estimate: Estimate, weight: string): TableColumn[] {
  return [
    { header: 'Tree', format: { bold: true } },
    { header: 'Visit', format: centred },
    { header: 'Year', format: centred },
    { header: 'How it was reckoned', format: { wrap: true } },
    { header: 'Cuts', format: whole },
    { header: 'Set-up (min)', format: whole },
    { header: 'Cutting (min)', format: whole },
    { header: 'Brush (min)', format: whole },
    { header: 'Site factor', format: hundredth },
    { header: 'Crew hours', format: hundredth },
    { header: `Brush weight (${weight})`, format: whole },
    { header: `Price (${estimate.currency})`, format: { ...moneyFormat(estimate.minorDigits), bold: true } }
  ]
}

function bodyOf(estimate: Estimate, kilograms: number): Content[][] {
  return estimate.lines.map((line) => [
    line.tree,
    line.visit,
    line.year,
    line.basis,
    line.cuts,
    line.minutes.setUp,
    line.minutes.cutting,
    line.minutes.brush,
    line.accessFactor,
    line.crewHours,
    line.brushKilograms / kilograms,
    line.price.toNumber()
  ])
}

function addHead(draft: SheetDraft, estimate: Estimate, plan: Plan): void {
  draft.title(titles.estimate)
  draft.dated(plan.date)
  draft.labelled(
    'Prices',
    `In ${estimate.currency}. Visits after the first are a forecast at the same rates.`
  )
  if (estimate.inventedRates) draft.labelled('Rates', inventedRatesNotice, { ...looks.caution, bold: true })
  for (const sentence of cautions) draft.labelled('Caution', sentence, looks.caution)
}

/** The estimate as a sheet: one row a tree and visit, totals as native formulas that any spreadsheet can follow. */
export function describeEstimate(estimate: Estimate, plan: Plan): SheetDescription {
  const draft = new SheetDraft(widths)
  const { weight } = systems[plan.system]
  const kilograms = weight === 'lb' ? kilogramsPerPound : 1
  addHead(draft, estimate, plan)
  draft.section('Work by tree and visit')

  const { lines } = estimate
  let titleRow: number | null = null
  if (lines.length === 0) draft.line(['No work is planned, so there is nothing to price.'], looks.body)
  else {
    titleRow = draft.table(columnsOf(estimate, weight), bodyOf(estimate, kilograms), 2)
    const area = { row: titleRow, column: 0, rows: lines.length + 1, columns: widths.length }
    draft.tables.push({ name: 'EstimateLines', area })
    draft.blank()
    addTotals(draft, estimate, titleRow + 1, kilograms)
  }
  return draft.finish({
    kind: 'estimate',
    name: titles.estimate,
    freezeRows: 0,
    freezeColumns: 0,
    page: {
      orientation: 'landscape',
      paper: plan.system === 'in-ft' ? 'letter' : 'a4',
      titleRow,
      footer: `Estimate, ${plan.date}.${estimate.inventedRates ? ' Invented default rates.' : ''}`
    }
  })
}
