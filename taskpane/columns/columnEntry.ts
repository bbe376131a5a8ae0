import { columnOf, columns, type Field } from '../../shared/columns'
import type { LengthUnit } from '../../shared/units'
import type { ColumnMatch, ColumnChoices } from '../../src/inventory/inventory'
import { lengthOf } from '../../src/inventory/lengthOf'
import { el, fill, freshId } from '../parts/elements'

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

/** One column: what it was read as, with selects for its meaning and its unit. */
export function columnEntry(match: ColumnMatch, wanted: ColumnChoices): HTMLElement {
  const { letters } = match
  const field = match.column in wanted.fields ? (wanted.fields[match.column] ?? null) : match.field
  const unitPlace = el('div', { class: 'field' })
  const showUnit = (now: Field | null): void => {
    fill(unitPlace, now !== null && hasUnit(now) && unitField(match, letters, wanted))
    unitPlace.hidden = unitPlace.childNodes.length === 0
  }
  showUnit(field)
  return el(
    'section',
    { class: 'column', 'aria-label': `Column ${letters}` },
    el(
      'h3',
      {},
      el('span', { class: 'cell' }, letters),
      ` ${match.header.trim() === '' ? 'No header' : match.header}`
    ),
    el('p', { class: 'aside' }, doubt(match)),
    meaningField(match, letters, field, wanted, showUnit),
    unitPlace
  )
}

function doubt(match: ColumnMatch): string {
  if (match.field === null) return 'Not recognized, so not used.'
  const { name, use } = columnOf(match.field)
  if (use === 'record') return `Read as ${name}, which is kept and changes nothing in the plan.`
  if (!hasUnit(match.field)) return `Read as ${name}.`
  const unit = match.unit === null ? 'no unit' : unitNames[match.unit]
  if (!isLength(match.field)) return `Read as ${name}; numbers in ${unit} a year.`
  return match.unitNamed
    ? `Read as ${name}, in ${unit} as the header says.`
    : `Read as ${name}; the header names no unit, so ${unit} was assumed.`
}

function meaningField(
  match: ColumnMatch,
  letters: string,
  field: Field | null,
  wanted: ColumnChoices,
  changed: (field: Field | null) => void
): HTMLElement {
  const id = freshId('meaning')
  const group = (of: 'tree' | 'limb', label: string): HTMLElement =>
    el(
      'optgroup',
      { label },
      ...columns
        .filter((column) => column.of === of)
        .map((column) => el('option', { value: column.field, selected: column.field === field }, column.name))
    )
  const select = el(
    'select',
    { id },
    el('option', { value: '', selected: field === null }, 'Not used'),
    group('tree', 'Of the tree'),
    group('limb', 'Of the limb')
  )
  select.addEventListener('change', () => {
    const now = select.value === '' ? null : (select.value as Field)
    wanted.fields[match.column] = now
    changed(now)
  })
  return el(
    'div',
    { class: 'field' },
    el('label', { for: id }, 'Means', el('span', { class: 'unseen' }, ` column ${letters}`)),
    select
  )
}

function unitField(match: ColumnMatch, letters: string, wanted: ColumnChoices): HTMLElement {
  const id = freshId('unit')
  const unit = wanted.units[match.column] ?? match.unit
  const select = el(
    'select',
    { id },
    unit === null && el('option', { value: '', selected: true }, 'as assumed'),
    ...(Object.keys(unitNames) as LengthUnit[]).map((name) =>
      el('option', { value: name, selected: name === unit }, unitNames[name])
    )
  )
  select.addEventListener('change', () => {
    if (select.value !== '') wanted.units[match.column] = select.value as LengthUnit
  })
  return el(
    'div',
    { class: 'pair' },
    el('label', { for: id }, 'Unit', el('span', { class: 'unseen' }, ` of column ${letters}`)),
    select
  )
}
