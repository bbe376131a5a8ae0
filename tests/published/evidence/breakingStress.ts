import type { Evidence } from '../../../shared/evidence'

export const breakingStressEvidence: Evidence = {
  finding:
    'Taking an oval branch for a circle made its breaking stress look lower, so two readings across are worth taking.',
  source:
    'Kane 2007, Arboric. Urban For. 33(4), Bradford pear, Table 3 (a table page read apart; whose it is was inferred from its 26 branches)',
  certainty: 'read',
  range: '26 branches of one cultivar; modulus of rupture 69.9 MPa',
  caution: 'A lesson about measuring. Never read it as the strength of a branch on another tree.'
}

/** Breaking stress of the same branches as a share of the wood’s modulus of rupture, by the section assumed. */
export const shareOfRupture = {
  'ellipse inside bark': 0.72,
  'ellipse outside bark': 0.55,
  circle: 0.4
} as const

const modulusOfRupture = 69.9

/** Mean breaking stress in MPa under the section assumed. */
export function breakingStress(section: keyof typeof shareOfRupture): number {
  return shareOfRupture[section] * modulusOfRupture
}
