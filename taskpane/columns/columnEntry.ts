import { columnOf, columns, type Field } from '../../shared/columns'
import type { LengthUnit } from '../../shared/units'
import type { ColumnMatch } from '../../src/inventory/inventory'
import { lengthOf } from '../../src/inventory/lengthOf'
import { el, fill, freshId } from '../parts/elements'
import type { ColumnAnswers } from './columnAnswers'

const unitNames: Record<LengthUnit, string> = {
  mm: 'millimeters',
  cm: 'centimeters',
  m: 'meters',
  in: 'inches',
  ft: 'feet',
  yd: 'yards'
}

/** A column that holds lengths, whose unit therefore matters. */
export function isLength(field: Field): boolean {
  const length = lengthOf(field)
  return length === 'diameter' || length === 'height'
}

/** A column whose numbers have a unit; growth may also be a word, which needs none. */
function hasUnit(field: Field): boolean {
  return lengthOf(field) !== null
}

/** How a column is shown. */
export interface EntryLook {
  /** Where it stands and what is in it. */
  readonly where: string
  /** What a person should know of it. */
  readonly said: string
  /** What it likely gives, which the list of meanings begins with. */
  readonly guesses: readonly Field[]
  /** Nothing is taken for the answer until a person chooses. */
  readonly open: boolean
  readonly heading: 'h3' | 'h4'
}

/** One column: what it was read as, with selects for its meaning and its unit. */
export function columnEntry(match: ColumnMatch, answers: ColumnAnswers, look: EntryLook): HTMLElement {
  const { letters } = match
  const header = match.header.trim() === '' ? 'No header' : match.header
  const unitPlace = el('div', { class: 'field' })
  const showUnit = (): void => {
    const now = answers.fieldOf(match)
    fill(unitPlace, now !== null && hasUnit(now) && unitField(match, answers))
    unitPlace.hidden = unitPlace.childNodes.length === 0
  }
  showUnit()
  return el(
    'section',
    { class: 'column', 'aria-label': `Column ${letters}` },
    el(look.heading, {}, el('span', { class: 'cell' }, letters), ` ${header}`),
    el('p', { class: 'aside' }, look.where),
    look.said !== '' && el('p', { class: 'aside' }, look.said),
    meaningField(match, answers, look, showUnit),
    unitPlace
  )
}

/** What a column was read as, and how far that is an assumption. */
export function readAs(match: ColumnMatch): string {
  if (match.field === null)
    return match.confidence === 'chosen' ? 'Not used, as was answered.' : 'Not recognized, so not used.'
  const { name, use } = columnOf(match.field)
  if (use === 'record') return `Read as ${name}, which is kept and changes nothing in the plan.`
  if (!hasUnit(match.field)) return `Read as ${name}.`
  const unit = match.unit === null ? 'no unit' : unitNames[match.unit]
  if (!isLength(match.field)) return `Read as ${name}; numbers in ${unit} a year.`
  if (match.unitNamed && match.confidence === 'chosen') return `Read as ${name}, in ${unit}.`
  return match.unitNamed
    ? `Read as ${name}, in ${unit} as the header says.`
    : `Read as ${name}; the header names no unit, so ${unit} was assumed.`
}

/** Stands for a question that is not answered. */
const unanswered = '?'

function options(field: Field | null, { guesses, open }: Pick<EntryLook, 'guesses' | 'open'>): HTMLElement[] {
  const option = (each: Field): HTMLElement =>
    el('option', { value: each, selected: !open && each === field }, columnOf(each).name)
  const group = (label: string, fields: readonly Field[]): HTMLElement =>
    el('optgroup', { label }, ...fields.map(option))
  const rest = (of: 'tree' | 'limb'): Field[] =>
    columns.flatMap((column) => (column.of === of && !guesses.includes(column.field) ? [column.field] : []))
  return [
    ...(open ? [el('option', { value: unanswered, selected: true }, 'Choose what it is')] : []),
    ...(guesses.length > 0 ? [group('Likely', guesses)] : []),
    el('option', { value: '', selected: !open && field === null }, 'Not used'),
    group('Of the tree', rest('tree')),
    group('Of the limb', rest('limb'))
  ]
}

function meaningField(
  match: ColumnMatch,
  answers: ColumnAnswers,
  look: EntryLook,
  changed: () => void
): HTMLElement {
  const id = freshId('meaning')
  const select = el('select', { id }, ...options(answers.fieldOf(match), look))
  select.addEventListener('change', () => {
    if (select.value === unanswered) answers.leave(match)
    else answers.give(match, { field: select.value === '' ? null : (select.value as Field) })
    changed()
  })
  return el(
    'div',
    { class: 'field' },
    el('label', { for: id }, 'Means', el('span', { class: 'unseen' }, ` column ${match.letters}`)),
    select
  )
}

function unitField(match: ColumnMatch, answers: ColumnAnswers): HTMLElement {
  const id = freshId('unit')
  const unit = answers.unitOf(match)
  const select = el(
    'select',
    { id },
    unit === null && el('option', { value: '', selected: true }, 'as assumed'),
    ...(Object.keys(unitNames) as LengthUnit[]).map((name) =>
      el('option', { value: name, selected: name === unit }, unitNames[name])
    )
  )
  select.addEventListener('change', () => {
    if (select.value !== '') answers.give(match, { unit: select.value as LengthUnit })
  })
  return el(
    'div',
    { class: 'pair' },
    el('label', { for: id }, 'Unit', el('span', { class: 'unseen' }, ` of column ${match.letters}`)),
    select
  )
}
