import type { Evidence } from '../../../shared/evidence'

/** A published live-crown ratio: a goal of landscape pruning, or what trees were found to have. */
export interface CrownRatio extends Evidence {
  ratio: number
  kind: 'goal' | 'found'
}

export const crownRatios: readonly CrownRatio[] = [
  {
    finding: 'Live-crown ratio above 60 %.',
    source: 'Gilman, EDIS EP276/ENH1022, UF/IFAS, strategy 6',
    certainty: 'read',
    range: 'shade trees in landscapes',
    caution: 'A goal for open-grown trees, not a norm of nature.',
    ratio: 0.6,
    kind: 'goal'
  },
  {
    finding: 'Live branches on at least two-thirds of the height.',
    source: 'USDA Forest Service, How to Prune Trees, NA-FR-01-95, crown raising',
    certainty: 'memory',
    range: 'shade trees',
    caution: 'A goal for open-grown trees, not a norm of nature.',
    ratio: 2 / 3,
    kind: 'goal'
  },
  {
    finding: 'Median live-crown ratio of deciduous broadleaves over 2 m.',
    source: 'BAAD (Falster et al. 2015, Ecology 96:1445), n = 602',
    certainty: 'data',
    range: 'mostly forest and plantation trees',
    caution: 'What crowded trees have, not what a shade tree should have.',
    ratio: 0.527,
    kind: 'found'
  }
]
