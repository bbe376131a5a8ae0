/** The cells of the grid as the file library writes them. */
import type { ICellData, IStyleData, Nullable } from '@univerjs/core'
import type { Cell as FileCell, CellStyle, CellValue } from 'hucre'
import { areaAddress } from '../host/a1Notation'
import { toFileStyle } from './cellStyle'
import type { BookContents, CellMatrix, Spill } from './contents'
import { toFileFormula } from './formulaNames'

export function fileValue(cell: ICellData): CellValue {
  const rich = cell.p?.body?.dataStream
  if (rich !== undefined) return rich.replace(/\r\n$/, '').replaceAll('\r', '\n')
  const { v, t } = cell
  if (v === undefined || v === null) return null
  if (t === 3) return v === true || v === 1 || String(v).toUpperCase() === 'TRUE'
  return t === 2 ? Number(v) : v
}

function fileCell(
  cell: ICellData,
  style: CellStyle | undefined,
  spill: Spill | undefined
): Partial<FileCell> {
  const value = fileValue(cell)
  const kept = (cell.custom as { kept?: Partial<FileCell> } | null | undefined)?.kept ?? {}
  const plain: Partial<FileCell> = { ...kept, value, ...(style ? { style } : {}) }
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
  const known = new Map<string, CellStyle>()
  return (given: Nullable<IStyleData | string>): CellStyle | undefined => {
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
): Map<string, Partial<FileCell>> {
  const anchored = new Map(spills.map((spill) => [`${spill.area.row},${spill.area.column}`, spill]))
  const cells = new Map<string, Partial<FileCell>>()
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
