import { base64 } from '../../shared/pictures/base64'
import { sheetPixelRatio, type DrawingPainter } from '../drawing/paint/painter'
import type { SheetDescription, SheetPicture } from '../sheets/sheet'
import { fitAltText } from '../sheets/typedText'

/** What a picture counts for in the progress of a writing, in cells. */
export const cellsAPicture = 200

type Corner = Pick<Excel.Range, 'left' | 'top' | 'width' | 'height'>

/** The picture in its area, as large as it fits: columns are not exactly as wide on every machine. */
function place(shape: Excel.Shape, { width, height, alt, inset = 0 }: SheetPicture, room: Corner): void {
  const scale = Math.min(room.width / (inset + width), room.height / height)
  // While the proportion is locked, setting the height would change the width that was just set.
  shape.lockAspectRatio = false
  shape.left = room.left + inset * scale
  shape.top = room.top
  shape.width = width * scale
  shape.height = height * scale
  shape.lockAspectRatio = true
  shape.placement = 'OneCell'
  shape.altTextDescription = fitAltText(alt)
}

/**
 * Paints the pictures of a sheet one after the other and puts each in its area. `send` is called before a request grows
 * too large, with the number of pictures in it.
 */
export async function writePictures(
  sheet: Excel.Worksheet,
  { pictures = [] }: SheetDescription,
  painter: DrawingPainter | undefined,
  requestCharacters: number,
  send: (written: number) => Promise<void>
): Promise<void> {
  if (pictures.length === 0) return
  if (painter === undefined) throw new Error('A sheet with pictures was to be written without a painter.')
  const rooms = pictures.map(({ area }) => {
    const range = sheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns)
    return range.load('left,top,width,height')
  })
  await send(0)
  let waiting = 0
  let size = 0
  for (const [index, picture] of pictures.entries()) {
    const image = base64((await painter.paint(picture.draw(), sheetPixelRatio)).png)
    if (waiting > 0 && size + image.length > requestCharacters) {
      await send(waiting)
      waiting = size = 0
    }
    place(sheet.shapes.addImage(image), picture, rooms[index] as Corner)
    waiting += 1
    size += image.length
  }
  await send(waiting)
}
