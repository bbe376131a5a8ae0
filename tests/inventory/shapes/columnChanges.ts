/** What may be done to columns without a change of what they say: other names, other units, other order, others between. */
import fc from 'fast-check'
import type { Cell } from '../../../shared/cells'
import type { Field } from '../../../shared/columns'
import { decoys, type Decoy } from '../real/decoys'
import { headers, type Phrasing } from '../real/headers'
import type { Language } from '../real/words/phrasing'
import type { ShapeColumn, Unit } from './shape'

export interface ColumnChanges {
  /** Other names for some of the fields, of one language, by the place of each among those that the field has. */
  readonly rename?: {
    readonly language: Language
    /** Each in a language of its own. */
    readonly mixed: boolean
    readonly turns: readonly { column: number; phrasing: number }[]
  }
  readonly units?: readonly { readonly column: number; readonly unit: number }[]
  /** Columns are put in the order of these, the tree's and the limb's apart or mixed. */
  readonly shuffle?: { readonly keys: readonly number[]; readonly mixed: boolean }
  /** Lengths typed with a unit of their own in some cells. */
  readonly typed?: readonly { readonly column: number; readonly unit: number; readonly every: number }[]
  /** Names broken into two lines at their first space. */
  readonly broken?: readonly number[]
  readonly decoys?: readonly { readonly decoy: number; readonly before: number }[]
}

const languages: readonly Language[] = ['en', 'de', 'fr', 'es']

const place = fc.nat(30)

export const renames: fc.Arbitrary<NonNullable<ColumnChanges['rename']>> = fc.record({
  language: fc.constantFrom<Language>('en', 'en', 'de', 'fr', 'es'),
  mixed: fc.boolean(),
  turns: fc.array(fc.record({ column: place, phrasing: fc.nat(99) }), { minLength: 1, maxLength: 8 })
})
export const unitChanges = fc.array(fc.record({ column: place, unit: fc.nat(3) }), {
  minLength: 1,
  maxLength: 6
})
export const typedChanges = fc.array(
  fc.record({ column: place, unit: fc.nat(3), every: fc.integer({ min: 1, max: 3 }) }),
  { minLength: 1, maxLength: 3 }
)
export const brokenNames = fc.array(place, { minLength: 1, maxLength: 3 })
export const shuffles = fc.record({
  keys: fc.array(fc.nat(99), { minLength: 2, maxLength: 30 }),
  mixed: fc.boolean()
})
export const decoyChanges = fc.array(fc.record({ decoy: fc.nat(999), before: place }), {
  minLength: 1,
  maxLength: 3
})

/** Names that are sure wherever they stand; where columns keep their order, those that are sure within their group too. */
function phrasingsOf({ field }: ShapeColumn, language: Language, inOrder: boolean): Phrasing[] {
  return headers.filter(
    (each) =>
      each.field === field &&
      each.language === language &&
      each.confidence === 'sure' &&
      (each.context === null || (inOrder && each.context !== 'alone'))
  )
}

function renamed(column: ShapeColumn, { header, unit, measure }: Phrasing): ShapeColumn {
  const girth = measure === 'girth'
  if (unit === null || unit === '%' || unit === 'deg') return { ...column, name: header, girth }
  return { ...column, name: header, unit: unit as Unit, unitWithin: true, girth }
}

const unitsFor = { small: ['mm', 'cm', 'in'], tall: ['m', 'ft', 'cm'] } as const

function otherUnit({ field }: ShapeColumn, turn: number): Unit {
  const small = ['trunk', 'diameter', 'stem'].includes(field ?? '')
  const choices = small ? unitsFor.small : unitsFor.tall
  return choices[turn % choices.length]!
}

function inUnit(column: ShapeColumn, turn: number): ShapeColumn {
  if (column.unit === null || column.unitWithin) return column
  return { ...column, unit: otherUnit(column, turn) }
}

function typedIn(column: ShapeColumn, turn: number, every: number): ShapeColumn {
  return column.unit === null ? column : { ...column, typed: { unit: otherUnit(column, turn), every } }
}

function typed(text: string): Cell {
  return /^-?\d+(?:\.\d+)?$/.test(text) ? Number(text) : text
}

function asColumn({ header, values, group }: Decoy): ShapeColumn {
  return {
    field: null,
    of: group,
    name: header,
    unit: null,
    unitWithin: false,
    girth: false,
    values: values.map(typed)
  }
}

/** Decoys that cannot be meant, in the language of the other headers. */
function decoysIn(language: Language): Decoy[] {
  return decoys.filter((each) => each.language === language && !each.ambiguous)
}

const names: Readonly<Partial<Record<Field, string>>> = {
  height: 'Tree height',
  stem: 'Stem dia at union',
  tip: 'Tip height',
  lowestFoliage: 'Lowest foliage of the limb',
  notes: 'Limb notes'
}

/** Under a name that says by itself whether it is of the tree or of the limb, for where no neighbor does. */
function standing(column: ShapeColumn): ShapeColumn {
  return { ...column, name: names[column.field ?? 'tree'] ?? column.name }
}

export function changedColumns(columns: readonly ShapeColumn[], changes: ColumnChanges): ShapeColumn[] {
  const { rename, units = [], typed: written = [], broken = [], shuffle, decoys: put = [] } = changes
  const result = [...columns]
  const inOrder = shuffle === undefined && put.length === 0
  // Bare names are understood by the columns around them.
  const mixed = shuffle?.mixed === true && rename === undefined
  if (mixed) result.splice(0, result.length, ...columns.map(standing))
  for (const { column, phrasing } of rename?.turns ?? []) {
    const at = column % columns.length
    const language = rename!.mixed ? languages[phrasing % languages.length]! : rename!.language
    const found = phrasingsOf(columns[at]!, language, inOrder)
    if (found.length > 0) result[at] = renamed(columns[at]!, found[phrasing % found.length]!)
  }
  for (const { column, unit } of units) {
    const at = column % columns.length
    result[at] = inUnit(result[at]!, unit)
  }
  for (const { column, unit, every } of written) {
    const at = column % columns.length
    result[at] = typedIn(result[at]!, unit, every)
  }
  for (const column of broken) {
    const at = column % columns.length
    result[at] = { ...result[at]!, name: result[at]!.name.replace(' ', '\n') }
  }
  const list = decoysIn(rename?.language ?? 'en')
  for (const { decoy, before } of put)
    result.splice(before % (result.length + 1), 0, asColumn(list[decoy % list.length]!))
  if (shuffle === undefined) return result
  const { keys } = shuffle
  // A bare "Stem dia" or "Notes" between both groups may be of either; the limb's id says where its group begins.
  const apart = ({ of, field }: ShapeColumn): number =>
    mixed || of === 'tree' ? 0 : field === 'limb' ? 100 : 200
  return result
    .map((column, at) => ({ column, key: apart(column) + (keys[at % keys.length] ?? 0) }))
    .sort((a, b) => a.key - b.key)
    .map(({ column }) => column)
}
