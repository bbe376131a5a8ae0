import { base64 } from '../../shared/pictures/base64'
import { sheetPixelRatio, type DrawingPainter } from '../drawing/paint/painter'
import type { SheetDescription, SheetPicture } from '../sheets/sheet'
import { fitAltText } from '../sheets/typedText'

/** What a picture counts for in the progress of a writing, in cells. */
export const cellsAPicture = 200

export type Corner = Pick<Excel.Range, 'left' | 'top' | 'width' | 'height'>

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

/** A picture of a sheet with its PNG in base64. */
export interface PaintedPicture {
  readonly picture: SheetPicture
  readonly image: string
}

/** Paints the pictures of a sheet one after the other; `painted` is told after each. */
export async function paintPictures(
  { pictures = [] }: SheetDescription,
  painter: DrawingPainter | undefined,
  painted: () => void
): Promise<PaintedPicture[]> {
  if (pictures.length === 0) return []
  if (painter === undefined) throw new Error('A sheet with pictures was to be written without a painter.')
  const done: PaintedPicture[] = []
  for (const picture of pictures) {
    const image = base64((await painter.paint(picture.draw(), sheetPixelRatio)).png)
    done.push({ picture, image })
    painted()
  }
  return done
}

/** Where pictures go: read once for all of a sheet. */
export async function roomsOf(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  pictures: readonly PaintedPicture[]
): Promise<Corner[]> {
  const rooms = pictures.map(({ picture: { area } }) =>
    sheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns).load('left,top,width,height')
  )
  await context.sync()
  return rooms
}

/** Puts a picture in its area. */
export function addPicture(sheet: Excel.Worksheet, { picture, image }: PaintedPicture, room: Corner): void {
  place(sheet.shapes.addImage(image), picture, room)
}
