import type { ShapeSheet } from '../shape'

const most = 24

/** Sheets as lines with bars between the cells, as the examples are written. */
export function shown(sheets: readonly ShapeSheet[]): string {
  return sheets
    .map(({ name, rows }) => {
      const lines = rows
        .slice(0, most)
        .map(
          ({ cells }) => `    ${cells.map((cell) => JSON.stringify(cell)?.slice(0, 80) ?? '').join(' | ')}`
        )
      const more = rows.length > most ? [`    … ${String(rows.length)} rows`] : []
      return [`  ${name}`, ...lines, ...more].join('\n')
    })
    .join('\n')
}
