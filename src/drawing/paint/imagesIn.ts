import { base64 } from '../../../shared/pictures/base64'
import { withoutTurn } from '../../../shared/pictures/jpeg'
import type { Drawing } from '../shapes'
import type { Images } from './svgNodes'

/** The pictures in a drawing as data addresses, so that painting asks nobody for anything. */
export async function imagesIn({ shapes }: Drawing): Promise<Images> {
  const images = new Map<Parameters<Images['get']>[0], string>()
  for (const shape of shapes) {
    if (shape.kind !== 'image' || images.has(shape.picture)) continue
    const { kind } = shape.picture
    const bytes = await shape.picture.bytes()
    images.set(
      shape.picture,
      `data:image/${kind};base64,${base64(kind === 'jpeg' ? withoutTurn(bytes) : bytes)}`
    )
  }
  return images
}
