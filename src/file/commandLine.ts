import { dirname, resolve } from 'node:path'
import type { Inventory, ReadingChoices } from '../inventory/inventory'
import { readKept, withKept } from '../inventory/keptAnswers'
import { byHeaders } from '../inventory/namedColumn'
import { readSheets } from '../inventory/readSheets'
import { planInventory } from '../plan/planInventory'
import { planByRules } from '../plan/rules/planByRules'
import type { Plan, TreePlan } from '../plan/plan'
import type { Estimate } from '../price/estimate'
import { priceByRates } from '../price/priceByRates'
import type { Cell } from '../../shared/cells'
import type { Problem } from '../../shared/problems'
import { isRefusal, refuse, type Refusal } from '../../shared/refusal'
import { version } from '../../shared/version'
import { forTerminal, jsonForTerminal } from '../../shared/words/terminal'
import { photographed } from '../sheets/client-report/photographs'
import { describeDocuments } from '../sheets/describeDocuments'
import type { DetailName } from '../details/detailsBook'
import { help } from './commandHelp'
import { readDetailsFile, type GivenDetails } from './detailsFile'
import { jobOf } from './jobOf'
import { findLogo } from './logo'
import { findPhotographs } from './photographs'
import { offerAsked } from './offerArgument'
import { readArguments, type Wanted } from './planArguments'
import { sealed } from './seal'
import { workbookOf } from './workbookOf'
import { whyNotWritable, writeOut } from './outFile'
import { planJson } from './planJson'
import { planText } from './planText'
import { readingChoices } from './readingChoices'
import { readPlannedFile, type PlannedFile } from './readPlannedFile'
import { sampleInventory, sampleSheetName } from './sampleInventory'

/** What the command needs of the machine; a test brings its own. */
export interface Surroundings {
  out(text: string): void
  /** One line: why nothing was done. */
  fail(sentence: string): void
  /** Local day, ISO. */
  today: string
  /** Folder that file names start from. */
  folder: string
}

/** A plan was made; the arguments or a file cannot be used; no row could be planned. */
export type ExitCode = 0 | 2 | 3

const sample: PlannedFile = {
  sheets: [{ name: sampleSheetName, rows: sampleInventory, top: 0, left: 0 }],
  rules: null,
  rates: null,
  estimate: null,
  details: [],
  names: [sampleSheetName],
  pictures: [],
  kept: readKept(null)
}

/**
 * A tree without limbs was judged where it has a crown ratio. One with limbs was where any of them was assessed or cut: that
 * its leader could be read is no judgment while the limbs beside it wait.
 */
function isJudged({ tree, leader, visits, liveCrownRatio }: TreePlan): boolean {
  if (tree.limbs.length === 0) return liveCrownRatio !== null
  const beside = tree.limbs.filter((limb) => limb !== leader.limb)
  return visits.some(({ cuts, limbs }) => cuts.length > 0 || limbs.length > 0 || beside.length === 0)
}

/** At least one tree was judged, or has a time budget. */
function anythingPlanned(made: Plan, estimate: Estimate): boolean {
  return estimate.lines.length > 0 || estimate.budgetFigures.length > 0 || made.trees.some(isJudged)
}

/** Details that the arguments give, without the logo, and where that is. */
interface Given {
  readonly details: GivenDetails
  readonly logo: { readonly path: string; readonly said: string } | null
}

/** The path of a file that a --details file names. */
function beside(folder: string, details: string | null, name: string): string {
  return resolve(dirname(resolve(folder, details ?? '')), name)
}

/** Details that the arguments give, which go before those of the file. */
async function givenDetails(
  { details, firstYear, paper, date }: Wanted,
  { folder, today }: Surroundings
): Promise<Given | Refusal> {
  const inFile = details === null ? new Map() : await readDetailsFile(resolve(folder, details), details)
  if (isRefusal(inFile)) return inFile
  const given = new Map<DetailName, Cell>(inFile)
  const said = given.get('logo')
  given.delete('logo')
  const logo = said === undefined ? null : { path: beside(folder, details, String(said)), said: String(said) }
  if (firstYear !== null) given.set('firstYear', firstYear)
  if (paper !== null) given.set('paper', paper === 'a4' ? 'A4' : paper)
  const first = Number(given.get('firstYear') ?? Infinity)
  const year = (date ?? today).slice(0, 4)
  const from = firstYear === null ? `--details ${details ?? ''} gives “firstYear” as` : '--first-year'
  return first < Number(year)
    ? refuse(`${from} ${String(first)}, which is over on the day of the plan: write ${year} or a later year.`)
    : { details: given, logo }
}

