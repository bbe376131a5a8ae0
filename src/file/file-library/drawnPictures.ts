/**
 * Pictures that keep their size. The library stretches each from one cell to another, so that it grows where a program sets
 * columns wider: their places are put in after the file is packed, each with one corner and a size (ECMA-376 part 1, 20.5.2.24).
 */
import type JSZip from 'jszip'
import type { BookSheet } from './fileBook'
import { partOf, type Parts } from './packedParts'

/** English metric units in a pixel of 96 to the inch (ECMA-376 part 1, 20.1.2.1). */
const unitsPerPixel = 9525

interface Corner {
  readonly x: number
  readonly y: number
}

/** How each picture of a sheet is anchored, in their order; one that is kept stays between its cells where it has both. */
function cornersOf({ kept, pictures = [] }: BookSheet): (Corner | null)[] {
  const others = (kept?.images ?? []).map(({ anchor }) => (anchor.to === undefined ? { x: 0, y: 0 } : null))
  return [...others, ...pictures.map(({ inset }) => inset ?? { x: 0, y: 0 })]
}

const units = (pixels: number): string => String(Math.round(pixels * unitsPerPixel))

function anchored(anchor: string, { x, y }: Corner): string {
  const size = /<a:ext cx="(\d+)" cy="(\d+)"\/>/.exec(anchor)
  if (size === null) return anchor
  return anchor
    .replace('<xdr:colOff>0', `<xdr:colOff>${units(x)}`)
    .replace('<xdr:rowOff>0', `<xdr:rowOff>${units(y)}`)
    .replace(/<xdr:to>.*?<\/xdr:to>/s, `<xdr:ext cx="${size[1] ?? '0'}" cy="${size[2] ?? '0'}"/>`)
    .replaceAll('xdr:twoCellAnchor', 'xdr:oneCellAnchor')
}

/** The drawings of a packed file with their pictures at one corner. */
export async function anchoredOnce(zip: JSZip, sheets: readonly BookSheet[]): Promise<Parts> {
  const parts = new Map<string, string>()
  for (const [index, sheet] of sheets.entries()) {
    const corners = cornersOf(sheet)
    if (corners.every((corner) => corner === null)) continue
    // The library numbers a drawing as it does its sheet.
    const name = `xl/drawings/drawing${String(index + 1)}.xml`
    let at = 0
    const text = await partOf(zip, name)
    parts.set(
      name,
      text.replace(/<xdr:twoCellAnchor>.*?<\/xdr:twoCellAnchor>/gs, (anchor) => {
        if (!anchor.includes('<xdr:pic>')) return anchor
        const corner = corners[at++] ?? null
        return corner === null ? anchor : anchored(anchor, corner)
      })
    )
  }
  return parts
}
