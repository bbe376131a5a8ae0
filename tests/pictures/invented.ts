/** Invented pictures for tests, made here byte by byte. */
import { crc32, deflateSync } from 'node:zlib'

function chunk(kind: string, data: Buffer): Buffer {
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)]
  const named = Buffer.concat([Buffer.from(kind, 'latin1'), data])
  length.writeUInt32BE(data.length)
  sum.writeUInt32BE(crc32(named))
  return Buffer.concat([length, named, sum])
}

/** A PNG of one color (W3C PNG, sections 5 and 11; from memory); `claimed` is the size that its head states. */
export function inventedPng(
  width: number,
  height: number,
  [red, green, blue] = [47, 93, 58],
  claimed = { width, height }
): Uint8Array {
  const head = Buffer.alloc(13)
  head.writeUInt32BE(claimed.width, 0)
  head.writeUInt32BE(claimed.height, 4)
  head.set([8, 2, 0, 0, 0], 8)
  const row = Buffer.concat([
    Buffer.from([0]),
    ...Array<Buffer>(width).fill(Buffer.from([red!, green!, blue!]))
  ])
  const data = deflateSync(Buffer.concat(Array<Buffer>(height).fill(row)))
  return new Uint8Array(
    Buffer.concat([
      Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]),
      chunk('IHDR', head),
      chunk('IDAT', data),
      chunk('IEND', Buffer.alloc(0))
    ])
  )
}

/** A JPEG of 8 by 6 points in one green, as a browser makes it. */
export const inventedJpeg = new Uint8Array(
  Buffer.from(
    '/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDABsSFBcUERsXFhceHBsgKEIrKCUlKFE6PTBCYFVlZF9VXVtqeJmBanGQc1tdhbWGkJ6jq62rZ4C8ybqmx5moq6T/2wBDARweHigjKE4rK06kbl1upKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKT/wAARCAAGAAgDASIAAhEBAxEB/8QAFQABAQAAAAAAAAAAAAAAAAAAAAX/xAAUEAEAAAAAAAAAAAAAAAAAAAAA/8QAFQEBAQAAAAAAAAAAAAAAAAAAAgP/xAAUEQEAAAAAAAAAAAAAAAAAAAAA/9oADAMBAAIRAxEAPwCeACL/2Q==',
    'base64'
  )
)

/** The same with a note on how the camera was held (CIPA DC-008, tag 274; from memory). */
export function turnedJpeg(turn: number, little = false): Uint8Array {
  const tiff = Buffer.alloc(26)
  const short = (value: number, at: number) =>
    little ? tiff.writeUInt16LE(value, at) : tiff.writeUInt16BE(value, at)
  const long = (value: number, at: number) =>
    little ? tiff.writeUInt32LE(value, at) : tiff.writeUInt32BE(value, at)
  tiff.write(little ? 'II' : 'MM', 0, 'latin1')
  short(42, 2)
  long(8, 4)
  short(1, 8)
  short(274, 10)
  short(3, 12)
  long(1, 14)
  short(turn, 18)
  const exif = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff])
  const segment = Buffer.from([0xff, 0xe1, 0, exif.length + 2])
  const { buffer, byteOffset, length } = inventedJpeg
  const plain = Buffer.from(buffer, byteOffset, length)
  return new Uint8Array(Buffer.concat([plain.subarray(0, 2), segment, exif, plain.subarray(2)]))
}
