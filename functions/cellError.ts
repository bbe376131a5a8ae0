import type { Refusal } from '../shared/refusal'

/** The two errors a cell may show: only these carry a sentence in the spreadsheet. */
const codes = { wrong: '#VALUE!', missing: '#N/A' } as const

/**
 * The error that a single cell shows, with its sentence. Outside a spreadsheet, where nothing provides
 * `CustomFunctions`, an ordinary Error carries the same code and message.
 */
export function cellError({ refusal, sentence }: Refusal): Error {
  if (typeof CustomFunctions === 'undefined')
    return Object.assign(new Error(sentence), { code: codes[refusal] })
  const { invalidValue, notAvailable } = CustomFunctions.ErrorCode
  return new CustomFunctions.Error(
    refusal === 'missing' ? notAvailable : invalidValue,
    sentence
  ) as unknown as Error
}

/** How a text that stands in for a value begins, so that it can be found and counted in a column. */
export const noticeMark = '! '

/** The text that stands in a spilled cell where no value can be given. */
export function notice({ sentence }: Refusal): string {
  return noticeMark + sentence
}

/** A notice from another cell of ours, which passes through unchanged. */
export function isNotice(cell: unknown): cell is string {
  return typeof cell === 'string' && cell.startsWith(noticeMark)
}
