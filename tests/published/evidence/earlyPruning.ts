import type { Evidence } from '../../../shared/evidence'

export const earlyPruningEvidence: Evidence = {
  finding: 'Forming a newly planted tree cost a small part of correcting its structure at 20 years.',
  source: 'Ryder & Moore 2013, AUF 39(1):17-24 (348 recently planted street trees)',
  certainty: 'read',
  range: 'AUD a tree, one Australian program',
  caution: 'Compare the costs with each other, never with a price of today or of another place.'
}

/** Cost a tree, AUD, of formative pruning soon after planting. */
export const formativeCost = {
  'plane tree': 4.13,
  'Chinese elm': 3.25,
  'Callery pear': 2.76,
  'pin oak': 1.62,
  'lemon gum': 0.99
} as const

/** Cost a tree, AUD, of structural pruning at 20 years. */
export const structuralCostAtTwenty = 44.59

/** How many times the cost of forming a species early the structural pruning at 20 years was. */
export function costOfWaiting(species: keyof typeof formativeCost): number {
  return structuralCostAtTwenty / formativeCost[species]
}
