/** Parts of a packed file put in place of its own: what the file library does not write, or writes too slowly. */
import { buffer } from 'node:stream/consumers'
import JSZip from 'jszip'
import { ZipFile } from 'yazl'

/** Texts of parts by name. */
export type Parts = ReadonlyMap<string, string>

/** The text of a part of a packed file. */
export async function partOf(zip: JSZip, name: string): Promise<string> {
  const part = zip.file(name)
  if (part === null) throw new Error(`The file has no part ${name}.`)
  return part.async('string')
}

/** The file with other parts in place of its own of the same names; its other parts are the same. */
export async function withParts(file: Uint8Array, make: (zip: JSZip) => Promise<Parts>): Promise<Uint8Array> {
  const from = await JSZip.loadAsync(file)
  const parts = await make(from)
  if (parts.size === 0) return file
  const to = new ZipFile()
  const packed = buffer(to.outputStream)
  for (const part of Object.values(from.files)) {
    const { name, dir, date } = part
    if (dir) continue
    const text = parts.get(name)
    const contents = text === undefined ? await part.async('nodebuffer') : Buffer.from(text)
    // Pictures are packed already.
    to.addBuffer(contents, name, { mtime: date, compress: !name.endsWith('.png'), forceDosTimestamp: true })
  }
  to.end()
  return packed
}
