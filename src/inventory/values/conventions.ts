import { isBlank, type Cell } from '../../../shared/cells'
import { readChoice, type ChoiceName } from '../../../shared/choices'
import { numberIn, styleOf, type NumberStyle } from '../../../shared/numbers'
import { letterScale } from './letterScales'
import { isNines } from './missing'

/** How the shares of a column are written: 5 for 5 %, 0.05 for 5 %, or 0.05 beside texts such as "5 %". */
export type ShareWriting = 'percent' | 'fraction' | 'mixed'

/** A code of nines is more than this many times the largest other value of its column (house judgment). */
const farOutside = 3

const plainNumber = /^\d+(?:[.,]\d+)?$/

/** A sign that was taken by the sizes it makes. */
export interface SignBySize {
  readonly row: number
  readonly sign: 'comma' | 'point'
  readonly isOfThousands: boolean
}

/** What holds for a whole column, each told from all its cells when a cell first asks. */
export class Conventions {
  private styleKnown: { readonly style: NumberStyle } | null = null
  private sharesKnown: ShareWriting | null = null
  private codesKnown: ReadonlySet<number> | null = null
  private scaleKnown: { readonly scale: readonly string[] | null } | null = null

  private lettersKnown: { readonly of: ReadonlyMap<string, string> | null } | null = null

  private letterOKnown: { readonly letter: 'e' | 'w' | null } | null = null

  /** Where nothing but the sizes tells which sign stands before the decimals: what was taken, and the first such cell. */
  signBySize: SignBySize | null = null

  /** `isOrdinary` tells of a number whether it is a size that the column may hold; null where no size is known. */
  constructor(
    private readonly cells: () => Iterable<Cell | undefined>,
    private readonly isOrdinary: ((value: number) => boolean | null) | null = null
  ) {}

  /** Which sign stands before the decimals; the column is not asked for a text without one. */
  styleFor(text: string): NumberStyle {
    return /[.,]\d/.test(text) ? this.style : null
  }

  private get style(): NumberStyle {
    return (this.styleKnown ??= { style: styleOf(this.cells()) ?? this.bySize() }).style
  }

  /**
   * The style in which the sizes are ordinary, where they are so in one of the two only and the column is mostly written so: a
   * lone cell is a slip that may have been meant in either way.
   */
  private bySize(): NumberStyle {
    const { isOrdinary } = this
    if (isOrdinary === null) return null
    const open: { row: number; low: number; high: number; sign: 'comma' | 'point' }[] = []
    let row = 0
    let filled = 0
    for (const cell of this.cells()) {
      row++
      if (!isBlank(cell)) filled++
      const read = typeof cell === 'string' ? numberIn(cell, null) : null
      if (read === null || typeof read === 'number' || read.why !== 'two-ways') continue
      open.push({ row, low: Number(read.low), high: Number(read.high), sign: read.sign })
    }
    const [first] = open
    const all = (size: 'low' | 'high'): boolean => open.every((each) => isOrdinary(each[size]) === true)
    const none = (size: 'low' | 'high'): boolean => open.every((each) => isOrdinary(each[size]) === false)
    if (first === undefined || open.length < 2 || open.length * 2 < filled) return null
    if (open.some(({ sign }) => sign !== first.sign)) return null
    const isHigh = all('high') && none('low')
    if (!isHigh && !(all('low') && none('high'))) return null
    this.signBySize = { row: first.row, sign: first.sign, isOfThousands: isHigh }
    return (first.sign === 'comma') === isHigh ? '.' : ','
  }

  /** How the numbers of a column of shares are meant whose header does not say percent. */
  get shares(): ShareWriting {
    return (this.sharesKnown ??= this.tellShares())
  }

  /** Numbers of nines that stand for "not measured": they repeat, and are far above all others. */
  get codes(): ReadonlySet<number> {
    return (this.codesKnown ??= this.tellCodes())
  }

  /** What the letter O stands for among compass points: west where E stands for east, and the other way round. */
  get letterO(): 'e' | 'w' | null {
    return (this.letterOKnown ??= { letter: this.tellLetterO() }).letter
  }

  /** What single letters stand for, where only the other letters of the column tell it. */
  letters(choice: ChoiceName): ReadonlyMap<string, string> | null {
    return (this.lettersKnown ??= { of: letterScale(choice, this.cells()) }).of
  }

  /** The numbers of a column of words that holds numbers alone, of which one at least is no word of the choice; or null. */
  scale(choice: ChoiceName): readonly string[] | null {
    return (this.scaleKnown ??= { scale: this.tellScale(choice) }).scale
  }

  private tellShares(): ShareWriting {
    let signs = false
    for (const cell of this.cells()) {
      if (typeof cell === 'string' && cell.includes('%')) signs = true
      else if (!isBlank(cell)) {
        const value = numberIn(cell ?? null, this.style)
        if (typeof value === 'number' && value > 1 && value <= 100) return 'percent'
      }
    }
    return signs ? 'mixed' : 'fraction'
  }

  private tellCodes(): ReadonlySet<number> {
    const counts = new Map<number, number>()
    let most = 0
    for (const cell of this.cells()) {
      const value =
        typeof cell === 'number' ? cell : typeof cell === 'string' ? numberIn(cell, this.style) : 0
      if (typeof value !== 'number') continue
      if (isNines(value)) counts.set(value, (counts.get(value) ?? 0) + 1)
      else most = Math.max(most, value)
    }
    const codes = [...counts].filter(([value, count]) => count > 1 && most > 0 && value > most * farOutside)
    return new Set(codes.map(([value]) => value))
  }

  private tellLetterO(): 'e' | 'w' | null {
    const points = [...this.cells()].map((cell) =>
      String(cell ?? '')
        .trim()
        .toLowerCase()
    )
    const uses = (letter: string): boolean =>
      points.some((point) => /^[nsewo]{1,3}$/.test(point) && point.includes(letter))
    const speaks = (words: RegExp): boolean => points.some((point) => words.test(point))
    const east = uses('e') || speaks(/ouest|oeste|\best\b|\beste\b|\bsu[dr]\b|norte/)
    const west = uses('w') || speaks(/west|\bost|süd/)
    return east === west ? null : east ? 'w' : 'e'
  }

  private tellScale(choice: ChoiceName): readonly string[] | null {
    const found = new Set<string>()
    for (const cell of this.cells()) {
      if (isBlank(cell)) continue
      const text = String(cell).trim()
      if (!plainNumber.test(text)) return null
      found.add(text)
    }
    const unread = [...found].some((text) => readChoice(choice, text) === null)
    return unread ? [...found].sort((a, b) => Number(a) - Number(b)) : null
  }
}
