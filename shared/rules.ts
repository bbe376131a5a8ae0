import type { Growth, IncludedBark, LifeStage, Vigor } from './choices'
import type { Sourced } from './sourced'

/**
 * What the units of rules measure: a proportion may be typed in percent, a length with a unit of its own, a count is a
 * whole number.
 */
export const ruleUnits = {
  ratio: 'proportion',
  share: 'proportion',
  factor: 'proportion',
  weight: 'score',
  merit: 'score',
  points: 'score',
  degrees: 'angle',
  years: 'count',
  months: 'count',
  visits: 'count',
  cuts: 'count',
  stems: 'count',
  eighths: 'count',
  mm: 'length',
  'mm a year': 'length'
} as const

export type RuleUnit = keyof typeof ruleUnits

/** What a rule is about. A raised allowance asks for a written reason; the Rules sheet draws a line between topics. */
export type RuleTopic =
  | 'standing'
  | 'crown'
  | 'allowance'
  | 'stops'
  | 'form'
  | 'priority'
  | 'visits'
  | 'cuts'
  | 'worth'
  | 'room'
  | 'leader'
  | 'growth'
  | 'foliage'
  | 'reach'

/** What ties a rule to others; the reader of the Rules sheet goes by it. */
export interface RuleTies {
  /** The rule that this one may not be more than. */
  notOver?: string
  /** The weights of the priority add up to 1; those of the choice of the leader are not all 0. */
  weighs?: 'priority' | 'leader'
}

/** A number of the model that a person may change, with the range it may take. */
export interface Rule extends Sourced, RuleTies {
  name: string
  topic: RuleTopic
  unit: RuleUnit
  low: number
  high: number
}

const a300of1995 = 'ANSI A300-1995, 5.3.1'
const csuMature = 'Colorado State University Extension GardenNotes, Pruning Mature Shade Trees'
const house = 'house rule'
const practice = 'common practice, no source'

type Untied = Omit<Rule, 'topic' | keyof RuleTies>

type Words = [
  name: string,
  value: number,
  unit: RuleUnit,
  low: number,
  high: number,
  source: string,
  certainty: Sourced['certainty']
]

/** Ties are kept as they are written, so that the compiler knows the rules they name. */
function rule(...words: [...Words]): Untied
function rule<const Ties extends RuleTies>(...words: [...Words, Ties]): Untied & Ties
function rule(...[name, value, unit, low, high, source, certainty, ties]: [...Words, RuleTies?]): Untied {
  return { name, value, unit, low, high, source, certainty, ...ties }
}

/** Rules of one topic. */
function about<Rules extends Record<string, Omit<Rule, 'topic'>>>(
  topic: RuleTopic,
  rules: Rules
): { readonly [Name in keyof Rules]: Rules[Name] & { topic: RuleTopic } } {
  const told = Object.entries(rules).map(([name, entry]) => [name, { ...entry, topic }])
  return Object.fromEntries(told) as { [Name in keyof Rules]: Rules[Name] & { topic: RuleTopic } }
}

const standing = about('standing', {
  subordinateUpTo: rule(
    'Subordinate up to an aspect ratio of',
    0.5,
    'ratio',
    0.3,
    0.7,
    'Gilman, EDIS EP276, UF/IFAS, strategy 5',
    'read',
    { notOver: 'gainingUpTo' }
  ),
  gainingUpTo: rule(
    'Gaining up to an aspect ratio of',
    0.6,
    'ratio',
    0.4,
    0.8,
    'Dahle et al. 2022, Forests 13(7):1007',
    'read',
    { notOver: 'codominantIncludedFrom' }
  ),
  codominantFrom: rule(
    'Codominant from an aspect ratio of',
    0.8,
    'ratio',
    0.6,
    1,
    'house choice below the 0.83 of Dahle et al. 2022',
    'house'
  ),
  codominantIncludedFrom: rule(
    'Codominant with included bark from',
    0.7,
    'ratio',
    0.5,
    1,
    'earlier work quoted in Dahle et al. 2022',
    'second-hand',
    { notOver: 'codominantFrom' }
  )
})

