/** A survey in another shape: one to four changes that leave alone what it says. */
import fc from 'fast-check'
import {
  changedColumns,
  decoyChanges,
  brokenNames,
  renames,
  shuffles,
  typedChanges,
  unitChanges,
  type ColumnChanges
} from './columnChanges'
import type { DrawnSurvey } from './drawnSurvey'
import { laidOut, layouts, type Layout } from './layouts'
import { duplicatePlaces, totalWords, withCommas, withExtraRows, type ExtraRows } from './extraRows'
import { blankPlaces, noteTurns, titleTurns, withLines, type Lines } from './lines'
import { hiddenPlaces, withMarks, withOtherSheet, type Marks } from './marks'
import { plainColumns, type ShapeSheet } from './shape'

export interface Changes extends ColumnChanges, ExtraRows, Lines, Marks {
  readonly layout?: Layout
  readonly unitsRow?: true
  /** Decimal numbers are texts with a comma. */
  readonly commas?: true
  /** Limbs of a tree stand in the order of these. */
  readonly sort?: readonly number[]
}

const each: Readonly<{ [K in keyof Required<Changes>]: fc.Arbitrary<Required<Changes>[K]> }> = {
  rename: renames,
  units: unitChanges,
  typed: typedChanges,
  broken: brokenNames,
  commas: fc.constant(true),
  duplicates: duplicatePlaces,
  total: totalWords,
  otherSheet: fc.boolean(),
  hiddenColumnsAt: hiddenPlaces,
  hiddenRowsAt: hiddenPlaces,
  titlesMerged: fc.constant(true),
  shuffle: shuffles,
  decoys: decoyChanges,
  layout: fc.constantFrom(...layouts),
  unitsRow: fc.constant(true),
  sort: fc.array(fc.nat(9), { minLength: 2, maxLength: 6 }),
  blanks: blankPlaces,
  titles: titleTurns,
  notes: noteTurns
}

const kinds = Object.keys(each) as (keyof Changes)[]

export const changes: fc.Arbitrary<Changes> = fc
  .subarray(kinds, { minLength: 1, maxLength: 5 })
  .chain(
    (chosen) =>
      fc.record(
        Object.fromEntries(chosen.map((kind) => [kind, each[kind]]))
      ) as fc.Arbitrary<unknown> as fc.Arbitrary<Changes>
  )

function sorted(survey: DrawnSurvey, keys: readonly number[]): DrawnSurvey {
  const trees = survey.trees.map((tree) => ({
    ...tree,
    limbs: tree.limbs
      .map((limb, at) => ({ limb, key: keys[at % keys.length] ?? 0 }))
      .sort((a, b) => a.key - b.key)
      .map(({ limb }) => limb)
  }))
  return { ...survey, trees }
}

export function shapeOf(survey: DrawnSurvey, made: Changes): ShapeSheet[] {
  const columns = changedColumns(plainColumns(survey), made)
  const rows = made.sort === undefined ? survey : sorted(survey, made.sort)
  const sheets = laidOut(columns, rows, made.layout, made.unitsRow === true)
    .map((sheet) => withExtraRows(sheet, made))
    .map((sheet) => (made.commas === true ? withCommas(sheet) : sheet))
    .map((sheet) => withMarks(withLines(sheet, made), made))
  return withOtherSheet(sheets, made)
}

/** The headers of columns that mean nothing. */
export function decoysOf(survey: DrawnSurvey, made: Changes): string[] {
  return changedColumns(plainColumns(survey), made).flatMap(({ field, name }) =>
    field === null ? [name] : []
  )
}
