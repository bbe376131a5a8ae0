import { areaOf } from '../../shared/cells'
import type { ConditionalLook, SheetDescription } from '../sheets/sheet'
import { addedStyle } from './file-library/addedStyle'
import type { FileFormulaLook } from './file-library/fileBook'
import { fileRgb, type FileStyle } from './file-library/fileStyle'

function styleOf(format: ConditionalLook['format']): FileStyle {
  const { color, fill } = format
  return addedStyle(
    format,
    color === undefined ? undefined : fileRgb(color),
    fill === undefined ? undefined : fileRgb(fill)
  )
}

/** Looks that follow the cells, as a file names them; the last one has the first priority. */
export function formulaLooksOf({ conditionalLooks = [] }: SheetDescription): FileFormulaLook[] {
  return conditionalLooks.map(({ area, formula, format }, index) => ({
    priority: conditionalLooks.length - index,
    formula: formula.replace(/^=/, ''),
    range: areaOf(area),
    style: styleOf(format)
  }))
}