const crown = about('crown', {
  crownRatioGoal: rule(
    'Live-crown ratio kept',
    0.6,
    'ratio',
    0.3,
    0.9,
    'Gilman, EDIS EP276, UF/IFAS, strategy 6',
    'read'
  ),
  lowerFoliageGoal: rule(
    'Foliage kept in the lower two-thirds of the crown',
    0.5,
    'share',
    0.3,
    0.8,
    a300of1995,
    'read'
  )
})

const allowance = about('allowance', {
  allowedPlanting: rule(
    'Allowed removal at planting',
    0.25,
    'share',
    0,
    0.25,
    'Gilman, EDIS EP276, UF/IFAS',
    'read'
  ),
  allowedYoung: rule('Allowed removal, young', 0.25, 'share', 0, 0.4, csuMature, 'read'),
  allowedMedium: rule('Allowed removal, medium', 0.2, 'share', 0, 0.35, csuMature, 'read'),
  allowedMature: rule('Allowed removal, mature', 0.1, 'share', 0, 0.25, csuMature, 'read'),
  allowedOld: rule('Allowed removal, old', 0.05, 'share', 0, 0.25, practice, 'practice'),
  vigorGood: rule('Share of the allowance in good vigor', 1, 'factor', 0, 1, practice, 'practice'),
  vigorFair: rule('Share of the allowance in fair vigor', 0.5, 'factor', 0, 1, practice, 'practice'),
  vigorPoor: rule('Share of the allowance in poor vigor', 0, 'factor', 0, 0.5, csuMature, 'read')
})

const stops = about('stops', {
  diebackFair: rule('Dieback counts as fair vigor at best from', 0.1, 'share', 0, 1, house, 'house', {
    notOver: 'diebackPoor'
  }),
  diebackPoor: rule('Dieback counts as poor vigor from', 0.25, 'share', 0, 1, house, 'house'),
  prunedWithin: rule('Nothing live is cut after a pruning for', 12, 'months', 0, 36, house, 'house')
})

const form = about('form', {
  multiStemFrom: rule('Unmarked stems that make a tree multi-stem', 3, 'stems', 2, 10, house, 'house'),
  multiStemBelow: rule('Stems rise from below', 500, 'mm', 0, 2000, house, 'house')
})

const priority = about('priority', {
  weightRatio: rule('Weight of the aspect ratio in the priority', 0.45, 'weight', 0, 1, house, 'house', {
    weighs: 'priority'
  }),
  weightReach: rule('Weight of low origin and high reach', 0.3, 'weight', 0, 1, house, 'house', {
    weighs: 'priority'
  }),
  weightBark: rule('Weight of included bark', 0.15, 'weight', 0, 1, house, 'house', { weighs: 'priority' }),
  weightTip: rule('Weight of a tip near the top', 0.1, 'weight', 0, 1, house, 'house', {
    weighs: 'priority'
  }),
  partialBark: rule('Partial inclusion counts as', 0.5, 'share', 0, 1, house, 'house'),
  ratioScoredFrom: rule('The aspect ratio is scored from', 0.5, 'ratio', 0.2, 0.8, house, 'house'),
  tipScoredFrom: rule(
    'A tip is scored from this share of the height',
    0.8,
    'share',
    0.5,
    0.95,
    house,
    'house'
  )
})

