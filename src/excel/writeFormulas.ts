import type { Area } from '../../shared/cells'
import { isFormula, type Content, type SheetDescription } from '../sheets/sheet'

/** Formulas in one request at most: each is some dozens of characters. */
const formulasAtOnce = 5000

/** The runs of formulas in a row, from the left. */
function runsOf(row: readonly Content[]): { column: number; columns: number }[] {
  const runs: { column: number; columns: number }[] = []
  row.forEach((content, column) => {
    if (!isFormula(content)) return
    const last = runs.at(-1)
    if (last !== undefined && last.column + last.columns === column) last.columns += 1
    else runs.push({ column, columns: 1 })
  })
  return runs
}

/** Rectangles that together hold every formula and nothing else: equal runs of rows that follow each other are one. */
export function formulaBlocks(rows: readonly (readonly Content[])[]): Area[] {
  const blocks: Area[] = []
  let open: Area[] = []
  rows.forEach((row, index) => {
    open = runsOf(row).map(({ column, columns }) => {
      const above = open.find((block) => block.column === column && block.columns === columns)
      if (above !== undefined && above.row + above.rows === index && above.rows * columns < formulasAtOnce) {
        above.rows += 1
        return above
      }
      const block = { row: index, column, rows: 1, columns }
      blocks.push(block)
      return block
    })
  })
  return blocks
}

/** Native formulas; nothing a person typed ever goes this way. */
export async function writeFormulas(
  sheet: Excel.Worksheet,
  { rows }: SheetDescription,
  send: () => Promise<void>
): Promise<void> {
  let waiting = 0
  for (const { row, column, rows: count, columns } of formulaBlocks(rows)) {
    const formulas = rows
      .slice(row, row + count)
      .map((cells) =>
        cells.slice(column, column + columns).map((content) => (isFormula(content) ? content.formula : ''))
      )
    sheet.getRangeByIndexes(row, column, count, columns).formulas = formulas
    waiting += count * columns
    if (waiting < formulasAtOnce) continue
    await send()
    waiting = 0
  }
  await send()
}
