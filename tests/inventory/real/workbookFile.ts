import JSZip from 'jszip'

/**
 * Workbooks as other programs write them (ECMA-376 part 1, SpreadsheetML), described as text and built here by hand, so
 * that the file library which reads them has not written them.
 *
 * A line a row, cells between bars. A cell is empty, a number, or a text; `'12` is the text 12, `=A1*2 => 7.5` a formula
 * with the result its program last saw, `@2027-03-02` a day, `0.05 as 0%` a number under a number format, and `\n` in a
 * text a line break.
 */
export interface Sheet {
  name: string
  rows: string
  /** `A2:A5` */
  merges?: readonly string[]
  /** Row numbers, from 1. */
  hiddenRows?: readonly number[]
  /** Column letters. */
  hiddenColumns?: readonly string[]
  /** A table over this range, its last row a row of totals if said. */
  table?: { range: string; totals?: boolean }
  hidden?: boolean
}

export interface Workbook {
  kind: 'xlsx'
  sheets: readonly Sheet[]
  /** Texts in the cells themselves, as several exporters write them, or in the shared list, as spreadsheets do. */
  texts: 'inline' | 'shared'
}

export function workbook(sheets: readonly Sheet[], texts: Workbook['texts'] = 'shared'): Workbook {
  return { kind: 'xlsx', sheets, texts }
}

