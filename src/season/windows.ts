import type { Certainty } from '../../shared/sourced'

/** A day of any year: month 1 to 12, day of the month. */
export type MonthDay = readonly [month: number, day: number]

/** What a window is about. */
export type Concern = 'oak wilt' | 'nesting'

/** Trees that a window or a habit of a species is about. */
export type SpeciesGroup = 'oaks' | 'bleeders' | 'all trees'

/** Where the agency or publication said it, and how sure we are of it. */
interface Said {
  source: string
  certainty: Certainty
}

/** Months of a named region in which pruning is avoided. */
export interface SeasonWindow extends Said {
  /** As a person would name it. */
  region: string
  /** Any of these, in the region a person typed, means this one. */
  words: readonly string[]
  concern: Concern
  group: SpeciesGroup
  from: MonthDay
  to: MonthDay
  /** What the source asks for, as a sentence of ours. */
  says: string
}

/** Something asked for in a region all year round. */
export interface StandingRule extends Said {
  region: string
  words: readonly string[]
  group: SpeciesGroup
  says: string
}

const texas = { region: 'Texas', words: ['texas', 'tx'] } as const
const wisconsin = { region: 'Wisconsin', words: ['wisconsin', 'wi'] } as const
const michigan = { region: 'Michigan', words: ['michigan', 'mi'] } as const
const minnesota = { region: 'Minnesota', words: ['minnesota', 'mn'] } as const
const sanDiego = { region: 'San Diego County, California', words: ['san diego'] } as const
const california = { region: 'California', words: ['california', 'ca', 'calif'] } as const

/**
 * Windows by region. A region that is not listed has no known window, which is not the same as none: ask there. Dates
 * are those of the sources; nothing between regions is interpolated.
 */
export const seasonWindows: readonly SeasonWindow[] = [
  {
    ...texas,
    concern: 'oak wilt',
    group: 'oaks',
    from: [2, 1],
    to: [6, 30],
    says: 'Oaks are not to be wounded from February through June.',
    source: 'Texas A&M Forest Service, oak wilt prevention',
    certainty: 'read'
  },
  {
    ...wisconsin,
    concern: 'oak wilt',
    group: 'oaks',
    from: [4, 1],
    to: [7, 31],
    says: 'Oaks are not to be pruned from April through July.',
    source: 'Wisconsin Department of Natural Resources, oak wilt',
    certainty: 'read'
  },
  {
    ...michigan,
    concern: 'oak wilt',
    group: 'oaks',
    from: [4, 15],
    to: [7, 15],
    says: 'Oaks are not to be pruned from 15 April to 15 July; a wound made then is painted at once.',
    source: 'Michigan Department of Natural Resources, as reported in April 2021',
    certainty: 'second-hand'
  },
  {
    ...minnesota,
    concern: 'oak wilt',
    group: 'oaks',
    from: [4, 1],
    to: [7, 31],
    says: 'The risk for oaks is high from April through July; winter is safest.',
    source: 'Minnesota Department of Natural Resources, Division of Forestry, bulletin of 8 April 2021',
    certainty: 'read'
  },
  {
    ...sanDiego,
    concern: 'nesting',
    group: 'all trees',
    from: [2, 1],
    to: [8, 15],
    says: 'Birds nest from 1 February to 15 August.',
    source: 'San Diego County Audubon',
    certainty: 'read'
  },
  {
    ...california,
    concern: 'nesting',
    group: 'all trees',
    from: [1, 15],
    to: [9, 15],
    says: 'Raptors may nest: the state often asks for a survey of their nests from 15 January to 15 September.',
    source: 'California Department of Fish and Wildlife, as reported by Monterey Audubon Society',
    certainty: 'second-hand'
  }
]

/** What a region asks for at any time of the year. */
export const standingRules: readonly StandingRule[] = [
  {
    ...texas,
    group: 'oaks',
    says: 'Every wound of an oak is painted at once, all year round.',
    source: 'Texas A&M Forest Service, oak wilt prevention',
    certainty: 'read'
  }
]

const csuPruning = 'Colorado State University Extension GardenNotes 613'

/** What holds for trees whatever the region. */
export const timingAdvice = {
  usual: {
    group: 'all trees',
    says: 'The usual time to prune is late winter before budbreak.',
    source: csuPruning,
    certainty: 'read'
  },
  bleeders: {
    group: 'bleeders',
    says: 'It bleeds freely from cuts: the usual time for it is the middle of summer.',
    source: csuPruning,
    certainty: 'read'
  },
  flush: {
    group: 'all trees',
    says: 'New leaves are out and the bark is tender: not the time to prune.',
    source: csuPruning,
    certainty: 'read'
  },
  stress: {
    group: 'all trees',
    says: 'The trees are under stress from drought or frost: no unnecessary pruning, and no live wood off stressed trees.',
    source:
      'Texas A&M Forest Service 2024 (unnecessary pruning); Colorado State University Extension (live wood)',
    certainty: 'read'
  },
  nest: {
    group: 'all trees',
    says: 'An active nest was found: work near it stops until a qualified person clears it.',
    source: 'Migratory Bird Treaty Act (active nests); how far to stay away is not stated here',
    certainty: 'read'
  }
} as const satisfies Record<string, Said & { group: SpeciesGroup; says: string }>
