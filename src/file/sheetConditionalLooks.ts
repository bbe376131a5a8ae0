import type { CellStyle, Color, ConditionalRule } from 'hucre'
import { areaOf } from '../../shared/cells'
import type { ConditionalLook, SheetDescription } from '../sheets/sheet'
import { rgb } from './workbookStyles'

/**
 * What a conditional format adds to a cell's look, as the file library names it. A fill that is added is read from the
 * background colour (ECMA-376 part 1, 18.8.14; from memory).
 */
export function addedStyle(
  { bold, italic }: { bold?: boolean | null; italic?: boolean | null },
  letters: Color | undefined,
  ground: Color | undefined
): CellStyle {
  const font = {
    ...(bold ? { bold } : {}),
    ...(italic ? { italic } : {}),
    ...(letters ? { color: letters } : {})
  }
  return {
    ...(Object.keys(font).length > 0 ? { font } : {}),
    ...(ground ? { fill: { type: 'pattern', pattern: 'solid', fgColor: ground, bgColor: ground } } : {})
  }
}

function styleOf(format: ConditionalLook['format']): CellStyle {
  const { color, fill } = format
  return addedStyle(
    format,
    color === undefined ? undefined : rgb(color),
    fill === undefined ? undefined : rgb(fill)
  )
}

/** Looks that follow the cells, as the file library names them; the last one has the first priority. */
export function conditionalRulesOf({ conditionalLooks = [] }: SheetDescription): ConditionalRule[] {
  return conditionalLooks.map(({ area, formula, format }, index) => {
    return {
      type: 'expression',
      priority: conditionalLooks.length - index,
      formula: formula.replace(/^=/, ''),
      range: areaOf(area),
      style: styleOf(format)
    }
  })
}
