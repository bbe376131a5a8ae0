/** The cells of an opened sheet in the grid's own data: values, formulas and looks. */
import type { ICellData, IStyleData } from '@univerjs/core'
import type { FileStyle } from '../../file/file-library/fileStyle'
import type { FoundCell, UnpackedSheet } from '../../file/file-library/unpackedBook'
import { parseAddress } from '../../../shared/a1Notation'
import type { Cell } from '../../../shared/cells'
import { toGridStyle } from './cellStyle'
import type { CellMatrix } from './contents'
import { fromFileFormula } from './formulaNames'

/** Equal looks share one entry, as in the file. */
export class Styles {
  readonly table: Record<string, IStyleData> = {}
  private readonly ids = new Map<string, string>()

  id(style: FileStyle | undefined): string | undefined {
    if (style === undefined) return undefined
    const look = toGridStyle(style)
    const key = JSON.stringify(look)
    if (key === '{}') return undefined
    let id = this.ids.get(key)
    if (id === undefined) {
      id = `style${this.ids.size + 1}`
      this.ids.set(key, id)
      this.table[id] = look
    }
    return id
  }
}

function valueOf(value: Cell | undefined): Pick<ICellData, 'v' | 't'> {
  if (value === null || value === undefined) return {}
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: 3 }
  return typeof value === 'number' ? { v: value, t: 2 } : { v: value, t: 1 }
}

function formulaOf(cell: FoundCell): Pick<ICellData, 'f' | 'si'> {
  if (cell.formula === undefined) return {}
  const shared = cell.formulaSharedIndex === undefined ? {} : { si: `shared${cell.formulaSharedIndex}` }
  return cell.formula === '' ? shared : { f: fromFileFormula(cell.formula), ...shared }
}

/** Parts of a cell that the grid does not show travel with it. */
function keptOf({ hyperlink, comment }: FoundCell): Pick<ICellData, 'custom'> {
  if (!hyperlink && !comment) return {}
  return { custom: { kept: { ...(hyperlink ? { hyperlink } : {}), ...(comment ? { comment } : {}) } } }
}

/** Spilled values stand in the file for readers that do not calculate; the grid spills them again. */
export function readCells(sheet: UnpackedSheet, styles: Styles): CellMatrix {
  const cells: CellMatrix = {}
  const spilled = new Set<string>()
  for (const [key, cell] of sheet.cells)
    if (cell.formulaType === 'array' && cell.formulaRef) {
      const area = parseAddress(cell.formulaRef)?.area
      if (!area) continue
      for (let row = area.row; row < area.row + area.rows; row++)
        for (let column = area.column; column < area.column + area.columns; column++)
          if (`${row},${column}` !== key) spilled.add(`${row},${column}`)
    }
  const put = (row: number, column: number, cell: ICellData) => {
    if (Object.keys(cell).length > 0) (cells[row] ??= {})[column] = cell
  }
  sheet.rows.forEach((values, row) => {
    values.forEach((value, column) => {
      const key = `${row},${column}`
      const detail = sheet.cells.get(key)
      const s = styles.id(detail?.style)
      const look = s === undefined ? {} : { s }
      if (spilled.has(key)) return put(row, column, look)
      put(row, column, {
        ...valueOf(value),
        ...look,
        ...(detail ? { ...formulaOf(detail), ...keptOf(detail) } : {})
      })
    })
  })
  return cells
}
