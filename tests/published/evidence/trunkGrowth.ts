import type { Evidence } from '../../../shared/evidence'

export const newYorkGrowthEvidence: Evidence = {
  finding: 'Street trees measured twice, ten years apart, grew slowly.',
  source: 'Mailloux et al. 2024, PLOS ONE 19(7):e0304447, New York City 2005-2015, 126,362 street trees',
  certainty: 'read',
  range: 'four species, one cold city',
  caution: 'Growth depends on site, water and age: a measured rate wins over any table.'
}

/** Inches of trunk diameter a year. */
export const newYorkGrowth = {
  'London plane': 0.163,
  'Callery pear': 0.334,
  honeylocust: 0.356,
  'silver linden': 0.51
} as const

export const urbanGrowthEvidence: Evidence = {
  finding:
    'Diameter over age, in milder and watered cities, came out at one and a half to four times as much.',
  source: 'USFS Urban Tree Database RDS-2016-0005, 17 cities, ages 5 to 40, large deciduous n = 2,740',
  certainty: 'data',
  range: 'mean over a tree’s life; the size at planting counts as growth, and only survivors are in it',
  caution: 'Growth depends on site, water and age: a measured rate wins over any table.'
}

/** Inches of trunk diameter a year: lower quartile, median, upper quartile, by mature size. */
export const urbanGrowth = {
  large: { lower: 0.51, median: 0.64, upper: 0.8 },
  medium: { lower: 0.47, median: 0.61, upper: 0.78 },
  small: { lower: 0.36, median: 0.5, upper: 0.7 }
} as const

/** Medians of the same data for the species that both sources have. */
export const urbanGrowthOf = { 'London plane': 0.62, 'Callery pear': 0.55, honeylocust: 0.55 } as const

/** How many times faster a species grew in the one source than in the other. */
export function growthTimes(species: keyof typeof urbanGrowthOf): number {
  return urbanGrowthOf[species] / newYorkGrowth[species]
}
