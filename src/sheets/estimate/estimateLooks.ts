import { cellAddress } from '../../../shared/cells'
import { estimateColumn } from './estimateColumns'
import { cell } from './estimateFormulas'
import { palette } from '../../../shared/palette'
import type { ConditionalLook, NamedCells } from '../sheet'

/** Says in words what italics mean among the prices. */
export const leastChargeSentence = 'A price in italics on a tint is the least charge for a tree at a visit.'

/**
 * The price of a line that the least charge set. The rates are called by their cells, since a name may get a number
 * added when the sheet is written. `first` is the sheet's row of the first line.
 */
export function estimateLooks(first: number, lines: number, names: readonly NamedCells[]): ConditionalLook[] {
  const rate = (wanted: string) => {
    const area = names.find(({ name }) => name === wanted)?.area
    if (area === undefined) throw new Error(`The estimate names no cell ${wanted}`)
    return cellAddress(area.row, area.column).replace(/[A-Z]+|\d+/g, '$$$&')
  }
  const raised = ['Contingency_rate', 'Overhead_rate'].map((name) => `*(1+${rate(name)})`).join('')
  const formula = `=$${cell('cost', first)}${raised}*${rate('Profit_factor')}<${rate('Least_charge')}`
  return [
    {
      area: { row: first, column: estimateColumn.price, rows: lines, columns: 1 },
      formula,
      format: { italic: true, fill: palette.noticeFill }
    }
  ]
}
