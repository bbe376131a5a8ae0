import { keepCompiled } from '../../shared/keepCompiled'
import { countLines } from '../../shared/folding'
import type { Content } from './sheet'

/** A sheet's standard font is 11 points; documents are set in 10, so a little more fits on a line. */
const charactersPerWidth = 1.22

/** Whether a content stands on one line of so many characters; anything but a text does. */
export function fits(content: Content, width: number): boolean {
  if (typeof content !== 'string') return true
  return content.length <= width && !content.includes('\n') && !content.includes('\r')
}

/** Lines that a text takes in a wrapped column of this width in characters. An estimate: fonts differ. */
export function linesNeeded(content: Content, width: number): number {
  const room = Math.floor(width * charactersPerWidth)
  return fits(content, room) ? 1 : countLines(content as string, room)
}

/** The lines that the texts of a wrapped column take, from the top down: the same text often stands below itself. */
export class ColumnLines {
  private last: Content = null
  private lines = 1

  constructor(private readonly width: number) {}

  of(content: Content): number {
    if (content !== this.last) {
      this.last = content
      this.lines = linesNeeded(content, this.width)
    }
    return this.lines
  }
}

keepCompiled(new ColumnLines(0))

/** Height in points of a row with so many lines of a font size. */
export function pointsForLines(lines: number, size: number): number {
  return Math.min(409, Math.ceil(lines * size * 1.3 + 5))
}
