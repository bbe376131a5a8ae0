import { parseArgs } from 'node:util'
import { isRefusal, refuse, type Refusal } from '../../shared/refusal'
import { systems, type UnitSystem } from '../../shared/units'
import { listedChoices } from '../../shared/words/lists'
import type { ColumnAnswer } from '../inventory/inventory'
import { readColumnArguments } from './columnArgument'

export const usage =
  'npm run -s plan -- [inventory.xlsx|.csv] [--out FILE.xlsx] [--force] [--json] [--date YYYY-MM-DD] [--sheet NAME] [--units in-ft|cm-m] [--column "J=stem above"]'

/** What the arguments about reading mean, one line each. */
export const aboutReading = [
  '--sheet NAME reads that sheet only.',
  '--units in-ft, or cm-m, is assumed where neither a header nor a cell names a unit.',
  '--column says what a column gives, as often as needed:',
  '  --column "J=stem above"              the column by its letters',
  '  --column \'"Dia 2"=limb diameter (cm)\' by its header in quotes, with its unit',
  '  --column "Limbs!J=-"                 on one sheet only; - where it is not used'
].join('\n')

/** What the command line asks for. */
export interface Wanted {
  /** Null for the sample inventory. */
  inventory: string | null
  out: string | null
  /** A file that is there already may be replaced, whatever it holds. */
  force: boolean
  json: boolean
  /** ISO date, or null for today. */
  date: string | null
  /** The only sheet to read, as typed, or null. */
  sheet: string | null
  system: UnitSystem | null
  answers: readonly ColumnAnswer[]
  help: boolean
}

const options = {
  out: { type: 'string' },
  force: { type: 'boolean' },
  json: { type: 'boolean' },
  date: { type: 'string' },
  sheet: { type: 'string' },
  units: { type: 'string' },
  column: { type: 'string', multiple: true },
  help: { type: 'boolean', short: 'h' }
} as const

/** A day that the calendar has, between the years 1901 and 9000, as spreadsheets can show it. */
export function isIsoDate(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false
  const day = new Date(`${text}T00:00:00Z`)
  const year = day.getUTCFullYear()
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text) && year > 1900 && year < 9000
}

function isSystem(text: string): text is UnitSystem {
  return Object.hasOwn(systems, text)
}

/** The arguments taken apart, or the sentence that says what is wrong with them. */
export function readArguments(args: readonly string[]): Wanted | Refusal {
  let parsed
  try {
    parsed = parseArgs({ args: [...args], options, allowPositionals: true, strict: true })
  } catch (error) {
    const first = (error as Error).message.split(/\.\s|\n/)[0] ?? ''
    return refuse(`${first.replace(/\.$/, '')}. Use: ${usage}`)
  }
  const { values, positionals } = parsed
  if (positionals.length > 1)
    return refuse(`One inventory at a time, but ${positionals.join(' and ')} were given. Use: ${usage}`)
  if (values.date !== undefined && !isIsoDate(values.date))
    return refuse(`--date ${values.date} is not a day of the calendar: write it as YYYY-MM-DD.`)
  if (values.out !== undefined && !/[^\\/]\.xlsx$/i.test(values.out))
    return refuse(`--out ${values.out} does not end in .xlsx: name the workbook to write.`)
  const { units: system = null } = values
  if (system !== null && !isSystem(system))
    return refuse(`--units ${system} is not known: write ${listedChoices(Object.keys(systems))}.`)
  const answers = readColumnArguments(values.column ?? [])
  if (isRefusal(answers)) return answers
  return {
    inventory: positionals[0] ?? null,
    out: values.out ?? null,
    force: values.force === true,
    json: values.json === true,
    date: values.date ?? null,
    sheet: values.sheet ?? null,
    system,
    answers,
    help: values.help === true
  }
}