const visits = about('visits', {
  intervalPlanting: rule(
    'Years between visits, planting',
    2,
    'years',
    1,
    10,
    'Gilman, EDIS EP276, UF/IFAS',
    'read'
  ),
  intervalYoung: rule(
    'Years between visits, young',
    2,
    'years',
    1,
    10,
    'Gilman, EDIS EP276, UF/IFAS',
    'read'
  ),
  intervalMedium: rule(
    'Years between visits, medium',
    3,
    'years',
    1,
    10,
    'municipal plan, Orono MN (trees under 6 in)',
    'read'
  ),
  intervalMature: rule(
    'Years between visits, mature',
    5,
    'years',
    1,
    15,
    'Miller & Sylvester 1981, J. Arboric. 7(4):109-112',
    'second-hand'
  ),
  intervalOld: rule('Years between visits, old', 5, 'years', 1, 15, practice, 'practice'),
  horizonVisits: rule('Visits looked ahead', 4, 'visits', 1, 6, house, 'house'),
  clearedBelow: rule('A limb is cleared below a priority of', 10, 'points', 1, 50, house, 'house'),
  settledRatio: rule('A limb is settled up to an aspect ratio of', 0.5, 'ratio', 0.3, 0.7, house, 'house'),
  settledPart: rule(
    'A limb is settled up to a priority, its included bark left out, of',
    10,
    'points',
    1,
    50,
    house,
    'house'
  ),
  visitGain: rule('A later visit lowers the priorities together by', 10, 'points', 0, 100, house, 'house'),
  expectedYears: rule('Growth is looked ahead for at most', 25, 'years', 0, 50, house, 'house'),
  bundledYears: rule('Visits are done together within', 1, 'years', 0, 1, house, 'house')
})

const cuts = about('cuts', {
  cutsPerVisit: rule('Live cuts per tree per visit, at most', 6, 'cuts', 1, 30, house, 'house'),
  reduceFrom: rule(
    'Lightest reduction of a younger tree',
    2,
    'eighths',
    1,
    7,
    'Gilman & Grabosky 2009, AUF 35(6):281-286 (25 % of the foliage)',
    'read',
    { notOver: 'reduceUpTo' }
  ),
  reduceUpTo: rule(
    'Heaviest reduction of a younger tree',
    6,
    'eighths',
    1,
    7,
    'Gilman & Grabosky 2009, AUF 35(6):281-286 (75 % of the foliage)',
    'read'
  ),
  reduceMatureUpTo: rule(
    'Heaviest reduction of a mature or old tree',
    2,
    'eighths',
    1,
    7,
    'ANSI A300-1995, 5.3.1: at most a quarter of a branch’s leaf surface',
    'read'
  ),
  leastCut: rule('Smallest reduction cut', 10, 'mm', 2, 50, practice, 'practice'),
  markedCut: rule(
    'Cuts are marked over',
    50.8,
    'mm',
    25,
    150,
    'Colorado State University Extension GardenNotes, Pruning Cuts: ideal cut up to 2 in',
    'read',
    { notOver: 'reasonedCut' }
  ),
  reasonedCut: rule(
    'Cuts need a written reason over',
    101.6,
    'mm',
    50,
    300,
    'Colorado State University Extension GardenNotes, Pruning Cuts: over 4 in must be justified',
    'read'
  ),
  lateralFraction: rule(
    'Lateral left, share of the cut',
    1 / 3,
    'ratio',
    0.25,
    1,
    'Grabosky & Gilman 2007, AUF 33(5):360-366',
    'read',
    { notOver: 'lateralFractionLarge' }
  ),
  lateralFractionLarge: rule(
    'Lateral left on larger cuts',
    1 / 2,
    'ratio',
    0.25,
    1,
    'ISA best management practices',
    'memory'
  ),
  largeCut: rule('A cut is large over', 50.8, 'mm', 25, 150, house, 'house'),
  leastLength: rule(
    'Share of the surveyed length a reduction leaves',
    1 / 3,
    'share',
    0.1,
    0.9,
    house,
    'house'
  ),
  removeUpToRatio: rule(
    'Live removal up to an aspect ratio of',
    0.5,
    'ratio',
    0.2,
    0.6,
    'house choice between the 0.39 and 0.59 of Eisner, Gilman & Grabosky 2002, J. Arboric. 28(2):99-105',
    'house'
  ),
  removeUpTo: rule('Live removal up to a diameter of', 101.6, 'mm', 25, 300, practice, 'practice'),
  smallRemoval: rule(
    'Any limb of a young tree may be removed up to',
    25.4,
    'mm',
    5,
    50,
    practice,
    'practice',
    {
      notOver: 'removeUpTo'
    }
  ),
  stagedRemovalRatio: rule(
    'A limb shortened before may be removed up to an aspect ratio of',
    0.7,
    'ratio',
    0.2,
    1,
    'house choice of a ratio; that most shortened limbs will later be removed: Gilman & Black, Circular 853/MG087',
    'house'
  ),
  stagedRemoval: rule('A limb shortened before may be removed up to', 50.8, 'mm', 10, 150, house, 'house'),
  smallCuts: rule(
    'Larger cuts of mature trees are made as several up to',
    50.8,
    'mm',
    25,
    300,
    'Colorado State University Extension GardenNotes, Pruning Cuts: ideal cut up to 2 in',
    'read'
  ),
  flatRise: rule(
    'A limb is level that rises less than this share of its length',
    0.5,
    'share',
    0,
    1,
    house,
    'house'
  ),
  levelFrom: rule('Lightest reduction of a level limb of a medium tree', 1, 'eighths', 1, 7, house, 'house'),
  bareBelow: rule(
    'A limb is bare inside where its foliage starts above this share of it',
    1 / 3,
    'share',
    0.05,
    0.95,
    house,
    'house'
  ),
  bareReduceUpTo: rule(
    'Most foliage taken from a limb that is bare inside',
    0.5,
    'share',
    0.05,
    1,
    house,
    'house'
  ),
  raiseUpTo: rule('Most foliage that raising a limb takes from it', 0.5, 'share', 0, 1, house, 'house'),
  crowdedWithin: rule(
    'A limb is crowded within',
    300,
    'mm',
    50,
    1000,
    'Gilman, EDIS EP276, UF/IFAS: 12 in',
    'read'
  )
})

