/**
 * Puts other contents in place of parts of a ZIP file: the file library writes no chart that combines columns and lines,
 * and lets nobody at the parts before they are packed. Read and written as its own packer writes (PKWARE APPNOTE 4.3.7,
 * 4.3.12 and 4.3.16): no comment, no descriptors after the data, less than 4 GB.
 */
const marks = { directory: 0x02014b50, end: 0x06054b50 }
const lengths = { local: 30, directory: 46, end: 22 }

/** CRC-32 as ZIP and PNG use it (W3C PNG, annex D; from memory). */
function checksum(bytes: Uint8Array): number {
  let sum = 0xffffffff
  for (const byte of bytes) {
    sum ^= byte
    for (let bit = 0; bit < 8; bit++) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0)
  }
  return (sum ^ 0xffffffff) >>> 0
}

interface Entry {
  name: string
  /** The entry's record in the directory, a copy. */
  record: Uint8Array
  /** Its local header, name and data. */
  body: Uint8Array
}

function entriesOf(zip: Uint8Array): Entry[] {
  const view = new DataView(zip.buffer, zip.byteOffset, zip.byteLength)
  const end = zip.length - lengths.end
  if (end < 0 || view.getUint32(end, true) !== marks.end)
    throw new Error('The file to change ends unlike a ZIP file.')
  const entries: Entry[] = []
  let place = view.getUint32(end + 16, true)
  for (let count = view.getUint16(end + 10, true); count > 0; count--) {
    if (view.getUint32(place, true) !== marks.directory)
      throw new Error('The directory of the file is broken.')
    const [name, extra, comment] = [28, 30, 32].map((at) => view.getUint16(place + at, true))
    const length = lengths.directory + (name ?? 0) + (extra ?? 0) + (comment ?? 0)
    const start = view.getUint32(place + 42, true)
    const packed = view.getUint32(place + 20, true)
    const head = lengths.local + view.getUint16(start + 26, true) + view.getUint16(start + 28, true)
    const text = zip.subarray(place + lengths.directory, place + lengths.directory + (name ?? 0))
    entries.push({
      name: new TextDecoder().decode(text),
      record: zip.slice(place, place + length),
      body: zip.subarray(start, start + head + packed)
    })
    place += length
  }
  return entries
}

/** The same entry with other contents, stored as they are. */
function withContents({ name, record, body }: Entry, contents: Uint8Array): Entry {
  const head = new DataView(body.buffer, body.byteOffset)
  const length = lengths.local + head.getUint16(26, true) + head.getUint16(28, true)
  const changed = new Uint8Array(length + contents.length)
  changed.set(body.subarray(0, length))
  changed.set(contents, length)
  const sum = checksum(contents)
  for (const [bytes, at] of [
    [changed, 8],
    [record, 10]
  ] as const) {
    const view = new DataView(bytes.buffer)
    view.setUint16(at, 0, true)
    view.setUint32(at + 6, sum, true)
    view.setUint32(at + 10, contents.length, true)
    view.setUint32(at + 14, contents.length, true)
  }
  return { name, record, body: changed }
}

function joined(entries: readonly Entry[]): Uint8Array {
  const bodies = entries.reduce((sum, { body }) => sum + body.length, 0)
  const records = entries.reduce((sum, { record }) => sum + record.length, 0)
  const zip = new Uint8Array(bodies + records + lengths.end)
  let [place, at] = [0, bodies]
  for (const { record, body } of entries) {
    zip.set(body, place)
    new DataView(record.buffer).setUint32(42, place, true)
    zip.set(record, at)
    place += body.length
    at += record.length
  }
  const end = new DataView(zip.buffer, at)
  end.setUint32(0, marks.end, true)
  end.setUint16(8, entries.length, true)
  end.setUint16(10, entries.length, true)
  end.setUint32(12, records, true)
  end.setUint32(16, bodies, true)
  return zip
}

/** The ZIP file with these parts in place of its own of the same names; a part that it lacks is an error. */
export function replaceParts(zip: Uint8Array, parts: ReadonlyMap<string, string>): Uint8Array {
  const entries = entriesOf(zip)
  const missing = [...parts.keys()].find((name) => entries.every((entry) => entry.name !== name))
  if (missing !== undefined) throw new Error(`The file has no part ${missing}.`)
  return joined(
    entries.map((entry) => {
      const contents = parts.get(entry.name)
      return contents === undefined ? entry : withContents(entry, new TextEncoder().encode(contents))
    })
  )
}
