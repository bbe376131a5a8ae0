import { jpegHead } from './jpeg'
import type { PictureFault, PictureHead, Turn } from './pictureHead'
import { pngHead } from './png'

/** Bytes of a picture at most, and pixels of a side: what a machine unpacks in a second, and more than paper shows. */
export const mostBytes = 15 * 1024 * 1024
export const mostPixels = 10_000

/** What a fault is, after the name of the picture. */
export const faultWords: Readonly<Record<PictureFault, string>> = {
  kind: 'is neither PNG nor JPEG',
  damaged: 'is damaged',
  bytes: 'has more than 15 MB',
  pixels: 'has more than 10,000 pixels on a side'
}

/** A picture that somebody made, as it is drawn on a document; its bytes are fetched when it is. */
export interface StoredPicture {
  readonly kind: 'png' | 'jpeg'
  /** Pixels as it is to be seen. */
  readonly width: number
  readonly height: number
  readonly turn: Turn
  bytes(): Promise<Uint8Array>
}

/** What is known of a picture, or why it cannot be used. Every byte is looked at: half a picture is none. */
export function pictureHead(bytes: Uint8Array): PictureHead | PictureFault {
  if (bytes.length > mostBytes) return 'bytes'
  const head = pngHead(bytes) ?? jpegHead(bytes) ?? 'kind'
  if (typeof head === 'string') return head
  if (head.width > mostPixels || head.height > mostPixels) return 'pixels'
  return head.width > 0 && head.height > 0 ? head : 'damaged'
}

/** A picture by its bytes, which are kept unless they can be fetched again, or why it cannot be used. */
export function pictureOf(
  bytes: Uint8Array,
  again: () => Promise<Uint8Array> = () => Promise.resolve(bytes)
): StoredPicture | PictureFault {
  const head = pictureHead(bytes)
  if (typeof head === 'string') return head
  const { kind, turn } = head
  const [width, height] = turn >= 5 ? [head.height, head.width] : [head.width, head.height]
  return { kind, width, height, turn, bytes: again }
}

/** How large a picture is in a room, its proportions kept. */
export function fitted(
  { width, height }: { readonly width: number; readonly height: number },
  room: { readonly width: number; readonly height: number }
): { readonly width: number; readonly height: number } {
  const scale = Math.min(room.width / width, room.height / height)
  return { width: width * scale, height: height * scale }
}
