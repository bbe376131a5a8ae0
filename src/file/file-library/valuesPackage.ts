/** A workbook's file with nothing in it but what its values need, so that the file library reads that only. */
import JSZip from 'jszip'
import { picturesIn, type FoundPicture } from './picturesIn'
import { percentStyles } from './percentStyles'
import { SheetSlimmer } from './slimSheet'
import { settingsIn, settingsParts, type FileSettings } from './settingsPart'
import { attributeOf, tagsOf } from './xmlText'
import { asPackageFault, shortText, UnusablePackage, zipParts, type ZipPart } from './zipParts'

/** Most characters of the parts that are read, once blank cells are gone. */
const mostCharacters = 256 * 1024 * 1024

/** Parts that hold no values; the library would read each of them for nothing. */
const beside =
  /(^|\/)(worksheets\/_rels|drawings|charts|chartsheets|dialogsheets|macrosheets|media|theme|pivot\w*|externalLinks|printerSettings|comments\w*|threadedComments|persons|tables|queryTables|slicers?|slicerCaches|timelines?|timelineCaches|ctrlProps|activeX|embeddings|customXml|docProps)\/|\/(comments\d*|calcChain|connections|metadata|xmlMaps)\.xml$/i

const isNeeded = ({ name }: ZipPart): boolean => /\.(xml|rels)$/i.test(name) && !beside.test(name)

/** Looks first: what a sheet's numbers are shown as is known before the sheet is read. */
const looksFirst = (a: ZipPart, b: ZipPart): number =>
  Number(/styles/i.test(b.name)) - Number(/styles/i.test(a.name))

/** The root of a part's XML, in its first piece. */
const rootOf = (text: string): string => /<(?:\w+:)?([a-z]\w*)[\s/>]/i.exec(text)?.[1] ?? ''

class Unpacker {
  readonly texts = new Map<string, string>()
  private characters = 0
  private percents: ReadonlySet<string> = new Set()

  constructor(private readonly most: number) {}

  async unpack(part: ZipPart): Promise<void> {
    const decoder = new TextDecoder()
    const kept: string[] = []
    let slimmer: SheetSlimmer | null = null
    let first = true
    for await (const piece of part.pieces()) {
      const text = decoder.decode(piece, { stream: true })
      if (first) {
        // A part may declare no entities of its own (ECMA-376 part 2, from memory): those are how small files grow without end.
        if (/<!(DOCTYPE|ENTITY)/i.test(text)) throw new UnusablePackage('entities')
        if (rootOf(text) === 'worksheet') slimmer = new SheetSlimmer(this.percents)
      }
      first = false
      this.keep(kept, slimmer === null ? text : slimmer.add(text))
    }
    if (slimmer !== null) this.keep(kept, slimmer.end())
    const whole = kept.join('')
    if (rootOf(whole.slice(0, 4096)) === 'styleSheet') this.percents = percentStyles(whole)
    this.texts.set(part.name, whole)
  }

  private keep(kept: string[], text: string): void {
    this.characters += text.length
    if (this.characters > this.most) throw new UnusablePackage('too large')
    kept.push(text)
  }
}

/** Sheets of a workbook that have no cells: charts that fill a sheet, and those of old macros and dialogs. */
function sheetsWithoutCells(texts: ReadonlyMap<string, string>): Set<string> {
  const cellless = new Set<string>()
  for (const [name, text] of texts) {
    if (!/\.rels$/i.test(name)) continue
    for (const tag of tagsOf(text, 'Relationship'))
      if (/\/(chartsheet|dialogsheet|xlMacrosheet)$/.test(attributeOf(tag, 'Type') ?? ''))
        cellless.add(attributeOf(tag, 'Id') ?? '')
  }
  const names = new Set<string>()
  for (const text of cellless.size === 0 ? [] : texts.values())
    for (const tag of rootOf(text.slice(0, 4096)) === 'workbook' ? tagsOf(text, 'sheet') : [])
      if (cellless.has(attributeOf(tag, 'id') ?? '')) names.add(attributeOf(tag, 'name') ?? '')
  return names
}

/** Most bytes of a part with settings; the answers of a person come to a few thousand. */
const mostSettings = 1024 * 1024

/** What the add-in keeps in the workbook. A part too large to be ours is passed over. */
async function settingsAmong(parts: readonly ZipPart[]): Promise<FileSettings> {
  const found = new Map<string, string>()
  for (const part of settingsParts(parts)) {
    const xml = await shortText(part, mostSettings)
    if (xml !== null) for (const [key, text] of settingsIn(xml)) found.set(key, text)
  }
  return found
}

export interface ValuesPackage {
  bytes: Uint8Array
  settings: FileSettings
  /** Pictures on its sheets; they are unpacked when they are asked for. */
  pictures: readonly FoundPicture[]
  /** Sheets that the library is not to look for. */
  cellless: ReadonlySet<string>
}

/** Throws `UnusablePackage` where the bytes are no workbook, or one that would not fit into memory. */
export async function valuesPackage(bytes: Uint8Array, most = mostCharacters): Promise<ValuesPackage> {
  const all = await zipParts(bytes)
  const parts = all.filter(isNeeded).sort(looksFirst)
  const unpacker = new Unpacker(most)
  let settings: FileSettings
  let pictures: readonly FoundPicture[]
  try {
    settings = await settingsAmong(all)
    pictures = await picturesIn(all)
    for (const part of parts) await unpacker.unpack(part)
  } catch (error) {
    throw asPackageFault(error)
  }
  const zip = new JSZip()
  for (const [name, text] of unpacker.texts) zip.file(name, Buffer.from(text), { createFolders: false })
  return {
    bytes: await zip.generateAsync({ type: 'nodebuffer' }),
    settings,
    pictures,
    cellless: sheetsWithoutCells(unpacker.texts)
  }
}
