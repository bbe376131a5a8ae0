import { columnOf } from '../../shared/columns'
import { counted } from '../../shared/words/counts'
import { listed } from '../../shared/words/lists'
import type { ReadingChoices } from '../../src/inventory/inventory'
import { button, el } from '../parts/elements'
import type { Planned } from '../planning'
import { ColumnAnswers } from './columnAnswers'
import { columnEntry, readAs } from './columnEntry'
import { columnPlace } from './columnPlace'
import { columnQuestions, type ColumnQuestion } from './questions'

function said({ match, needed }: ColumnQuestion): string {
  if (needed.length === 0) return readAs(match)
  const names = needed.map((field) => columnOf(field).name.toLowerCase())
  return `Not used so far. No column gives the ${listed(names)}, which limbs need: is it this one?`
}

/** The columns that are read by a guess, or that limbs wait for, with one button; null where none is. */
export function columnsCard(
  { plan: { inventory }, choices, read }: Planned,
  planWith: (choices: ReadingChoices) => void
): HTMLElement | null {
  const questions = columnQuestions(inventory)
  if (questions.length === 0) return null
  const answers = new ColumnAnswers(inventory.matches, choices)
  for (const { match, open } of questions) if (!open) answers.give(match, { field: match.field })
  return el(
    'section',
    { class: 'columns-card', 'aria-label': 'Columns to confirm' },
    el('h3', { class: 'columns-card-head' }, `${counted(questions.length, 'column')} to confirm`),
    el(
      'p',
      { class: 'aside' },
      'What a header leaves open is asked here. Choose or correct it, then plan again: the workbook keeps the answers.'
    ),
    ...questions.map((question) =>
      columnEntry(question.match, answers, {
        where: columnPlace(question.match, inventory, read),
        said: said(question),
        guesses: question.guesses,
        open: question.open,
        heading: 'h4'
      })
    ),
    el(
      'div',
      { class: 'actions' },
      button(
        'Plan again',
        () => {
          planWith(answers.choices())
        },
        'primary'
      )
    )
  )
}
