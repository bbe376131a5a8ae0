/**
 * The four places where a person writes a number, each as a black box: a text goes in, and the value that was used
 * comes out, seen in the results, with the sentence that was given about that cell.
 */
import { writeXlsx } from 'hucre/xlsx'
import { ASPECTRATIO } from '../../functions/measure'
import type { Cell } from '../../shared/cells'
import { describeStartRates } from '../../src/sheets/rates/ratesSheet'
import { describeRules } from '../../src/sheets/rules/rulesSheet'
import { CellError, column } from '../functions/spreadsheet'
import { csv, problemsAt, type Printed, type scratch } from './plannedFile'
import type { Surface } from './writings'

/** What became of a text. The value is null where none was used, and NaN where one was used that nobody wrote. */
export interface Outcome {
  readonly value: number | null
  /** What was reported about the cell; empty where nothing was. */
  readonly said: readonly string[]
}

/** Reads a text and gives what became of it; the values are what it may have been used as. */
export type Probe = (text: string, values: readonly number[]) => Promise<Outcome>

/** Other cells of the column, from which the decimal sign may be told. */
export type Beside = readonly string[]

export const wholeNumbers: Beside = ['40']

type Scratch = ReturnType<typeof scratch>

const limbHeaders = [
  'Tree',
  'Height (m)',
  'Crown base (m)',
  'Life stage',
  'Vigor',
  'Trunk dia (mm)',
  'Limb',
  'Role'
]
const limbHeaders2 = ['Limb dia (mm)', 'Stem dia (mm)', 'Origin (m)', 'Tip (m)', 'Live or dead']

/** One invented tree: its leader, a dead limb of the diameter to be read, and further dead limbs beside it. */
export function deadWood(text: string | number, beside: readonly (string | number)[]): (string | number)[][] {
  const dead = (limb: string, diameter: string | number) =>
    ['N1', '', '', '', '', '', limb, '', diameter, '', '', '', 'dead'] as (string | number)[]
  return [
    [...limbHeaders, ...limbHeaders2],
    ['N1', 30, 6, 'medium', 'good', 1500, 'A', 'leader', 900, '', 7, 30, 'live'],
    dead('P', text),
    ...beside.map((diameter, index) => dead(`Q${String(index)}`, diameter))
  ]
}

/** Dead wood is cut off where it starts: its diameter is the diameter of the cut (design, section 3). */
function deadLimb(printed: Printed, address: string): Outcome {
  const cuts = printed.trees.flatMap(({ visits }) => visits.flatMap(({ cuts }) => cuts))
  const cut = cuts.find(({ limb }) => limb === 'P')
  const said = problemsAt(printed.problems, address).map(({ message }) => message)
  return { value: cut === undefined ? null : (cut.cutDiameterMm ?? NaN), said }
}

/** The diameter of a dead limb in a .csv file. */
export function limbProbe(at: Scratch, beside: Beside, delimiter = ','): Probe {
  return async (text) => {
    const path = at.put('paper.csv', csv(deadWood(text, beside), delimiter))
    return deadLimb(await at.printed(path), 'paper!I3')
  }
}

/** The diameter of a dead limb as a text cell of an .xlsx file, among cells that are numbers or texts. */
export function limbCellProbe(at: Scratch, beside: readonly (string | number)[]): Probe {
  return async (text) => {
    const rows = deadWood(text, beside).map((row) => row.map((cell): Cell => (cell === '' ? null : cell)))
    const path = at.put('paper.xlsx', await writeXlsx({ sheets: [{ name: 'paper', rows }] }))
    return deadLimb(await at.printed(path), 'paper!I3')
  }
}

const plainRows = (rows: readonly (readonly unknown[])[]): Cell[][] =>
  rows.map((row) => row.map((cell) => (typeof cell === 'object' ? null : (cell as Cell))))

const hiddenNames = { Rates: 'Limbwright_rates', Rules: 'Limbwright_rules' }

/** The sheets as they are written, from their headers on and with the rows that these tests type in: quick to pack. */
const written = { Rates: plainRows(describeStartRates('cm-m').rows), Rules: plainRows(describeRules().rows) }

function shortened(sheet: 'Rates' | 'Rules'): Cell[][] {
  const names = { Rates: ratesTyped, Rules: rulesTyped }[sheet] as readonly string[]
  const headers = written[sheet].filter((row) => row[1] === 'Value')
  const rows = names.flatMap((name) => written[sheet].filter((row) => row[0] === name))
  if (headers.length !== 1 || rows.length !== names.length)
    throw new Error(`${sheet} is not as these tests know it`)
  return [...headers, ...rows]
}

/** Address of the value of a named row. */
export function valueCell(sheet: 'Rates' | 'Rules', name: string): string {
  return `${sheet}!B${String(shortened(sheet).findIndex((row) => row[0] === name) + 1)}`
}

