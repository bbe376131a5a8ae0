import type { StoredPicture } from '../../../shared/pictures/storedPicture'
import type { JobDetails } from '../../details/detailsBook'
import type { Plan } from '../../plan/plan'
import type { ChosenOffer } from '../../price/offers'
import { chosenTrees } from './chosenTrees'
import { reportedTrees } from './reportedTrees'

/** A photograph a tree, by its id. */
export type TreePhotographs = ReadonlyMap<string, StoredPicture>

export const noPhotographs: TreePhotographs = new Map()

/** The trees whose pages in the report have room for a photograph. */
export function photographed(plan: Plan, offer: ChosenOffer, details: JobDetails): ReadonlySet<string> {
  return new Set(chosenTrees(reportedTrees(plan, offer), offer, details).map(({ tree }) => tree.tree.id))
}
