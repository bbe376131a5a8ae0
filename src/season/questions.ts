import { readChoice } from '../../shared/choices'
import type { Cell } from '../../shared/cells'
import { monthNames } from '../../shared/words/dates'
import type { TimingAnswers } from './timing'

interface Question {
  /** As the Rules sheet asks it. */
  asks: string
  /** What may be answered, as a sentence has it. */
  choices: string
  /** Why it is asked. */
  why: string
}

/** What is asked about the season of the work. */
export const questions = {
  region: {
    asks: 'Region of the trees',
    choices: 'a place in words, for instance a state and county',
    why: 'Windows for oak wilt and nesting differ by region; none is assumed.'
  },
  visitMonth: {
    asks: 'Month of the first visit',
    choices: 'a month, 1 to 12 or its name',
    why: 'Blank: the day the plan is made for.'
  },
  nest: {
    asks: 'Was an active nest found?',
    choices: 'yes or no',
    why: 'Active nests are protected (Migratory Bird Treaty Act). Look before work begins.'
  },
  stress: {
    asks: 'Drought or frost stress this season?',
    choices: 'yes or no',
    why: 'Stressed trees keep their live wood.'
  },
  flush: {
    asks: 'Are new leaves coming out at the visit?',
    choices: 'yes or no',
    why: 'Bark is tender in the spring flush.'
  }
} as const satisfies Record<string, Question>

export type QuestionKey = keyof typeof questions

/** A month by its number, name or the first three letters of it; NaN for anything else. */
export function readMonth(cell: Cell | undefined): number {
  const text = String(cell ?? '')
    .trim()
    .toLowerCase()
  const number = /^\d{1,2}$/.test(text) ? Number(text) : NaN
  if (number >= 1 && number <= 12) return number
  const named = monthNames.findIndex(
    (name) => text.length >= 3 && name.toLowerCase().startsWith(text.replace(/\.$/, ''))
  )
  return named < 0 ? NaN : named + 1
}

/** Puts an answer where it belongs; false where it cannot be read. */
export function readAnswer(key: QuestionKey, cell: Cell | undefined, answers: TimingAnswers): boolean {
  if (key === 'region') {
    if (typeof cell !== 'string' || !/\p{L}/u.test(cell)) return false
    answers.region = cell.trim()
    return true
  }
  if (key === 'visitMonth') {
    const month = readMonth(cell)
    if (Number.isNaN(month)) return false
    answers.visitMonth = month
    return true
  }
  const yes = readChoice('flag', String(cell))
  if (yes === null) return false
  answers[key] = yes === 'yes'
  return true
}