/** What was told of columns, for a workbook whose columns may move before it is planned again. */
function keptFrom(known: ReadingChoices, { matches }: Inventory): ReadingChoices {
  return known.answers === undefined ? known : { ...known, answers: byHeaders(known.answers, matches) }
}

const none: ReadonlySet<string> = new Set()

async function plan(wanted: Wanted, around: Surroundings): Promise<ExitCode | Refusal> {
  const inventoryFile = wanted.inventory === null ? null : resolve(around.folder, wanted.inventory)
  const out = wanted.out === null ? null : resolve(around.folder, wanted.out)
  const refused = out === null ? null : await whyNotWritable(out, inventoryFile, wanted.force)
  if (refused !== null) return refused
  const given = await givenDetails(wanted, around)
  if (isRefusal(given)) return given
  const file = inventoryFile === null ? sample : await readPlannedFile(inventoryFile)
  if (isRefusal(file)) return file
  const choices = readingChoices(wanted, file.sheets)
  if (isRefusal(choices)) return choices

  const date = wanted.date ?? around.today
  const { choices: kept } = file.kept
  const unread: Problem[] = [...file.kept.problems]
  const known = withKept(choices, kept)
  const inventory = readSheets(file.sheets, known)
  const read = jobOf(file, inventory, given.details, date)
  const found = await findLogo(read, file, inventoryFile, given.logo)
  const job = { ...read, details: { ...read.details, logo: found.logo } }
  const made = planInventory(inventory, { date, work: job.details, ...planByRules(file.rules) })
  const { estimate, problems } = priceByRates(made, file.rates, file.estimate)
  const planned = anythingPlanned(made, estimate)
  const offer = offerAsked(wanted.offer, estimate)
  if (isRefusal(offer)) return offer
  if (out !== null && planned) {
    const shown = wanted.documents.includes('client-report') ? photographed(made, offer, job.details) : none
    const pictures = await findPhotographs(shown, inventory, file, inventoryFile)
    unread.push(...pictures.problems)
    const documents = describeDocuments(wanted.documents, made, offer, job.details, pictures.photographs, {
      sheets: file.sheets,
      // Its sheet of rules is written again under a name of ours, with shares as numbers.
      rules: null
    })
    const written = await workbookOf(documents, {
      ...{ file, known: keptFrom(known, inventory), system: made.system },
      ...{ rates: estimate.rates, job, pictures: found.kept }
    })
    const failed = await writeOut(out, sealed(written))
    if (failed !== null) return failed
  }
  const told = {
    ...made,
    problems: [...unread, ...job.problems, ...found.problems, ...made.problems, ...problems]
  }
  around.out(
    wanted.json
      ? jsonForTerminal(JSON.stringify(planJson(told, offer), null, 2))
      : forTerminal(planText(told, offer))
  )
  if (out !== null && !wanted.json)
    around.out(
      planned ? `\nWritten to ${out}` : `\nNot written to ${out}: nothing of the inventory could be judged.`
    )
  return planned ? 0 : 3
}

/** Plans a file, or the sample inventory, as the arguments ask. */
export async function runCommandLine(args: readonly string[], around: Surroundings): Promise<ExitCode> {
  const wanted = readArguments(args)
  if (wanted === 'help' || wanted === 'version') {
    around.out(wanted === 'help' ? help : version)
    return 0
  }
  const result = isRefusal(wanted) ? wanted : await plan(wanted, around)
  if (!isRefusal(result)) return result
  around.fail(forTerminal(result.sentence.replace(/\s+/g, ' ')))
  return 2
}
