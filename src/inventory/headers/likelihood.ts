import { columnOf, type Field } from '../../../shared/columns'
import { readHeaderText, type HeaderText, type HeaderWord } from './headerText'
import { mayBeForeign, type Meaning } from './dictionary'
import { readings, type Reading, type Standing } from './readings'
import { unitSuits } from './unitSuits'

/** How likely a header's words mean a field, 0 to 1. */
export interface Likely {
  readonly field: Field
  readonly score: number
  readonly standing: Standing
  /** The diameter is given as a girth. */
  readonly girth: boolean
}

/** What a notion costs that the reading has no place for, and one that says so little that it hardly counts. House judgment. */
const foreignNotion = 0.45
const lightNotion = 0.95
const light = new Set<Meaning>([
  'at',
  'name',
  'total',
  'observed',
  'year',
  'on',
  'from',
  'to',
  'second',
  'existing',
  'aboveGround'
])
/** What explains nothing beside an unknown word. */
const hardly = new Set<Meaning>([...light, 'noise'])

/** What it costs that a header names a year ("DBH 2019"): it may be an older survey's. House judgment. */
const otherYear = 0.72

/** "Size" and "thickness" mostly stand for a diameter. House judgment. */
const sizeForDiameter = 0.78

/**
 * What a word costs that no language here knows, by how many words the reading does explain: beside a lone "height" it is
 * likely the thing that was measured, in a long header it hardly matters. House judgment.
 */
const unknownWord = [0, 0.45, 0.76, 0.86, 0.92] as const

/** What it costs that a word is spelled nearly or shortened. House judgment. */
const spellings = { known: 1, mark: 1, unknown: 1, abbreviated: 0.96, slip: 0.92, short: 0.85 } as const

/** Which of limb and stem a header names first; null where it does not name both. */
function firstNamed(words: readonly HeaderWord[]): 'limb' | 'axis' | null {
  const limb = words.findIndex(({ meanings }) => meanings.includes('limb'))
  const axis = words.findIndex(({ meanings }) =>
    meanings.some((each) => each === 'trunk' || each === 'stem' || each === 'leader')
  )
  if (limb < 0 || axis < 0 || limb === axis) return null
  return limb < axis ? 'limb' : 'axis'
}

function costOf(word: HeaderWord): number {
  const { meanings } = word
  if (meanings.includes('inYear')) return otherYear
  if (mayBeForeign(word)) return 0
  return meanings.every((meaning) => light.has(meaning)) ? lightNotion : foreignNotion
}

/** Heights are from the ground, so that it says nothing of them; only a thickness is another one there. */
function saysNothing({ meanings }: HeaderWord, thick: boolean): boolean {
  return meanings.includes('noise') || (!thick && meanings.includes('elsewhere'))
}

function scoreOf(
  { words, notions }: HeaderText,
  reading: Reading,
  first: 'limb' | 'axis' | null,
  thick: boolean
): number {
  if (reading.first !== null && reading.first !== first) return 0
  if (reading.not.some((notion) => notions.has(notion))) return 0
  let score = reading.trust
  let sized = false
  for (const either of reading.needs) {
    if (either.some((notion) => notions.has(notion))) continue
    if (!either.includes('diameter') || !notions.has('size')) return 0
    sized = true
    score *= sizeForDiameter
  }
  let explained = 0
  let unknown = 0
  for (const word of words) {
    if (word.spelling === 'unknown') {
      unknown++
      continue
    }
    const fits = word.meanings.some((meaning) => meaning !== 'noise' && reading.may.has(meaning))
    if (fits || (sized && word.meanings.includes('size'))) {
      if (word.spelling !== 'mark' && word.meanings.some((meaning) => !hardly.has(meaning))) explained++
      score *= spellings[word.spelling]
    } else if (!saysNothing(word, thick)) score *= costOf(word)
  }
  return score * (unknownWord[Math.min(explained, unknownWord.length - 1)] ?? 0) ** unknown
}

/** What headers may mean, as long as they are remembered. */
const known = new WeakMap<HeaderText, readonly Likely[]>()

/** The best reading of each standing of each field that a header may mean, likeliest first. */
export function likelihoods(header: HeaderText): readonly Likely[] {
  let found = known.get(header)
  if (found === undefined) {
    found = compared(header)
    known.set(header, found)
  }
  return found
}

function compared(header: HeaderText): Likely[] {
  const first = firstNamed(header.words)
  const found: Likely[] = []
  for (const { field, readings: each } of readings) {
    const suits = unitSuits(header, field)
    const { kind } = columnOf(field).reads
    const thick = kind === 'diameter' || kind === 'stems'
    const best = new Map<Standing, Likely>()
    for (const reading of each) {
      const score = scoreOf(header, reading, first, thick) * suits
      if (score <= 0.2 || score <= (best.get(reading.standing)?.score ?? 0)) continue
      const girth = (['girth', 'gbh'] as const).some(
        (notion) => reading.may.has(notion) && header.notions.has(notion)
      )
      best.set(reading.standing, { field, score, standing: reading.standing, girth })
    }
    found.push(...best.values())
  }
  return found.sort((a, b) => b.score - a.score)
}

/** The fields that a header may mean where nothing stands beside it, as a label of a form does: then a tree's "Height" is sure. */
export function likelyFields(header: string): Likely[] {
  const best = new Map<Field, Likely>()
  for (const likely of likelihoods(readHeaderText(header))) {
    const alone =
      likely.standing === 'placed' && columnOf(likely.field).of === 'tree'
        ? inPlace(likely.score)
        : likely.score
    if (alone > (best.get(likely.field)?.score ?? 0)) best.set(likely.field, { ...likely, score: alone })
  }
  return [...best.values()].sort((a, b) => b.score - a.score)
}

/** What a bare header gains where it stands among its own, and how far it can go. House judgment. */
const gained = 1.38
const most = 0.86

export function inPlace(score: number): number {
  return Math.min(most, score * gained)
}
