import { isErrorText, type Cell } from '../../shared/cells'
import type { Content, Formula, SheetDescription } from '../sheets/sheet'
import { fitCell, startsFormula } from '../sheets/typedText'
import type { FileCell, FileCells } from './file-library/fileBook'
import type { FileStyle } from './file-library/fileStyle'
import { storedText, textAsItIs } from './file-library/storedTexts'
import { SheetLooks, type CellLook } from './workbookStyles'

/** The cells of a sheet as a file takes them fastest: plain values by row, and by address those that need more than that. */
export interface SheetCells {
  rows: Cell[][]
  /** How the values of each row look; rows that look alike share one list. */
  looks: (readonly CellLook[])[]
  cells: FileCells
}

const fittedText = (text: string): string => storedText(fitCell(text))

/** A value that needs no words about it, or undefined where it needs some. Blank is null. */
function plainValue(content: Content): Cell | undefined {
  if (content === null || content === '') return null
  if (typeof content === 'object') return 'date' in content ? content.date : undefined
  if (typeof content !== 'string') return content
  return startsFormula(content) || isErrorText(content) ? undefined : fittedText(content)
}

/**
 * A cell by itself. Text is stored as text; where it begins like a formula the cell is also given the text format, so
 * that it stays text when somebody edits it.
 */
function ownCell(content: Content, style: FileStyle | undefined): Partial<FileCell> {
  if (typeof content === 'string') {
    const text = fittedText(content)
    if (startsFormula(text)) return { value: text, style: { ...style, numFmt: '@' } }
    return textAsItIs(text, style)
  }
  const { formula, value: result } = content as Formula
  return { value: result, style, formula: formula.slice(1), formulaResult: result }
}

/** The cells of a description: values by row, and those that need words about them by address. */
export function sheetCells(description: Pick<SheetDescription, 'rows' | 'widths' | 'formats'>): SheetCells {
  const sheetLooks = new SheetLooks(description)
  const cells = new Map<string, Partial<FileCell>>()
  const looks: (readonly CellLook[])[] = []
  const rows = description.rows.map((row, r) => {
    const { looks: ofRow } = sheetLooks.row(r)
    looks.push(ofRow)
    return ofRow.map((look, c) => {
      const content = row[c] ?? null
      const value = plainValue(content)
      if (value !== undefined) return value
      cells.set(`${String(r)},${String(c)}`, ownCell(content, look.style))
      return null
    })
  })
  return { rows, looks, cells }
}
