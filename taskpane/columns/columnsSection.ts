import { systems, type UnitSystem } from '../../shared/units'
import type { ColumnMatch, Inventory, ReadingChoices, ColumnChoices } from '../../src/inventory/inventory'
import { columnEntry, isLength } from './columnEntry'
import { el, fill, freshId } from '../parts/elements'
import { counted } from '../../shared/words/counts'

const systemNames: Record<UnitSystem, string> = {
  'in-ft': 'inches and feet',
  'cm-m': 'centimeters and meters'
}

/** Columns whose meaning or unit the header did not settle. */
export function isUncertain(match: ColumnMatch): boolean {
  if (match.field === null) return match.header.trim() !== ''
  return isLength(match.field) && !match.unitNamed
}

/** What was uncertain about the columns, with what it takes to settle it and plan again. */
export function columnsSection(
  { matches, system }: Inventory,
  choices: ReadingChoices,
  planWith: (choices: ReadingChoices) => void
): HTMLElement {
  const wanted: ColumnChoices = {
    system: choices.system ?? system,
    fields: { ...choices.fields },
    units: { ...choices.units }
  }
  const named = matches.filter(({ header, field }) => header.trim() !== '' || field !== null)
  const uncertain = named.filter(isUncertain)
  const list = el('div', { class: 'columns' })
  const show = (shown: readonly ColumnMatch[]): void => {
    fill(list, ...shown.map((match) => columnEntry(match, wanted)))
  }
  show(uncertain)
  const all = el('button', { type: 'button', class: 'button button-link' }, 'Show every column')
  all.addEventListener('click', () => {
    show(named)
    all.hidden = true
    list.querySelector('select')?.focus()
  })
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
    systemField(wanted),
    list,
    el(
      'div',
      { class: 'actions' },
      el(
        'button',
        {
          type: 'button',
          class: 'button button-primary',
          onclick: () => {
            planWith(wanted)
          }
        },
        'Plan again with these columns'
      ),
      all
    )
  )
}

function systemField(wanted: ColumnChoices): HTMLElement {
  const id = freshId('system')
  const select = el(
    'select',
    { id },
    ...(Object.keys(systems) as UnitSystem[]).map((system) =>
      el('option', { value: system, selected: system === wanted.system }, systemNames[system])
    )
  )
  select.addEventListener('change', () => {
    wanted.system = select.value as UnitSystem
  })
  return el('div', { class: 'field' }, el('label', { for: id }, 'Numbers without a unit are in'), select)
}
