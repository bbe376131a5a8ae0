import { parseArgs } from 'node:util'
import { isRefusal, refuse, type Refusal } from '../../shared/refusal'
import { systems, type UnitSystem } from '../../shared/units'
import { listed, listedChoices } from '../../shared/words/lists'
import { detailEntry, type Paper } from '../details/detailsBook'
import { readDetail, wantedOf, type Typed } from '../details/readDetail'
import type { ColumnAnswer } from '../inventory/inventory'
import { planDocuments, type PlanDocument } from '../sheets/documentBook'
import { readColumnArguments } from './columnArgument'
import { readOfferArgument, type WantedOffer } from './offerArgument'

export const usage =
  'npm run -s plan -- [inventory.xlsx|.csv] [--out FILE.xlsx] [--force] [--json] [--date YYYY-MM-DD] [--first-year YYYY] [--details FILE.json] [--offer first|whole|budget=N] [--documents A,B] [--paper letter|a4] [--sheet NAME] [--units in-ft|cm-m] [--column "J=stem above"] [--help] [--version]'

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
  /** A file of job details, as typed, or null. */
  details: string | null
  offer: WantedOffer
  firstYear: number | null
  /** The documents that --out writes. */
  documents: readonly PlanDocument[]
  paper: Paper | null
}

/** A question about the program itself, whatever else is asked for. */
export type Question = 'help' | 'version'

const options = {
  out: { type: 'string' },
  force: { type: 'boolean' },
  json: { type: 'boolean' },
  date: { type: 'string' },
  sheet: { type: 'string' },
  units: { type: 'string' },
  column: { type: 'string', multiple: true },
  details: { type: 'string' },
  offer: { type: 'string' },
  'first-year': { type: 'string' },
  documents: { type: 'string', multiple: true },
  paper: { type: 'string' },
  help: { type: 'boolean', short: 'h' },
  version: { type: 'boolean' }
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

/** The documents that are named, in any order and with any spaces, or the sentence about one that there is not. */
function readDocuments(typed: readonly string[]): readonly PlanDocument[] | Refusal {
  const names = typed.flatMap((text) => text.split(',')).map((name) => name.trim().toLowerCase())
  const known: readonly string[] = planDocuments
  const wrong = names.find((name) => !known.includes(name))
  if (wrong !== undefined)
    return refuse(
      `--documents ${wrong} is not known: write any of ${listed([...planDocuments])}, with commas between them.`
    )
  return names.length === 0 ? planDocuments : planDocuments.filter((kind) => names.includes(kind))
}

/** A value that the details book knows by the same words, or null where it is not given. */
function readAs<Name extends 'firstYear' | 'paper'>(
  name: Name,
  argument: string,
  typed: string | undefined
): Typed<Name> | null | Refusal {
  if (typed === undefined) return null
  const value = readDetail(name, typed)
  return value ?? refuse(`--${argument} ${typed} is not known: write ${wantedOf(detailEntry(name).kind)}.`)
}

/** Arguments that may stand once only. */
const single = (name: string): boolean =>
  Object.hasOwn(options, name) && !['column', 'documents'].includes(name)

/** The sentence about an argument that was given twice, since the last would win without a word. */
function givenTwice(tokens: readonly { kind: string; name?: string; value?: string }[]): Refusal | null {
  const seen = new Map<string, string | undefined>()
  for (const { kind, name, value } of tokens) {
    if (kind !== 'option' || name === undefined || !single(name)) continue
    const before = seen.get(name)
    if (before !== undefined && before !== value)
      return refuse(`--${name} was given twice, ${before} and ${value ?? ''}: give it once.`)
    seen.set(name, value)
  }
  return null
}

/** The arguments taken apart, a question about the program, or the sentence that says what is wrong with them. */
export function readArguments(args: readonly string[]): Wanted | Question | Refusal {
  if (args.includes('--help') || args.includes('-h')) return 'help'
  if (args.includes('--version')) return 'version'
  let parsed
  try {
    parsed = parseArgs({ args: [...args], options, allowPositionals: true, strict: true, tokens: true })
  } catch (error) {
    const first = (error as Error).message.split(/\.\s|\n/)[0] ?? ''
    return refuse(`${first.replace(/\.$/, '')}. Use: ${usage}`)
  }
  const { values, positionals, tokens } = parsed
  const twice = givenTwice(tokens)
  if (twice !== null) return twice
  if (positionals.includes(''))
    return refuse('The name of the inventory is empty: name an .xlsx or .csv file.')
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
  const offer = readOfferArgument(values.offer ?? 'first')
  if (isRefusal(offer)) return offer
  const firstYear = readAs('firstYear', 'first-year', values['first-year'])
  if (isRefusal(firstYear)) return firstYear
  const documents = readDocuments(values.documents ?? [])
  if (isRefusal(documents)) return documents
  const paper = readAs('paper', 'paper', values.paper)
  if (isRefusal(paper)) return paper
  return {
    inventory: positionals[0] ?? null,
    out: values.out ?? null,
    force: values.force === true,
    json: values.json === true,
    date: values.date ?? null,
    sheet: values.sheet ?? null,
    system,
    answers,
    details: values.details ?? null,
    offer,
    firstYear,
    documents,
    paper
  }
}
