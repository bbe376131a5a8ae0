/** Looks that are added by conditional formats. */
import type { FileColor, FileStyle } from './fileStyle'

/**
 * What a conditional format adds to a cell's look. The library cannot write "not bold" or "not italic" in one: it leaves
 * the word out, so that the look would say nothing at all. A look is therefore never written as the absence of another.
 * A fill that is added is read from the background color (ECMA-376 part 1, 18.8.14; from memory).
 */
export function addedStyle(
  { bold, italic }: { bold?: boolean | null; italic?: boolean | null },
  letters: FileColor | undefined,
  ground: FileColor | undefined
): FileStyle {
  const font = {
    ...(bold ? { bold } : {}),
    ...(italic ? { italic } : {}),
    ...(letters ? { color: letters } : {})
  }
  return {
    ...(Object.keys(font).length > 0 ? { font } : {}),
    ...(ground ? { fill: { type: 'pattern', pattern: 'solid', fgColor: ground, bgColor: ground } } : {})
  }
}
