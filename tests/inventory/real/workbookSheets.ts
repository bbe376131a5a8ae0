import { columnIndex, letters, sheetSources, type Sheet } from './workbookFile'

export const xml = (text: string) =>
  text.replace(/[&<>"]/g, (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign] ?? sign)

/** Days since 1899-12-30, as spreadsheets count them. */
const serial = (day: string) => (Date.parse(`${day}T00:00:00Z`) - Date.UTC(1899, 11, 30)) / 86_400_000

const numeric = /^-?\d+(\.\d+)?$/

/** Styles and texts of one workbook, numbered as they are met. */
export class Lists {
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
    const kind = numeric.test(formula[2]) ? '' : formula[2].startsWith('#') ? ' t="e"' : ' t="str"'
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

export function sheetXml(sheet: Sheet, lists: Lists): string {
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

export function tableXml(sheet: Sheet, range: string, totals: boolean, number: number): string {
  const [, left, top, right, bottom] = /^([A-Z]+)(\d+):([A-Z]+)(\d+)$/.exec(range) ?? []
  if (left === undefined || top === undefined || right === undefined || bottom === undefined)
    throw new Error(`No range: ${range}`)
  const names = sheetSources(sheet)[Number(top) - 1]?.slice(columnIndex(left), columnIndex(right) + 1) ?? []
  const columns = names.map((name, at) => `<tableColumn id="${String(at + 1)}" name="${xml(name)}"/>`)
  const filter = `<autoFilter ref="${left}${top}:${right}${String(Number(bottom) - (totals ? 1 : 0))}"/>`
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?><table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="${String(number)}" name="Table${String(number)}" displayName="Table${String(number)}" ref="${range}" totalsRowCount="${totals ? '1' : '0'}">${filter}<tableColumns count="${String(columns.length)}">${columns.join('')}</tableColumns></table>`
}
