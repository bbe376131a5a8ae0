import { cellFunctions } from '../../functions/all'
import { readFunctionDocs } from '../../tools/functionDocs'
import type { CellFunction } from './spreadsheet'

const functions = cellFunctions as Record<string, CellFunction>

function constant(text: string): unknown {
  const trimmed = text.trim()
  if (trimmed === '') return null
  if (/^".*"$/.test(trimmed)) return trimmed.slice(1, -1)
  const value = Number(trimmed)
  if (Number.isNaN(value)) throw new Error(`Not a constant of a formula: ${trimmed}`)
  return value
}

/** The arguments of a formula as the spreadsheet would hand them over: {3, 4; 5, 6} is a range of two rows. */
function argumentsOf(text: string): unknown[] {
  const parts = text.match(/\{[^}]*\}|"[^"]*"|[^,]+/g) ?? []
  return parts.map((part) => {
    const braces = /^\s*\{(.*)\}\s*$/.exec(part)
    return braces ? braces[1]!.split(';').map((line) => line.split(',').map(constant)) : [[constant(part)]]
  })
}

/** A cell to the 15 digits that a spreadsheet shows. */
function shown(cell: unknown): string {
  return typeof cell === 'number' ? String(Number(cell.toPrecision(15))) : String(cell)
}

/** A result as the documentation writes it, a column as {1; 2}. */
function written(result: unknown[][]): string {
  const cells = result.map(([cell]) => shown(cell))
  return cells.length === 1 ? (cells[0] ?? '') : `{${cells.join('; ')}}`
}

/** Examples that name cells of a sheet need the sheet: the function's own tests run them. */
const needsSheet = (formula: string): boolean => formula.includes('!')

const all = readFunctionDocs()
const examples = all.flatMap(({ id, examples: ofOne }) =>
  ofOne
    .filter(({ formula }) => !needsSheet(formula))
    .map(({ formula, result }) => [formula, result, id] as const)
)

test('every function has an example that is run here, but for CUTPLAN, whose inventory stands in a sheet', () => {
  const run = new Set(examples.map(([, , id]) => id))
  expect(all.map(({ id }) => id).filter((id) => !run.has(id))).toEqual(['CUTPLAN'])
  expect(all.every((doc) => doc.examples.length > 0)).toBe(true)
})

test.each(examples)('%s gives %s, as its documentation says', (formula, result, id) => {
  const call = /^=LIMB\.([A-Z]+)\((.*)\)$/.exec(formula)
  expect(call?.[1]).toBe(id)
  const actual = functions[id]!(...argumentsOf(call?.[2] ?? ''))
  const digits = /^-?\d+\.(\d+)$/.exec(result)?.[1]?.length
  if (digits === undefined) expect(written(actual)).toBe(result)
  else expect(actual[0]?.[0] as number).toBeCloseTo(Number(result), digits)
})
