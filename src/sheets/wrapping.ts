import { keepCompiled } from '../../shared/keepCompiled'
import { pointsPerWidth, printedLines } from './printedLines'
import type { Content } from './sheet'

/** Whether a content stands on one line of so many characters; anything but a text does. */
export function fits(content: Content, width: number): boolean {
  if (typeof content !== 'string') return true
  return content.length <= width && !content.includes('\n') && !content.includes('\r')
}

/** Lines that a text takes in a wrapped column of this width in characters, by the letters of the standard font. */
export function linesNeeded(content: Content, width: number, size = 10, bold = false): number {
  return typeof content === 'string' ? printedLines(content, width * pointsPerWidth, size, bold) : 1
}

/** Texts of a column whose lines are kept at most; the same few often stand in many rows. */
const mostKept = 200

/** The lines that the texts of a wrapped column take; each text is measured once. */
export class ColumnLines {
  private readonly known = new Map<string, number>()

  constructor(
    private readonly width: number,
    private readonly bold: boolean
  ) {}

  of(content: Content): number {
    if (typeof content !== 'string') return 1
    const known = this.known.get(content)
    if (known !== undefined) return known
    const lines = linesNeeded(content, this.width, 10, this.bold)
    if (this.known.size < mostKept) this.known.set(content, lines)
    return lines
  }
}

keepCompiled(new ColumnLines(0, false))

/** Height in points of a row with so many lines of a font size. */
export function pointsForLines(lines: number, size: number): number {
  return Math.min(409, Math.ceil(lines * size * 1.3 + 5))
}
