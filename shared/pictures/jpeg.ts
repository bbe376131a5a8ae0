import type { PictureFault, PictureHead, Turn } from './pictureHead'

/** ISO/IEC 10918-1, annex B (from memory): segments begin with 0xff and their marker, most with a length of two bytes. */
const [startOfImage, endOfImage, startOfScan, application1] = [0xd8, 0xd9, 0xda, 0xe1]

/** Frames of any kind; of the markers among them three are tables. */
const isFrame = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc

/** CIPA DC-008 (from memory): "Exif", two zeros, then a TIFF file whose first directory may say how the camera was held. */
const exif = [0x45, 0x78, 0x69, 0x66, 0, 0]
const orientationTag = 274

interface Found {
  readonly turn: Turn
  /** Where the two bytes of it stand, and in which order. */
  readonly at: number
  readonly little: boolean
}

function turnIn(view: DataView, start: number, end: number): Found | null {
  if (!exif.every((byte, at) => start + at < end && view.getUint8(start + at) === byte)) return null
  const tiff = start + exif.length
  if (tiff + 8 > end) return null
  const little = view.getUint8(tiff) === 0x49
  const directory = tiff + view.getUint32(tiff + 4, little)
  if (directory + 2 > end) return null
  const count = view.getUint16(directory, little)
  for (let entry = directory + 2, left = count; left > 0 && entry + 12 <= end; entry += 12, left--) {
    if (view.getUint16(entry, little) !== orientationTag) continue
    const turn = view.getUint16(entry + 8, little)
    return turn >= 1 && turn <= 8 ? { turn: turn as Turn, at: entry + 8, little } : null
  }
  return null
}

interface Segments {
  readonly size: { readonly width: number; readonly height: number } | null
  readonly turned: Found | null
  /** Where the first scan begins, or null. */
  readonly scan: number | null
}

function segmentsOf(bytes: Uint8Array): Segments {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  let size: Segments['size'] = null
  let turned: Found | null = null
  for (let at = 2; at + 4 <= bytes.length;) {
    if (view.getUint8(at) !== 0xff) break
    const marker = view.getUint8(at + 1)
    if (marker === 0xff) {
      at += 1
      continue
    }
    if (marker === startOfScan) return { size, turned, scan: at }
    const end = at + 2 + view.getUint16(at + 2)
    if (end > bytes.length) break
    if (isFrame(marker) && end >= at + 9)
      size = { height: view.getUint16(at + 5), width: view.getUint16(at + 7) }
    if (marker === application1) turned ??= turnIn(view, at + 4, end)
    at = end
  }
  return { size, turned, scan: null }
}

/** Whether the picture ends after its scan began: what was cut short does not. */
function ends(bytes: Uint8Array, scan: number): boolean {
  for (let at = bytes.length - 2; at > scan; at--)
    if (bytes[at] === 0xff && bytes[at + 1] === endOfImage) return true
  return false
}

/** What a JPEG says of itself, why it cannot be used, or null where the bytes are no JPEG. */
export function jpegHead(bytes: Uint8Array): PictureHead | PictureFault | null {
  if (bytes[0] !== 0xff || bytes[1] !== startOfImage || bytes[2] !== 0xff) return null
  const { size, turned, scan } = segmentsOf(bytes)
  if (size === null || scan === null || !ends(bytes, scan)) return 'damaged'
  return { kind: 'jpeg', ...size, turn: turned?.turn ?? 1 }
}

/** The same picture without the note on how the camera was held, which one program goes by and another passes over. */
export function withoutTurn(bytes: Uint8Array): Uint8Array {
  const { turned } = segmentsOf(bytes)
  if (turned === null || turned.turn === 1) return bytes
  const same = bytes.slice()
  new DataView(same.buffer).setUint16(turned.at, 1, turned.little)
  return same
}
