import { isErrorText, type Cell } from '../../shared/cells'
import { isFormula, type Content, type Formula, type SheetDescription } from '../sheets/sheet'
import { fitCell, startsFormula } from '../sheets/typedText'
import type { FileCell, FileCells } from './file-library/fileBook'
import type { FileStyle } from './file-library/fileStyle'
import { plainLook, storedText, textAsItIs } from './file-library/storedTexts'
import { SheetLooks, type CellLook, type RowLook } from './workbookStyles'

/**
 * The cells of a sheet as a file takes them fastest: plain values by row, which take the look of their column,
 * and by address the cells that need more than that.
 */
export interface SheetCells {
  rows: Cell[][]
  columnStyles: (FileStyle | undefined)[]
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
  const value = plainValue(content)
  if (value !== undefined) return { value, style }
  if (typeof content === 'string') {
    const text = fittedText(content)
    if (startsFormula(text)) return { value: text, style: { ...style, numFmt: '@' } }
    return textAsItIs(text, style)
  }
  const { formula, value: result } = content as Formula
  return { value: result, style, formula: formula.slice(1), formulaResult: result }
}

/** The look that most of the plain values of each column have. */
function usualLooks({ rows, widths }: SheetDescription, looks: SheetLooks): (CellLook | undefined)[] {
  const values = new Map<RowLook, number[]>()
  rows.forEach((row, r) => {
    const look = looks.row(r)
    let counts = values.get(look)
    if (counts === undefined) values.set(look, (counts = widths.map(() => 0)))
    for (let c = 0; c < row.length; c++) {
      const content = row[c]
      if (content !== null && !isFormula(content)) counts[c] = (counts[c] ?? 0) + 1
    }
  })
  return widths.map((_, c) => {
    const counts = new Map<CellLook | undefined, number>()
    for (const [{ looks }, ofRow] of values)
      counts.set(looks[c], (counts.get(looks[c]) ?? 0) + (ofRow[c] ?? 0))
    return [...counts].reduce((most, each) => (each[1] > most[1] ? each : most), [undefined, 0])[0]
  })
}

/** Says of a cell without a style that it does not take that of its column. */
const unlike = (column: CellLook | undefined) => (column?.style === undefined ? undefined : plainLook)

/** Sorts the cells of a description: blank ones are left out unless their look shows. */
export function sheetCells(description: SheetDescription): SheetCells {
  const sheetLooks = new SheetLooks(description)
  const usual = usualLooks(description, sheetLooks)
  const cells = new Map<string, Partial<FileCell>>()
  const rows = description.rows.map((row, r) => {
    const { looks } = sheetLooks.row(r)
    const values: Cell[] = []
    // From here on values by row would show the look of their column on a cell that has none.
    let closed = false
    for (let c = 0; c < looks.length; c++) {
      const content = row[c] ?? null
      const look = looks[c]
      const value = plainValue(content)
      if (value === null && look?.shows !== true) closed ||= usual[c]?.shows === true
      else if (!closed && value !== undefined && look === usual[c]) {
        while (values.length < c) values.push(null)
        values.push(value)
      } else cells.set(`${String(r)},${String(c)}`, ownCell(content, look?.style ?? unlike(usual[c])))
    }
    return values
  })
  return { rows, columnStyles: usual.map((look) => look?.style), cells }
}
