/** The parts of a workbook's file (ECMA-376 part 2: a zip), unpacked within bounds whatever the zip says of itself. */
import { fromBufferPromise, type Entry, type ZipFile } from 'yauzl'
import { crc32, createInflateRaw } from 'node:zlib'

/** All parts together may unpack to this many bytes; those of a hundred thousand limbs come to about a tenth of it. */
export const mostUnpacked = 1024 * 1024 * 1024

/** Why a workbook's file cannot be taken apart. */
export type PackageFault = 'no zip' | 'damaged' | 'password' | 'older kind' | 'too large' | 'entities'

export class UnusablePackage extends Error {
  constructor(readonly fault: PackageFault) {
    super(fault)
  }
}

/** The container that holds older workbooks and encrypted ones (MS-CFB, from memory: its first eight bytes). */
const compound = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]

/** The stream that an encrypted workbook has in that container (MS-OFFCRYPTO, from memory); names there are UTF-16. */
const encrypted = Buffer.from('EncryptedPackage', 'utf16le')

/** The first bytes of a zip: "PK". */
const zipped = [0x50, 0x4b]

/** How a part may be packed in a workbook's file (ECMA-376 part 2, from memory). */
const [stored, deflated] = [0, 8]

function begins(bytes: Uint8Array, signature: readonly number[]): boolean {
  return signature.every((byte, at) => bytes[at] === byte)
}

/** A part of a zip, still packed. */
export interface ZipPart {
  name: string
  /**
   * Its bytes piece by piece. Throws where there are more or fewer of them than the zip's directory says, or others, so that
   * a directory that lies ends the reading as soon as the lie shows.
   */
  pieces(): AsyncIterable<Uint8Array>
}

/** Bytes that are unpacked at a time. */
const pieceSize = 1 << 20

function unpacking(packed: Uint8Array, method: number): Iterable<Uint8Array> | AsyncIterable<Uint8Array> {
  if (method === stored) return [packed]
  if (method !== deflated) throw new UnusablePackage('damaged')
  const inflating = createInflateRaw({ chunkSize: pieceSize })
  inflating.end(packed)
  return inflating
}

async function* piecesOf(zip: ZipFile, entry: Entry, bytes: Uint8Array): AsyncGenerator<Uint8Array, void> {
  const { compressedSize, compressionMethod, uncompressedSize } = entry
  const { fileDataStart: start } = await zip.readLocalFileHeaderPromise(entry, { minimal: true })
  let [unpacked, sum] = [0, 0]
  for await (const piece of unpacking(bytes.subarray(start, start + compressedSize), compressionMethod)) {
    unpacked += piece.length
    if (unpacked > uncompressedSize) break
    sum = crc32(piece, sum)
    yield piece
  }
  if (unpacked !== uncompressedSize || sum !== entry.crc32) throw new UnusablePackage('damaged')
}

/** Most parts of a workbook: one with a hundred sheets and their drawings has some hundreds. */
const mostParts = 10_000

async function listedParts(bytes: Uint8Array): Promise<ZipPart[]> {
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const zip = await fromBufferPromise(buffer, { lazyEntries: true, autoClose: false })
  const parts: ZipPart[] = []
  let unpacked = 0
  for await (const entry of zip.eachEntry()) {
    unpacked += entry.uncompressedSize
    if (unpacked > mostUnpacked || parts.length >= mostParts) throw new UnusablePackage('too large')
    parts.push({ name: entry.fileName, pieces: () => piecesOf(zip, entry, bytes) })
  }
  return parts
}

/** What any error of unpacking comes to. */
export function asPackageFault(error: unknown): UnusablePackage {
  return error instanceof UnusablePackage ? error : new UnusablePackage('damaged')
}

/** The parts that the zip's directory lists. Throws `UnusablePackage`, also where they would unpack to too much. */
export async function zipParts(bytes: Uint8Array): Promise<ZipPart[]> {
  if (begins(bytes, compound))
    throw new UnusablePackage(Buffer.from(bytes).includes(encrypted) ? 'password' : 'older kind')
  if (!begins(bytes, zipped)) throw new UnusablePackage('no zip')
  try {
    return await listedParts(bytes)
  } catch (error) {
    throw asPackageFault(error)
  }
}

/** A part as text, or null where it has more bytes than that. */
export async function shortText(part: ZipPart, most: number): Promise<string | null> {
  const pieces: Uint8Array[] = []
  let length = 0
  for await (const piece of part.pieces()) {
    length += piece.length
    if (length > most) return null
    pieces.push(piece)
  }
  return Buffer.concat(pieces).toString('utf8')
}
