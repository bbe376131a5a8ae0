import type { Field } from '../../../shared/columns'
import { csv, type CsvFile } from './csvFile'
import type { Decoy } from './decoys'
import { lengths, plainHeaders, texts } from './surveyValues'
import { letters } from './workbookFile'
import type { Language, Phrasing } from './words/phrasing'

const millimeters = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 } as const
type Unit = keyof typeof millimeters

const treeFields = new Set<Field>(
  'tree species trunk height crownBase spread stage vigor growth removed localLimit clearance clearanceSide dieback caliper caliperHeight access site zone lastPruned matureHeight lowestPermanent treeNotes'.split(
    ' '
  ) as Field[]
)
const small = new Set<Field>([
  'trunk',
  'caliper',
  'diameter',
  'diameter2',
  'stem',
  'stemBelow',
  'lateral',
  'cut'
])

const customary = (language: Language, field: Field): Unit =>
  language === 'en' ? (small.has(field) ? 'in' : 'ft') : small.has(field) ? 'cm' : 'm'

interface Column {
  header: string
  group: 'tree' | 'limb'
  field: Field | null
  /** The twelve values, one a limb's row. */
  values: readonly string[]
}

function valuesOf(language: Language, field: Field, unit: Unit, girth: boolean): string[] {
  const list = lengths[field]
  const step = unit === 'mm' ? 0 : unit === 'm' ? 2 : 1
  const shown =
    list?.map((each) => ((each * (girth ? Math.PI : 1)) / millimeters[unit]).toFixed(step)) ??
    texts[field]?.[language] ??
    []
  const spread = treeFields.has(field) ? 3 : 1
  return Array.from({ length: 12 }, (_none, row) => shown[Math.floor(row / spread) % shown.length] ?? '')
}

function plainColumns(language: Language, without: readonly Field[]): Column[] {
  return (Object.entries(plainHeaders[language]) as [Field, string][])
    .filter(([field]) => !without.includes(field))
    .map(([field, header]) => ({
      header,
      group: treeFields.has(field) ? 'tree' : 'limb',
      field,
      values: valuesOf(language, field, customary(language, field), false)
    }))
}

/** English files with commas, the others with semicolons and decimal commas, as their spreadsheets save them. */
function written(language: Language, columns: readonly Column[], rows: readonly number[]): CsvFile {
  const separator = language === 'en' ? ',' : ';'
  const quoted = (text: string) => (/[",;\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)
  const local = (text: string) =>
    language !== 'en' && /^-?\d+\.\d+$/.test(text) ? text.replace('.', ',') : text
  const lines = [
    columns.map(({ header }) => quoted(header)),
    ...rows.map((row) => columns.map(({ values }) => quoted(local(values[row] ?? ''))))
  ]
  return csv(lines.map((line) => line.join(separator)).join('\n'))
}

/** A file and the letter of the column in question. */
export interface Around {
  file: CsvFile
  column: string
}

function placed(language: Language, columns: Column[], put: Column, alone: boolean): Around {
  const at = columns.findIndex(({ field }) => field === put.field && field !== null)
  if (at !== -1) columns[at] = put
  else {
    const last = columns.reduce((found, { group }, index) => (group === put.group ? index : found), -1)
    columns.splice(last + 1, 0, put)
  }
  const kept = alone ? columns.filter(({ group }) => group === 'tree') : columns
  const rows = Array.from({ length: 12 }, (_none, row) => row).filter((row) => !alone || row % 3 === 0)
  return { file: written(language, kept, rows), column: letters(kept.indexOf(put)) }
}

/** The survey with one header replaced, or with the column added to the group it belongs to. */
export function surveyWith(phrasing: Phrasing): Around {
  const { language, header, field, unit, measure, context } = phrasing
  const given: Unit =
    unit === null || unit === '%' || unit === 'deg' ? customary(language, field) : (unit as Unit)
  const put: Column = {
    header,
    group: treeFields.has(field) ? 'tree' : 'limb',
    field,
    values: valuesOf(language, field, given, measure === 'girth')
  }
  const without: Field[] = field === 'stemBelow' ? ['stem'] : field === 'caliper' ? ['trunk'] : []
  return placed(language, plainColumns(language, without), put, context === 'alone')
}

/** The survey with a decoy among its columns, and without the column that the decoy looks like. */
export function surveyWithDecoy({ language, header, values, group, tempts }: Decoy): Around {
  const spread = group === 'tree' ? 3 : 1
  const put: Column = {
    header,
    group,
    field: null,
    values: Array.from({ length: 12 }, (_none, row) => values[Math.floor(row / spread) % values.length] ?? '')
  }
  return placed(language, plainColumns(language, tempts === null ? [] : [tempts]), put, false)
}
