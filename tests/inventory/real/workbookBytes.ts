import JSZip from 'jszip'
import type { Workbook } from './workbookFile'
import { Lists, sheetXml, tableXml, xml } from './workbookSheets'

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
