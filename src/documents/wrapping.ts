import type { Content } from './sheet'

/** A sheet's standard font is 11 points; documents are set in 10, so a little more fits on a line. */
const charactersPerWidth = 1.22

/** Lines that a text takes in a wrapped column of this width in characters. An estimate: fonts differ. */
export function linesNeeded(content: Content, width: number): number {
  if (typeof content !== 'string') return 1
  const room = Math.floor(width * charactersPerWidth)
  return content.length <= room && !newLine.test(content) ? 1 : foldText(content, room).length
}

/** Height in points of a row with so many lines of a font size. */
export function pointsForLines(lines: number, size: number): number {
  return Math.min(409, Math.ceil(lines * size * 1.3 + 5))
}

const newLine = /[\r\n]/
const newLines = /\r\n|\r|\n/
/** Space that is not one plain space between two words. */
const irregularSpace = /[^\S ]| {2}|^ | $/

/** A text in lines of at most so many characters, broken between words where it can be. */
export function foldText(text: string, width: number): string[] {
  if (!irregularSpace.test(text)) return foldWords(text, width)
  return text.split(newLines).flatMap((paragraph) => foldWords(paragraph.trim().replace(/\s+/g, ' '), width))
}

/** Words with one space between them; a word longer than the line is broken where the line ends. */
function foldWords(words: string, width: number): string[] {
  const lines: string[] = []
  let start = 0
  while (words.length - start > width) {
    const space = words.lastIndexOf(' ', start + width)
    const end = space > start ? space : start + width
    lines.push(words.slice(start, end))
    start = space > start ? end + 1 : end
  }
  lines.push(words.slice(start))
  return lines
}
