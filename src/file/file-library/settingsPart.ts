/**
 * What the add-in keeps in a workbook, as a custom XML part of its file (ECMA-376 part 1, 15.2.5 and 22.5), which
 * spreadsheets carry along unread. The file library knows no such parts.
 */
import JSZip from 'jszip'
import { attributeOf, plainText } from './xmlText'

/** Texts by their keys. */
export type FileSettings = ReadonlyMap<string, string>

/** A part of other content is somebody else's. */
const namespace = 'urn:limbwright:settings'
/** Names our part among the custom parts of a workbook. */
const itemId = '{6B1D7B0E-52C4-4C6A-9C7B-3F0C1B9E7A41}'

const part = 'customXml/item1.xml'
const properties = 'customXml/itemProps1.xml'
const officeRelations = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships'
const declaration = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>'

/** Parts of a file that may be ours, by their names. */
export const maySettings = /^customXml\/item\d+\.xml$/i

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }

const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => escapes[sign] ?? sign)

function settingsXml(settings: FileSettings): string {
  const entries = [...settings].map(
    ([key, text]) => `<setting key="${escaped(key)}">${escaped(text)}</setting>`
  )
  return `${declaration}<settings xmlns="${namespace}">${entries.join('')}</settings>`
}

/** What a part holds; nothing where it is not ours. */
export function settingsIn(xml: string): FileSettings {
  const root = /<(?:\w+:)?settings\b[^>]*>/.exec(xml)?.[0] ?? ''
  const found = new Map<string, string>()
  if (!root.includes(`"${namespace}"`) && !root.includes(`'${namespace}'`)) return found
  for (const [, tag = '', text = ''] of xml.matchAll(/(<(?:\w+:)?setting\b[^>]*>)([^<]*)</g)) {
    const key = attributeOf(tag, 'key')
    if (key !== null) found.set(key, plainText(text))
  }
  return found
}

/** The settings in a packed file; for a file that is known to be a workbook. */
export async function settingsOf(file: Uint8Array): Promise<FileSettings> {
  const zip = await JSZip.loadAsync(file)
  const parts = await Promise.all(zip.file(maySettings).map((each) => each.async('string')))
  return new Map(parts.flatMap((xml) => [...settingsIn(xml)]))
}

/** A list of parts or relations with one entry more, before its end. */
function withEntry(xml: string, end: string, entry: string): string {
  const at = xml.lastIndexOf(end)
  if (at < 0) throw new Error(`The file has a part without ${end}.`)
  return xml.slice(0, at) + entry + xml.slice(at)
}

async function textOf(zip: JSZip, name: string): Promise<string> {
  const file = zip.file(name)
  if (file === null) throw new Error(`The file has no part ${name}.`)
  return file.async('string')
}

/** The packed file with these settings in it; the same where there are none. */
export async function withSettings(file: Uint8Array, settings: FileSettings): Promise<Uint8Array> {
  if (settings.size === 0) return file
  const zip = await JSZip.loadAsync(file)
  const [types, relations] = ['[Content_Types].xml', 'xl/_rels/workbook.xml.rels']
  const date = zip.file(types)?.date
  const put = (name: string, text: string): void => {
    zip.file(name, text, { createFolders: false, ...(date && { date }) })
  }
  put(part, settingsXml(settings))
  put(
    properties,
    `${declaration}<ds:datastoreItem ds:itemID="${itemId}" xmlns:ds="http://schemas.openxmlformats.org/officeDocument/2006/customXml"><ds:schemaRefs><ds:schemaRef ds:uri="${namespace}"/></ds:schemaRefs></ds:datastoreItem>`
  )
  put(
    'customXml/_rels/item1.xml.rels',
    `${declaration}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${officeRelations}/customXmlProps" Target="itemProps1.xml"/></Relationships>`
  )
  put(
    types,
    withEntry(
      await textOf(zip, types),
      '</Types>',
      `<Override PartName="/${properties}" ContentType="application/vnd.openxmlformats-officedocument.customXmlProperties+xml"/>`
    )
  )
  put(
    relations,
    withEntry(
      await textOf(zip, relations),
      '</Relationships>',
      `<Relationship Id="rIdSettings" Type="${officeRelations}/customXml" Target="../${part}"/>`
    )
  )
  // Pictures are packed already, and are stored in the file as they are.
  for (const picture of zip.file(/\.png$/)) picture.options.compression = 'STORE'
  return zip.generateAsync({ type: 'uint8array', compression: 'DEFLATE' })
}
