import { readFile } from 'node:fs/promises'
import { basename, extname } from 'node:path'
import type { CellBlock } from '../../shared/cells'
import { isRefusal, refuse, type Refusal } from '../../shared/refusal'
import { readOwnName } from '../sheets/ownSheets'
import type { DocumentKind } from '../sheets/sheet'
import { findInventory, type FileSheet } from '../inventory/findInventory'
import { decodeText, readCsv } from './csvFile'
import { unpackValues, type BookValues } from './file-library/unpackValues'

/** The largest file that is read, in bytes; a hundred thousand limbs need about a tenth of it. */
const largestFile = 200 * 1024 * 1024

/** Bytes with the name they came under; the name's ending says what they are. */
export interface NamedBytes {
  name: string
  bytes: Uint8Array
}

/** Sheets in the file's order, visible ones first, without the documents that were written from a plan. */
function inventorySheets({ sheets, names }: BookValues): FileSheet[] {
  const own = new Set(names.map(({ name, range }) => readOwnName(name, range)?.sheetName))
  const others = sheets.filter((sheet) => !own.has(sheet.name))
  return [...others.filter(({ hidden }) => !hidden), ...others.filter(({ hidden }) => hidden)]
}

/** What the reader of the file says of it, as one sentence. */
function unreadable(name: string, why: string | null): Refusal {
  const told = why === null ? '' : ` (${why})`
  return refuse(
    `${name} could not be read as a workbook${told}: save it again as .xlsx without a password, or as .csv.`
  )
}

/** The sheet of a kind that a person owns, from its first cell on, or null. */
function usersSheet({ sheets, names }: BookValues, wanted: DocumentKind): CellBlock | null {
  const own = names
    .flatMap(({ name, range }) => readOwnName(name, range) ?? [])
    .filter(({ kind }) => kind === wanted)
    .sort((a, b) => a.number - b.number)
  for (const { sheetName } of own) {
    const sheet = sheets.find(({ name }) => name === sheetName)
    if (sheet !== undefined) return { rows: sheet.rows, sheet: sheetName, top: 0, left: 0 }
  }
  return null
}

async function readBytes({ name, bytes }: NamedBytes): Promise<PlannedFile | Refusal> {
  const kind = extname(name).toLowerCase()
  if (kind === '.csv' || kind === '.txt' || kind === '.tsv') {
    const rows = readCsv(decodeText(bytes))
    const inventory = findInventory([{ name: basename(name, extname(name)), rows }])
    return { inventory, rules: null, rates: null }
  }
  if (kind !== '.xlsx' && kind !== '.xlsm')
    return refuse(`${name} is neither .xlsx nor .csv: save the inventory as one of these.`)
  const book = await unpackValues(bytes)
  if ('unreadable' in book) return unreadable(name, book.unreadable)
  return {
    inventory: findInventory(inventorySheets(book)),
    rules: usersSheet(book, 'rules'),
    rates: usersSheet(book, 'rates')
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

async function openFile(path: string): Promise<NamedBytes | Refusal> {
  try {
    return { name: path, bytes: await readFile(path) }
  } catch (error) {
    return unopened(path, error)
  }
}

/** What a file holds to plan from. */
export interface PlannedFile {
  inventory: CellBlock
  /** Its sheets of rules and of rates, or null. */
  rules: CellBlock | null
  rates: CellBlock | null
}

/** The inventory of a file, as `readTableFile` gives it, together with the sheets of rules and of rates. */
export async function readPlannedFile(from: string | NamedBytes): Promise<PlannedFile | Refusal> {
  const file = typeof from === 'string' ? await openFile(from) : from
  if (isRefusal(file)) return file
  if (file.bytes.length > largestFile)
    return refuse(`${file.name} is larger than 200 MB: split the inventory into smaller files.`)
  return readBytes(file)
}

/**
 * The inventory in an .xlsx or .csv file as a block of cells, found by its headers (see `findInventory`). Dates come as
 * texts, formulas as their stored values, errors as their text. A file that cannot be read is refused in one sentence.
 */
export async function readTableFile(from: string | NamedBytes): Promise<CellBlock | Refusal> {
  const file = await readPlannedFile(from)
  return isRefusal(file) ? file : file.inventory
}
