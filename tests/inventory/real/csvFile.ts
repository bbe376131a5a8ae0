export type Encoding = 'utf-8' | 'utf-8-bom' | 'utf-16le' | 'utf-16be' | 'windows-1252'

/** A text file of separated values as it lies on the disk. */
export interface CsvFile {
  kind: 'csv'
  text: string
  encoding: Encoding
}

interface Options {
  encoding?: Encoding
  newline?: '\n' | '\r\n' | '\r'
}

/** A .csv: its lines as written (a leading line break is not part of it), encoded as its program did. */
export function csv(lines: string, { encoding = 'utf-8', newline = '\n' }: Options = {}): CsvFile {
  return { kind: 'csv', text: lines.replace(/^\n/, '').replaceAll('\n', newline), encoding }
}

/** What Windows-1252 has between 0x80 and 0x9F (WHATWG Encoding Standard, index windows-1252). */
const windows: Readonly<Record<string, number>> = {
  '€': 0x80,
  '‚': 0x82,
  '„': 0x84,
  '…': 0x85,
  '‘': 0x91,
  '’': 0x92,
  '“': 0x93,
  '”': 0x94,
  '•': 0x95,
  '–': 0x96,
  '—': 0x97
}

function windowsByte(letter: string): number {
  const byte = windows[letter] ?? letter.charCodeAt(0)
  if (byte > 0xff) throw new Error(`Windows-1252 has no ${letter}`)
  return byte
}

/** The bytes of a .csv. */
export function csvBytes({ text, encoding }: CsvFile): Uint8Array {
  if (encoding === 'windows-1252') return Uint8Array.from([...text].map(windowsByte))
  if (encoding === 'utf-8') return Buffer.from(text, 'utf8')
  if (encoding === 'utf-8-bom') return Buffer.from(`\ufeff${text}`, 'utf8')
  const bytes = Buffer.from(`\ufeff${text}`, 'utf16le')
  return encoding === 'utf-16le' ? bytes : bytes.swap16()
}
