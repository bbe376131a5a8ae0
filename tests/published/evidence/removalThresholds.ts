import type { Evidence } from '../../../shared/evidence'

/** Aspect ratio above which taking a whole limb off left the trunk severely discolored. */
export interface RemovalThreshold extends Evidence {
  species: string
  ratio: number
}

const source = 'Eisner, Gilman & Grabosky 2002, J. Arboric. 28(2):99-105'
const caution =
  'Two species. Between them lies the choice whether to remove or to reduce; neither is a limit.'

export const removalThresholds: readonly RemovalThreshold[] = [
  {
    species: 'live oak',
    ratio: 0.39,
    finding: 'Removal above 0.39 of the trunk left severe discoloration.',
    source,
    certainty: 'read',
    range: 'live oak',
    caution
  },
  {
    species: 'red maple',
    ratio: 0.59,
    finding: 'Removal above 0.59 of the trunk left severe discoloration.',
    source,
    certainty: 'read',
    range: 'red maple',
    caution
  }
]
