import { readCsv } from '../../../src/file/csvFile'
import type { ColumnMeaning } from '../../../src/inventory/headers/assign'
import { sheetTables } from '../../../src/inventory/survey/sheetTables'
import type { Field } from '../../../shared/columns'
import type { Decoy } from '../real/decoys'
import { surveyWith, surveyWithDecoy, type Around } from '../real/surveyAround'
import type { Context, Language, Phrasing } from '../real/words/phrasing'

function columnOf(letters: string): number {
  return Array.from(letters).reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1
}

/** What the reader takes the column in question for; a survey that is not found is a failure of the test itself. */
export function meaningIn({ file, column }: Around): ColumnMeaning | null {
  if (file.text === undefined) throw new Error('The survey is no text')
  const [table] = sheetTables({ name: 'Survey', rows: readCsv(file.text), top: 0, left: 0 })
  if (table === undefined) throw new Error(`No survey found around column ${column}`)
  return table.header.columns.find((each) => each.column === columnOf(column))?.meaning ?? null
}

export function meaningOf(phrasing: Phrasing): ColumnMeaning | null {
  return meaningIn(surveyWith(phrasing))
}

export function meaningOfDecoy(decoy: Decoy): ColumnMeaning | null {
  return meaningIn(surveyWithDecoy(decoy))
}

/** The column of a field under another header, in the small survey. */
export function headed(
  header: string,
  field: Field,
  context: Context | null = null,
  language: Language = 'en'
): ColumnMeaning | null {
  return meaningOf({ language, header, field, unit: null, measure: null, confidence: 'sure', context })
}

/** A column of something else, where the field that it looks like has none. */
export function beside(
  header: string,
  tempts: Field | null,
  values: readonly string[],
  group: 'tree' | 'limb' = 'tree'
): ColumnMeaning | null {
  return meaningOfDecoy({ language: 'en', header, values, group, tempts, ambiguous: false })
}
