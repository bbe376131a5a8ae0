/** What is told of a picture by its bytes, and what is refused. */
import { fitted, mostBytes, mostPixels, pictureHead, pictureOf } from '../../shared/pictures/storedPicture'
import { withoutTurn } from '../../shared/pictures/jpeg'
import { filePainter } from '../../src/file/paintDrawing'
import { drawPicture } from '../../src/drawing/drawPicture'
import { inventedJpeg, inventedPng, turnedJpeg } from './invented'

test('a PNG and a JPEG give their kind and size', () => {
  expect(pictureHead(inventedPng(40, 30))).toEqual({ kind: 'png', width: 40, height: 30, turn: 1 })
  expect(pictureHead(inventedJpeg)).toEqual({ kind: 'jpeg', width: 8, height: 6, turn: 1 })
})

test.each([false, true])('a camera that was held on its side changes width and height (%p)', (little) => {
  for (const turn of [1, 2, 3, 4])
    expect(pictureOf(turnedJpeg(turn, little))).toMatchObject({ width: 8, height: 6, turn })
  for (const turn of [5, 6, 7, 8])
    expect(pictureOf(turnedJpeg(turn, little))).toMatchObject({ width: 6, height: 8, turn })
  // A note of no meaning is none.
  expect(pictureOf(turnedJpeg(0, little))).toMatchObject({ turn: 1 })
  expect(pictureHead(withoutTurn(turnedJpeg(6, little)))).toMatchObject({ turn: 1 })
})

test('of every picture cut short nothing is used', () => {
  for (const whole of [inventedPng(9, 9), inventedJpeg])
    for (let length = 4; length < whole.length; length += 7)
      expect([length, ['kind', 'damaged'].includes(String(pictureHead(whole.subarray(0, length))))]).toEqual([
        length,
        true
      ])
})

test('a PNG with a changed byte is damaged', () => {
  const whole = inventedPng(9, 9)
  for (let at = 8; at < whole.length; at++) {
    const changed = whole.slice()
    changed[at] = (changed[at] ?? 0) ^ 0x55
    expect([at, pictureHead(changed)]).toEqual([at, 'damaged'])
  }
})

test.each(['GIF89a', '<svg xmlns="http://www.w3.org/2000/svg"/>', 'RIFF    WEBP', '', 'BM'])(
  '%p is no picture',
  (text) => {
    expect(pictureHead(new Uint8Array(Buffer.from(text)))).toBe('kind')
  }
)

test('what is too large is told before anything is unpacked', () => {
  expect(pictureHead(new Uint8Array(mostBytes + 1))).toBe('bytes')
  for (const claimed of [
    { width: mostPixels + 1, height: 9 },
    { width: 9, height: 20_000 }
  ])
    expect(pictureHead(inventedPng(9, 9, [0, 0, 0], claimed))).toBe('pixels')
  expect(pictureHead(inventedPng(9, 9, [0, 0, 0], { width: 0, height: 9 }))).toBe('damaged')
})

test('proportions are kept in a room', () => {
  expect(fitted({ width: 400, height: 100 }, { width: 150, height: 48 })).toEqual({
    width: 150,
    height: 37.5
  })
  expect(fitted({ width: 10, height: 1000 }, { width: 150, height: 50 })).toEqual({ width: 0.5, height: 50 })
})

test.each<[string, Uint8Array]>([
  ['PNG', inventedPng(16, 8)],
  ['JPEG', inventedJpeg],
  ['turned JPEG', turnedJpeg(6)]
])('a %s is painted in the middle of its room', async (_kind, bytes) => {
  const picture = pictureOf(bytes)
  if (typeof picture === 'string') throw new Error(picture)
  const room = { width: 40, height: 40 }
  const drawing = drawPicture(picture, room, 'A green field')
  const [image] = drawing.shapes
  if (image?.kind !== 'image') throw new Error('No picture is drawn.')
  expect(image.width / image.height).toBeCloseTo(picture.width / picture.height, 6)
  const painted = await filePainter.paint(drawing, 1)
  const empty = await filePainter.paint({ ...drawing, shapes: [] }, 1)
  expect(Buffer.compare(painted.png, empty.png)).not.toBe(0)
})
