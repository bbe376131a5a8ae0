import { sheetPixelRatio } from '../drawing/paint/painter'
import type { SheetPicture } from '../sheets/sheet'
import type { FilePicture } from './file-library/fileBook'
import { filePainter } from './paintDrawing'

const inPixels = (points: number): number => Math.round((points * 96) / 72)

async function imageOf({ area, inset, width, height, alt, draw }: SheetPicture): Promise<FilePicture> {
  const { png } = await filePainter.paint(draw(), sheetPixelRatio)
  return {
    bytes: png,
    kind: 'png',
    area,
    ...(inset === undefined ? {} : { inset: { x: inPixels(inset), y: 0 } }),
    width: inPixels(width),
    height: inPixels(height),
    alt
  }
}

/** The pictures of a sheet, painted, as a file holds them. */
export function imagesOf(pictures: readonly SheetPicture[]): Promise<FilePicture[]> {
  return Promise.all(pictures.map(imageOf))
}
