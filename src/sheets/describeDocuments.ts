import type { Plan } from '../plan/plan'
import type { UnitSystem } from '../../shared/units'
import type { ChosenOffer } from '../price/offers'
import { noDetails, type JobDetails } from '../details/detailsBook'
import { describeClientReport } from './client-report/clientReport'
import { ageOfBasis, noSources, type Age } from './basisStands'
import { noPhotographs, type TreePhotographs } from './client-report/photographs'
import { tellingIfOlder } from './client-report/olderNotice'
import { describeCutPlan } from './cut-plan/cutPlan'
import { planDocuments, type NeedsOf, type PlanDocument, type UsersDocument } from './documentBook'
import { describeEstimateSheets } from './estimate/estimateSheet'
import { describeDetails, type DetailsGiven } from './details/detailsSheet'
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
  details: JobDetails
  photographs: TreePhotographs
  /** Documents that are written together. */
  together: ReadonlySet<PlanDocument>
  /** What tells that they are older than what they were made from. */
  age: Age
}

/** A document is a sheet, or several that are written together. */
type Described = SheetDescription | readonly SheetDescription[]

/** How each document of a plan is described, from what its entry says it needs. */
const describe: {
  readonly [Kind in PlanDocument]: (job: Pick<Job, NeedsOf<Kind> | 'together' | 'age'>) => Described
} = {
  'cut-plan': ({ plan, details }) => describeCutPlan(plan, details),
  estimate: ({ plan, offer, details }) => describeEstimateSheets(offer, plan, details),
  'client-report': ({ plan, offer, details, photographs, together, age }) => {
    const report = describeClientReport(plan, offer, details, { drawings: true, photographs })
    return tellingIfOlder(report, offer, { withEstimate: together.has('estimate'), age })
  },
  'work-order': ({ plan, offer, details, together, age }) =>
    describeWorkOrder(plan, offer, { details, withEstimate: together.has('estimate'), age }),
  'round-sheet': ({ plan, offer, details }) => describeRoundSheet(plan, offer, { details }),
  specification: ({ plan, offer, details }) => describeSpecification(plan, offer, details)
}

/** How each sheet that a person then owns is described, as it is first written. */
const describeOwn: Record<UsersDocument, (system: UnitSystem, given?: DetailsGiven) => SheetDescription> = {
  rules: (system) => describeRules(system),
  rates: (system) => describeStartRates(system),
  'job-details': describeDetails
}

/**
 * The documents wanted, each as a sheet or more, in the order of `planDocuments`. The one offer is what the estimate and
 * the report price, the specification specifies and the work order sends the crew to; the
 * details stand at the head of all and at the foot of each page. Photographs stand on the pages of their trees in the report. By the
 * sheets that the plan was made from the report and the work order tell when they are older.
 */
export function describeDocuments(
  wanted: Iterable<PlanDocument>,
  plan: Plan,
  offer: ChosenOffer,
  details: JobDetails = noDetails,
  photographs = noPhotographs,
  sources = noSources
): SheetDescription[] {
  const chosen = new Set(wanted)
  const job: Job = {
    plan,
    offer,
    details,
    photographs,
    together: chosen,
    age: ageOfBasis(plan.inventory, sources)
  }
  return planDocuments.filter((kind) => chosen.has(kind)).flatMap((kind) => describe[kind](job))
}

/** A sheet that a person then owns, as it is first written, in the units of a system; details for one inventory. */
export function describeUsersSheet(
  kind: UsersDocument,
  system: UnitSystem,
  given?: DetailsGiven
): SheetDescription {
  return describeOwn[kind](system, given)
}
