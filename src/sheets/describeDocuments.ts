import type { Plan } from '../plan/plan'
import type { Estimate } from '../price/estimate'
import { wholeProgramme } from '../price/offers'
import { describeClientReport, type Cover } from './client-report/clientReport'
import { describeCutPlan } from './cut-plan/cutPlan'
import { describeEstimate } from './estimate/estimateSheet'
import type { ChosenOffer } from './offered'
import type { DocumentKind, SheetDescription } from './sheet'
import { describeSpecification } from './specification/specification'
import { describeWorkOrder } from './work-order/workOrder'

/** The documents that a plan can be written as, in the order of their sheets. */
export const planDocuments = [
  'cut-plan',
  'estimate',
  'client-report',
  'work-order',
  'specification'
] as const satisfies readonly DocumentKind[]

export type PlanDocument = (typeof planDocuments)[number]

/** A cover of which only the dates are known: the rest is left to be written by hand. */
export function plainCover(plan: Plan, estimate: Estimate): Cover {
  return { client: '', site: '', preparedBy: '', date: plan.date, valid: estimate.validUntil }
}

/**
 * The documents wanted, each as a sheet, in the order of `planDocuments`. What is offered to the client, all of the
 * programme unless given, is what the estimate marks, the report prices and the work order sends the crew to.
 */
export function describeDocuments(
  wanted: Iterable<PlanDocument>,
  plan: Plan,
  estimate: Estimate,
  cover: Cover = plainCover(plan, estimate),
  offer: ChosenOffer = wholeProgramme(estimate)
): SheetDescription[] {
  const describe: Record<PlanDocument, () => SheetDescription> = {
    'cut-plan': () => describeCutPlan(plan),
    estimate: () => describeEstimate(estimate, plan, offer),
    'client-report': () => describeClientReport(plan, estimate, cover, { drawings: true, offer }),
    'work-order': () => describeWorkOrder(plan, estimate, { cover, offer }),
    specification: () => describeSpecification(plan)
  }
  const chosen = new Set(wanted)
  return planDocuments.filter((kind) => chosen.has(kind)).map((kind) => describe[kind]())
}
