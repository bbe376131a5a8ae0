/**
 * A reader of written .xlsx files that shares no code with the product: it unzips, parses the XML, and gives what a
 * person who opens the file would see. The places in the file are those of ECMA-376 part 1 (SpreadsheetML).
 */
import JSZip from 'jszip'
import type * as jsdom from 'jsdom'

/** One cell that holds something. */
export interface WrittenCell {
  readonly address: string
  readonly row: number
  /** Letters of its column. */
  readonly column: string
  readonly text: string | null
  readonly number: number | null
  readonly formula: string | null
  /** The number as the cell's format shows it, or the text. */
  readonly shown: string
}

export interface WrittenSheet {
  readonly name: string
  readonly cells: readonly WrittenCell[]
  at(address: string): WrittenCell | undefined
  /** Alternative texts of its pictures and charts. */
  readonly altTexts: readonly string[]
}

export interface WrittenFile {
  readonly sheets: readonly WrittenSheet[]
  sheet(name: string): WrittenSheet
  /** Every text and attribute of every part that could meet an eye, and the numbers that charts keep. */
  readonly everything: readonly { readonly part: string; readonly value: string }[]
  /** Numbers in the caches of charts, as they are spelled. */
  readonly chartNumbers: readonly string[]
  /** Cells that hold an error or no number of this world, and parts that are no XML. */
  readonly faults: readonly string[]
}

let known: DOMParser | null = null

/** The parser, loaded when the first file is read: it takes a second, and not every test opens a file. */
function parser(): DOMParser {
  if (known !== null) return known
  const { JSDOM } = jest.requireActual<typeof jsdom>('jsdom')
  return (known = new new JSDOM('').window.DOMParser())
}

function parse(part: string, xml: string): Document {
  const document = parser().parseFromString(xml, 'application/xml')
  const fault = document.getElementsByTagName('parsererror')[0]
  if (fault !== undefined) throw new Error(`${part} is not well-formed XML: ${String(fault.textContent)}`)
  return document
}

/** Every element of a name below another, in the order of the document. */
function all(from: Document | Element, name: string): Element[] {
  const found: Element[] = []
  for (let each = from.firstElementChild; each !== null; each = each.nextElementSibling) {
    if (each.localName === name) found.push(each)
    found.push(...all(each, name))
  }
  return found
}
const children = (from: Element, name: string): Element[] =>
  [...from.children].filter(({ localName }) => localName === name)

/** Number formats by the index that a cell gives: built-in numbers are those of ECMA-376 part 1, 18.8.30. */
function formatsOf(styles: Document): string[] {
  const builtIn: Record<string, string> = { 0: 'General', 1: '0', 2: '0.00', 3: '#,##0', 4: '#,##0.00' }
  Object.assign(builtIn, { 9: '0%', 10: '0.00%', 14: 'yyyy-mm-dd' })
  const own = all(styles, 'numFmt').map((each) => [
    each.getAttribute('numFmtId'),
    each.getAttribute('formatCode')
  ])
  const codes: Record<string, string> = { ...builtIn, ...(Object.fromEntries(own) as Record<string, string>) }
  const looks = all(styles, 'cellXfs')[0]
  return looks === undefined
    ? []
    : children(looks, 'xf').map((each) => codes[each.getAttribute('numFmtId') ?? '0'] ?? 'General')
}

/** The section of a format that a number takes: conditions in brackets first, then by sign. */
function sectionFor(value: number, format: string): string {
  const sections = format.split(';')
  for (const section of sections) {
    const condition = /^\[(=|<|>|<=|>=|<>)(-?[\d.]+)\]/.exec(section)
    if (condition === null) continue
    const limit = Number(condition[2])
    const holds: Record<string, boolean> = {
      '=': value === limit,
      '<': value < limit,
      '>': value > limit,
      '<=': value <= limit,
      '>=': value >= limit,
      '<>': value !== limit
    }
    if (holds[condition[1]!] === true) return section.slice(condition[0].length)
  }
  const plain = sections.filter((section) => !section.startsWith('['))
  if (sections.length > plain.length) return plain.at(-1) ?? 'General'
  return (value < 0 ? plain[1] : value === 0 ? plain[2] : undefined) ?? plain[0] ?? 'General'
}

/** A spreadsheet rounds half away from zero, by the number's shortest decimal spelling. */
function fixed(value: number, digits: number): string {
  const shifted = Number(`${value.toPrecision(15)}e${String(digits)}`)
  const rounded = Math.sign(shifted) * Math.round(Math.abs(shifted))
  return (rounded / 10 ** digits).toFixed(digits)
}

