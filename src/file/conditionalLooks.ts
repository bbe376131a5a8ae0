import type { CellStyle, ConditionalRule } from 'hucre'
import { cellAddress } from '../../shared/cells'
import type { ConditionalLook, SheetDescription } from '../documents/sheet'

const rgb = (color: string): { rgb: string } => ({ rgb: color.replace('#', '').toUpperCase() })

/** A fill that is added to a cell's look is read from the background colour (ECMA-376 part 1, 18.8.14; from memory). */
function styleOf({ bold, italic, color, fill }: ConditionalLook['format']): CellStyle {
  const colored = color === undefined ? {} : { color: rgb(color) }
  const font = { ...(bold ? { bold } : {}), ...(italic ? { italic } : {}), ...colored }
  return {
    ...(Object.keys(font).length > 0 ? { font } : {}),
    ...(fill === undefined
      ? {}
      : { fill: { type: 'pattern', pattern: 'solid', fgColor: rgb(fill), bgColor: rgb(fill) } })
  }
}

/** Looks that follow the cells, as the file library names them; the last one has the first priority. */
export function conditionalRulesOf({ conditionalLooks = [] }: SheetDescription): ConditionalRule[] {
  return conditionalLooks.map(({ area, formula, format }, index) => {
    const first = cellAddress(area.row, area.column)
    const last = cellAddress(area.row + area.rows - 1, area.column + area.columns - 1)
    return {
      type: 'expression',
      priority: conditionalLooks.length - index,
      formula: formula.replace(/^=/, ''),
      range: first === last ? first : `${first}:${last}`,
      style: styleOf(format)
    }
  })
}
