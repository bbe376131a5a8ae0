/**
 * How the camera was held, as Exif counts it from 1, upright, to 8 (CIPA DC-008, tag 274; from memory): from 5 on width and
 * height change places.
 */
export type Turn = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8

/** What the first bytes of a picture say of it. */
export interface PictureHead {
  readonly kind: 'png' | 'jpeg'
  /** Pixels as they are stored. */
  readonly width: number
  readonly height: number
  readonly turn: Turn
}

/** Why a picture cannot be used. */
export type PictureFault = 'kind' | 'damaged' | 'bytes' | 'pixels'