const worth = about('worth', {
  leastGain: rule('A live cut lowers the priority by at least', 2, 'points', 0, 20, house, 'house'),
  dosePerPoint: rule('Foliage that a point has to be worth', 0.02, 'share', 0.001, 1, house, 'house'),
  gainLarge: rule('A cut over the marked size lowers it by at least', 5, 'points', 0, 50, house, 'house'),
  gainLargest: rule(
    'A cut that needs a written reason lowers it by at least',
    10,
    'points',
    0,
    50,
    house,
    'house'
  ),
  urgentFrom: rule('A priority is high, and its cut a must, from', 40, 'points', 10, 150, house, 'house'),
  mediumFrom: rule('A priority is medium from', 20, 'points', 0, 150, house, 'house', {
    notOver: 'urgentFrom'
  }),
  smallCutAbove: rule('Cuts are kept to a least size above', 2400, 'mm', 0, 10000, house, 'house'),
  leastHighCut: rule('Least cut at that height', 20, 'mm', 2, 100, house, 'house'),
  smallCutPriority: rule('A smaller cut is made from a priority of', 20, 'points', 0, 100, house, 'house')
})

const room = about('room', {
  temporaryUpTo: rule(
    'Every limb is temporary while the trunk is under',
    101.6,
    'mm',
    50,
    200,
    'Gilman, EDIS EP276, UF/IFAS: 4 in caliper',
    'read'
  ),
  scaffoldShare: rule(
    'Least spacing of permanent limbs, share of the mature height',
    0.03,
    'share',
    0.01,
    0.1,
    'ISA consumer brochure, Pruning Young Trees (read as reprinted)',
    'read'
  ),
  scaffoldSide: rule(
    'Permanent limbs stand above each other on one side within',
    60,
    'degrees',
    0,
    180,
    practice,
    'practice'
  ),
  scaffoldGap: rule(
    'No permanent limbs are chosen where the trunk bears no listed limb for more than',
    1828.8,
    'mm',
    300,
    10000,
    house,
    'house'
  ),
  scaffoldRatio: rule(
    'A limb can be permanent up to an aspect ratio of',
    0.6,
    'ratio',
    0.3,
    0.8,
    'Dahle et al. 2022, Forests 13(7):1007',
    'read'
  ),
  lowestElsewhere: rule(
    'Lowest permanent limb on sides without a clearance',
    2438.4,
    'mm',
    0,
    10000,
    'ISA consumer brochure, Pruning Young Trees (read as reprinted): about 8 ft',
    'read'
  ),
  clearanceSide: rule('A limb hangs on a side within', 90, 'degrees', 10, 180, house, 'house'),
  temporaryCut: rule('Temporary limbs are removed before they pass', 50.8, 'mm', 10, 150, house, 'house'),
  temporaryRatio: rule(
    'Temporary limbs are removed before they pass an aspect ratio of',
    0.5,
    'ratio',
    0.2,
    1,
    'Gilman & Black, Circular 853/MG087, Fig. 3: less than half the trunk',
    'read'
  ),
  crownHolding: rule('Foliage holds the crown base within', 152.4, 'mm', 0, 1000, house, 'house')
})

