import type { Content } from './sheet'

/** A sheet's standard font is 11 points; documents are set in 10, so a little more fits on a line. */
const charactersPerWidth = 1.22

/** Lines that a text takes in a wrapped column of this width in characters. An estimate: fonts differ. */
export function linesNeeded(content: Content, width: number): number {
  return typeof content === 'string' ? foldText(content, Math.floor(width * charactersPerWidth)).length : 1
}

/** Height in points of a row with so many lines of a font size. */
export function pointsForLines(lines: number, size: number): number {
  return Math.min(409, Math.ceil(lines * size * 1.3 + 5))
}

/** A text in lines of at most so many characters, broken between words where it can be. */
export function foldText(text: string, width: number): string[] {
  const lines: string[] = []
  for (const paragraph of text.split(/\r\n|\r|\n/)) {
    let line = ''
    for (const word of paragraph.split(/\s+/).filter((part) => part !== '')) {
      if (line !== '' && line.length + 1 + word.length > width) {
        lines.push(line)
        line = ''
      }
      line = line === '' ? word : `${line} ${word}`
      while (line.length > width) {
        lines.push(line.slice(0, width))
        line = line.slice(width)
      }
    }
    lines.push(line)
  }
  return lines
}
