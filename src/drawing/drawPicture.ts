import { fitted, type StoredPicture } from '../../shared/pictures/storedPicture'
import type { Drawing } from './shapes'

/** A picture by itself in a room of so many pixels: in its middle, its proportions kept. */
export function drawPicture(
  picture: StoredPicture,
  room: { readonly width: number; readonly height: number },
  alt: string
): Drawing {
  const { width, height } = fitted(picture, room)
  const place = { x: (room.width - width) / 2, y: (room.height - height) / 2 }
  return {
    ...room,
    title: alt,
    alt,
    palette: 'color',
    shapes: [{ kind: 'image', look: 'picture', ...place, width, height, picture }]
  }
}
