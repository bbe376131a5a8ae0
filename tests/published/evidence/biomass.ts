import { isRefusal, type Refusal } from '../../../shared/refusal'
import { outside, type Evidence } from '../../../shared/evidence'

export const biomassEvidence: Evidence = {
  finding: 'Dry weight above ground grows as a power of trunk diameter, and its parts are shares of it.',
  source: 'Jenkins, Chojnacky, Heath & Birdsey 2003, For. Sci. 49(1):12-35',
  certainty: 'second-hand',
  range:
    'trunk diameter at breast height from 2.5 cm, forest trees; answered up to 60 cm here (house choice)',
  caution:
    'National averages of forest trees: open-grown shade trees carry more crown. The branch share, found by difference, is poor below about 20 cm. Good to two figures at best.'
}

interface Curve {
  b0: number
  b1: number
  certainty: Evidence['certainty']
}

function curve(b0: number, b1: number, certainty: Evidence['certainty']): Curve {
  return { b0, b1, certainty }
}

/**
 * Dry kg above ground = exp(b0 + b1·ln dbh in cm). 'read': in the USFS FIA reference species table; 'second-hand':
 * the paper's table of groups as others copied it.
 */
export const biomassGroups = {
  'aspen, alder, cottonwood, willow': curve(-2.2094, 2.3867, 'read'),
  'soft maple, birch': curve(-1.9123, 2.3651, 'second-hand'),
  'mixed hardwood': curve(-2.48, 2.4835, 'read'),
  'hard maple, oak, hickory, beech': curve(-2.0127, 2.4342, 'second-hand'),
  'cedar, larch': curve(-2.0336, 2.2592, 'read'),
  'Douglas-fir': curve(-2.2304, 2.4435, 'second-hand'),
  'true fir, hemlock': curve(-2.5384, 2.4814, 'second-hand'),
  pine: curve(-2.5356, 2.4349, 'second-hand'),
  spruce: curve(-2.0773, 2.3323, 'second-hand'),
  woodland: curve(-0.7152, 1.7029, 'second-hand')
} as const satisfies Record<string, Curve>

export type BiomassGroup = keyof typeof biomassGroups

/** Share of the dry weight above ground = exp(b0 + b1 / dbh in cm); roots are additional to it. */
export const biomassParts = {
  hardwood: {
    foliage: curve(-4.0813, 5.8816, 'read'),
    wood: curve(-0.3065, -5.424, 'read'),
    bark: curve(-2.0129, -1.6805, 'read'),
    roots: curve(-1.6911, 0.816, 'read')
  },
  softwood: {
    foliage: curve(-2.9584, 4.4766, 'read'),
    wood: curve(-0.3737, -1.8055, 'read'),
    bark: curve(-2.098, -1.1432, 'read'),
    roots: curve(-1.5619, 0.6614, 'read')
  }
} as const

export type WoodKind = keyof typeof biomassParts

function trunkRefused(trunkCentimeters: number): Refusal | null {
  return outside('The trunk diameter', trunkCentimeters, 2.5, 60, 'cm')
}

/** Dry weight above ground in kg, from the trunk diameter at breast height in cm. */
export function aboveGroundBiomass(group: BiomassGroup, trunkCentimeters: number): number | Refusal {
  const { b0, b1 } = biomassGroups[group]
  return trunkRefused(trunkCentimeters) ?? Math.exp(b0 + b1 * Math.log(trunkCentimeters))
}

function partRatio(
  kind: WoodKind,
  part: keyof (typeof biomassParts)['hardwood'],
  trunk: number
): number | Refusal {
  const { b0, b1 } = biomassParts[kind][part]
  return trunkRefused(trunk) ?? Math.exp(b0 + b1 / trunk)
}

/** Foliage as a share of the dry weight above ground. */
export function foliageRatio(kind: WoodKind, trunkCentimeters: number): number | Refusal {
  return partRatio(kind, 'foliage', trunkCentimeters)
}

/** Stem wood as a share of the dry weight above ground. */
export function stemWoodRatio(kind: WoodKind, trunkCentimeters: number): number | Refusal {
  return partRatio(kind, 'wood', trunkCentimeters)
}

/** Stem bark as a share of the dry weight above ground. */
export function stemBarkRatio(kind: WoodKind, trunkCentimeters: number): number | Refusal {
  return partRatio(kind, 'bark', trunkCentimeters)
}

/** Coarse roots as a share of the dry weight above ground, additional to it. */
export function rootRatio(kind: WoodKind, trunkCentimeters: number): number | Refusal {
  return partRatio(kind, 'roots', trunkCentimeters)
}

/** Branches as a share of the dry weight above ground: what foliage, stem wood and bark leave. */
export function branchRatio(kind: WoodKind, trunkCentimeters: number): number | Refusal {
  const foliage = foliageRatio(kind, trunkCentimeters)
  const wood = stemWoodRatio(kind, trunkCentimeters)
  const bark = stemBarkRatio(kind, trunkCentimeters)
  if (isRefusal(foliage)) return foliage
  if (isRefusal(wood)) return wood
  return isRefusal(bark) ? bark : 1 - foliage - wood - bark
}
