import type { CellBlock } from '../shared/cells'
import type { Problem } from '../shared/problems'
import type { UnitSystem } from '../shared/units'
import type { Inventory, ReadingChoices } from '../src/inventory/inventory'
import type { SheetCells } from '../src/inventory/survey/sheetCells'
import type { Plan, TreePlan } from '../src/plan/plan'
import type { PlanOptions } from '../src/plan/planInventory'
import type { Estimate } from '../src/price/estimate'
import type { ChosenOffer } from '../src/price/offers'
import type { JobDetails } from '../src/details/detailsBook'
import type { Sources } from '../src/sheets/basisStands'
import type { TreePhotographs } from '../src/sheets/client-report/photographs'
import type { DetailsGiven } from '../src/sheets/details/detailsSheet'
import type { PlanDocument, UsersDocument } from '../src/sheets/documentBook'
import type { SheetDescription } from '../src/sheets/sheet'
import type * as documents from './documents'

/** How trees and charts are drawn. */
export type Drawings = Pick<
  typeof documents,
  'doseChart' | 'drawTree' | 'fittingHeight' | 'priceChart' | 'ratioChart' | 'toSvgElement'
>

/** Why this cut of a limb and not more, in sentences, by what the engine weighed, and how sure the first cuts are. */
export type Weigh = Pick<typeof documents, 'weighedFor' | 'confidenceOf'>

/** A tree once it is planned, nothing where the pane may respond before it is, and the whole plan at the end. */
export type PlanSteps = Generator<TreePlan | undefined, Plan>

type PlanBasis = Omit<PlanOptions, 'date' | 'work'>

interface Detailed {
  readonly details: JobDetails
  readonly problems: readonly Problem[]
}

interface Priced {
  estimate: Estimate
  problems: Problem[]
}

/** What the pane asks of the engine and the documents: read, plan, price, describe, in that order; fetched at first need. */
export interface Engine {
  readSheets(sheets: readonly SheetCells[], choices?: ReadingChoices): Inventory | Promise<Inventory>
  /** Gives one tree after the other, and rests within those that take their time; returns the whole plan. */
  planTrees(inventory: Inventory, options: PlanOptions): PlanSteps | Promise<PlanSteps>
  /** What tells why a cut is no larger, and how sure it is. */
  weighing(): Weigh | Promise<Weigh>
  /** How to plan by the workbook's Rules sheet, or without one. */
  planByRules(sheet: CellBlock | null): PlanBasis | Promise<PlanBasis>
  /** What the workbook's Job details sheet says for a plan of a day, blank without one, and what is wrong with it. */
  detailsOfDay(sheet: CellBlock | null, date: string): Detailed | Promise<Detailed>
  /**
   * What the plan costs by the workbook's Rates sheet, or by invented rates, with what was changed on the Estimate that was
   * written last, and what is wrong with either.
   */
  priceByRates(plan: Plan, sheet: CellBlock | null, estimate?: CellBlock | null): Priced | Promise<Priced>
  /** A sheet that the person then owns, as it is first written. */
  describeUsersSheet(
    kind: UsersDocument,
    system: UnitSystem,
    given?: DetailsGiven
  ): SheetDescription | Promise<SheetDescription>
  describeDocuments(
    wanted: Iterable<PlanDocument>,
    plan: Plan,
    offer: ChosenOffer,
    details: JobDetails,
    photographs?: TreePhotographs,
    sources?: Sources
  ): SheetDescription[] | Promise<SheetDescription[]>
  /** The specification of one tree as plain text. */
  specificationOf(plan: Plan, tree: TreePlan): string | Promise<string>
  drawings(): Promise<Drawings>
}