const leader = about('leader', {
  leaderUpright: rule(
    'Weight of an upright stem in the choice of the leader',
    4,
    'weight',
    0,
    10,
    house,
    'house',
    { weighs: 'leader' }
  ),
  leaderDiameter: rule(
    'Weight of the diameter in the choice of the leader',
    3,
    'weight',
    0,
    10,
    house,
    'house',
    { weighs: 'leader' }
  ),
  leaderHeight: rule('Weight of the height in the choice of the leader', 2, 'weight', 0, 10, house, 'house', {
    weighs: 'leader'
  }),
  leaderBark: rule('Weight of clear bark in the choice of the leader', 1, 'weight', 0, 10, house, 'house', {
    weighs: 'leader'
  }),
  leaderReach: rule(
    'A stem can lead from this share of the height',
    0.75,
    'share',
    0.5,
    0.95,
    house,
    'house'
  ),

  leaderClose: rule('Leaders are too close to call within', 0.5, 'merit', 0, 5, house, 'house'),
  leadersAtOnce: rule(
    'Competing leaders are cut in two stages from more than',
    3,
    'stems',
    1,
    10,
    'Gilman, EDIS EP276, UF/IFAS: more than three competing leaders in two stages',
    'read'
  )
})

const growth = about('growth', {
  growthSlow: rule('Trunk growth, slow', 6.35, 'mm a year', 0.5, 30, practice, 'practice', {
    notOver: 'growthMedium'
  }),
  growthMedium: rule('Trunk growth, medium', 10.16, 'mm a year', 0.5, 30, practice, 'practice', {
    notOver: 'growthFast'
  }),
  growthFast: rule('Trunk growth, fast', 15.24, 'mm a year', 0.5, 40, practice, 'practice'),
  growthMature: rule('Growth of mature trees', 0.5, 'factor', 0, 1, practice, 'practice'),
  growthOld: rule('Growth of old trees', 0.25, 'factor', 0, 1, practice, 'practice'),
  effectYears: rule(
    'A cut slows its limb for',
    3,
    'years',
    1,
    6,
    'Loyd, Smiley & Fite 2024, AUF 50(6):414-426',
    'read'
  ),
  fullGrowthRatio: rule(
    'A limb in the upper third grows as the stem from a ratio of',
    0.8,
    'ratio',
    0.5,
    1,
    house,
    'house'
  ),
  overtoppedBelow: rule(
    'A shortened limb is overtopped below this part of the way to the top',
    0.5,
    'share',
    0,
    1,
    house,
    'house'
  ),
  overtoppedGrowth: rule('Growth of an overtopped limb', 0.5, 'factor', 0, 1, house, 'house'),
  heightPower: rule('Height grows as the trunk to the power of', 2 / 3, 'weight', 0.1, 1, house, 'house')
})

const foliage = about('foliage', {
  foliageError: rule(
    'Error of one limb’s foliage share',
    0.3,
    'share',
    0,
    1,
    'house reading of open data (USFS Urban Tree Database, BAAD)',
    'house'
  )
})

