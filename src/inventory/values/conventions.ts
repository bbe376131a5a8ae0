import { isBlank, type Cell } from '../../../shared/cells'
import { readChoice, type ChoiceName } from '../../../shared/choices'
import { numberIn, styleOf, type NumberStyle } from '../../../shared/numbers'
import { isNines } from './missing'

/** How the shares of a column are written: 5 for 5 %, 0.05 for 5 %, or 0.05 beside texts such as "5 %". */
export type ShareWriting = 'percent' | 'fraction' | 'mixed'

/** A code of nines is more than this many times the largest other value of its column (house judgment). */
const farOutside = 3

const plainNumber = /^\d+(?:[.,]\d+)?$/

/** What holds for a whole column, each told from all its cells when a cell first asks. */
export class Conventions {
  private styleKnown: { readonly style: NumberStyle } | null = null
  private sharesKnown: ShareWriting | null = null
  private codesKnown: ReadonlySet<number> | null = null
  private scaleKnown: { readonly scale: readonly string[] | null } | null = null

  private letterOKnown: { readonly letter: 'e' | 'w' | null } | null = null

  constructor(private readonly cells: () => Iterable<Cell | undefined>) {}

  /** Which sign stands before the decimals; the column is not asked for a text without one. */
  styleFor(text: string): NumberStyle {
    return /[.,]\d/.test(text) ? this.style : null
  }

  private get style(): NumberStyle {
    return (this.styleKnown ??= { style: styleOf(this.cells()) }).style
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
    const [east, west] = [uses('e'), uses('w')]
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
