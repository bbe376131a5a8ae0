import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { readXlsx, writeXlsx, type WriteSheet } from 'hucre/xlsx'
import { inferSchema, initParser } from 'udsv'
import { isRefusal } from '../shared/refusal'
import { readPlannedFile } from '../src/file/readPlannedFile'
import { madeInventory } from './madeInventory'
import { leastTimesInTurn, ratio, type Measurement } from './measure'

/** The rows of a file as the command line gets them; a file that is refused would be quick, and measures nothing. */
async function open(path: string, rows: number): Promise<void> {
  const file = await readPlannedFile(path)
  if (isRefusal(file) || file.sheets[0]?.rows.length !== rows) throw new Error(`${path} was not read`)
}

/**
 * Opening and reading a .csv of 100,000 limbs: from the file to cells, with its encoding, separator and numbers told, against
 * the parsing alone, into texts, by the fastest of the CSV libraries that we measured (udsv, papaparse, csv-parse, hucre).
 */
async function separatedValues(folder: string): Promise<Measurement> {
  const { rows } = madeInventory(100_000)
  const text = rows.map((row) => row.map((cell) => String(cell ?? '')).join(',')).join('\r\n')
  const path = join(folder, 'inventory.csv')
  writeFileSync(path, text)
  const parser = initParser(inferSchema(text, { header: () => [] }))
  const [ours = NaN, parsed = NaN] = await leastTimesInTurn(
    [() => open(path, rows.length), () => Promise.resolve(parser.stringArrs(text))],
    8,
    3
  )
  return ratio('open and read a .csv of 100,000 limbs', 2, ours, parsed, 'parsing it alone with udsv')
}

/** Opening an .xlsx of 20,000 limbs whose every cell has a look, against the library reading it with its looks. */
async function workbook(folder: string): Promise<Measurement> {
  const { rows } = madeInventory(20_000)
  const cells: NonNullable<WriteSheet['cells']> = new Map()
  rows.forEach((row, r) => {
    row.forEach((value, c) => cells.set(`${String(r)},${String(c)}`, { value, style: { numFmt: '0.0' } }))
  })
  const bytes = await writeXlsx({ sheets: [{ name: 'Inventory', rows: [], cells }] })
  const path = join(folder, 'inventory.xlsx')
  writeFileSync(path, bytes)
  const [ours = NaN, library = NaN] = await leastTimesInTurn(
    [() => open(path, rows.length), () => readXlsx(bytes, { readStyles: true })],
    5,
    2
  )
  return ratio('open an .xlsx of 20,000 limbs', 1, ours, library, 'the file library with the looks of cells')
}

async function measureOpening(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'limbwright-bench-'))
  try {
    console.log(JSON.stringify([await separatedValues(folder), await workbook(folder)]))
  } finally {
    rmSync(folder, { recursive: true })
  }
}

void measureOpening()
