/**
 * A worksheet's XML without the cells and rows that hold nothing but looks, and with the numbers that are shown as
 * percentages as texts. Files have a million rows of blanks with a border; what is left here is what somebody typed. It is
 * done piece by piece, as the text of such a sheet would not fit into memory.
 */

import { shownPercent } from '../../../shared/numberFormats'
import { UnusablePackage } from './zipParts'

/** Pieces are put together to about this many characters before they are looked at. */
const lookedAt = 1 << 20

/** Most characters of a cell with all that is in it; more is no sheet. */
const longestWait = 128 * 1024 * 1024

const prefix = '(?:\\w+:)?'
/**
 * Tags that name their place: where cells do not, each takes its place from the one before. No tag of a cell or row is as
 * long as that, and a bound keeps a made-up one from taking forever.
 */
const placed = '\\s(?:[^<>]{0,300}?\\s)?r=[^<>]{0,300}?'
const blankCell = new RegExp(`<${prefix}c${placed}(?:/>|></${prefix}c>)`, 'g')
const blankRow = new RegExp(
  `<${prefix}row(?![^<>]{0,300}\\shidden=)${placed}(?:/>|>\\s*</${prefix}row>)`,
  'g'
)
/** What is in a cell, up to its end and never into the next one. */
const inside = `(?:(?!<${prefix}c[\\s/>])[^])*?`

const valueInCell = new RegExp(`(<${prefix}v>)([^<]+)<`)

/** A cell of a percent look: its number becomes a text, with or without a formula before it. */
function asPercent(cell: string): string {
  const end = cell.indexOf('>')
  const tag = cell.slice(0, end).replace(/\st=["']n["']/, '')
  const value = valueInCell.exec(cell)?.[2]
  const shown = value === undefined || /\st=/.test(tag) ? null : shownPercent(Number(value))
  return shown === null ? cell : `${tag} t="str"${cell.slice(end).replace(valueInCell, `$1${shown}<`)}`
}

/** The last place before which every cell is whole. */
function wholeUntil(xml: string): number {
  const rowEnd = xml.lastIndexOf('row>')
  return Math.max(rowEnd < 0 ? -1 : rowEnd + 4, xml.lastIndexOf('<c '), xml.lastIndexOf('<row '))
}

export class SheetSlimmer {
  private readonly percentCell: RegExp | null
  private waiting: string[] = []
  private length = 0
  private enough = lookedAt

  constructor(percentStyles: ReadonlySet<string>) {
    const styles = [...percentStyles].join('|')
    this.percentCell =
      styles === ''
        ? null
        : new RegExp(
            `<(${prefix})c\\s(?:[^<>]{0,300}?\\s)?s=["'](?:${styles})["'][^<>]{0,300}(?<!/)>${inside}</\\1c>`,
            'g'
          )
  }

  /** What can be handed on of the text so far. */
  add(text: string): string {
    this.waiting.push(text)
    this.length += text.length
    if (this.length > longestWait) throw new UnusablePackage('too large')
    if (this.length < this.enough) return ''
    const xml = this.waiting.join('')
    const until = wholeUntil(xml)
    // One cell as long as that: it is looked at again when twice as much has come.
    this.enough = until <= 0 ? 2 * this.length : lookedAt
    if (until <= 0) return ''
    this.waiting = [xml.slice(until)]
    this.length = xml.length - until
    return this.slim(xml.slice(0, until))
  }

  /** The rest. */
  end(): string {
    return this.slim(this.waiting.join(''))
  }

  private slim(xml: string): string {
    const typed = xml.replace(blankCell, '').replace(blankRow, '')
    return this.percentCell === null ? typed : typed.replace(this.percentCell, asPercent)
  }
}
