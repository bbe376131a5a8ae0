import { foldText } from '../../shared/folding'

/** Everything fits a window of this many characters. */
export const textWidth = 100

/** A row of cells in columns of these widths; a negative width sets the cell to the right. */
export function row(cells: readonly string[], widths: readonly number[]): string {
  const set = cells.map((cell, index) => {
    const width = widths[index] ?? 10
    const size = Math.abs(width)
    const text = cell.length > size ? `${cell.slice(0, size - 1)}…` : cell
    return width < 0 ? text.padStart(size) : text.padEnd(size)
  })
  return set.join('  ').trimEnd()
}

/** A sentence in lines that start at an indent. */
export function folded(text: string, indent: number): string[] {
  return foldText(text, textWidth - indent).map((line) => ' '.repeat(indent) + line)
}
