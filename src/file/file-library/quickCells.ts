/**
 * Workbooks of plain cells: the file library writes all of the file but the cells, which are put in afterward. It numbers the
 * looks: it gets each once, on a cell of the first sheet, and its numbers are read there.
 */
import type JSZip from 'jszip'
import { areaOf } from '../../../shared/cells'
import { sharedTextsXml, sheetDataXml, type SharedOfBook } from './cellsXml'
import type { BookSheet, FileCell } from './fileBook'
import type { FileStyle } from './fileStyle'
import { partOf, type Parts } from './packedParts'
import { attributeOf, tagsOf } from './xmlText'

/** A value, a formula and a look, and nothing else. */
function isPlain({ formulaType, formulaDynamic, hyperlink, comment, richText }: Partial<FileCell>): boolean {
  return (
    (formulaType ?? hyperlink ?? comment) === undefined &&
    formulaDynamic !== true &&
    (richText?.length ?? 1) === 1
  )
}

/** Whether all sheets of a workbook hold plain cells, and nothing that came from an opened file. */
export function hasPlainCells(sheets: readonly BookSheet[]): boolean {
  return sheets.every(({ kept, looks, cells = new Map<string, FileCell>() }) => {
    if (looks !== undefined) return true
    if (kept !== undefined) return false
    for (const cell of cells.values()) if (!isPlain(cell)) return false
    return true
  })
}

/** Every look of the sheets once; looks that are equal and not one may stand twice. */
function looksOf(sheets: readonly BookSheet[]): FileStyle[] {
  const looks = new Set<FileStyle>()
  for (const { cells, columns = [], looks: byRow = [] } of sheets) {
    for (const row of new Set(byRow)) for (const { style } of row) if (style !== undefined) looks.add(style)
    for (const { style } of columns) if (style !== undefined) looks.add(style)
    for (const { style } of cells?.values() ?? []) if (style !== undefined) looks.add(style)
  }
  return [...looks]
}

/** The sheets without their cells; on the first stand a text, so that the file has a part for texts, and the looks. */
export function withoutCells(sheets: readonly BookSheet[]): { looks: FileStyle[]; bare: BookSheet[] } {
  const looks = looksOf(sheets)
  const cells = new Map(looks.map((style, at) => [`${String(at + 1)},0`, { value: null, style }] as const))
  const bare = sheets.map((sheet, at) => ({
    ...sheet,
    rows: at === 0 ? [['']] : [],
    cells: at === 0 ? cells : new Map()
  }))
  return { looks, bare }
}

/** The number of each look, as the cells of the first sheet bear it; a cell without one has the look of the file. */
function numbered(looks: readonly FileStyle[], sheet: string): SharedOfBook['numberOf'] {
  const numbers = new Map<string, number>()
  for (const tag of tagsOf(sheet, 'c'))
    numbers.set(attributeOf(tag, 'r') ?? '', Number(attributeOf(tag, 's') ?? 0))
  const known = new Map(looks.map((look, at) => [look, numbers.get(`A${String(at + 2)}`) ?? 0]))
  return (style) => (style === undefined ? 0 : (known.get(style) ?? 0))
}

const sheetPart = (at: number): string => `xl/worksheets/sheet${String(at + 1)}.xml`

/** The file library knows no number of a first page. */
function withFirstPage(xml: string, { page: { firstPageNumber } }: BookSheet): string {
  if (firstPageNumber === undefined) return xml
  const number = `firstPageNumber="${String(firstPageNumber)}" useFirstPageNumber="1"`
  return xml.replace('<pageSetup ', `<pageSetup ${number} `)
}

/** The cells' parts of a packed file whose sheets were written without them. */
export async function cellParts(
  zip: JSZip,
  sheets: readonly BookSheet[],
  looks: readonly FileStyle[]
): Promise<Parts> {
  const written = await Promise.all(sheets.map((_, at) => partOf(zip, sheetPart(at))))
  const shared = { numberOf: numbered(looks, written[0] ?? ''), texts: new Map<string, number>() }
  const parts = new Map<string, string>()
  sheets.forEach((sheet, at) => {
    const { xml, area } = sheetDataXml(sheet, shared)
    const [before = '', after = ''] = (written[at] ?? '').split(/<sheetData\/>|<sheetData>.*<\/sheetData>/s)
    const measured = before.replace(/<dimension [^>]*\/>/, `<dimension ref="${areaOf(area)}"/>`)
    parts.set(sheetPart(at), measured + xml + withFirstPage(after, sheet))
  })
  parts.set('xl/sharedStrings.xml', sharedTextsXml(shared.texts))
  return parts
}
