import type { Estimate } from '../price/estimate'
import { printMoney } from '../../shared/money'
import { kilogramsPerPound, systems, type UnitSystem } from '../../shared/units'
import { inventedRatesNotice } from '../sheets/cautions'
import { folded, row } from './textRows'

const priceWidths = [14, -5, -6, -6, -10, -12, -14]

/** The estimate in columns: one line a tree and visit, then the totals. */
export function estimateLines(estimate: Estimate, system: UnitSystem): string[] {
  const weight = systems[system].weight
  const perUnit = weight === 'lb' ? kilogramsPerPound : 1
  const money = (amount: Estimate['total']) => printMoney(amount, estimate.minorDigits)
  const header = [
    'Tree',
    'Visit',
    'Year',
    'Cuts',
    'Crew hours',
    `Brush ${weight}`,
    `Price ${estimate.currency}`
  ]
  const lines = estimate.lines.map((line) =>
    row(
      [
        line.tree,
        String(line.visit),
        String(line.year),
        String(line.cuts),
        line.crewHours.toFixed(2),
        (line.brushKilograms / perUnit).toFixed(0),
        money(line.price)
      ],
      priceWidths
    )
  )
  const sum = (name: string, amount: Estimate['total']) =>
    row([name, '', '', '', '', '', money(amount)], priceWidths)
  return [
    '',
    'ESTIMATE',
    row(header, priceWidths),
    ...lines,
    sum('Subtotal', estimate.subtotal),
    sum(`Tax ${(estimate.taxRate * 100).toFixed(2)} %`, estimate.tax),
    sum('Total', estimate.total),
    ...(estimate.inventedRates ? folded(inventedRatesNotice, 0) : [])
  ]
}
