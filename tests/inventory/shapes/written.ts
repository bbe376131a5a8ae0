/** A sheet as a file of separated values: any separator, encoding, line end and sign before decimals. */
import fc from 'fast-check'
import type { Cell } from '../../../shared/cells'
import { csvBytes, type Encoding } from '../real/csvFile'
import { inText, type ShapeSheet } from './shape'

export interface Writing {
  readonly separator: ',' | ';' | '\t' | '|'
  readonly encoding: Encoding
  /** UTF-16 without the mark that tells it. */
  readonly markless: boolean
  readonly newline: '\n' | '\r\n' | '\r'
  readonly decimal: '.' | ','
  readonly quotes: 'needed' | 'all'
  /** Short lines are filled up with empty cells, as a spreadsheet saves them. */
  readonly filled: boolean
}

export const writings: fc.Arbitrary<Writing> = fc.record({
  separator: fc.constantFrom<Writing['separator']>(',', ';', '\t', '|'),
  encoding: fc.constantFrom<Encoding>('utf-8', 'utf-8-bom', 'utf-16le', 'utf-16be', 'windows-1252'),
  markless: fc.boolean(),
  newline: fc.constantFrom<Writing['newline']>('\n', '\r\n', '\r'),
  decimal: fc.constantFrom<Writing['decimal']>('.', ','),
  quotes: fc.constantFrom<Writing['quotes']>('needed', 'needed', 'all'),
  filled: fc.boolean()
})

function cellText(cell: Cell, { separator, decimal, quotes }: Writing): string {
  if (cell === null) return ''
  const text = typeof cell === 'number' ? inText(cell).replace('.', decimal) : String(cell)
  const needed = text.includes(separator) || /["\n\r]/.test(text)
  return needed || quotes === 'all' ? `"${text.replaceAll('"', '""')}"` : text
}

/** The bytes of the file; in UTF-8 where the encoding lacks a letter of a header. */
export function fileBytes({ rows }: ShapeSheet, writing: Writing): Uint8Array {
  const width = Math.max(...rows.map(({ cells }) => cells.length))
  const lines = rows.map(({ cells }) => {
    const all = writing.filled ? Array.from({ length: width }, (_none, at) => cells[at] ?? null) : cells
    return all.map((cell) => cellText(cell, writing)).join(writing.separator)
  })
  const text = lines.join(writing.newline)
  const { encoding } = writing
  const lacks = encoding === 'windows-1252' && !/^[\s\u0020-\u007e\u00a0-\u00ff€‚„…‘’“”•–—]*$/u.test(text)
  const bytes = csvBytes({ kind: 'csv', text, encoding: lacks ? 'utf-8' : encoding })
  return writing.markless && encoding.startsWith('utf-16') ? bytes.subarray(2) : bytes
}
