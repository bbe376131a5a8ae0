/** Workbooks as other programs, damaged disks and people of ill will make them; built part by part. */
import JSZip from 'jszip'
import { workbook, type Sheet } from '../inventory/real/workbookFile'
import { workbookBytes } from '../inventory/real/workbookBytes'

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main'

/** A sheet's part with these rows, and what stands before and behind them. */
export const sheetPart = (rows: string, before = '', behind = '') =>
  `<worksheet xmlns="${main}">${before}<sheetData>${rows}</sheetData>${behind}</worksheet>`

/** Looks by their number formats, in order; the first is the plain one. */
export function stylesPart(...formats: (string | number)[]): string {
  const own = formats.flatMap((format, at) =>
    typeof format === 'string' ? `<numFmt numFmtId="${String(164 + at)}" formatCode="${format}"/>` : []
  )
  const looks = formats.map(
    (format, at) => `<xf numFmtId="${String(typeof format === 'string' ? 164 + at : format)}" fontId="0"/>`
  )
  return `<styleSheet xmlns="${main}"><numFmts>${own.join('')}</numFmts><cellStyleXfs><xf numFmtId="9"/></cellStyleXfs><cellXfs><xf numFmtId="0"/>${looks.join('')}</cellXfs></styleSheet>`
}

const survey: Sheet = {
  name: 'Survey',
  rows: `
Tree | Height (ft) | Crown base (ft) | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
T1 | 30 | 6 | A | 4.1 | 5 | 7 | 28`
}

/** A workbook of an invented survey of one limb, some of its parts replaced, others left out (null). */
export async function oddWorkbook(
  parts: Readonly<Record<string, string | Uint8Array | null>> = {},
  sheets: readonly Sheet[] = [survey]
): Promise<Uint8Array> {
  const zip = await JSZip.loadAsync(await workbookBytes(workbook(sheets)))
  for (const [name, content] of Object.entries(parts)) {
    if (content === null) zip.remove(name)
    else zip.file(name, content, { createFolders: false })
  }
  return zip.generateAsync({ type: 'uint8array', compression: 'DEFLATE' })
}

/** The XML of the first sheet. */
export async function sheetText(bytes: Uint8Array): Promise<string> {
  const zip = await JSZip.loadAsync(bytes)
  return (await zip.file('xl/worksheets/sheet1.xml')?.async('string')) ?? ''
}

/** The same zip whose directory gives this size, in bytes, for every part that unpacks to more than some. */
export function withStatedSize(bytes: Uint8Array, stated: number, moreThan: number): Uint8Array {
  const lying = Uint8Array.from(bytes)
  const view = new DataView(lying.buffer)
  // APPNOTE.TXT 4.3.12, from memory: the directory's entries begin with PK 1 2, the size unpacked stands at 24.
  for (let at = 0; at + 46 < lying.length; at++)
    if (view.getUint32(at, true) === 0x02014b50 && view.getUint32(at + 24, true) > moreThan)
      view.setUint32(at + 24, stated, true)
  return lying
}

/** The container of encrypted and older workbooks, with one stream's name in it. */
export function compoundFile(stream: string): Uint8Array {
  const name = Buffer.from(stream, 'utf16le')
  const signature = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]
  return Uint8Array.from([...signature, ...new Array<number>(1024).fill(0), ...name, 0, 0])
}
