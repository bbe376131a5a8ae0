import type { Evidence } from '../../../shared/evidence'

/** Whether stripping a crown’s inside raised the wind load or the movement of the tree, as measured. */
export interface LionTailTrial extends Evidence {
  raisedLoad: boolean
}

const caution =
  'Do not say that lion-tailing raises wind load: it did not. Argue from the inner foliage lost, the load left at the tips, and half of the foliage in the lower two-thirds.'

export const lionTailTrials: readonly LionTailTrial[] = [
  {
    finding:
      'Thinning, reduction and lion-tailing all lowered wind load, by the weight removed; the center of pressure dropped after thinning and reduction, not after lion-tailing.',
    source: 'Smiley & Kane 2006, AUF 32(1):33-40',
    certainty: 'read',
    range: '81 red maples at 11, 16 and 20 m/s',
    caution,
    raisedLoad: false
  },
  {
    finding:
      'Movement fell with the amount removed; reduced, raised, structurally pruned and lion-tailed trees did not differ.',
    source: 'Gilman, Grabosky, Jones & Harchick 2008, AUF 34(1):13-19',
    certainty: 'read',
    range: 'winds of 20.1 and 26.8 m/s',
    caution,
    raisedLoad: false
  }
]
