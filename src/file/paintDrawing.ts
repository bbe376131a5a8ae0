import { dirname, join } from 'node:path'
import { renderAsync } from '@resvg/resvg-js'
import type { DrawingPainter } from '../drawing/paint/painter'
import { imagesIn } from '../drawing/paint/imagesIn'
import { toSvg } from '../drawing/paint/toSvg'

/** The same letters on every machine, whatever fonts it has. */
const fontFolder = join(dirname(require.resolve('dejavu-fonts-ttf/package.json')), 'ttf')
const fontFiles = ['DejaVuSans', 'DejaVuSans-Bold', 'DejaVuSans-Oblique', 'DejaVuSans-BoldOblique'].map(
  (name) => join(fontFolder, `${name}.ttf`)
)

const font = {
  loadSystemFonts: false,
  fontFiles,
  defaultFontFamily: 'DejaVu Sans',
  sansSerifFamily: 'DejaVu Sans'
}

/** Paints drawings as PNG without a browser. */
export const filePainter: DrawingPainter = {
  async paint(drawing, pixelRatio) {
    const width = Math.round(drawing.width * pixelRatio)
    const svg = toSvg(drawing, 'paper', await imagesIn(drawing))
    const image = await renderAsync(svg, { font, fitTo: { mode: 'width', value: width } })
    const png = new Uint8Array(image.asPng())
    return { png, width: image.width, height: image.height, alt: drawing.alt }
  }
}
