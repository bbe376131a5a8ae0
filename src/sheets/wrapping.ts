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

/** Height in points of a row with so many lines of a font size. */
export function pointsForLines(lines: number, size: number): number {
  return Math.min(409, Math.ceil(lines * size * 1.3 + 5))
}

const newLines = /\r\n|\r|\n/
const otherSpace = /[^\S ]/

/** Whether all there is between the words is one plain space, and nothing around them. Looked at for every long text. */
function isPlain(text: string): boolean {
  if (text.includes('  ') || text.startsWith(' ') || text.endsWith(' ')) return false
  return !otherSpace.test(text)
}

/** A text in lines of at most so many characters, broken between words where it can be. */
export function foldText(text: string, width: number): string[] {
  if (isPlain(text)) return foldWords(text, width)
  return text.split(newLines).flatMap((paragraph) => foldWords(paragraph.trim().replace(/\s+/g, ' '), width))
}

/** As `foldText` breaks the text; more than one space between words is counted for what it is. */
function countLines(text: string, width: number): number {
  if (text.includes('\n') || text.includes('\r')) return foldText(text, width).length
  let lines = 1
  for (let start = 0; text.length - start > width; lines++)
    start = nextStart(text, lineEnd(text, start, width))
  return lines
}

/** Words with one space between them; a word longer than the line is broken where the line ends. */
function foldWords(words: string, width: number): string[] {
  const lines: string[] = []
  let start = 0
  while (words.length - start > width) {
    const end = lineEnd(words, start, width)
    lines.push(words.slice(start, end))
    start = nextStart(words, end)
  }
  lines.push(words.slice(start))
  return lines
}

/** Where a line that starts here ends: at the last space that fits, or where its width does. */
function lineEnd(words: string, start: number, width: number): number {
  const last = words.lastIndexOf(' ', start + width)
  return last > start ? last : start + width
}

function nextStart(words: string, end: number): number {
  return words.charAt(end) === ' ' ? end + 1 : end
}
