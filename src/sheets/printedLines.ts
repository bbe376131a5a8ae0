/**
 * Widths of the characters from space to ~ in the standard font of sheets, thousandths of the size: measured in Carlito,
 * which has the measures of Calibri.
 */
const widths =
  '226 326 401 498 507 715 682 221 303 303 498 498 250 306 252 386 507 507 507 507 507 507 507 507 507 507 268 268 498 498 498 463 894 579 544 533 615 488 459 631 623 252 319 520 420 855 646 662 517 673 543 459 487 642 567 890 519 487 468 307 386 307 498 498 291 479 525 423 525 498 305 471 525 229 239 455 229 799 525 527 525 525 349 391 335 525 452 715 433 453 395 314 460 314 498'
    .split(' ')
    .map(Number)

/** Letters with marks, signs and other alphabets are about this wide; those of East Asia fill a square. */
const [otherWidth, squareWidth] = [600, 1000] as const

/** Points of a character of column width, 7 pixels at 96 to 72. */
export const pointsPerWidth = 5.25

/** Bold letters are this much wider at most. */
const bolder = 1.05

/** What a spreadsheet may set wider than the font says. */
const slack = 1.03

/** The width of each of the first characters of Unicode, in which nearly every text is written. */
const known = Float64Array.from({ length: 0x250 }, (_none, code) => widths[code - 32] ?? otherWidth)

function widthOf(code: number): number {
  return known[code] ?? (code >= 0x2e80 ? squareWidth : otherWidth)
}

/** Points that a text takes on one line in a size of the standard font. */
export function printedPoints(text: string, size: number, bold = false): number {
  let width = 0
  for (let at = 0; at < text.length; at++) width += widthOf(text.charCodeAt(at))
  return (width * size * slack * (bold ? bolder : 1)) / 1000
}

/** Lines that a text takes in a column of so many points, broken between words where it can be. */
export function printedLines(text: string, points: number, size: number, bold = false): number {
  if (printedPoints(text, size, bold) <= points && !/[\r\n]/.test(text)) return 1
  const space = printedPoints(' ', size, bold)
  let lines = 0
  for (const paragraph of text.split(/\r\n|\r|\n/)) {
    lines += 1
    let used = 0
    for (const word of paragraph.split(' ')) {
      const width = printedPoints(word, size, bold)
      if (used > 0 && used + space + width > points) {
        lines += 1
        used = 0
      }
      const over = Math.floor(Math.max(0, width - 1e-9) / points)
      lines += over
      used += (used > 0 ? space : 0) + width - over * points
    }
  }
  return lines
}

/** A text in lines of at most so many points, broken between words where it can be. */
export function printedFold(text: string, points: number, size: number, bold = false): string[] {
  const lines = text.split(/\r\n|\r|\n/).flatMap((line) => foldParagraph(line, points, size, bold))
  return lines.length === 0 ? [''] : lines
}

function foldParagraph(text: string, points: number, size: number, bold: boolean): string[] {
  const space = printedPoints(' ', size, bold)
  const lines: string[] = []
  let line = ''
  let used = 0
  for (const word of text.split(/\s+/)) {
    const width = printedPoints(word, size, bold)
    if (line !== '' && used + space + width > points) {
      lines.push(line)
      line = ''
    }
    used = line === '' ? width : used + space + width
    line = line === '' ? word : `${line} ${word}`
    while (used > points && line.length > 1) {
      const part = fitting(line, points, size, bold)
      lines.push(line.slice(0, part))
      line = line.slice(part)
      used = printedPoints(line, size, bold)
    }
  }
  if (line !== '') lines.push(line)
  return lines
}

/** How many of the first characters of a word go on a line, one at least and no half of a sign. */
function fitting(word: string, points: number, size: number, bold: boolean): number {
  let length = 1
  while (length < word.length && printedPoints(word.slice(0, length + 1), size, bold) <= points) length++
  const code = word.charCodeAt(length - 1)
  return length > 1 && code >= 0xd800 && code < 0xdc00 ? length - 1 : length
}
