import { resolve } from 'node:path'
import { readKept, withKept } from '../inventory/keptAnswers'
import { readSheets } from '../inventory/readSheets'
import { planInventory } from '../plan/planInventory'
import { planByRules } from '../plan/rules/planByRules'
import type { Plan, TreePlan } from '../plan/plan'
import type { Estimate } from '../price/estimate'
import { firstVisit } from '../price/offers'
import { priceByRates } from '../price/priceByRates'
import { isRefusal, type Refusal } from '../../shared/refusal'
import { forTerminal, jsonForTerminal } from '../../shared/words/terminal'
import { describeDocuments } from '../sheets/describeDocuments'
import { documentBook, planDocuments } from '../sheets/documentBook'
import { aboutReading, readArguments, usage, type Wanted } from './planArguments'
import { whyNotWritable, writeOut } from './outFile'
import { planJson } from './planJson'
import { planText } from './planText'
import { readingChoices } from './readingChoices'
import { readPlannedFile, type PlannedFile } from './readPlannedFile'
import { sampleInventory, sampleSheetName } from './sampleInventory'
import { writeWorkbook } from './writeWorkbook'

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

async function plan(wanted: Wanted, around: Surroundings): Promise<ExitCode | Refusal> {
  const inventory = wanted.inventory === null ? null : resolve(around.folder, wanted.inventory)
  const out = wanted.out === null ? null : resolve(around.folder, wanted.out)
  const refused = out === null ? null : await whyNotWritable(out, inventory, wanted.force)
  if (refused !== null) return refused
  const file = inventory === null ? sample : await readPlannedFile(inventory)
  if (isRefusal(file)) return file
  const choices = readingChoices(wanted, file.sheets)
  if (isRefusal(choices)) return choices

  const { choices: kept, problems: unread } = file.kept
  const made = planInventory(readSheets(file.sheets, withKept(choices, kept)), {
    date: wanted.date ?? around.today,
    ...planByRules(file.rules)
  })
  const { estimate, problems } = priceByRates(made, file.rates, file.estimate)
  const planned = anythingPlanned(made, estimate)
  const offer = firstVisit(estimate)
  if (out !== null && planned) {
    const documents = describeDocuments(planDocuments, made, offer)
    const failed = await writeOut(out, await writeWorkbook(documents))
    if (failed !== null) return failed
  }
  const told = { ...made, problems: [...unread, ...made.problems, ...problems] }
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

/** What --out writes, one line per sheet. */
const sheetsOfOut = [
  '--out writes a workbook with these sheets:',
  ...planDocuments.map((kind) => `  ${documentBook[kind].title}: ${documentBook[kind].about}`)
].join('\n')

/** Plans a file, or the sample inventory, as the arguments ask. */
export async function runCommandLine(args: readonly string[], around: Surroundings): Promise<ExitCode> {
  const wanted = readArguments(args)
  if (!isRefusal(wanted) && wanted.help) {
    around.out(
      `${usage}\nWithout a file, the sample inventory (an invented scenario) is planned.\n${aboutReading}\n${sheetsOfOut}`
    )
    return 0
  }
  const result = isRefusal(wanted) ? wanted : await plan(wanted, around)
  if (!isRefusal(result)) return result
  around.fail(forTerminal(result.sentence.replace(/\s+/g, ' ')))
  return 2
}
