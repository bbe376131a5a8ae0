/**
 * Pictures on the sheets of a workbook's file, found without unpacking them: a sheet leads to a drawing, and that to its
 * pictures (ECMA-376 part 1, 20.5; part 2, 9.3). Those inside groups, in cells and outside the file are not among them.
 */
import type { FilePicture } from './fileBook'
import { attributeOf, plainText, tagsOf } from './xmlText'
import { shortText, type ZipPart } from './zipParts'

/** A picture as it stands on a sheet; rows and columns count from 0. */
export interface FoundPicture extends Omit<FilePicture, 'bytes' | 'kind'> {
  readonly sheet: string
  /** Its bytes, or null where there are more than that. */
  bytes(most: number): Promise<Uint8Array | null>
}

/** Most bytes of a part that lists pictures, and English metric units in a pixel of 96 to the inch. */
const [mostListed, unitsPerPixel] = [16 * 1024 * 1024, 9525]

type Named = ReadonlyMap<string, ZipPart>

/** The name of a part that another one names, from its folder on. */
function targetOf(from: string, target: string): string {
  const steps = target.startsWith('/') ? [] : from.split('/').slice(0, -1)
  for (const step of target.split('/'))
    if (step === '..') steps.pop()
    else if (step !== '.' && step !== '') steps.push(step)
  return steps.join('/').toLowerCase()
}

const relationsOf = (name: string): string => name.replace(/([^/]*)$/, '_rels/$1.rels').toLowerCase()

async function textOf(parts: Named, name: string): Promise<string> {
  const part = parts.get(name.toLowerCase())
  return part === undefined ? '' : ((await shortText(part, mostListed)) ?? '')
}

interface Relation {
  readonly id: string
  readonly type: string
  readonly target: string
}

/** What a part leads to inside the file. */
async function relations(parts: Named, name: string): Promise<Relation[]> {
  return tagsOf(await textOf(parts, relationsOf(name)), 'Relationship')
    .filter((tag) => attributeOf(tag, 'TargetMode')?.toLowerCase() !== 'external')
    .map((tag) => ({
      id: attributeOf(tag, 'Id') ?? '',
      type: attributeOf(tag, 'Type') ?? '',
      target: targetOf(name, attributeOf(tag, 'Target') ?? '')
    }))
}

function numberIn(xml: string, name: string): number {
  const found = new RegExp(`<(?:\\w+:)?${name}>\\s*(-?\\d+)\\s*<`).exec(xml)?.[1]
  return found === undefined ? 0 : Math.max(0, Number(found))
}

const cornerIn = (anchor: string, name: string): string =>
  new RegExp(`<(?:\\w+:)?${name}>(.*?)</(?:\\w+:)?${name}>`, 's').exec(anchor)?.[1] ?? ''

/** One anchor of a drawing, or null where it holds no picture that is shown. */
function pictureIn(sheet: string, anchor: string, of: ReadonlyMap<string, ZipPart>): FoundPicture | null {
  if (tagsOf(anchor, 'grpSp').length > 0 || tagsOf(anchor, 'pic').length === 0) return null
  const [about = ''] = tagsOf(anchor, 'cNvPr')
  const part = of.get(attributeOf(tagsOf(anchor, 'blip')[0] ?? '', 'embed') ?? '')
  if (part === undefined || /^(1|true)$/.test(attributeOf(about, 'hidden') ?? '')) return null
  const [from, to] = [cornerIn(anchor, 'from'), cornerIn(anchor, 'to')]
  const [row, column] = [numberIn(from, 'row'), numberIn(from, 'col')]
  const size = tagsOf(anchor, 'ext').find((tag) => attributeOf(tag, 'cx') !== null) ?? ''
  const pixels = (units: string | null): number => Math.max(1, Math.round(Number(units) / unitsPerPixel))
  return {
    sheet,
    area: {
      row,
      column,
      rows: Math.max(1, numberIn(to, 'row') - row + 1),
      columns: Math.max(1, numberIn(to, 'col') - column + 1)
    },
    inset: { x: numberIn(from, 'colOff') / unitsPerPixel, y: numberIn(from, 'rowOff') / unitsPerPixel },
    width: pixels(attributeOf(size, 'cx')),
    height: pixels(attributeOf(size, 'cy')),
    alt: plainText(attributeOf(about, 'descr') ?? ''),
    bytes: (most) => bytesOf(part, most)
  }
}

/** A part's bytes, or null where it has more. */
async function bytesOf(part: ZipPart, most: number): Promise<Uint8Array | null> {
  const pieces: Uint8Array[] = []
  let length = 0
  for await (const piece of part.pieces()) {
    length += piece.length
    if (length > most) return null
    pieces.push(piece)
  }
  return new Uint8Array(Buffer.concat(pieces))
}

async function onSheet(parts: Named, sheet: string, name: string): Promise<FoundPicture[]> {
  const drawing = (await relations(parts, name)).find(({ type }) => type.endsWith('/drawing'))
  if (drawing === undefined) return []
  const xml = await textOf(parts, drawing.target)
  const of = new Map<string, ZipPart>()
  for (const { id, target } of await relations(parts, drawing.target)) {
    const part = parts.get(target)
    if (part !== undefined) of.set(id, part)
  }
  const anchors = xml.match(/<(?:\w+:)?(twoCell|oneCell)Anchor\b.*?<\/(?:\w+:)?\1Anchor>/gs) ?? []
  return anchors
    .flatMap((anchor) => pictureIn(sheet, anchor, of) ?? [])
    .sort((a, b) => a.area.row - b.area.row || a.area.column - b.area.column)
}

/** Every picture on the sheets of a file, on each from the top down. */
export async function picturesIn(all: readonly ZipPart[]): Promise<FoundPicture[]> {
  if (!all.some(({ name }) => /(^|\/)media\//i.test(name))) return []
  const parts: Named = new Map(all.map((part) => [part.name.toLowerCase(), part]))
  const book = (await relations(parts, '')).find(({ type }) => type.endsWith('/officeDocument'))?.target ?? ''
  const sheets = new Map((await relations(parts, book)).map(({ id, target }) => [id, target]))
  const found: FoundPicture[] = []
  for (const tag of tagsOf(await textOf(parts, book), 'sheet')) {
    const target = sheets.get(attributeOf(tag, 'id') ?? '')
    if (target !== undefined) found.push(...(await onSheet(parts, attributeOf(tag, 'name') ?? '', target)))
  }
  return found
}
