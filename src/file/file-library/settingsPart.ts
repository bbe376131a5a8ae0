/**
 * What the add-in keeps in a workbook, as a custom XML part of its file (ECMA-376 part 1, 15.2.5 and 22.5), which
 * spreadsheets carry along unread. The file library knows no such parts. Excel itself keeps the settings of an add-in in a
 * part of another kind (MS-OWEXML: the properties of a web extension), which is read and not written.
 */
import JSZip from 'jszip'
import { packed } from './packedParts'
import { attributeOf, plainText, tagsOf } from './xmlText'

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

/** Keys of ours among those of other add-ins. */
const ownKey = /^limbwright\./

/** Parts of a file that may hold settings, by their names; what Excel wrote is read last and counts. */
const parts = [/^customXml\/item\d+\.xml$/i, /^xl\/webextensions\/webextension\d*\.xml$/i] as const

/** Those among the parts of a file, in the order in which they are to be read. */
export function settingsParts<Part extends { readonly name: string }>(all: readonly Part[]): Part[] {
  return parts.flatMap((named) => all.filter(({ name }) => named.test(name)))
}

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }

const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => escapes[sign] ?? sign)

function settingsXml(settings: FileSettings): string {
  const entries = [...settings].map(
    ([key, text]) => `<setting key="${escaped(key)}">${escaped(text)}</setting>`
  )
  return `${declaration}<settings xmlns="${namespace}">${entries.join('')}</settings>`
}

/** Excel keeps each value as JSON; ours are texts. */
function asText(value: string): string | null {
  try {
    const kept: unknown = JSON.parse(value)
    return typeof kept === 'string' ? kept : null
  } catch {
    return null
  }
}

function ofExtension(xml: string): FileSettings {
  return new Map(
    tagsOf(xml, 'property').flatMap((tag) => {
      const [key, value] = [attributeOf(tag, 'name'), attributeOf(tag, 'value')]
      const text = key !== null && ownKey.test(key) ? asText(value ?? '') : null
      return key === null || text === null ? [] : [[key, text] as const]
    })
  )
}

/** What a part holds; nothing where it is not ours. */
export function settingsIn(xml: string): FileSettings {
  if (/<(?:\w+:)?webextension[\s>]/.test(xml)) return ofExtension(xml)
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
  const found = settingsParts(Object.values(zip.files))
  const texts = await Promise.all(found.map((each) => each.async('string')))
  return new Map(texts.flatMap((xml) => [...settingsIn(xml)]))
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
  for (const picture of zip.file(packed)) picture.options.compression = 'STORE'
  return zip.generateAsync({ type: 'uint8array', compression: 'DEFLATE' })
}
