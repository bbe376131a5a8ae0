import type { Content, SheetDescription } from '../sheet'
import type { SideBlock } from './estimateRates'

/** A description with blocks below each other to the right of it, from a row on. Columns and widths are those of the sheet. */
export function withSideBlocks(
  description: SheetDescription,
  blocks: readonly SideBlock[],
  { row, column, widths }: { row: number; column: number; widths: readonly number[] }
): SheetDescription {
  const rows = description.rows.map((cells) => [...cells])
  const [formats, names, rules] = [
    [...description.formats],
    [...(description.names ?? [])],
    [...(description.rules ?? [])]
  ]
  let top = row
  for (const block of blocks) {
    const moved = <
      T extends SideBlock['names'][number] | SideBlock['rules'][number] | SideBlock['formats'][number]
    >(
      each: T
    ): T => ({ ...each, area: { ...each.area, row: each.area.row + top, column: each.area.column + column } })
    block.rows.forEach((cells, index) => {
      const place = (rows[top + index] ??= [])
      while (place.length < column) place.push(null)
      rows[top + index] = [...place.slice(0, column), ...cells]
    })
    formats.push(...block.formats.map(moved))
    names.push(...block.names.map(moved))
    rules.push(...block.rules.map(moved))
    top += block.rows.length + 1
  }
  for (let index = 0; index < rows.length; index++) rows[index] ??= [] as Content[]
  return { ...description, rows, formats, names, rules, widths: [...description.widths, ...widths] }
}
