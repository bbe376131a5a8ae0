import { type Area, cellAddress } from '../../shared/cells'

/** The address of an area with its sheet: Trees!B2:C5, or Trees!B2 for one cell. */
export function addressOf(area: Area, sheet: string): string {
  const first = cellAddress(area.row, area.column, sheet)
  const last = cellAddress(area.row + area.rows - 1, area.column + area.columns - 1)
  return area.rows * area.columns === 1 ? first : `${first}:${last}`
}

/** A sheet-qualified address taken apart: "'Far side'!C5" gives the sheet and C5. Null for anything else. */
export function takeApart(address: string): { sheet: string; cells: string } | null {
  const cells = /(?:\$?[A-Z]{1,3}\$?\d+)(?::\$?[A-Z]{1,3}\$?\d+)?$/i.exec(address)?.[0] ?? ''
  const found = /^(?:'((?:[^']|'')+)'|([^'!]+))!$/.exec(address.slice(0, address.length - cells.length))
  if (cells === '' || found === null) return null
  return { sheet: found[1]?.replaceAll("''", "'") ?? found[2] ?? '', cells }
}
