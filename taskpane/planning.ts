import type { CellBlock } from '../shared/cells'
import type { Problem } from '../shared/problems'
import type { JobDetails } from '../src/details/detailsBook'
import type { ReadingChoices } from '../src/inventory/inventory'
import type { Plan } from '../src/plan/plan'
import type { Estimate } from '../src/price/estimate'
import type { Engine, PlanSteps, Weigh } from './engine'
import type { SheetsRead } from './surface'

/** A plan with everything needed to show it, write it and make it again. */
export interface Planned {
  read: SheetsRead
  choices: ReadingChoices
  /** The Rules sheet it was planned by, or null where the workbook has none. */
  rulesSheet: CellBlock | null
  /** The Rates sheet it was priced by, or null where the workbook has none. */
  ratesSheet: CellBlock | null
  /** The Estimate that was written last, whose changed rates it was priced by, or null where there was none. */
  estimateSheet: CellBlock | null
  /** The Job details sheet of this inventory, or null where it has none. */
  detailsSheet: CellBlock | null
  details: JobDetails
  plan: Plan
  weigh: Weigh
  estimate: Estimate
  /** Everything found wrong, from the first look at the selection to the plan. */
  problems: Problem[]
}

/** How far the planning is. `total` is 0 where it is not known. */
export interface Progress {
  doing: string
  done: number
  total: number
}

export interface PlanningOptions {
  date: string
  /** The workbook's Rules sheet. */
  rulesSheet?: CellBlock | null
  /** The workbook's Rates sheet. */
  ratesSheet?: CellBlock | null
  /** The Estimate that was written last. */
  estimateSheet?: CellBlock | null
  /** The Job details sheet of the inventory. */
  detailsSheet?: CellBlock | null
  signal: AbortSignal
  onProgress(progress: Progress): void
}

/** Milliseconds of work after which the browser gets its turn, so that a cancel is noticed. */
const turn = 30

const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0))

/** Plans the inventory of these sheets in turns of about 30 ms; null where it was canceled. */
export async function planSheets(
  engine: Engine,
  read: SheetsRead,
  choices: ReadingChoices,
  options: PlanningOptions
): Promise<Planned | null> {
  const { date, signal, onProgress } = options
  const { rulesSheet = null, ratesSheet = null, estimateSheet = null, detailsSheet = null } = options
  onProgress({ doing: 'Checking the rows', done: 0, total: 0 })
  await pause()
  if (signal.aborted) return null
  const inventory = await engine.readSheets(read.sheets, choices)
  await pause()
  const { details, problems: unusable } = await engine.detailsOfDay(detailsSheet, date)
  const rules = await engine.planByRules(rulesSheet)
  const steps = await engine.planTrees(inventory, { date, work: details, ...rules })
  const plan = await runInTurns(steps, inventory.trees.length, options)
  if (plan === null) return null
  onProgress({ doing: 'Pricing the plan', done: 0, total: 0 })
  await pause()
  if (signal.aborted) return null
  const weigh = await engine.weighing()
  const { estimate, problems } = await engine.priceByRates(plan, ratesSheet, estimateSheet)
  return {
    read,
    choices,
    rulesSheet,
    ratesSheet,
    estimateSheet,
    detailsSheet,
    details,
    plan,
    weigh,
    estimate,
    problems: [...unusable, ...plan.problems, ...problems]
  }
}

async function runInTurns(
  steps: PlanSteps,
  total: number,
  { signal, onProgress }: PlanningOptions
): Promise<Plan | null> {
  let done = 0
  let since = performance.now()
  for (;;) {
    if (signal.aborted) return null
    const step = steps.next()
    if (step.done === true) return step.value
    if (step.value !== undefined) done += 1
    if (performance.now() - since < turn) continue
    onProgress({ doing: 'Planning the trees', done, total })
    await pause()
    since = performance.now()
  }
}
