import type { LifeStage } from '../../../shared/choices'
import type { Certainty } from '../../../shared/sourced'

/** What a publication lets come off in a season or a visit, as a share of the live foliage. */
export interface RemovalLimit {
  stages: readonly LifeStage[]
  least: number
  most: number
  /** True where the text limits everybody, false where it is one region's advice for fast young trees. */
  general: boolean
  words: string
  source: string
  certainty: Certainty
}

const csu = 'Colorado State University Extension GardenNotes, Pruning Mature Shade Trees'
const ep276 = 'Gilman, EDIS EP276/ENH1022, UF/IFAS'

function limit(
  stages: readonly LifeStage[],
  range: readonly [least: number, most: number],
  general: boolean,
  words: string,
  source: string,
  certainty: Certainty = 'read'
): RemovalLimit {
  return { stages, least: range[0], most: range[1], general, words, source, certainty }
}

/**
 * The published limits side by side; they disagree, and local law wins. Nothing is filled in where none was found.
 * Where a text speaks of growth rather than of age, the life stages it stands under are our reading of it.
 */
export const removalLimits: readonly RemovalLimit[] = [
  limit(
    ['mature', 'old'],
    [0, 0.25],
    true,
    'a quarter of the foliage in a growing season',
    'ANSI A300-1995, 5.3.1'
  ),
  limit(
    ['planting', 'young', 'medium', 'mature', 'old'],
    [0, 0.25],
    true,
    'a quarter of the living crown at a time',
    'USDA Forest Service, How to Prune Trees, NA-FR-01-95',
    'memory'
  ),
  limit(['young'], [0, 0.25], true, 'up to 25 %, actively growing without limits', csu),
  limit(['medium'], [0, 0.2], true, 'up to 20 %, actively growing', csu),
  limit(['mature'], [0.1, 0.15], true, '10 to 15 %, healthy trees', csu),
  limit(
    ['young', 'medium'],
    [0.1, 0.25],
    true,
    '10 to 25 % in the active growth phase',
    'Colorado State Extension, Pueblo County'
  ),
  limit(
    ['mature', 'old'],
    [0.05, 0.1],
    true,
    '5 to 10 % once three quarters of mature size',
    'Colorado State Extension, Pueblo County'
  ),
  limit(['planting'], [0, 0.25], true, '25 % at planting', ep276),
  limit(['young'], [0, 0.4], false, '40 % at the visit after 2 years', ep276),
  limit(['young', 'medium'], [0, 0.35], false, '35 % at the visit after 4 years', ep276)
]

/** The most that every general limit for a life stage still allows. */
export function strictestLimit(stage: LifeStage): number {
  const general = removalLimits.filter((entry) => entry.general && entry.stages.includes(stage))
  return Math.min(...general.map(({ most }) => most))
}

/** The most that any publication listed names for a life stage, also for one region. */
export function highestNamed(stage: LifeStage): number {
  const named = removalLimits.filter((entry) => entry.stages.includes(stage))
  return Math.max(...named.map(({ most }) => most))
}
