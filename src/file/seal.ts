/**
 * A seal on a workbook that was written here: the digest of its bytes, as the comment that ends a zip (PKWARE's APPNOTE
 * 4.3.16, from memory). Whatever saves the workbook writes another zip, so that a sealed file holds nobody's changes.
 */
import { createHash } from 'node:crypto'

/** The record that ends a zip without a comment: its signature, and its length with that of the comment at its end. */
const endSignature = 0x06054b50
const endLength = 22

const label = 'Limbwright '
const sealLength = label.length + 64

function sealOf(bytes: Uint8Array): Buffer {
  return Buffer.from(label + createHash('sha256').update(bytes).digest('hex'), 'latin1')
}

function isEnd(bytes: Uint8Array, at: number): boolean {
  if (at < 0) return false
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  return view.getUint32(at, true) === endSignature
}

/** The zip with its seal. */
export function sealed(zip: Uint8Array): Uint8Array {
  const at = zip.length - endLength
  if (!isEnd(zip, at)) throw new Error('A zip to be sealed ends without a comment.')
  const bytes = Buffer.concat([zip, Buffer.alloc(sealLength)])
  bytes.writeUInt16LE(sealLength, at + endLength - 2)
  sealOf(bytes.subarray(0, zip.length)).copy(bytes, zip.length)
  return bytes
}

/** True of a zip that was sealed here and not touched since. */
export function isSealed(bytes: Uint8Array): boolean {
  const length = bytes.length - sealLength
  if (!isEnd(bytes, length - endLength)) return false
  return sealOf(bytes.subarray(0, length)).equals(bytes.subarray(length))
}
