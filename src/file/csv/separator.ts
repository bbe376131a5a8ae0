import type { Cell } from '../../../shared/cells'
import { isTooLarge, recordsOf } from './records'

/** In the order in which equal claims are settled: a comma also stands before decimals and in notes. */
const separators = ['\t', ';', '|', ','] as const

/** Records and characters that the separator is judged by. */
const judgedRecords = 30
const judgedCharacters = 65_536

/**
 * How well a separator divides these records: how many have the number of cells that is the most usual among them, times
 * the root of that number, so that ten cells a line weigh more than the two that a comma in a note makes (house judgment).
 * Where every line is divided alike, and it is no comma, nothing else is meant: commas may then stand before decimals.
 */
function claimOf(records: readonly (readonly Cell[])[], separator: string): number {
  const filled = records.filter((cells) => cells.some((cell) => cell !== ''))
  const counts = new Map<number, number>()
  for (const { length } of filled) if (length > 1) counts.set(length, (counts.get(length) ?? 0) + 1)
  const claims = [...counts].map(([cells, times]) =>
    times === filled.length && times > 1 && separator !== ',' ? Infinity : times * Math.sqrt(cells)
  )
  return Math.max(0, ...claims)
}

/** The separator that a first line such as "sep=;" names, or null. */
export function namedSeparator(text: string): { separator: string; after: number } | null {
  const line = /^"?sep=([^\r\n"])"?[ \t]*(?:\r\n|\r|\n|$)/i.exec(text)
  return line?.[1] === undefined ? null : { separator: line[1], after: line[0].length }
}

/** Comma, semicolon, tab or bar: whichever divides the first records most evenly; titles and blank lines have no say. */
export function separatorOf(text: string): string {
  const sample = text.slice(0, judgedCharacters)
  const claims = separators.map((separator) => {
    const records = recordsOf(sample, separator, { most: judgedRecords })
    if (isTooLarge(records)) return 0
    // The last one is cut off where the sample ends.
    const cut = sample.length < text.length && records.length > 1 && records.length < judgedRecords
    return claimOf(cut ? records.slice(0, -1) : records, separator)
  })
  const best = Math.max(...claims)
  return best === 0 ? ',' : (separators[claims.indexOf(best)] ?? ',')
}
