/** The command line in-process, over files that a test writes, and what it gave: by the published surfaces only. */
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { runCommandLine } from '../../src/file/commandLine'
import { readWritten, type WrittenFile } from './writtenFile'

export interface PrintedCut {
  readonly limb: string
  readonly kind: string
  readonly share: number
  readonly cutDiameterMm: number | null
  readonly lateralMinMm: number | null
  readonly dose: number
  readonly aspectRatio: number | null
  readonly projectedAspectRatio: number | null
  readonly priority: number | null
  readonly nextPriority: number | null
  readonly reason: string
}

export interface PrintedVisit {
  readonly visit: number
  readonly year: number
  readonly dose: number
  readonly cuts: readonly PrintedCut[]
  readonly objective: number
}

export interface PrintedTree {
  readonly tree: string
  readonly leader: string | null
  readonly allowedRemoval: number
  readonly liveCrownRatio: number | null
  readonly visits: readonly PrintedVisit[]
}

export interface PrintedProblem {
  readonly code: string
  readonly cell: string
  readonly count: number
  readonly message: string
  readonly remedy: string
}

/** What `--json` prints, as section 5 of the design has it; only what these tests look at. */
export interface Printed {
  readonly trees: readonly PrintedTree[]
  readonly unplanned: readonly { readonly tree: string; readonly row: number; readonly reason: string }[]
  readonly estimate: {
    readonly currency: string
    readonly lines: readonly {
      readonly tree: string
      readonly visit: number
      readonly crewHours: number
      readonly price: string
    }[]
    readonly subtotal: string
    readonly tax: string
    readonly total: string
    readonly budgetFigures?: readonly { readonly tree: string; readonly price: string }[]
  }
  readonly problems: readonly PrintedProblem[]
}

/** The day every test plans for. */
export const day = '2027-03-01'

export interface Ran {
  readonly code: number
  readonly out: string
  readonly failures: readonly string[]
}

/** A folder of its own for one test file, removed after it. */
export function scratch() {
  const folder = mkdtempSync(join(tmpdir(), 'limbwright-whole-'))
  afterAll(() => {
    rmSync(folder, { recursive: true })
  })

  async function run(...args: string[]): Promise<Ran> {
    const out: string[] = []
    const failures: string[] = []
    const code = await runCommandLine([...args, '--date', day], {
      out: (text) => out.push(text),
      fail: (sentence) => failures.push(sentence),
      today: day,
      folder
    })
    return { code, out: out.join('\n'), failures }
  }

  /** Writes a file into the folder and gives its path. */
  function put(name: string, content: string | Uint8Array): string {
    const path = join(folder, name)
    writeFileSync(path, content)
    return path
  }

  async function printed(path: string): Promise<Printed> {
    return JSON.parse((await run(path, '--json')).out) as Printed
  }

  /** The written file, or null where none was written. */
  async function written(name: string): Promise<WrittenFile | null> {
    const path = join(folder, name)
    return existsSync(path) ? readWritten(readFileSync(path)) : null
  }

  return { folder, run, put, printed, written }
}

/**
 * Whether the years of other trees can move those of a tree in order: visits of one inventory a year apart are moved to
 * the later year (design, section 3), which is the one way in which a tree may change the plan of another.
 */
export function yearsMeet(others: Printed, inOrder: Printed, names: readonly string[]): boolean {
  const years = (printed: Printed, own: boolean) =>
    printed.trees
      .filter(({ tree }) => names.includes(tree) === own)
      .flatMap(({ visits }) => visits.map(({ year }) => year))
  const later = years(others, false)
  return years(inOrder, true).some((year) => later.includes(year + 1))
}

/** One cell of a comma-separated file. */
export function csvCell(text: string, delimiter = ','): string {
  return text.includes(delimiter) || /["\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
}

export const csv = (rows: readonly (readonly (string | number)[])[], delimiter = ','): string =>
  rows.map((row) => row.map((cell) => csvCell(String(cell), delimiter)).join(delimiter)).join('\r\n') + '\r\n'

const letters = (column: string): number =>
  [...column].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0)

interface Area {
  readonly sheet: string
  readonly from: readonly [column: number, row: number]
  readonly to: readonly [column: number, row: number]
}

/** Every cell or range that a text names with its sheet; a further range without a sheet belongs to the one before. */
export function areasIn(text: string): Area[] {
  const areas: Area[] = []
  let sheet = ''
  const named = /(?:('(?:[^']|'')+'|[\w.-]+)!)?\$?\b([A-Z]{1,3})\$?(\d+)\b(?::\$?([A-Z]{1,3})\$?(\d+)\b)?/g
  for (const [, owner, column, row, lastColumn, lastRow] of text.matchAll(named)) {
    if (owner !== undefined) sheet = owner.replace(/^'|'$/g, '').replaceAll("''", "'")
    if (sheet === '') continue
    const from = [letters(column!), Number(row)] as const
    areas.push({ sheet, from, to: [letters(lastColumn ?? column!), Number(lastRow ?? row)] })
  }
  return areas
}

/** Whether a text names this cell, alone, in a list or in a range; a range of more than 500 cells names none. */
export function namesCell(text: string, address: string): boolean {
  const [cell] = areasIn(address)
  if (cell === undefined) throw new Error(`${address} is no address`)
  return areasIn(text).some(({ sheet, from, to }) => {
    if (sheet !== cell.sheet || (to[0] - from[0] + 1) * (to[1] - from[1] + 1) > 500) return false
    const inside = (place: 0 | 1) => from[place] <= cell.from[place] && cell.from[place] <= to[place]
    return inside(0) && inside(1)
  })
}

/** The problems that name a cell, by their address or in their sentence. */
export function problemsAt(problems: readonly PrintedProblem[], address: string): PrintedProblem[] {
  return problems.filter(({ cell, message }) => namesCell(cell, address) || namesCell(message, address))
}
