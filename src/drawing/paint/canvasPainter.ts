import type { DrawingPainter } from './painter'
import { imagesIn } from './imagesIn'
import { toSvg } from './toSvg'

/** Paints with the canvas of a browser page; nothing leaves the page. */
export function canvasPainter(owner: Document): DrawingPainter {
  return {
    async paint(drawing, pixelRatio) {
      const width = Math.round(drawing.width * pixelRatio)
      const height = Math.round(drawing.height * pixelRatio)
      const image = await loadImage(owner, toSvg(drawing, 'paper', await imagesIn(drawing)))
      const canvas = owner.createElement('canvas')
      canvas.width = width
      canvas.height = height
      const context = canvas.getContext('2d')
      if (context === null) throw new Error('This browser has no canvas to paint on.')
      context.drawImage(image, 0, 0, width, height)
      return { png: await pngOf(canvas), width, height, alt: drawing.alt }
    }
  }
}

/** As a data address, which keeps the canvas readable and needs no request. */
async function loadImage(owner: Document, svg: string): Promise<HTMLImageElement> {
  const image = owner.createElement('img')
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`
  await image.decode()
  return image
}

async function pngOf(canvas: HTMLCanvasElement): Promise<Uint8Array> {
  const blob = await new Promise<Blob | null>((done) => {
    canvas.toBlob(done, 'image/png')
  })
  if (blob === null) throw new Error('The canvas gave no picture.')
  return new Uint8Array(await blob.arrayBuffer())
}
