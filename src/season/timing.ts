import type { Certainty } from '../../shared/sourced'
import { isInGroup } from './speciesGroups'
import {
  seasonWindows,
  standingRules,
  timingAdvice,
  type Concern,
  type SeasonWindow,
  type SpeciesGroup
} from './windows'
import type { Tree } from '../inventory/inventory'
import { fallsIn, showDay, spanOf, type Span } from './calendar'

/** What a person was asked about the season of the work. What is not answered is never assumed. */
export interface TimingAnswers {
  /** Where the trees stand, in a person's own words. */
  region?: string
  /** Month of the first visit, 1 to 12, where it is not the plan's date. */
  visitMonth?: number
  /** Day of the first visit, ISO, where it is not the plan's date. */
  visitDate?: string
  /** New leaves are coming out at the visit. */
  flush?: boolean
  /** Drought or frost stress this season. */
  stress?: boolean
  /** An active nest was found. */
  nest?: boolean
}

/**
 * closed: the visit falls in a window. open: it does not. always: asked for all year. ask: not answered, or not known.
 * advice: the usual time.
 */
export type TimingState = 'closed' | 'open' | 'always' | 'ask' | 'advice'

/** As much of a planned tree as the season asks for: the tree and what is cut at its visits. */
export interface TreeInSeason {
  readonly tree: Tree
  readonly visits: readonly { readonly cuts: readonly unknown[] }[]
}

/** One thing to know about the season, and the trees it is about. */
export interface TimingNote {
  readonly state: TimingState
  readonly concern: Concern | 'region' | 'questions' | 'species' | 'usual time' | 'leaf flush' | 'stress'
  readonly sentence: string
  /** Empty where the note only asks. */
  readonly source: string
  readonly certainty: Certainty | null
  readonly trees: readonly TreeInSeason[]
}

/** What the notes are made from: the ISO date of the plan and its trees. */
interface PlanForTiming {
  readonly date: string
  /** The year of the first visit; that of the date unless given. */
  readonly firstYear?: number
  readonly trees: readonly TreeInSeason[]
}

/**
 * The seasonal windows that apply to the trees that would be cut, by the region given and by species group, and whether
 * the first visit falls in one. Where no region is given, one note asks for it. Notes stand worst first.
 */
export function timingNotes(plan: PlanForTiming, answers: TimingAnswers = {}): TimingNote[] {
  const trees = plan.trees.filter(wouldBeCut)
  if (trees.length === 0) return []
  const span = spanOf(answers, plan.date, plan.firstYear)
  const region = answers.region?.trim() ?? ''
  const notes = [
    ...seasonWindows.filter(isOf(region)).map((season) => windowNote(season, trees, span)),
    ...standingRules
      .filter(isOf(region))
      .map((rule) => note('always', 'oak wilt', `${rule.region}: ${rule.says}`, rule, ofGroup(trees, rule))),
    ...answeredNotes(trees, answers),
    ...askedNotes(trees, region, answers),
    note('advice', 'usual time', timingAdvice.usual.says, timingAdvice.usual, trees),
    bleeders(trees)
  ]
  const order: TimingState[] = ['closed', 'ask', 'always', 'open', 'advice']
  return notes
    .filter(({ trees: about }) => about.length > 0)
    .sort((a, b) => order.indexOf(a.state) - order.indexOf(b.state))
}

/** The notes that are about one tree. */
export function notesForTree(notes: readonly TimingNote[], tree: TreeInSeason): TimingNote[] {
  return notes.filter(({ trees }) => trees.includes(tree))
}

function wouldBeCut({ visits, tree }: TreeInSeason): boolean {
  return tree.limbs.length === 0 || visits.some(({ cuts }) => cuts.length > 0)
}

function ofGroup(trees: readonly TreeInSeason[], { group }: { group: SpeciesGroup }): TreeInSeason[] {
  return trees.filter(({ tree }) => isInGroup(tree.species, group))
}

function isOf(region: string): (row: { words: readonly string[] }) => boolean {
  const typed = ` ${region.toLowerCase().replace(/[^a-z]+/g, ' ')} `
  return ({ words }) => words.some((word) => typed.includes(` ${word} `))
}

function note(
  state: TimingState,
  concern: TimingNote['concern'],
  sentence: string,
  said: { source: string; certainty: Certainty } | null,
  trees: readonly TreeInSeason[]
): TimingNote {
  return { state, concern, sentence, source: said?.source ?? '', certainty: said?.certainty ?? null, trees }
}

function windowNote(season: SeasonWindow, trees: readonly TreeInSeason[], span: Span): TimingNote {
  const place = fallsIn(span, season)
  const closed = `${season.region}, ${season.concern}: closed from ${showDay(season.from)} to ${showDay(season.to)}`
  const where =
    place === 'outside'
      ? `; visit 1 (${span.name}) is outside it.`
      : `, and visit 1 (${span.name}) falls ${place === 'partly' ? 'partly ' : ''}in it.`
  const state = place === 'outside' ? 'open' : 'closed'
  return note(state, season.concern, `${closed}${where} ${season.says}`, season, ofGroup(trees, season))
}

/** What was answered and keeps the work from being done now. */
function answeredNotes(trees: readonly TreeInSeason[], { flush, stress, nest }: TimingAnswers): TimingNote[] {
  const { flush: leaves, stress: weather, nest: birds } = timingAdvice
  return [
    ...(nest === true ? [note('closed', 'nesting', birds.says, birds, trees)] : []),
    ...(stress === true ? [note('closed', 'stress', weather.says, weather, trees)] : []),
    ...(flush === true ? [note('closed', 'leaf flush', leaves.says, leaves, trees)] : [])
  ]
}

/** What nobody answered, or what is not known of the region given. */
function askedNotes(trees: readonly TreeInSeason[], region: string, answers: TimingAnswers): TimingNote[] {
  const notes: TimingNote[] = []
  const ask = (concern: TimingNote['concern'], sentence: string, about: readonly TreeInSeason[]): void => {
    notes.push(note('ask', concern, sentence, null, about))
  }
  if (region === '')
    ask(
      'region',
      'No region is given, so no seasonal window is known and none is assumed: name it on a Rules sheet, and ask there for the windows of the place.',
      trees
    )
  else {
    const unlisted = (concern: Concern): string =>
      `For “${region}” no window is listed for ${concern}; that does not mean there is none. Ask the agency of the region.`
    const known = new Set(seasonWindows.filter(isOf(region)).map(({ concern }) => concern))
    if (!known.has('oak wilt')) ask('oak wilt', unlisted('oak wilt'), ofGroup(trees, { group: 'oaks' }))
    if (!known.has('nesting')) ask('nesting', unlisted('nesting'), trees)
  }
  const open = [
    answers.nest === undefined && 'was a nest looked for',
    answers.stress === undefined && 'drought or frost stress this season',
    answers.flush === undefined && 'new leaves coming out'
  ].filter((question) => question !== false)
  if (open.length > 0) ask('questions', `Not answered: ${open.join('; ')}. Look on site.`, trees)
  const nameless = trees.filter(({ tree }) => tree.species.trim() === '')
  ask('species', 'The species is not given, so windows for oaks may apply: check on site.', nameless)
  return notes
}

function bleeders(trees: readonly TreeInSeason[]): TimingNote {
  const { bleeders: advice } = timingAdvice
  return note('advice', 'usual time', advice.says, advice, ofGroup(trees, advice))
}
