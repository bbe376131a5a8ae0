import type { Plan } from '../plan/plan'
import type { UnitSystem } from '../../shared/units'
import type { ChosenOffer } from '../price/offers'
import { describeClientReport, type Cover } from './client-report/clientReport'
import { describeCutPlan } from './cut-plan/cutPlan'
import { planDocuments, type NeedsOf, type PlanDocument, type UsersDocument } from './documentBook'
import { describeEstimateSheets } from './estimate/estimateSheet'
import { describeStartRates } from './rates/ratesSheet'
import { describeRoundSheet } from './round-sheet/roundSheet'
import { describeRules } from './rules/rulesSheet'
import type { SheetDescription } from './sheet'
import { describeSpecification } from './specification/specification'
import { describeWorkOrder } from './work-order/workOrder'

export { planDocuments, type PlanDocument } from './documentBook'

/** Everything that a document can be made from. */
interface Job {
  plan: Plan
  offer: ChosenOffer
  cover: Cover
}

/** A document is a sheet, or several that are written together. */
type Described = SheetDescription | readonly SheetDescription[]

/** How each document of a plan is described, from what its entry says it needs. */
const describe: { readonly [Kind in PlanDocument]: (job: Pick<Job, NeedsOf<Kind>>) => Described } = {
  'cut-plan': ({ plan }) => describeCutPlan(plan),
  estimate: ({ plan, offer }) => describeEstimateSheets(offer, plan),
  'client-report': ({ plan, offer, cover }) => describeClientReport(plan, offer, cover, { drawings: true }),
  'work-order': ({ plan, offer, cover }) => describeWorkOrder(plan, offer, { cover }),
  'round-sheet': ({ plan, offer, cover }) => describeRoundSheet(plan, offer, { cover }),
  specification: ({ plan, offer }) => describeSpecification(plan, offer)
}

/** How each sheet that a person then owns is described, as it is first written. */
const describeOwn: Record<UsersDocument, (system: UnitSystem) => SheetDescription> = {
  rules: (system) => describeRules(system),
  rates: (system) => describeStartRates(system)
}

/** A cover of which only the dates are known: the rest is left to be written by hand. */
export function plainCover(plan: Plan, { validUntil }: Pick<ChosenOffer, 'validUntil'>): Cover {
  return { client: '', site: '', preparedBy: '', date: plan.date, valid: validUntil }
}

/**
 * The documents wanted, each as a sheet or more, in the order of `planDocuments`. The one offer is what the estimate and
 * the report price, the specification specifies and the work order sends the crew to.
 */
export function describeDocuments(
  wanted: Iterable<PlanDocument>,
  plan: Plan,
  offer: ChosenOffer,
  cover: Cover = plainCover(plan, offer)
): SheetDescription[] {
  const job: Job = { plan, offer, cover }
  const chosen = new Set(wanted)
  return planDocuments.filter((kind) => chosen.has(kind)).flatMap((kind) => describe[kind](job))
}

/** A sheet that a person then owns, as it is first written, in the units of a system. */
export function describeUsersSheet(kind: UsersDocument, system: UnitSystem): SheetDescription {
  return describeOwn[kind](system)
}
