import type { Plan } from '../plan/plan'
import type { Estimate } from '../price/estimate'
import type { UnitSystem } from '../../shared/units'
import { wholeProgram } from '../price/offers'
import { describeClientReport, type Cover } from './client-report/clientReport'
import { describeCutPlan } from './cut-plan/cutPlan'
import { planDocuments, type NeedsOf, type PlanDocument, type UsersDocument } from './documentBook'
import { describeEstimate } from './estimate/estimateSheet'
import type { ChosenOffer } from './offered'
import { describeStartRates } from './rates/ratesSheet'
import { describeRules } from './rules/rulesSheet'
import type { SheetDescription } from './sheet'
import { describeSpecification } from './specification/specification'
import { describeWorkOrder } from './work-order/workOrder'

export { planDocuments, type PlanDocument } from './documentBook'

/** Everything that a document can be made from. */
interface Job {
  plan: Plan
  estimate: Estimate
  cover: Cover
  offer: ChosenOffer
}

/** How each document of a plan is described, from what its entry says it needs. */
const describe: { readonly [Kind in PlanDocument]: (job: Pick<Job, NeedsOf<Kind>>) => SheetDescription } = {
  'cut-plan': ({ plan }) => describeCutPlan(plan),
  estimate: ({ plan, estimate, offer }) => describeEstimate(estimate, plan, offer),
  'client-report': ({ plan, estimate, cover, offer }) =>
    describeClientReport(plan, estimate, cover, { drawings: true, offer }),
  'work-order': ({ plan, estimate, cover, offer }) => describeWorkOrder(plan, estimate, { cover, offer }),
  specification: ({ plan }) => describeSpecification(plan)
}

/** How each sheet that a person then owns is described, as it is first written. */
const describeOwn: Record<UsersDocument, (system: UnitSystem) => SheetDescription> = {
  rules: () => describeRules(),
  rates: (system) => describeStartRates(system)
}

/** A cover of which only the dates are known: the rest is left to be written by hand. */
export function plainCover(plan: Plan, estimate: Estimate): Cover {
  return { client: '', site: '', preparedBy: '', date: plan.date, valid: estimate.validUntil }
}

/**
 * The documents wanted, each as a sheet, in the order of `planDocuments`. What is offered to the client, all of the
 * program unless given, is what the estimate marks, the report prices and the work order sends the crew to.
 */
export function describeDocuments(
  wanted: Iterable<PlanDocument>,
  plan: Plan,
  estimate: Estimate,
  cover: Cover = plainCover(plan, estimate),
  offer: ChosenOffer = wholeProgram(estimate)
): SheetDescription[] {
  const job: Job = { plan, estimate, cover, offer }
  const chosen = new Set(wanted)
  return planDocuments.filter((kind) => chosen.has(kind)).map((kind) => describe[kind](job))
}

/** A sheet that a person then owns, as it is first written, in the units of a system. */
export function describeUsersSheet(kind: UsersDocument, system: UnitSystem): SheetDescription {
  return describeOwn[kind](system)
}
