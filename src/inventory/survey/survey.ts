import { isBlank } from '../../../shared/cells'
import type { Field } from '../../../shared/columns'
import type { Problem } from '../../../shared/problems'
import type { UnitSystem } from '../../../shared/units'
import { arrangedTables } from '../arrange/arranged'
import { explained } from '../arrange/explained'
import type { ColumnMatch, ReadingChoices } from '../inventory'
import { answersOf, type AnswerFor } from './answers'
import { askNeeded, type Needed } from './askNeeded'
import { withField } from './columnsByUse'
import { columnHeaded, readHeaderRows } from './headerRows'
import { tellOfIds } from './idsTold'
import { columnOfTrees } from './joins'
import { matchTables } from './matchTables'
import { narrowed } from './narrow'
import type { Part, RowsOf } from './part'
import { inSameColumn } from './sameHeaders'
import type { SheetCells } from './sheetCells'
import type { SheetTable } from './sheetTables'
import type { SurveyTable } from './surveyTable'
import { otherList } from './otherLists'
import { haveNoMeasures, isSummary, kindOfTable } from './tableKind'
import { tableParts } from './tableParts'
import { tellOf } from './tellOf'
import { withoutMarks } from './textMarks'
import { unusedColumns } from './unusedColumns'

/** What the sheets hold, before a cell is read. */
export interface Survey {
  readonly tables: readonly SurveyTable[]
  readonly parts: readonly Part[]
  /** What every column of every table gives, and every label of a form. */
  readonly matches: readonly ColumnMatch[]
  readonly system: UnitSystem
  /** What limbs need and no column gives. */
  readonly needed: Needed
}

/** The tables of an inventory, and what is told of the arrangement in which they were read. */
interface Found {
  readonly tables: SurveyTable[]
  readonly told: readonly Problem[]
}

function tablesOf(sheets: readonly SheetCells[], answerFor: AnswerFor): Found {
  const arranged = sheets.map((sheet) => arrangedTables(sheet, answerFor))
  const found = arranged.flatMap(({ tables }) =>
    tables.flatMap((table) => {
      const of = kindOfTable(table)
      return of === null ? [] : [withKind(table, of)]
    })
  )
  const tables = inSameColumn(ofInventory(found), (table, header) => withKind({ ...table, header }, table.of))
  const lists = tables.filter(({ of, header }) => of === 'trees' && hasIds(header))
  const joined = lists.length === 0 ? tables : tables.map((table) => withTrees(table, lists))
  const names = new Set(tables.map(({ sheet }) => sheet.name))
  return {
    tables: joined,
    told: arranged.flatMap(({ told }, at) => (names.has(sheets[at]?.name ?? '') ? told : []))
  }
}

function ofInventory(all: SurveyTable[]): SurveyTable[] {
  const trees = all.filter((table) => otherList(table) === null)
  // Where every table is another list, they are kept, so that they can be named.
  const found = trees.length > 0 ? trees : all
  const measured = haveNoMeasures(found) ? [] : found.filter((table) => !haveNoMeasures([table]))
  // Where no table has measurements, they are kept, so that they can be named.
  if (measured.length === 0) return found
  const data = measured.filter((table) => !isSummary(table))
  const named = data.filter(({ header, of }) => of !== 'trees' || hasIds(header))
  // A list of species and their sizes is no list of trees where another table has them by number.
  return named.some(({ header }) => hasIds(header)) ? named : data.length > 0 ? data : measured
}

/** Named one by one, as of a copy, see `tableParts`, the shape would change with each inventory. */
function withKind(table: SheetTable, of: RowsOf): SurveyTable {
  const { sheet, header, rows, passed, sections, shifted, end, labeled } = table
  return { sheet, header, rows, passed, sections, shifted, end, labeled, of }
}

/** A table of limbs whose trees are named in a column without a meaning, by the ids of the lists. */
function withTrees(table: SurveyTable, lists: readonly SurveyTable[]): SurveyTable {
  const at = columnOfTrees(table, lists)
  return at < 0 ? table : withKind({ ...table, header: withField(table.header, at, 'tree') }, table.of)
}

function hasIds(header: SheetTable['header']): boolean {
  return columnHeaded(header, 'tree') >= 0
}

/** Trunks and heights without a limb are those of trees, a tree in each row, though nothing names the trees. */
function hasSizesOfTrees({ header }: Pick<SheetTable, 'header'>): boolean {
  const has = (field: Field): boolean => columnHeaded(header, field) >= 0
  return has('trunk') && has('height') && !(['limb', 'diameter', 'stem', 'origin', 'tip'] as const).some(has)
}

/** Where no table is found: the first row with anything in it, taken for headers, so that what is missing can be named. */
function firstRowAsTable(sheets: readonly SheetCells[], answerFor: AnswerFor): SurveyTable[] {
  for (const sheet of sheets) {
    const names = sheet.rows.findIndex((row) => !row.every(isBlank))
    const header = names < 0 ? null : readHeaderRows(sheet, names, sheet.rows.length, answerFor)
    if (header === null) continue
    const rows = sheet.rows.flatMap((row, at) => (at > names && !row.every(isBlank) ? [at] : []))
    const table = {
      sheet,
      header,
      rows,
      passed: new Map(),
      sections: [],
      shifted: new Map<number, number>(),
      end: sheet.rows.length,
      labeled: []
    }
    return [withKind(table, kindOfTable(table) ?? (hasSizesOfTrees(table) ? 'trees' : 'both'))]
  }
  return []
}

/** The columns that a question about a measurement names. */
function candidatesNamed({ asked, problems }: Needed): ReadonlySet<ColumnMatch> {
  return new Set(
    asked.flatMap(({ field, columns }) => (problems.get(field)?.code === 'column-asked' ? columns : []))
  )
}

/** Finds the inventory among the sheets: its tables, what their columns give, and the parts in which they are read. */
export function survey(given: readonly SheetCells[], choices: ReadingChoices, problems: Problem[]): Survey {
  const { sheets: narrow, told: ofColumns } = narrowed(given)
  const { sheets: bare, told: ofMarks } = withoutMarks(narrow)
  const { sheets, told: ofHeaders } = explained(bare)
  const answerFor = answersOf(choices)
  const only = choices.sheet
  const visible = sheets.filter(({ name, hidden }) => (only === undefined ? hidden !== true : name === only))
  const found = tablesOf(visible, answerFor)
  const hidden = sheets.filter((sheet) => sheet.hidden)
  const known = found.tables.length > 0 ? found : tablesOf(hidden, answerFor)
  const tables = known.tables.length > 0 ? known.tables : firstRowAsTable([...visible, ...sheets], answerFor)
  problems.push(
    ...ofColumns,
    ...ofMarks,
    ...ofHeaders,
    ...known.told,
    ...tellOf(sheets, tables, choices),
    ...tellOfIds(tables)
  )
  const { matched, system } = matchTables(tables, choices, problems)
  const needed = askNeeded(matched)
  const aside = problems.filter(({ code }) => code === 'clearance-aside')
  const asked = new Set([...needed.problems.values(), ...aside].map(({ cell }) => cell))
  problems.push(
    ...matched.flatMap((each) => unusedColumns(each, asked, candidatesNamed(needed))),
    ...new Set(needed.problems.values())
  )
  const parts = matched.flatMap((table, at) => tableParts(table, tables[at]?.of ?? 'both', at))
  const matches = matched.flatMap((table) => [...table.labeled, ...table.matches])
  return { tables, parts, matches, system, needed }
}
