import { listed } from './lists'
import { counted } from './counts'

/** Runs of rows that a sentence names. */
const named = 8

/** Rows of a sheet as a sentence names them, given counted from 1 and rising: "row 4", "rows 3, 5 to 7 and 12". */
export function namedRows(rows: readonly number[]): string {
  const runs: { from: number; to: number }[] = []
  for (const row of rows) {
    const last = runs.at(-1)
    if (last !== undefined && row === last.to + 1) last.to = row
    else runs.push({ from: row, to: row })
  }
  const shown = runs.slice(0, named)
  const texts = shown.map(({ from, to }) => (to > from ? `${from} to ${to}` : String(from)))
  const left = runs.slice(named).reduce((sum, { from, to }) => sum + to - from + 1, 0)
  if (left > 0) texts.push(`${counted(left, 'more', 'more')} up to ${rows.at(-1) ?? 0}`)
  return `${rows.length === 1 ? 'row' : 'rows'} ${listed(texts)}`
}
