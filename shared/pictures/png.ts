import type { PictureFault, PictureHead } from './pictureHead'

/** W3C PNG, section 5: the signature, then chunks of a length, four letters, their bytes and a sum (from memory). */
const signature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]

/** The table of the sum of a chunk (W3C PNG, annex D: CRC-32 as in ISO 3309; from memory). */
const sums = Uint32Array.from({ length: 256 }, (_none, byte) => {
  let sum = byte
  for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? 0xedb88320 ^ (sum >>> 1) : sum >>> 1
  return sum
})

function sumOf(bytes: Uint8Array, from: number, to: number): number {
  let sum = 0xffffffff
  for (let at = from; at < to; at++) sum = (sums[(sum ^ (bytes[at] ?? 0)) & 0xff] ?? 0) ^ (sum >>> 8)
  return (sum ^ 0xffffffff) >>> 0
}

/** What a PNG says of itself, why it cannot be used, or null where the bytes are no PNG. */
export function pngHead(bytes: Uint8Array): PictureHead | PictureFault | null {
  if (!signature.every((byte, at) => bytes[at] === byte)) return null
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  let head: PictureHead | null = null
  let painted = false
  for (let at = signature.length; at + 12 <= bytes.length;) {
    const length = view.getUint32(at)
    const end = at + 8 + length
    if (end + 4 > bytes.length || view.getUint32(end) !== sumOf(bytes, at + 4, end)) return 'damaged'
    const kind = String.fromCharCode(...bytes.subarray(at + 4, at + 8))
    if (head === null) {
      if (kind !== 'IHDR' || length < 13) return 'damaged'
      head = { kind: 'png', width: view.getUint32(at + 8), height: view.getUint32(at + 12), turn: 1 }
    }
    if (kind === 'IDAT') painted = true
    if (kind === 'IEND') return painted ? head : 'damaged'
    at = end + 4
  }
  return 'damaged'
}
