import { readFile, stat } from 'node:fs/promises'
import { basename, extname } from 'node:path'
import { isBlank, type CellBlock } from '../../shared/cells'
import { isRefusal, refuse, type Refusal } from '../../shared/refusal'
import { answersKey, readKept, type ReadAnswers } from '../inventory/keptAnswers'
import type { DetailsSheet } from '../details/detailsFor'
import { inventoryName, inventorySheetIn, readOwnName } from '../sheets/ownSheets'
import type { DocumentKind } from '../sheets/sheet'
import type { SheetCells } from '../inventory/survey/sheetCells'
import { readCsvFile } from './csvFile'
import type { FoundPicture } from './file-library/picturesIn'
import { unpackValues, type BookValues } from './file-library/unpackValues'

/** The largest file that is read, in bytes; a hundred thousand limbs need about a tenth of it. */
const largestFile = 200 * 1024 * 1024

/** Bytes with the name they came under; the name's ending says what they are. */
export interface NamedBytes {
  name: string
  bytes: Uint8Array
}

/** Sheets in the file's order, visible ones first, without the documents that were written from a plan. */
function inventorySheets({ sheets, names }: BookValues): SheetCells[] {
  const own = new Set(names.map(({ name, range }) => readOwnName(name, range)?.sheetName))
  const others = sheets
    .filter((sheet) => !own.has(sheet.name))
    .map((sheet) => ({ ...sheet, top: 0, left: 0 }))
  return [...others.filter(({ hidden }) => !hidden), ...others.filter(({ hidden }) => hidden)]
}

/** What the reader of the file says of it, as one sentence. */
function unreadable(name: string, why: string): Refusal {
  return refuse(
    `${name} could not be read as a workbook (${why}): save it again as .xlsx without a password, or as .csv.`
  )
}

/** The sheet of a kind that was written first, as a person's own is, or last, from its first cell on, or null. */
function usersSheet(
  { sheets, names }: BookValues,
  wanted: DocumentKind,
  which: 'first' | 'latest' = 'first'
): CellBlock | null {
  const own = names
    .flatMap(({ name, range }) => readOwnName(name, range) ?? [])
    .filter(({ kind }) => kind === wanted)
    .sort((a, b) => (which === 'first' ? a.number - b.number : b.number - a.number))
  for (const { sheetName } of own) {
    const sheet = sheets.find(({ name }) => name === sheetName)
    if (sheet !== undefined) return { rows: sheet.rows, sheet: sheetName, top: 0, left: 0 }
  }
  return null
}

/** The Job details sheets of a workbook, the first written first, each with the inventory it was written for. */
function detailsSheets({ sheets, names }: BookValues): DetailsSheet[] {
  const ranges = new Map(names.map(({ name, range }) => [name, range]))
  return names
    .flatMap(({ name, range }) => {
      const own = readOwnName(name, range)
      const sheet = sheets.find((each) => each.name === own?.sheetName)
      if (own?.kind !== 'job-details' || sheet === undefined) return []
      const block: CellBlock = { rows: sheet.rows, sheet: sheet.name, top: 0, left: 0 }
      return [{ block, number: own.number, of: inventorySheetIn(ranges.get(inventoryName(name)) ?? '') }]
    })
    .sort((a, b) => a.number - b.number)
}

function readText(name: string, kind: string, bytes: Uint8Array): PlannedFile | Refusal {
  const file = readCsvFile(name, bytes)
  if (isRefusal(file)) return file
  const sheet = { name: basename(name, kind), rows: file.rows, top: file.top, left: 0 }
  return {
    sheets: [sheet],
    ...{ rules: null, rates: null, estimate: null, details: [], names: [sheet.name], pictures: [] },
    kept: readKept(null)
  }
}

async function readBytes({ name, bytes }: NamedBytes): Promise<PlannedFile | Refusal> {
  const ending = extname(name)
  const kind = ending.toLowerCase()
  if (kind === '.csv' || kind === '.txt' || kind === '.tsv') return readText(name, ending, bytes)
  if (kind !== '.xlsx' && kind !== '.xlsm')
    return refuse(`${name} is neither .xlsx nor .csv: save the inventory as one of these.`)
  const book = await unpackValues(bytes)
  if ('unreadable' in book) return unreadable(name, book.unreadable)
  const sheets = inventorySheets(book)
  if (sheets.length === 0)
    return refuse(`${name} holds nothing but sheets that a plan wrote: name the inventory itself.`)
  if (sheets.every(({ rows }) => rows.every((row) => row.every(isBlank))))
    return refuse(`${name} is empty: save the inventory again, with its headers.`)
  return {
    sheets,
    rules: usersSheet(book, 'rules'),
    rates: usersSheet(book, 'rates'),
    estimate: usersSheet(book, 'estimate', 'latest'),
    details: detailsSheets(book),
    names: book.sheets.map(({ name }) => name),
    pictures: book.pictures,
    kept: readKept(book.settings.get(answersKey))
  }
}

/** Why a file could not be opened, by the code of the system's error. */
function unopened(path: string, error: unknown): Refusal {
  const code = (error as NodeJS.ErrnoException).code
  if (code === 'ENOENT') return refuse(`There is no file ${path}: check its name and folder.`, 'missing')
  if (code === 'EISDIR') return refuse(`${path} is a folder: name the inventory file in it.`)
  if (code === 'EACCES') return refuse(`${path} may not be read: check the permissions of the file.`)
  return refuse(`${path} could not be opened (${code ?? String(error)}).`)
}

function tooLarge(name: string): Refusal {
  return refuse(`${name} is larger than 200 MB: split the inventory into smaller files.`)
}

async function openFile(path: string): Promise<NamedBytes | Refusal> {
  try {
    const found = await stat(path)
    // A folder is refused by the system, in its own words; a pipe or a device would be read without end.
    if (!found.isFile() && !found.isDirectory()) return refuse(`${path} is no file: name the inventory file.`)
    return found.size > largestFile ? tooLarge(path) : { name: path, bytes: await readFile(path) }
  } catch (error) {
    return unopened(path, error)
  }
}

/** What a file holds to plan from. */
export interface PlannedFile {
  sheets: readonly SheetCells[]
  /** Its sheets of rules and of rates, or null. */
  rules: CellBlock | null
  rates: CellBlock | null
  /** The Estimate that was written last, whose rates may have been changed, or null. */
  estimate: CellBlock | null
  /** Its sheets of job details; a workbook may have one for each of its inventories. */
  details: readonly DetailsSheet[]
  /** All sheets of the file. */
  names: readonly string[]
  /** Pictures on its sheets, on each from the top down. */
  pictures: readonly FoundPicture[]
  /** What a person answered about the inventory before, as the workbook keeps it. */
  kept: ReadAnswers
}

/**
 * The sheets of an .xlsx or .csv file that may hold an inventory, and those of rules and of rates. Dates come as texts,
 * shares shown as percentages as texts such as "5 %", formulas as their stored values, errors as their text. A file that
 * cannot be read is refused in one sentence.
 */
export async function readPlannedFile(from: string | NamedBytes): Promise<PlannedFile | Refusal> {
  const file = typeof from === 'string' ? await openFile(from) : from
  if (isRefusal(file)) return file
  return file.bytes.length > largestFile ? tooLarge(file.name) : readBytes(file)
}
