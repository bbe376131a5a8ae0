/**
 * Every column of the inventory filled with every kind of junk, over the whole path to documents, drawings and file. A
 * sample of a fixed seed by itself; the full matrix with FUZZ=full.
 */
import { numbers } from '../../bench/madeInventory'
import type { Cell } from '../../shared/cells'
import { columns, fieldFromWords, readHeader } from '../../shared/columns'
import { sampleInventory } from '../../src/file/sampleInventory'
import { writeWorkbook } from '../../src/file/writeWorkbook'
import { wholePath } from './wholePath'

const junk: readonly Cell[] = [
  '?',
  'low',
  -5,
  '#N/A',
  1e9,
  true,
  0,
  -0,
  '12,5',
  '5-6',
  'nought',
  '1e5',
  -0.001,
  99999,
  '1,016',
  '0,030',
  '1 016',
  '2026-03-01',
  '3-Feb',
  46056,
  '8ft?',
  '½',
  'street',
  'dead',
  'leader',
  20,
  3,
  0.5,
  'N',
  'yes',
  '=1+1',
  '１２',
  '  '
]

/** Formulas give these; they are told apart from the junk because a sentence has to quote them. */
const results: readonly Cell[] = [NaN, Infinity, -Infinity]

const base = sampleInventory.slice(0, 9)
const headers = (base[0] ?? []).map(String)
const known = new Set(headers.map((header) => fieldFromWords(readHeader(header).words)))
const others = columns.filter(({ field }) => !known.has(field)).map(({ words }) => words[0])

/** The sample with one column, which it may have to get first, replaced in its first row or in all of them. */
function replaced(header: string, cell: Cell, rows: 'first' | 'all'): Cell[][] {
  const at = headers.indexOf(header)
  return base.map((row, index) => {
    const change = index > 0 && (rows === 'all' || index === 1)
    if (at < 0) return [...row, index === 0 ? header : change ? cell : null]
    return row.map((each, column) => (column === at && change ? cell : each))
  })
}

const all = [...headers, ...others].flatMap((header) =>
  [...junk, ...results].flatMap((cell) => (['first', 'all'] as const).map((rows) => ({ header, cell, rows })))
)

function sample(count: number): typeof all {
  const next = numbers(11)
  return all
    .map((each) => ({ each, order: next() }))
    .sort((a, b) => a.order - b.order)
    .slice(0, count)
    .map(({ each }) => each)
}

const full = process.env['FUZZ'] === 'full'

test(
  'no junk in any column stops the plan, or is printed or drawn as a number that is none',
  async () => {
    const failures: string[] = []
    for (const [run, { header, cell, rows }] of (full ? all : sample(40)).entries()) {
      const what = `${header}, ${rows} = ${String(cell)}`
      try {
        const { faults, sheets } = wholePath(replaced(header, cell, rows))
        const quoting = new RegExp(`(holds the result |is )${String(cell)}\\b`)
        failures.push(...faults.filter((fault) => !quoting.test(fault)).map((fault) => `${what}: ${fault}`))
        if (run % 30 === 0) await writeWorkbook(sheets.map((sheet) => ({ ...sheet, pictures: [] })))
      } catch (error) {
        failures.push(`${what}: ${(error as Error).stack ?? ''}`)
      }
    }
    expect(failures).toEqual([])
  },
  full ? 1_200_000 : 60_000
)
