import { systems, type UnitSystem } from '../../shared/units'
import { counted } from '../../shared/words/counts'
import type { ColumnMatch, ReadingChoices } from '../../src/inventory/inventory'
import { button, el, fill, freshId } from '../parts/elements'
import type { Planned } from '../planning'
import { ColumnAnswers } from './columnAnswers'
import { columnEntry, isLength, readAs } from './columnEntry'
import { columnPlace } from './columnPlace'

export const systemNames: Record<UnitSystem, string> = {
  'in-ft': 'inches and feet',
  'cm-m': 'centimeters and meters'
}

/** Columns whose meaning or unit the header did not settle, and nobody has. */
export function isUncertain(match: ColumnMatch): boolean {
  if (match.field === null) return match.header.trim() !== '' && match.confidence !== 'chosen'
  return match.confidence === 'likely' || (isLength(match.field) && !match.unitNamed)
}

/** What was uncertain about the columns, with what it takes to settle it and plan again. */
export function columnsSection(
  { plan: { inventory }, choices, read }: Planned,
  planWith: (choices: ReadingChoices) => void
): HTMLElement {
  const { matches, system } = inventory
  const answers = new ColumnAnswers(matches, choices)
  const named = matches.filter(({ header, field }) => header.trim() !== '' || field !== null)
  const uncertain = named.filter(isUncertain)
  const list = el('div', { class: 'columns' })
  const entry = (match: ColumnMatch): HTMLElement => {
    const { field, runnerUp } = match
    const where = columnPlace(match, inventory, read)
    const guesses = [field, runnerUp].filter((guess) => guess !== null)
    return columnEntry(match, answers, { where, said: readAs(match), guesses, open: false, heading: 'h3' })
  }
  const show = (shown: readonly ColumnMatch[]): void => {
    fill(list, ...shown.map(entry))
  }
  show(uncertain)
  const all = button(
    'Show every column',
    () => {
      show(named)
      all.hidden = true
      list.querySelector('select')?.focus()
    },
    'link'
  )
  all.hidden = uncertain.length === named.length
  return el(
    'div',
    {},
    el(
      'p',
      {},
      uncertain.length === 0
        ? `All ${counted(named.length, 'column')} were recognized, with their units.`
        : `${counted(uncertain.length, 'column')} of ${named.length} left a doubt. Correct what is wrong and plan again.`
    ),
    systemField(answers, system),
    list,
    el(
      'div',
      { class: 'actions' },
      button(
        'Plan again with these columns',
        () => {
          planWith(answers.choices())
        },
        'primary'
      ),
      all
    )
  )
}

function systemField(answers: ColumnAnswers, read: UnitSystem): HTMLElement {
  const id = freshId('system')
  const select = el(
    'select',
    { id },
    ...(Object.keys(systems) as UnitSystem[]).map((system) =>
      el('option', { value: system, selected: system === (answers.system ?? read) }, systemNames[system])
    )
  )
  select.addEventListener('change', () => {
    answers.system = select.value as UnitSystem
  })
  return el('div', { class: 'field' }, el('label', { for: id }, 'Numbers without a unit are in'), select)
}
