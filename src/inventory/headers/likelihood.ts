import type { Field } from '../../../shared/columns'
import { readHeaderText, type HeaderText } from './headerText'
import type { Notion } from './notions'
import { readings, type Reading } from './readings'

/** How likely a header's words mean a field, 0 to 1. */
export interface Likely {
  readonly field: Field
  readonly score: number
  /** The diameter is given as a girth. */
  readonly girth: boolean
}

/** What a notion, and a word, cost that stand in the header and that the reading has no place for (house judgement). */
const foreignNotion = 0.45
const foreignWord = 0.72
const slip = 0.85

/** Notions that say so little that they never count against a reading. */
const light = new Set<Notion>(['at', 'name', 'measured', 'total', 'observed', 'rate', 'year'])

function scoreOf(header: HeaderText, reading: Reading): number {
  if (!reading.needs.every((either) => either.some((notion) => header.notions.has(notion)))) return 0
  let score = reading.trust
  for (const notion of header.notions)
    if (!reading.may.has(notion)) score *= light.has(notion) ? 0.93 : foreignNotion
  score *= foreignWord ** header.unknown.length
  return header.guessed ? score * slip : score
}

/** Fields that a header may mean, likeliest first. A word of another concern (price, kerb, planting) rules all out. */
export function likelihoods(header: HeaderText): Likely[] {
  if (header.decoy !== null) return []
  const girth = header.notions.has('girth')
  return readings
    .map(({ field, readings: each }) => ({
      field,
      score: Math.max(...each.map((reading) => scoreOf(header, reading))),
      girth
    }))
    .filter(({ score }) => score > 0.2)
    .sort((a, b) => b.score - a.score)
}

export function likelyFields(header: string): Likely[] {
  return likelihoods(readHeaderText(header))
}
