/** Parts of a packed file put in place of its own: what the file library does not write, or writes too slowly. */
import JSZip from 'jszip'

/** Texts of parts by name. */
export type Parts = ReadonlyMap<string, string>

/** A part as it goes into a file. */
export interface UnpackedPart {
  name: string
  contents: Uint8Array
  date: Date
  /** A picture is packed already. */
  compress: boolean
}

/** Parts that are packed already. */
export const packed = /\.(png|jpe?g)$/

/** Packs parts into the bytes of a file. */
export type Packer = (parts: readonly UnpackedPart[]) => Promise<Uint8Array>

/** Wherever JavaScript runs, a browser too. */
export const packAnywhere: Packer = (parts) => {
  const zip = new JSZip()
  for (const { name, contents, date, compress } of parts)
    zip.file(name, contents, {
      date,
      createFolders: false,
      compression: compress ? 'DEFLATE' : 'STORE'
    })
  return zip.generateAsync({ type: 'uint8array' })
}

/** The text of a part of a packed file. */
export async function partOf(zip: JSZip, name: string): Promise<string> {
  const part = zip.file(name)
  if (part === null) throw new Error(`The file has no part ${name}.`)
  return part.async('string')
}

/** The file with other parts in place of its own of the same names; its other parts are the same. */
export async function withParts(
  file: Uint8Array,
  make: (zip: JSZip) => Promise<Parts>,
  pack: Packer
): Promise<Uint8Array> {
  const from = await JSZip.loadAsync(file)
  const parts = await make(from)
  if (parts.size === 0) return file
  const encoder = new TextEncoder()
  const unpacked: UnpackedPart[] = []
  for (const part of Object.values(from.files)) {
    const { name, dir, date } = part
    if (dir) continue
    const text = parts.get(name)
    const contents = text === undefined ? await part.async('uint8array') : encoder.encode(text)
    unpacked.push({ name, contents, date, compress: !packed.test(name) })
  }
  return pack(unpacked)
}
