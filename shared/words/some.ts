import { grouped } from './figures'
import { listed } from './lists'

/** How many of several are named before the rest is counted. */
const most = 3

/** The first of several, the rest counted: "A, B, C, D and 12 more". */
export function firstOf(words: readonly string[], named: number): string {
  if (words.length <= named) return listed(words)
  return listed([...words.slice(0, named), `${grouped(words.length - named)} more`])
}

/** The first few of several, the rest counted: "A, B, C and 12 more"; as many as four are all named. */
export function someOf(words: readonly string[]): string {
  return words.length <= most + 1 ? listed(words) : firstOf(words, most)
}

/** The first few of several different values: "A, B, C and others". */
export function valuesOf(words: readonly string[]): string {
  return words.length <= most ? listed(words) : listed([...words.slice(0, most), 'others'])
}

/** A run of rows as a sentence names it: "12", "12 and 13" as two, "14 to 16". */
function runWords([from, to]: readonly [number, number]): string[] {
  if (to <= from + 1) return from === to ? [String(from)] : [String(from), String(to)]
  return [`${String(from)} to ${String(to)}`]
}

/**
 * Rows by their numbers, runs drawn together: "row 12", "rows 12, 14 to 16 and 20", "rows 2, 4, 6 and 97 more up to row
 * 200". So many runs are named, and one more where it is the last.
 */
export function rowsNamed(rows: readonly number[], named = most): string {
  const sorted = [...new Set(rows)].sort((a, b) => a - b)
  if (sorted.length === 1) return `row ${String(sorted[0])}`
  const runs: [from: number, to: number][] = []
  for (const row of sorted) {
    const last = runs.at(-1)
    if (last?.[1] === row - 1) last[1] = row
    else runs.push([row, row])
  }
  if (runs.length <= named + 1) return `rows ${listed(runs.flatMap(runWords))}`
  const shown = runs.slice(0, named)
  const count = shown.reduce((sum, [from, to]) => sum + to - from + 1, 0)
  const rest = `${grouped(sorted.length - count)} more up to row ${String(sorted.at(-1))}`
  return `rows ${listed([...shown.flatMap(runWords), rest])}`
}
