/** Texts in lines of at most so many characters, for sheets, drawings and terminals. */

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