/** How the round sheet tells what is done from the ground; the plan does not go by it. How far a pole goes is a rate. */
const reach = about('reach', {
  handReach: rule('Cuts are reached by hand up to', 2133.6, 'mm', 1000, 4000, practice, 'practice')
})

/** Every threshold, weight, table and interval of the model, with its default, source and allowed range. */
export const ruleBook = {
  ...standing,
  ...crown,
  ...allowance,
  ...stops,
  ...form,
  ...priority,
  ...visits,
  ...cuts,
  ...worth,
  ...room,
  ...leader,
  ...growth,
  ...foliage,
  ...reach
} satisfies Record<string, Rule>

export type RuleName = keyof typeof ruleBook

export const ruleNames = Object.keys(ruleBook) as RuleName[]

/** The entry of a rule, without the exact type of each. */
export function ruleEntry(name: RuleName): Rule {
  return ruleBook[name]
}

/** The rules that another one bounds, each with the rule that it may not be more than. */
export const orderedRules: readonly (readonly [RuleName, RuleName])[] = ruleNames.flatMap((name) => {
  const entry = ruleBook[name]
  return 'notOver' in entry ? [[name, entry.notOver] as const] : []
})

/** The rules that weigh against each other. */
export function weightsOf(what: RuleTies['weighs']): RuleName[] {
  return ruleNames.filter((name) => ruleEntry(name).weighs === what)
}

/** The rules in use: plain numbers, so that the engine never looks anything up twice. */
export type Rules = Readonly<Record<RuleName, number>>

/** The default rules, or the same with a person's own values. */
export function rulesWith(own: Partial<Record<RuleName, number>> = {}): Rules {
  const values: Partial<Record<RuleName, number>> = {}
  for (const name of ruleNames) values[name] = own[name] ?? ruleBook[name].value
  // A copy, because an object filled name by name is slow to read and the engine reads it for every limb.
  return { ...values } as Rules
}

export const defaultRules: Rules = rulesWith()

const allowances: Record<LifeStage, RuleName> = {
  planting: 'allowedPlanting',
  young: 'allowedYoung',
  medium: 'allowedMedium',
  mature: 'allowedMature',
  old: 'allowedOld'
}

const vigors: Record<Vigor, RuleName> = { good: 'vigorGood', fair: 'vigorFair', poor: 'vigorPoor' }

const intervals: Record<LifeStage, RuleName> = {
  planting: 'intervalPlanting',
  young: 'intervalYoung',
  medium: 'intervalMedium',
  mature: 'intervalMature',
  old: 'intervalOld'
}

const growths: Record<Growth, RuleName> = { slow: 'growthSlow', medium: 'growthMedium', fast: 'growthFast' }

/** The base allowance of a life stage, share of live foliage. */
export function baseAllowance(rules: Rules, stage: LifeStage): number {
  return rules[allowances[stage]]
}

/** What vigor leaves of the allowance. */
export function vigorFactor(rules: Rules, vigor: Vigor): number {
  return rules[vigors[vigor]]
}

/** Years between visits for a life stage. */
export function visitInterval(rules: Rules, stage: LifeStage): number {
  return rules[intervals[stage]]
}

/** Trunk growth of a class in mm a year, before the life stage slows it. */
export function classGrowth(rules: Rules, growth: Growth): number {
  return rules[growths[growth]]
}

/** What the life stage leaves of a growth class. */
export function stageGrowthFactor(rules: Rules, stage: LifeStage): number {
  switch (stage) {
    case 'planting':
    case 'young':
    case 'medium':
      return 1
    case 'mature':
      return rules.growthMature
    case 'old':
      return rules.growthOld
  }
}

/** How much an inclusion counts in the priority: 0, 0.5 or 1. */
export function barkScore(rules: Rules, bark: IncludedBark): number {
  switch (bark) {
    case 'none':
      return 0
    case 'partial':
      return rules.partialBark
    case 'full':
      return 1
  }
}
