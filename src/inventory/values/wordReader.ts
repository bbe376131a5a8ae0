import { choices, isTick, listChoices, readChoice, type ChoiceName } from '../../../shared/choices'
import type { Problem } from '../../../shared/problems'
import { readHeaderText } from '../headers/headerText'
import { Noted, type Reading } from '../reading'
import type { ColumnCells, Filled } from './columnCells'
import { Tally } from './remarks'

const dead = /^(?:dead|tot|abgestorben|mort|morte|muerto|muerta)$/i

/** Reads the cells of a column of words: one of a choice, a tick, or live and dead. */
export class WordReader {
  /** Ticks for included bark, which do not say how far it reaches. */
  private readonly ticks = new Tally()
  /** Numbers that stand for words nobody has named. */
  private readonly scale = new Tally()

  /** Texts that say one thing in every cell. */
  private readonly plain = new Map<Filled, string>()
  /** Whether the column holds words of a choice. */
  readonly reads: boolean

  constructor(
    private readonly cells: ColumnCells,
    private readonly isMissing: (text: string, row: number) => boolean
  ) {
    this.reads = cells.column.reads.choice !== undefined
  }

  choice(cell: Filled, row: number, name = this.name): Reading<string> {
    const plain = this.plain.get(cell)
    if (plain !== undefined) return plain
    const text = String(cell)
    const found = readChoice(name, text)
    if (found !== null && name === 'includedBark' && isTick(text)) return this.tick(found, text, row)
    if (found !== null) {
      this.plain.set(cell, found)
      return found
    }
    if (this.isMissing(text, row)) return null
    if (this.isOnScale(name, text)) return this.count(this.scale, text, row)
    if (name === 'vigor' && dead.test(text.trim()))
      return new Noted('poor', this.cells.problem('vigor-dead', row))
    return this.cells.problem('not-a-choice', row, { choices: listChoices(name) })
  }

  flag(cell: Filled, row: number): Reading<boolean> {
    const found = this.choice(cell, row, 'flag')
    return typeof found === 'string' ? found === 'yes' : (found as Problem | null)
  }

  /**
   * Under a header that asks for dead wood alone, a tick and a yes mean dead; under one that asks for live wood alone, they
   * mean live. Where the header names both or neither, they say nothing.
   */
  dead(cell: Filled, row: number): Reading<boolean> {
    const text = String(cell).replace(/\s+[-–—]\s.*$|\s*[,;(/].*$/s, '')
    if (readChoice('flag', text) === null || readsAsLife(text)) {
      const found = this.choice(readsAsLife(text) ? text : cell, row)
      return typeof found === 'string' ? found === 'dead' : (found as Problem | null)
    }
    const { asksForDead, asksForLive } = this.asks
    if (asksForDead === asksForLive)
      return this.cells.problem('not-a-choice', row, { choices: listChoices(this.name) })
    const found = this.flag(cell, row)
    return typeof found === 'boolean' ? found === asksForDead : found
  }

  /** What the header asks for, by its words in any language. */
  private get asks(): { readonly asksForDead: boolean; readonly asksForLive: boolean } {
    if (this.asked === null) {
      const { notions } = readHeaderText(this.cells.match.header)
      this.asked = { asksForDead: notions.has('dead'), asksForLive: notions.has('live') }
    }
    return this.asked
  }

  private asked: { readonly asksForDead: boolean; readonly asksForLive: boolean } | null = null

  /** What is reported once of the column. */
  remarks(): Problem[] {
    const found: Problem[] = []
    const { ticks, scale, cells } = this
    if (ticks.first !== null) {
      const facts = {
        codes: ticks.named,
        count: ticks.counted,
        value: 'full',
        choices: listChoices('includedBark')
      }
      found.push(cells.problem('ticks-taken', ticks.first, facts))
    }
    if (scale.first !== null) {
      const [first = ''] = Object.keys(choices[this.name])
      const facts = {
        codes: scale.named,
        count: scale.counted,
        value: first,
        choices: listChoices(this.name)
      }
      found.push(cells.problem('choice-scale', 0, facts))
    }
    return found
  }

  /** In a column of 0, 1 and 2, a 1 is no tick. */
  private tick(found: string, text: string, row: number): string | null {
    if (this.isOnScale('includedBark', text)) return this.count(this.scale, text, row)
    if (found === 'full') this.ticks.add(row, text.trim())
    return found
  }

  private isOnScale(name: ChoiceName, text: string): boolean {
    return /^\s*\d+([.,]\d+)?\s*$/.test(text) && this.cells.conventions.scale(name) !== null
  }

  private count(tally: Tally, text: string, row: number): null {
    tally.add(row, text.trim())
    return null
  }

  private get name(): ChoiceName {
    const { choice } = this.cells.column.reads
    if (choice === undefined) throw new Error(`The column ${this.cells.column.field} names no choice`)
    return choice
  }
}

/** Words that say themselves whether a limb lives, as against a tick, a yes or a no. */
function readsAsLife(text: string): boolean {
  return /^\s*\p{L}{2}/u.test(text) && readChoice('live', text) !== null && readChoice('flag', text) === null
}
