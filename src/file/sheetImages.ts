import type { SheetImage } from 'hucre'
import { sheetPixelRatio } from '../drawing/paint/painter'
import type { SheetPicture } from '../sheets/sheet'
import { filePainter } from './paintDrawing'

async function imageOf({ area, width, height, alt, draw }: SheetPicture): Promise<SheetImage> {
  const { png } = await filePainter.paint(draw(), sheetPixelRatio)
  return {
    data: png,
    type: 'png',
    // A file holds a picture between two cells; the size beside it is for programs that ask.
    anchor: {
      from: { row: area.row, col: area.column },
      to: { row: area.row + area.rows, col: area.column + area.columns }
    },
    width: Math.round((width * 96) / 72),
    height: Math.round((height * 96) / 72),
    altText: alt
  }
}

/** The pictures of a sheet, painted, as the file library names them. */
export function imagesOf(pictures: readonly SheetPicture[]): Promise<SheetImage[]> {
  return Promise.all(pictures.map(imageOf))
}
