import { isFormula, type Content, type SheetDescription } from '../../src/sheets/sheet'

export function textsOf(description: SheetDescription): string[] {
  return description.rows.flat().filter((cell): cell is string => typeof cell === 'string')
}

/** A row's texts run together, and so every row, one line each. */
export function linesOf(description: SheetDescription): string[] {
  return description.rows.map((row) => row.filter((cell) => typeof cell === 'string').join(' '))
}

/** All that stands on the sheet, without marks of lists and line ends, so that a folded sentence is found whole. */
export function runningText(description: SheetDescription): string {
  return textsOf(description)
    .join(' ')
    .replace(/[•\s]+/g, ' ')
}

export const hasFormula: (cell: Content) => boolean = isFormula

/** Words that promise safety or rate a risk. The cautions, which deny both, are taken out before. */
export function promises(text: string, cautions: readonly string[]): string[] {
  const rest = cautions.reduce((left, caution) => left.replaceAll(caution, ' '), text)
  return (
    rest.match(/\b(safe|safer|safety|risk\w*|hazard\w*|danger\w*|probab\w*|guarante\w*|fail\w*)\b/gi) ?? []
  )
}

/** The format of a cell, later areas over earlier ones. */
export function formatAt(description: SheetDescription, row: number, column: number) {
  return description.formats
    .filter(
      ({ area }) =>
        row >= area.row &&
        row < area.row + area.rows &&
        column >= area.column &&
        column < area.column + area.columns
    )
    .reduce<Record<string, unknown>>((all, { format }) => ({ ...all, ...format }), {})
}
