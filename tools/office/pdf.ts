/** What a printed page holds: its words with their places, and how much of it is covered. */
import { readFileSync, readdirSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { plainText } from '../../src/file/file-library/xmlText'
import { run } from './officeSuite'

const wanted = 'Poppler’s utilities'

/** A word and its box in points from the top left. */
export interface Word {
  readonly text: string
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

export interface PrintedPage {
  readonly width: number
  readonly height: number
  readonly words: readonly Word[]
  /** The words in the order of the page, with single spaces. */
  readonly text: string
  /** The part of the page that is not white, at one square of an inch's 25th each. */
  readonly ink: number
}

const attribute = (tag: string, name: string) => Number(new RegExp(`${name}="([\\d.-]+)"`).exec(tag)?.[1])

function wordsOf(page: string): Word[] {
  return [...page.matchAll(/<word ([^>]*)>([^<]*)<\/word>/g)].map(([, tag = '', text = '']) => ({
    text: plainText(text),
    left: attribute(tag, 'xMin'),
    top: attribute(tag, 'yMin'),
    right: attribute(tag, 'xMax'),
    bottom: attribute(tag, 'yMax')
  }))
}

/** The share of pixels of a picture (PGM, a byte each) that are darker than paper. */
function inkOf(picture: Buffer): number {
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(picture.subarray(0, 64).toString('latin1'))
  if (head === null) throw new Error('A page came out as no gray picture.')
  const pixels = picture.subarray(head[0].length)
  let dark = 0
  for (const pixel of pixels) if (pixel < 250) dark += 1
  return dark / pixels.length
}

/** The pages of a PDF; pictures of them are left beside it, for a person to look at. */
export function printedPages(pdf: string): PrintedPage[] {
  const boxes = run('pdftotext', ['-bbox', '-enc', 'UTF-8', pdf, '-'], wanted)
  const stem = join(dirname(pdf), basename(pdf, '.pdf'))
  run('pdftoppm', ['-gray', '-r', '25', pdf, stem], wanted)
  run('pdftoppm', ['-png', '-r', '60', pdf, stem], wanted)
  const pictures = readdirSync(dirname(pdf)).filter(
    (name) => name.startsWith(`${basename(stem)}-`) && name.endsWith('.pgm')
  )
  const inks = pictures.sort().map((name) => inkOf(readFileSync(join(dirname(pdf), name))))
  return [...boxes.matchAll(/<page ([^>]*)>([\s\S]*?)<\/page>/g)].map(([, tag = '', body = ''], at) => {
    const words = wordsOf(body)
    return {
      width: attribute(tag, 'width'),
      height: attribute(tag, 'height'),
      words,
      text: words.map(({ text }) => text).join(' '),
      ink: inks[at] ?? 0
    }
  })
}

/** Pairs of words of which one lies upon the other: what does not fit into a cell runs under its neighbor. */
export function overlaps({ words }: PrintedPage): [Word, Word][] {
  const found: [Word, Word][] = []
  const byTop = [...words].sort((a, b) => a.top - b.top)
  byTop.forEach((word, at) => {
    for (let next = at + 1; next < byTop.length; next++) {
      const other = byTop[next] as Word
      if (other.top >= word.bottom) break
      const across = Math.min(word.right, other.right) - Math.max(word.left, other.left)
      const down = Math.min(word.bottom, other.bottom) - other.top
      const lower = Math.min(word.bottom - word.top, other.bottom - other.top)
      if (across > 1.5 && down > 0.45 * lower) found.push([word, other])
    }
  })
  return found
}