/** A number as a format shows it: the digits, a thousands mark where asked, and % with a space before it. */
export function shownNumber(value: number, format: string): string {
  const section = sectionFor(value, format).replace(/"([^"]*)"/g, '')
  if (section === 'General' || !/[0#]/.test(section)) return String(value)
  const percent = section.includes('%')
  const digits = /\.(0+)/.exec(section)?.[1]?.length ?? 0
  const text = fixed(percent ? Number(`${value.toPrecision(15)}e2`) : value, digits)
  return percent ? `${text} %` : text
}

const unescaped = (text: string): string =>
  text.replace(
    /&(lt|gt|quot|apos|amp);/g,
    (_all, name: string) => ({ lt: '<', gt: '>', quot: '"', apos: "'", amp: '&' })[name]!
  )

/** Whether a part holds a character that XML 1.0 has no room for (section 2.2), spelled out or by its number. */
function holdsForbidden(xml: string): boolean {
  const barred = (code: number) =>
    (code < 32 && ![9, 10, 13].includes(code)) || code === 0xfffe || code === 0xffff
  for (let index = 0; index < xml.length; index++) if (barred(xml.charCodeAt(index))) return true
  return [...xml.matchAll(/&#(x?)([\da-f]+);/gi)].some(([, hex, digits]) =>
    barred(Number.parseInt(digits!, hex === '' ? 10 : 16))
  )
}

/** What is wrong with the cells of a sheet, seen in its raw text, so that every sheet of every file can be looked at. */
function faultyCells(name: string, xml: string): string[] {
  return [...xml.matchAll(/<c ([^>]*?)(?:\/>|>(.*?)<\/c>)/gs)].flatMap(([, attributes = '', inner = '']) => {
    const where = `${name}!${/\br="([^"]*)"/.exec(attributes)?.[1] ?? '?'}`
    const kind = /\bt="([^"]*)"/.exec(attributes)?.[1] ?? 'n'
    const value = /<v>(.*?)<\/v>/s.exec(inner)?.[1]
    if (kind === 'e') return [`${where} holds the error ${String(value)}`]
    if (kind !== 'n' || value === undefined) return []
    const sound = value !== '' && Number.isFinite(Number(value)) && !Object.is(Number(value), -0)
    return sound ? [] : [`${where} holds “${value}” where a number belongs`]
  })
}

function readCells(
  part: string,
  xml: string,
  strings: readonly string[],
  formats: readonly string[]
): WrittenCell[] {
  return all(parse(part, xml), 'c').flatMap((cell): WrittenCell[] => {
    const address = cell.getAttribute('r') ?? ''
    const kind = cell.getAttribute('t')
    const value = children(cell, 'v')[0]?.textContent ?? null
    const inline = children(cell, 'is')[0]?.textContent ?? null
    const formula = children(cell, 'f')[0]?.textContent ?? null
    if (value === null && inline === null && formula === null) return []
    const text =
      kind === 's' ? strings[Number(value)]! : kind === 'inlineStr' ? inline : kind === 'str' ? value : null
    const number = text !== null || value === null || kind === 'b' ? null : Number(value)
    const format = formats[Number(cell.getAttribute('s') ?? 0)] ?? 'General'
    const shown = text ?? (number === null ? (value ?? '') : shownNumber(number, format))
    const [, column = '', row = ''] = /^([A-Z]+)(\d+)$/.exec(address) ?? []
    return [{ address, row: Number(row), column, text, number, formula, shown }]
  })
}

/** Reads a written file. What is wrong with its cells is told; its sheets are parsed when they are first asked for. */
export async function readWritten(bytes: Uint8Array): Promise<WrittenFile> {
  const zip = await JSZip.loadAsync(bytes)
  const parts = new Map<string, string>()
  const names = Object.keys(zip.files).filter((name) => /\.(xml|rels)$/.test(name))
  for (const name of names) parts.set(name, await zip.files[name]!.async('string'))
  const read = (part: string) => parse(part, parts.get(part) ?? '')
  const strings = parts.has('xl/sharedStrings.xml')
    ? all(read('xl/sharedStrings.xml'), 'si').map((each) => each.textContent ?? '')
    : []
  let styles: readonly string[] | null = null
  const formats = () => (styles ??= formatsOf(read('xl/styles.xml')))
  const targets = new Map(
    all(read('xl/_rels/workbook.xml.rels'), 'Relationship').map((each) => [
      each.getAttribute('Id'),
      each.getAttribute('Target')
    ])
  )
  const faults: string[] = []
  const sheets = all(read('xl/workbook.xml'), 'sheet').map((sheet): WrittenSheet => {
    const name = sheet.getAttribute('name') ?? ''
    const target = String(targets.get(sheet.getAttribute('r:id'))).replace(/^\/?(xl\/)?/, '')
    const part = `xl/${target}`
    const xml = parts.get(part) ?? ''
    faults.push(...faultyCells(name, xml))
    let known: WrittenCell[] | null = null
    let byAddress: Map<string, WrittenCell> | null = null
    const cells = () => (known ??= readCells(part, xml, strings, formats()))
    const relations = parts.get(part.replace('worksheets/', 'worksheets/_rels/') + '.rels') ?? ''
    const drawing = /drawings\/drawing\d+\.xml/.exec(relations)?.[0]
    const xmlDrawing = drawing === undefined ? '' : (parts.get(`xl/${drawing}`) ?? '')
    const altTexts = [...xmlDrawing.matchAll(/<xdr:cNvPr [^>]*?descr="([^"]*)"/g)].map((each) =>
      unescaped(each[1]!)
    )
    return {
      name,
      get cells() {
        return cells()
      },
      at(address) {
        byAddress ??= new Map(cells().map((cell) => [cell.address, cell]))
        return byAddress.get(address)
      },
      altTexts
    }
  })
  const everything: { part: string; value: string }[] = []
  const chartNumbers: string[] = []
  for (const [part, xml] of parts) {
    if (holdsForbidden(xml)) faults.push(`${part} holds a character that XML has no room for`)
    for (const [, value] of xml.matchAll(/>([^<]+)</g)) everything.push({ part, value: unescaped(value!) })
    for (const [, value] of xml.matchAll(/="([^"]*)"/g)) everything.push({ part, value: unescaped(value!) })
    if (!part.startsWith('xl/charts/chart')) continue
    for (const [, cache] of xml.matchAll(/<c:numCache>(.*?)<\/c:numCache>/gs))
      for (const [, value] of cache!.matchAll(/<c:v>([^<]*)<\/c:v>/g)) chartNumbers.push(value!)
  }
  const sheet = (name: string): WrittenSheet => {
    const found = sheets.find((each) => each.name === name)
    if (found === undefined) throw new Error(`The file has no sheet ${name}`)
    return found
  }
  return { sheets, sheet, everything, chartNumbers, faults }
}
