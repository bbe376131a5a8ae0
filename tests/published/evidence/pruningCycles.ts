import type { Evidence } from '../../../shared/evidence'

/** Years between visits that somebody plans or keeps. */
export interface PruningCycle extends Evidence {
  years: number
}

const caution =
  'Budgets set these as much as trees do. The next visit depends on growth and on what was done.'

/** Years in which a round of all trees is done at so many a year. */
export function meanCycle(trees: number, treesAYear: number): number {
  return trees / treesAYear
}

export const pruningCycles: readonly PruningCycle[] = [
  {
    finding: 'Training every 3 years below 6 in of trunk diameter.',
    source: 'municipal plan, Orono MN',
    certainty: 'read',
    range: 'young street trees of one city',
    caution,
    years: 3
  },
  {
    finding: 'A five-year cycle for street trees.',
    source: 'Miller & Sylvester 1981, J. Arboric. 7(4):109-112, as quoted in the Orono plan',
    certainty: 'second-hand',
    range: 'street trees of one city',
    caution,
    years: 5
  },
  {
    finding: 'Four years for small trees, eight for trunks of 15 to 60 cm.',
    source: 'McPherson 2007, AUF 33(1):1-11, Table 3 (Davis, CA)',
    certainty: 'read',
    range: 'street trees of one city',
    caution,
    years: 4
  },
  {
    finding: '58,000 of 200,000 street trees a year.',
    source: 'Zillmer, Boeder & Genich 2000, AUF 26(2):97-105 (Milwaukee); the quotient is ours',
    certainty: 'read',
    range: 'street trees of one city',
    caution,
    years: meanCycle(200_000, 58_000)
  }
]