const xml = (text: string) =>
  text.replace(/[&<>"]/g, (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign] ?? sign)

/** 0 gives A, 26 gives AA. */
export const letters = (column: number): string =>
  (column >= 26 ? letters(Math.floor(column / 26) - 1) : '') + String.fromCharCode(65 + (column % 26))

/** A gives 0, AA gives 26. */
export const columnIndex = (name: string): number =>
  [...name].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1

/** Days since 1899-12-30, as spreadsheets count them. */
const serial = (day: string) => (Date.parse(`${day}T00:00:00Z`) - Date.UTC(1899, 11, 30)) / 86_400_000

const numeric = /^-?\d+(\.\d+)?$/

/** Styles and texts of one workbook, numbered as they are met. */
class Lists {
  readonly texts: string[] = []
  readonly formats = ['General', 'yyyy-mm-dd']
  constructor(readonly inline: boolean) {}

  private at(list: string[], entry: string): number {
    const found = list.indexOf(entry)
    return found === -1 ? list.push(entry) - 1 : found
  }
  text(address: string, text: string): string {
    if (this.inline)
      return `<c r="${address}" t="inlineStr"><is><t xml:space="preserve">${xml(text)}</t></is></c>`
    return `<c r="${address}" t="s"><v>${String(this.at(this.texts, text))}</v></c>`
  }
  format(code: string): number {
    return this.at(this.formats, code)
  }
}

function cellXml(address: string, source: string, lists: Lists): string {
  if (source === '') return ''
  const formula = /^=(.*) => (.*)$/.exec(source)
  if (formula?.[1] !== undefined && formula[2] !== undefined) {
    const kind = numeric.test(formula[2]) ? '' : ' t="str"'
    return `<c r="${address}"${kind}><f>${xml(formula[1])}</f><v>${xml(formula[2])}</v></c>`
  }
  if (/^@\d{4}-\d\d-\d\d$/.test(source))
    return `<c r="${address}" s="1"><v>${String(serial(source.slice(1)))}</v></c>`
  const formatted = /^(-?\d+(?:\.\d+)?) as (.+)$/.exec(source)
  if (formatted?.[1] !== undefined && formatted[2] !== undefined)
    return `<c r="${address}" s="${String(lists.format(formatted[2]))}"><v>${formatted[1]}</v></c>`
  if (numeric.test(source)) return `<c r="${address}"><v>${source}</v></c>`
  return lists.text(address, source.replace(/^'/, '').replaceAll('\\n', '\n'))
}

/** The cells' sources of a sheet, row by row. */
export function sheetSources({ rows }: Sheet): string[][] {
  return rows
    .replace(/^\n|\n$/g, '')
    .split('\n')
    .map((line) => line.split('|').map((cell) => cell.trim()))
}

function sheetXml(sheet: Sheet, lists: Lists): string {
  const rows = sheetSources(sheet).map((cells, row) => {
    const inside = cells.map((cell, column) => cellXml(letters(column) + String(row + 1), cell, lists))
    const hidden = sheet.hiddenRows?.includes(row + 1) === true ? ' hidden="1"' : ''
    return `<row r="${String(row + 1)}"${hidden}>${inside.join('')}</row>`
  })
  const columns = (sheet.hiddenColumns ?? []).map((name) => {
    const at = String(columnIndex(name) + 1)
    return `<col min="${at}" max="${at}" width="9" hidden="1" customWidth="1"/>`
  })
  const merges = (sheet.merges ?? []).map((range) => `<mergeCell ref="${range}"/>`)
  return [
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>',
    '<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships">',
    columns.length > 0 ? `<cols>${columns.join('')}</cols>` : '',
    `<sheetData>${rows.join('')}</sheetData>`,
    merges.length > 0 ? `<mergeCells count="${String(merges.length)}">${merges.join('')}</mergeCells>` : '',
    sheet.table === undefined ? '' : '<tableParts count="1"><tablePart r:id="rId1"/></tableParts>',
    '</worksheet>'
  ].join('')
}

function tableXml(sheet: Sheet, range: string, totals: boolean, number: number): string {
  const [, left, top, right, bottom] = /^([A-Z]+)(\d+):([A-Z]+)(\d+)$/.exec(range) ?? []
  if (left === undefined || top === undefined || right === undefined || bottom === undefined)
    throw new Error(`No range: ${range}`)
  const names = sheetSources(sheet)[Number(top) - 1]?.slice(columnIndex(left), columnIndex(right) + 1) ?? []
  const columns = names.map((name, at) => `<tableColumn id="${String(at + 1)}" name="${xml(name)}"/>`)
  const filter = `<autoFilter ref="${left}${top}:${right}${String(Number(bottom) - (totals ? 1 : 0))}"/>`
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?><table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="${String(number)}" name="Table${String(number)}" displayName="Table${String(number)}" ref="${range}" totalsRowCount="${totals ? '1' : '0'}">${filter}<tableColumns count="${String(columns.length)}">${columns.join('')}</tableColumns></table>`
}

const relationship = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships'
const relationships = (inside: string) =>
  `<?xml version="1.0" encoding="UTF-8" standalone="yes"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${inside}</Relationships>`
const related = (id: string, kind: string, target: string) =>
  `<Relationship Id="${id}" Type="${relationship}/${kind}" Target="${target}"/>`

function stylesXml(formats: readonly string[]): string {
  const codes = formats.map(
    (code, at) => `<numFmt numFmtId="${String(164 + at)}" formatCode="${xml(code)}"/>`
  )
  const cells = formats.map(
    (_code, at) =>
      `<xf numFmtId="${String(at === 0 ? 0 : 164 + at)}" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/>`
  )
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?><styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><numFmts count="${String(codes.length)}">${codes.join('')}</numFmts><fonts count="1"><font><sz val="11"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="${String(cells.length)}">${cells.join('')}</cellXfs></styleSheet>`
}

const part = (name: string, kind: string) =>
  `<Override PartName="/xl/${name}" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.${kind}+xml"/>`

/** The bytes of an .xlsx. */
export async function workbookBytes({ sheets, texts }: Workbook): Promise<Uint8Array> {
  const zip = new JSZip()
  const lists = new Lists(texts === 'inline')
  const parts = [part('workbook.xml', 'sheet.main'), part('styles.xml', 'styles')]
  const related1: string[] = []
  sheets.forEach((sheet, at) => {
    const number = String(at + 1)
    zip.file(`xl/worksheets/sheet${number}.xml`, sheetXml(sheet, lists))
    parts.push(part(`worksheets/sheet${number}.xml`, 'worksheet'))
    related1.push(related(`rId${number}`, 'worksheet', `worksheets/sheet${number}.xml`))
    if (sheet.table === undefined) return
    const { range, totals = false } = sheet.table
    zip.file(`xl/tables/table${number}.xml`, tableXml(sheet, range, totals, at + 1))
    zip.file(
      `xl/worksheets/_rels/sheet${number}.xml.rels`,
      relationships(related('rId1', 'table', `../tables/table${number}.xml`))
    )
    parts.push(part(`tables/table${number}.xml`, 'table'))
  })
  related1.push(related('rIdStyles', 'styles', 'styles.xml'))
  if (!lists.inline) {
    const items = lists.texts.map((text) => `<si><t xml:space="preserve">${xml(text)}</t></si>`)
    zip.file(
      'xl/sharedStrings.xml',
      `<?xml version="1.0" encoding="UTF-8" standalone="yes"?><sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" uniqueCount="${String(items.length)}">${items.join('')}</sst>`
    )
    parts.push(part('sharedStrings.xml', 'sharedStrings'))
    related1.push(related('rIdTexts', 'sharedStrings', 'sharedStrings.xml'))
  }
  const names = sheets.map(
    ({ name, hidden }, at) =>
      `<sheet name="${xml(name)}" sheetId="${String(at + 1)}"${hidden === true ? ' state="hidden"' : ''} r:id="rId${String(at + 1)}"/>`
  )
  zip.file('xl/styles.xml', stylesXml(lists.formats))
  zip.file(
    'xl/workbook.xml',
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?><workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="${relationship}"><sheets>${names.join('')}</sheets></workbook>`
  )
  zip.file('xl/_rels/workbook.xml.rels', relationships(related1.join('')))
  zip.file('_rels/.rels', relationships(related('rId1', 'officeDocument', 'xl/workbook.xml')))
  zip.file(
    '[Content_Types].xml',
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>${parts.join('')}</Types>`
  )
  return zip.generateAsync({ type: 'uint8array' })
}
