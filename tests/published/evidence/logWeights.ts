import type { Evidence } from '../../../shared/evidence'

export const logWeightEvidence: Evidence = {
  finding: 'Another table of log weights agrees with the densities used here, but for yellow-poplar.',
  source: 'National Park Service, Safety for Tree Workers, log weights as reprinted in an equipment manual',
  certainty: 'second-hand',
  range: 'green logs, whole pounds a cubic foot',
  caution: 'Wood differs from tree to tree and with the season: lift by what it could weigh, not by a table.'
}

/** Pounds a cubic foot of green log. */
export const logWeights = {
  'red maple': 50,
  'northern red oak': 63,
  'white oak': 62,
  'live oak': 76,
  'american elm': 54,
  'white ash': 48,
  honeylocust: 61,
  'yellow-poplar': 38,
  'black cherry': 45,
  beech: 54,
  hackberry: 50,
  'black walnut': 58,
  cottonwood: 49
} as const
