import { listedChoices } from './words/lists'

/** The words a cell may hold for each choice, with the spellings the trade uses. The first word of a list is ours. */
const lifeStage = {
  planting: ['planting', 'newly planted', 'new', 'at planting', 'sapling', 'whip'],
  young: ['young', 'juvenile', 'establishing', 'training'],
  medium: ['medium', 'medium-aged', 'middle-aged', 'semi-mature', 'semimature', 'maturing'],
  mature: ['mature', 'adult'],
  old: ['old', 'overmature', 'over-mature', 'veteran', 'ancient', 'senescent']
} as const

const vigor = {
  good: ['good', 'high', 'normal', 'vigorous', 'healthy', 'excellent'],
  fair: ['fair', 'moderate', 'average', 'medium', 'reduced'],
  poor: ['poor', 'low', 'declining', 'stressed', 'very poor', 'drought']
} as const

const growth = {
  slow: ['slow', 'low'],
  medium: ['medium', 'moderate', 'average', 'normal'],
  fast: ['fast', 'rapid', 'high', 'vigorous']
} as const

const includedBark = {
  none: ['none', 'no', 'n', 'absent', '0', 'false'],
  partial: ['partial', 'part', 'partly', 'some', 'p'],
  full: ['full', 'yes', 'y', 'complete', 'included', 'present', 'true', '1']
} as const

const role = {
  leader: ['leader', 'main leader', 'trunk', 'main trunk', 'main stem', 'central leader', 'dominant'],
  limb: ['limb', 'branch', 'lateral', 'scaffold', 'permanent', 'stem', 'codominant', 'codom', 'competing'],
  temporary: ['temporary', 'temp', 'temporary branch', 'nurse']
} as const

const live = {
  live: ['live', 'living', 'alive', 'l', 'yes', 'true', '1'],
  dead: ['dead', 'd', 'deadwood', 'dead wood', 'no', 'false', '0']
} as const

const measured = {
  above: ['above', 'above union', 'just above', 'a'],
  below: ['below', 'below union', 'just below', 'b']
} as const

const access = {
  open: ['open', 'easy', 'street', 'roadside', 'drive', 'driveway'],
  fenced: ['fenced', 'fenced yard', 'yard', 'gate', 'moderate', 'narrow'],
  'no machine': [
    'no machine',
    'climb',
    'climb only',
    'hand carry',
    'hard',
    'difficult',
    'back yard',
    'backyard'
  ]
} as const

const flag = {
  yes: ['yes', 'y', 'true', 'x', '1', '✓', '✔', 'broken', 'rubbing', 'crack', 'decay', 'cracked', 'hanging'],
  no: ['no', 'n', 'false', '0', 'none', '-']
} as const

export const choices = { lifeStage, vigor, growth, includedBark, role, live, measured, access, flag } as const

export type ChoiceName = keyof typeof choices
export type Choice<N extends ChoiceName> = keyof (typeof choices)[N]

export type LifeStage = Choice<'lifeStage'>
export type Vigor = Choice<'vigor'>
export type Growth = Choice<'growth'>
export type IncludedBark = Choice<'includedBark'>
export type MeasuredAt = Choice<'measured'>
export type Access = Choice<'access'>

const lookups = new Map<ChoiceName, Map<string, string>>()
for (const name of Object.keys(choices) as ChoiceName[]) {
  const lookup = new Map<string, string>()
  for (const [value, words] of Object.entries(choices[name]))
    for (const word of words) lookup.set(word, value)
  lookups.set(name, lookup)
}

/** The choice a cell's text names, or null: readChoice("vigor", "Healthy") gives "good". */
export function readChoice<N extends ChoiceName>(name: N, text: string): Choice<N> | null {
  const lookup = lookups.get(name)
  const found = lookup?.get(text) ?? lookup?.get(text.trim().toLowerCase().replace(/\s+/g, ' '))
  return (found as Choice<N> | undefined) ?? null
}

/** The values a choice has, as a sentence lists them: "good, fair or poor". */
export function listChoices(name: ChoiceName): string {
  return listedChoices(Object.keys(choices[name]))
}
