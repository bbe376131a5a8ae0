import { sheetPixelRatio } from '../drawing/paint/painter'
import type { SheetPicture } from '../sheets/sheet'
import type { FilePicture } from './file-library/fileBook'
import { filePainter } from './paintDrawing'

async function imageOf({ area, width, height, alt, draw }: SheetPicture): Promise<FilePicture> {
  const { png } = await filePainter.paint(draw(), sheetPixelRatio)
  return {
    png,
    area,
    width: Math.round((width * 96) / 72),
    height: Math.round((height * 96) / 72),
    alt
  }
}

/** The pictures of a sheet, painted, as a file holds them. */
export function imagesOf(pictures: readonly SheetPicture[]): Promise<FilePicture[]> {
  return Promise.all(pictures.map(imageOf))
}
