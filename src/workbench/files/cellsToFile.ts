/** The cells of the grid as a file holds them. */
import type { ICellData, IStyleData, Nullable } from '@univerjs/core'
import type { FileCell, FileCells } from '../../file/file-library/fileBook'
import type { FileStyle } from '../../file/file-library/fileStyle'
import { storedText } from '../../file/file-library/storedTexts'
import { areaAddress } from '../../../shared/a1Notation'
import type { Cell } from '../../../shared/cells'
import { toFileStyle } from './cellStyle'
import type { BookContents, CellMatrix, Spill } from './contents'
import { toFileFormula } from './formulaNames'

export function fileValue(cell: ICellData): Cell {
  const rich = cell.p?.body?.dataStream
  if (rich !== undefined) return rich.replace(/\r\n$/, '').replaceAll('\r', '\n')
  const { v, t } = cell
  if (v === undefined || v === null) return null
  if (t === 3) return v === true || v === 1 || String(v).toUpperCase() === 'TRUE'
  return t === 2 ? Number(v) : v
}

function fileCell(
  cell: ICellData,
  style: FileStyle | undefined,
  spill: Spill | undefined
): Partial<FileCell> {
  const value = fileValue(cell)
  const kept = (cell.custom as { kept?: Partial<FileCell> } | null | undefined)?.kept ?? {}
  const stored = typeof value === 'string' ? storedText(value) : value
  const plain: Partial<FileCell> = { ...kept, value: stored, ...(style ? { style } : {}) }
  if (!cell.f) return plain
  const formula = toFileFormula(cell.f)
  const result = value ?? undefined
  const array = spill
    ? { formulaType: 'array' as const, formulaRef: areaAddress(spill.area), formulaDynamic: true }
    : {}
  return { ...plain, formula, ...(result === undefined ? {} : { formulaResult: result }), ...array }
}

/** The file's style for a look of the grid, given as it is or by its id; equal looks share one style. */
export function styleReader(table: BookContents['styles']) {
  const known = new Map<string, FileStyle>()
  return (given: Nullable<IStyleData | string>): FileStyle | undefined => {
    const look = typeof given === 'string' ? table[given] : given
    if (!look) return undefined
    const key = JSON.stringify(look)
    let style = known.get(key)
    if (style === undefined) known.set(key, (style = toFileStyle(look)))
    return style
  }
}

export function writeCells(
  matrix: CellMatrix,
  spills: Spill[],
  styleOf: ReturnType<typeof styleReader>
): FileCells {
  const anchored = new Map(spills.map((spill) => [`${spill.area.row},${spill.area.column}`, spill]))
  const cells: FileCells = new Map()
  const add = (part: CellMatrix) => {
    for (const [row, line] of Object.entries(part))
      for (const [column, cell] of Object.entries<Nullable<ICellData>>(line ?? {})) {
        const key = `${row},${column}`
        if (cell) cells.set(key, { ...cells.get(key), ...fileCell(cell, styleOf(cell.s), anchored.get(key)) })
      }
  }
  add(matrix)
  for (const spill of spills) add(spill.cells)
  return cells
}
