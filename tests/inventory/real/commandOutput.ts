import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { commandRun } from '../../file/commandRun'
import { csvBytes, type CsvFile } from './csvFile'
import { workbookBytes } from './workbookBytes'
import type { Workbook } from './workbookFile'

/** The parts of design section 5 that the checks of the reader look at. */
export interface Printed {
  summary?: { trees: number; limbs: number; treesWithoutLimbs: number; treesNotPlanned: number }
  trees: PrintedTree[]
  unplanned: { tree: string; row: number; reason: string }[]
  estimate: { budgetFigures?: { tree: string; price: string }[] }
  columns?: PrintedColumn[]
  problems: { code: string; cell: string; message: string; remedy: string }[]
}

export interface PrintedTree {
  tree: string
  allowedRemoval: number | null
  liveCrownRatio: number | null
  visits: { visit: number; cuts: PrintedCut[] }[]
}

export interface PrintedCut {
  limb: string
  kind: string
  share: number | null
  cutDiameterMm: number | null
  aspectRatio: number | null
  priority: number | null
}

export interface PrintedColumn {
  sheet: string
  column: string
  header: string
  field: string | null
  unit: string | null
  confidence: unknown
  /** Where the reader says it: `girth` for a girth. */
  measure?: string | null
}

const folder = mkdtempSync(join(tmpdir(), 'limbwright-real-'))

/** To be called once all is run. */
export function removeFolder(): void {
  rmSync(folder, { recursive: true, force: true })
}

let number = 0

/** Runs the command line over a file as on one fixed day, and takes apart what it printed. */
export async function planFile(file: CsvFile | Workbook, args: readonly string[] = ['--json']) {
  const name = `inventory${String(++number)}.${file.kind}`
  writeFileSync(join(folder, name), file.kind === 'csv' ? csvBytes(file) : await workbookBytes(file))
  return commandRun(folder, '2027-03-01', [name, ...args])
}

/** The printed plan; a refusal (exit 2) fails with its sentence. */
export async function planned(file: CsvFile | Workbook, args: readonly string[] = []) {
  const { code, out, failures } = await planFile(file, ['--json', ...args])
  if (out === '') throw new Error(`Exit ${String(code)}: ${failures.join(' ')}`)
  return { code, plan: JSON.parse(out) as Printed }
}

/** Sheet and cell of an address: `'Zone 1'!$B$4` and `Zone 1!B4` give Zone 1 and B4. */
export function splitAddress(address: string): { sheet: string; cell: string } {
  const [, sheet = '', cell = ''] = /^(?:'?(.*?)'?!)?([^!]*)$/.exec(address.replaceAll('$', '')) ?? []
  return { sheet, cell: cell.split(':')[0] ?? '' }
}

/** A sentence without what it quotes from the file, in which a question mark may stand. */
export const unquoted = (sentence: string) => sentence.replace(/“[^”]*”|"[^"]*"/g, '')

/**
 * What the plan took a column for; a column that it does not list was not taken. The girth of something may be a measure
 * of its own or a field of its own, `trunkGirth`.
 */
export function columnAt({ columns }: Printed, sheet: string, column: string) {
  if (columns === undefined) throw new Error('The plan lists no columns')
  const found = columns.find((each) => each.column === column && (sheet === '' || each.sheet === sheet))
  const field = found?.field ?? null
  const girth = /^(trunk|limb|stem)Girth$/.exec(field ?? '')?.[1]
  if (girth !== undefined) return { ...found, field: girth === 'limb' ? 'diameter' : girth, measure: 'girth' }
  return { ...found, field, unit: found?.unit ?? null, measure: found?.measure ?? null }
}

/** Whether something is asked at a header's cell: a problem that stands there, or names it, and has a question in it. */
export function askedAt({ problems }: Printed, sheet: string, cell: string): boolean {
  return problems.some((problem) => {
    const sentences = unquoted(`${problem.message} ${problem.remedy}`)
    const at = splitAddress(problem.cell)
    const here = at.cell === cell && (sheet === '' || at.sheet === '' || at.sheet === sheet)
    return sentences.includes('?') && (here || new RegExp(`\\b${cell}\\b`).test(sentences))
  })
}
