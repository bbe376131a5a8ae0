/** Packs the parts of a file by Node's own zlib, several times as fast as a library in JavaScript. */
import { buffer } from 'node:stream/consumers'
import { ZipFile } from 'yazl'
import type { Packer } from './packedParts'

export const packInNode: Packer = (parts) => {
  const zip = new ZipFile()
  const packed = buffer(zip.outputStream)
  for (const { name, contents, date, compress } of parts) {
    const bytes = Buffer.from(contents.buffer, contents.byteOffset, contents.byteLength)
    zip.addBuffer(bytes, name, { mtime: date, compress, forceDosTimestamp: true })
  }
  zip.end()
  return packed
}