export interface Typed {
  readonly Rates?: Readonly<Record<string, Cell>>
  readonly Rules?: Readonly<Record<string, Cell>>
}

/** A workbook of one invented tree whose limbs are large, with sheets of rates and rules that hold what was typed. */
export async function workbook(at: Scratch, typed: Typed): Promise<string> {
  const trees = deadWood(400, [300]).map((row) => row.map((cell): Cell => (cell === '' ? null : cell)))
  trees[2]![10] = 8
  trees[2]![11] = 25
  const own = (['Rates', 'Rules'] as const).map((name) => {
    const values = typed[name] ?? {}
    const rows = shortened(name).map((row) =>
      String(row[0]) in values
        ? row.map((cell, place) => (place === 1 ? values[String(row[0])]! : cell))
        : row
    )
    return { name, rows }
  })
  const namedRanges = own.map(({ name }) => ({ name: hiddenNames[name], range: `'${name}'!$A$1` }))
  const sheets = [{ name: 'Inventory', rows: trees }, ...own]
  return at.put('own.xlsx', await writeXlsx({ sheets, namedRanges }))
}

/** A rate that every price depends on, whatever its size. */
export const probedRate = 'Disposal by weight'
/** A rule in millimeters, from 0 to 1000, whose change is printed. */
export const probedRule = 'Foliage holds the crown base within'
const besideRate = 'Travel of the crew, there and back'
const besideRule = 'Trunk growth, medium'
export const probedTax = 'Tax'
export const probedShare = 'Partial inclusion counts as'
const ratesTyped = [probedRate, besideRate, probedTax]
const rulesTyped = [probedRule, besideRule, probedShare]

/** What the line that prints a changed rule says it was changed to, or null. */
export function ruleChangedTo(out: string, rule: string): number | null {
  const line = new RegExp(`Rule changed: ${rule},? (?:from )?\\S+?(?: mm| %)? to (-?[\\d.,]*\\d)( mm| %)?`)
  const found = line.exec(out.replace(/\s+/g, ' '))
  return found === null ? null : Number(found[1]) / (found[2] === ' %' ? 100 : 1)
}

/**
 * The rate and the rule that a text is used as, typed into both at once: the rate is told from the estimate, which
 * equals that of the same number typed as a number; the rule from the line that prints a change.
 */
export function ownSheetsProbe(at: Scratch, beside: string | null) {
  const known = new Map<number | null, string>()
  const mateRate: Record<string, Cell> = beside === null ? {} : { [besideRate]: beside }
  const mateRule: Record<string, Cell> = beside === null ? {} : { [besideRule]: beside }
  async function estimateOf(value: number | null): Promise<string> {
    const found = known.get(value)
    if (found !== undefined) return found
    const own: Record<string, Cell> = value === null ? {} : { [probedRate]: value }
    const path = await workbook(at, { Rates: { ...mateRate, ...own }, Rules: mateRule })
    const estimate = JSON.stringify((await at.printed(path)).estimate)
    known.set(value, estimate)
    return estimate
  }
  return async (text: string, values: readonly number[]): Promise<{ rate: Outcome; rule: Outcome }> => {
    const path = await workbook(at, {
      Rates: { ...mateRate, [probedRate]: text },
      Rules: { ...mateRule, [probedRule]: text }
    })
    const { estimate, problems } = await at.printed(path)
    const { out } = await at.run(path)
    const said = (cell: string) => problemsAt(problems, cell).map(({ message }) => message)
    const got = JSON.stringify(estimate)
    let value: number | null = got === (await estimateOf(null)) ? null : NaN
    for (const each of values) if (value !== null && got === (await estimateOf(each))) value = each
    return {
      rate: { value, said: said(valueCell('Rates', probedRate)) },
      rule: {
        value: ruleChangedTo(out, probedRule),
        said: said(valueCell('Rules', probedRule))
      }
    }
  }
}

/** A cell function, the text alone in a cell or first in a range: the ratio to a stem of 1 is the number itself. */
export function callProbe(beside: Beside): Probe {
  return (text) => {
    try {
      const given = ASPECTRATIO(column(text, ...beside) as never, [[1]] as never) as unknown[][]
      const answer = given[0]![0]
      if (typeof answer === 'number') return Promise.resolve({ value: answer, said: [] })
      const sentence = String(answer)
      return Promise.resolve({ value: null, said: sentence.startsWith('! ') ? [sentence] : [] })
    } catch (error) {
      if (!(error instanceof CellError)) throw error
      const told = ['#VALUE!', '#N/A'].includes(error.code) && error.message !== ''
      return Promise.resolve({ value: null, said: told ? [error.message] : [] })
    }
  }
}

/** What each surface takes; beyond it a number is refused as out of range. */
export const ranges: Readonly<Record<Surface, readonly [low: number, high: number]>> = {
  limb: [0, 1500],
  rate: [0, 100_000],
  rule: [0, 1000],
  call: [0, Infinity]
}
