import { choices, isTick, listChoices, readChoice, type ChoiceName } from '../../../shared/choices'
import type { Problem } from '../../../shared/problems'
import { readHeaderText } from '../headers/headerText'
import { Noted, type Reading } from '../reading'
import type { ColumnCells, Filled } from './columnCells'
import { legendIn } from './legend'
import { Tally } from './remarks'

const dead = /^(?:dead|tot|abgestorben|mort|morte|muerto|muerta)$/i

/** Reads the cells of a column of words: one of a choice, a tick, or live and dead. */
export interface WordReader {
  /** Whether the column holds words of a choice. */
  readonly reads: boolean
  /** What the cells say that say one thing in every row, as they are read; null in a column of other words than choices. */
  readonly known: ReadonlyMap<Filled, string> | null
  choice(cell: Filled, row: number): Reading<string>
  /** The word of a cell that is a choice; null where it is none. */
  word(cell: Filled): string | null
  flag(cell: Filled, row: number): Reading<boolean>
  /**
   * Under a header that asks for dead wood alone, a tick and a yes mean dead; under one that asks for live wood alone, they
   * mean live. Where the header names both or neither, they say nothing.
   */
  dead(cell: Filled, row: number): Reading<boolean>
  /** What is reported once of the column. */
  remarks(): Problem[]
}

export function wordReader(
  cells: ColumnCells,
  isMissing: (text: string, row: number) => boolean
): WordReader {
  const { kind, choice: named, unread } = cells.column.reads
  const isAsked = unread === 'row'
  /** Ticks for included bark, which do not say how far it reaches. */
  const ticks = new Tally()
  /** Numbers that stand for words nobody has named. */
  const scale = new Tally()
  /** Texts that say one thing in every cell. */
  const plain = new Map<Filled, string>()
  let legendKnown: ReadonlyMap<string, string> | null = null
  let asked: { readonly asksForDead: boolean; readonly asksForLive: boolean } | null = null

  function nameOf(): ChoiceName {
    if (named === undefined) throw new Error(`The column ${cells.column.field} names no choice`)
    return named
  }

  function choiceOf(cell: Filled, row: number, name: ChoiceName): Reading<string> {
    const before = plain.get(cell)
    if (before !== undefined) return before
    const text = String(cell)
    const found = letterOf(name, text) ?? readChoice(name, text)
    if (found !== null && name === 'includedBark' && isTick(text)) return tick(found, text, row)
    if (found !== null) {
      plain.set(cell, found)
      return found
    }
    if (isMissing(text, row)) return null
    const told = legend(name).get(text.trim())
    if (told !== undefined) return told
    if (isOnScale(name, text)) return isAsked ? askedNumber(name, row) : count(scale, text, row)
    if (name === 'vigor' && dead.test(text.trim())) return new Noted('poor', cells.problem('vigor-dead', row))
    return cells.problem('not-a-choice', row, { choices: listChoices(name) })
  }

  /** What the header itself tells of numbers: "Condition (1=good, 2=fair)". */
  function legend(name: ChoiceName): ReadonlyMap<string, string> {
    return (legendKnown ??= legendIn(cells.match.header, name))
  }

  function letterOf(name: ChoiceName, text: string): string | null {
    const letter = text.trim().toLowerCase().replace(/\.$/, '')
    return letter.length === 1 ? (cells.conventions.letters(name)?.get(letter) ?? null) : null
  }

  function word(cell: Filled): string | null {
    const found = readChoice(nameOf(), String(cell))
    if (found !== null) plain.set(cell, found)
    return found
  }

  function flag(cell: Filled, row: number): Reading<boolean> {
    const found = choiceOf(cell, row, 'flag')
    return typeof found === 'string' ? found === 'yes' : (found as Problem | null)
  }

  function deadOf(cell: Filled, row: number): Reading<boolean> {
    const text = String(cell).replace(/\s+[-–—]\s.*$|\s*[,;(/].*$/s, '')
    if (readChoice('flag', text) === null || readsAsLife(text)) {
      const found = choiceOf(readsAsLife(text) ? text : cell, row, nameOf())
      return typeof found === 'string' ? found === 'dead' : (found as Problem | null)
    }
    const { asksForDead, asksForLive } = (asked ??= askedBy(cells.match.header))
    if (asksForDead === asksForLive)
      return cells.problem('not-a-choice', row, { choices: listChoices(nameOf()) })
    const found = flag(cell, row)
    return typeof found === 'boolean' ? found === asksForDead : found
  }

  function remarks(): Problem[] {
    const found: Problem[] = []
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
      const [first = ''] = Object.keys(choices[nameOf()])
      const facts = {
        codes: scale.named,
        count: scale.counted,
        value: first,
        choices: listChoices(nameOf())
      }
      found.push(cells.problem('choice-scale', 0, facts))
    }
    return found
  }

  /** In a column of 0, 1 and 2, a 1 is no tick. */
  function tick(found: string, text: string, row: number): string | null {
    if (isOnScale('includedBark', text)) return count(scale, text, row)
    if (found === 'full') ticks.add(row, text.trim())
    return found
  }

  function isOnScale(name: ChoiceName, text: string): boolean {
    return /^\s*\d+([.,]\d+)?\s*$/.test(text) && cells.conventions.scale(name) !== null
  }

  function askedNumber(name: ChoiceName, row: number): Problem {
    const [first = ''] = Object.keys(choices[name])
    return cells.problem('choice-number', row, { value: first, choices: listChoices(name) })
  }

  function count(tally: Tally, text: string, row: number): null {
    tally.add(row, text.trim())
    return null
  }

  return {
    reads: named !== undefined,
    known: kind === 'choice' || kind === 'growth' ? plain : null,
    choice: (cell, row) => choiceOf(cell, row, nameOf()),
    word,
    flag,
    dead: deadOf,
    remarks
  }
}

/** What a header asks for, by its words in any language. */
function askedBy(header: string): { readonly asksForDead: boolean; readonly asksForLive: boolean } {
  const { notions } = readHeaderText(header)
  return { asksForDead: notions.has('dead'), asksForLive: notions.has('live') }
}

/** Words that say themselves whether a limb lives, as against a tick, a yes or a no. */
function readsAsLife(text: string): boolean {
  return /^\s*\p{L}{2}/u.test(text) && readChoice('live', text) !== null && readChoice('flag', text) === null
}
