import { munkres } from 'munkres'
import { columnOf, type Field } from '../../../shared/columns'
import type { LengthUnit } from '../../../shared/units'
import { lengthOf } from '../lengthOf'
import { fitOf } from './fit'
import type { Candidate, HeadedColumn } from './headedColumn'
import { readHeaderText, withUnitBelow, type HeaderText } from './headerText'
import { likelihoods } from './likelihood'
import { namedByValues } from './namedByValues'
import { neighbors, placedScore } from './placing'
import { sameMeasures, type Doubled, type SameMeasures } from './sameMeasure'
import { noSecondReading } from './secondReading'
import { isTied, measured } from './ties'
import { coupleIn, holdsTwo } from './twoThings'

/** How far a column's meaning can be relied on. */
export type Confidence = 'sure' | 'likely' | 'unsure'

/** What a header and the cells below it came to. */
export interface ColumnMeaning {
  readonly field: Field | null
  /** 0 to 1: how well words and values fit together. */
  readonly score: number
  readonly confidence: Confidence
  /** The next best field, or null. */
  readonly runnerUp: Field | null
  readonly text: HeaderText
  readonly unit: LengthUnit | null
  readonly girth: boolean
  /** Why a column is not used whose header names a field; null where there is no such reason. */
  readonly unused: Unused | null
}

/**
 * It gives again what another column gives, holds two numbers a cell, is no second reading of the first, or names the kind
 * of a tree together with another column.
 */
export type Unused = Doubled | 'two things' | 'no second reading' | 'part of the species'

/** Scores from which a meaning is used without a question, and from which it is used and asked once. House judgment. */
const sureFrom = 0.8
const likelyFrom = 0.55
/** A runner-up this close makes the best one a question, and another column this close for the same field. House judgment. */
const clearBy = 0.12
const contestedBy = 0.04
/** What an `asked` reading reaches at most, and how well the values have to fit it. House judgment. */
const askedMost = 0.78
const askedFit = 0.9
/** What "Age" comes to above words of life stages ("young", "mature"), which say what it is. House judgment. */
const agesInWords = 0.86

/** The candidates of every column, by words, place and values, likeliest first, one a field. */
function candidatesOf(
  columns: readonly HeadedColumn[],
  texts: readonly HeaderText[],
  { doubled, latest }: SameMeasures
): { candidates: Candidate[][]; inTwo: ReadonlySet<number> } {
  const worded = texts.map((text, at) => {
    if (text.words.length === 0 || doubled[at]) return []
    return likelihoods(latest.has(at) ? withoutYear(text) : text)
  })
  const places = neighbors(worded, (at, field) => {
    const column = columns[at]
    return column === undefined ? 1 : fitOf(column.values, field, column.unit ?? texts[at]?.unit ?? null)
  })
  const given = new Set(columns.flatMap(({ answered }) => answered ?? []))
  const inTwo = new Set<number>()
  const bare = columns.map(() => new Map<Field, number>())
  const candidates = columns.map((column, at) => {
    if (column.answered !== undefined) return []
    const named = coupleIn(column.header) !== null
    let two: boolean | null = null
    const unit = column.unit ?? texts[at]?.unit ?? null
    const best = new Map<Field, Candidate>()
    for (const likely of worded[at] ?? []) {
      const { field, girth, standing } = likely
      if (given.has(field)) continue
      const fit = fitOf(column.values, field, unit)
      const score = Math.min(1, placedScore(likely, at, places) * fit)
      if (standing === 'placed' && tops.has(field)) keepMost(bare[at], field, likely.score * fit)
      else if (tops.has(field)) keepMost(bare[at], field, score)
      const isLength = lengthOf(field) !== null
      if (isLength && (named || columnOf(field).of === 'limb')) {
        two ??= holdsTwo(column.values, named)
        if (two) {
          inTwo.add(at)
          continue
        }
      }
      const asks = standing === 'asked' || (isLength && named)
      const open = field === 'stage' && fit > 1 ? Math.max(agesInWords, score) : Math.min(askedMost, score)
      const kept = !asks ? score : fit < askedFit ? 0 : open
      if (kept > (best.get(field)?.score ?? 0)) best.set(field, { field, score: kept, girth })
    }
    if (!places.treesOnly && !doubled[at] && ![...best.values()].some(({ score }) => score >= likelyFrom))
      for (const each of namedByValues(column.values)) if (!given.has(each.field)) best.set(each.field, each)
    return [...best.values()].sort((a, b) => b.score - a.score)
  })
  return { candidates: places.treesOnly ? candidates : betterNamed(candidates, bare), inTwo }
}

/** The height of the tree and that of a limb's tip: a bare header may be either. */
const tops: ReadonlySet<Field> = new Set<Field>(['height', 'tip'])

/** By how much one header has to name a field better than another. House judgment. */
const betterBy = 0.15

function keepMost(scores: Map<Field, number> | undefined, field: Field, score: number): void {
  if (scores !== undefined && score > (scores.get(field) ?? 0)) scores.set(field, score)
}

/**
 * Where a header names one of the tops best ("Tip" beside "Height"), it is that one wherever it stands, and the other header is
 * not. `bare` holds what the words come to without their place.
 */
function betterNamed(
  candidates: readonly Candidate[][],
  bare: readonly ReadonlyMap<Field, number>[]
): Candidate[][] {
  const bestOf = (at: number): Field | null => {
    const [best] = [...(bare[at] ?? [])].sort((a, b) => b[1] - a[1])
    return best?.[0] ?? null
  }
  const isElsewhere = (field: Field, at: number): boolean =>
    bare.some(
      (scores, other) =>
        other !== at &&
        bestOf(other) === field &&
        (scores.get(field) ?? 0) >= (bare[at]?.get(field) ?? 0) + betterBy
    )
  return candidates.map((list, at) => {
    const own = bestOf(at)
    const lost = list.filter(({ field }) => tops.has(field) && field !== own && isElsewhere(field, at))
    if (own === null || isElsewhere(own, at)) return list
    const isOther = [...tops].some((field) => field !== own && isElsewhere(field, at))
    if (!isOther) return list
    return list
      .filter((each) => !lost.includes(each))
      .map((each) =>
        each.field === own ? { ...each, score: Math.max(each.score, bare[at]?.get(own) ?? 0) } : each
      )
      .sort((a, b) => b.score - a.score)
  })
}

/** "Height 2026" beside "Height 2023": the year says which, not what. */
function withoutYear(text: HeaderText): HeaderText {
  const words = text.words.filter(({ meanings }) => !meanings.includes('inYear'))
  return { ...text, words, notions: new Set([...text.notions].filter((each) => each !== 'inYear')) }
}

/** Assigns all columns at once: the best total, one column per field and one field per column. */
export function assignColumns(columns: readonly HeadedColumn[]): ColumnMeaning[] {
  const texts = columns.map(({ header, unit }) => withUnitBelow(readHeaderText(header), unit))
  const same = sameMeasures(columns, texts)
  const { candidates, inTwo } = candidatesOf(columns, texts, same)
  const chosen = bestTotal(candidates)
  const taken = new Set(chosen)
  const notSecond = noSecondReading(columns, texts, chosen)
  if (notSecond !== null) {
    chosen[notSecond] = null
    // Without a column for the stem the second one may be it, which is asked; it is no rival of the first.
    if (!taken.has('stem')) candidates[notSecond] = []
  }
  return columns.map((column, at): ColumnMeaning => {
    const text = texts[at] ?? readHeaderText('')
    if (column.answered !== undefined) return asAnswered(column, column.answered, text)
    const unit = column.unit ?? text.unit
    const unused = same.doubled[at] ?? (inTwo.has(at) ? 'two things' : null)
    const field = chosen[at] ?? null
    const own = candidates[at]?.find((each) => each.field === field)
    const rivals = (candidates[at] ?? []).filter((each) => each.field !== field)
    const free = rivals.find((each) => !taken.has(each.field)) ?? null
    const runnerUp = free?.field ?? rivals[0]?.field ?? null
    const none = { field: null, score: 0, confidence: 'unsure', text, unit } as const
    if (own === undefined) {
      const why = at === notSecond ? 'no second reading' : unused
      return { ...none, runnerUp, girth: text.notions.has('girth'), unused: why }
    }
    // Two headers that say it equally well leave a measurement open: neither is taken, and the reader is asked.
    if (measured.has(own.field) && isTied(columns, candidates, chosen, at, own))
      return { ...none, runnerUp: own.field, girth: false, unused: null }
    const near = free !== null && free.score > own.score - clearBy && free.score >= 0.4
    const open = near || isContested(candidates, chosen, at, own)
    const doubtful = notSecond !== null && own.field === 'diameter'
    const confidence = own.score >= sureFrom && !open && !doubtful ? 'sure' : 'likely'
    return { ...own, confidence, runnerUp, text, unit, unused: null }
  })
}

/** Whether another column, without a field, comes close for a field that the plan needs. */
function isContested(
  candidates: readonly (readonly Candidate[])[],
  chosen: readonly (Field | null)[],
  at: number,
  { field, score }: Candidate
): boolean {
  if (columnOf(field).use === 'document') return false
  return candidates.some(
    (others, other) =>
      other !== at &&
      (chosen[other] ?? null) === null &&
      others.some((each) => each.field === field && each.score > score - contestedBy)
  )
}

function asAnswered(column: HeadedColumn, field: Field | null, text: HeaderText): ColumnMeaning {
  const girth = text.notions.has('girth') || text.notions.has('gbh')
  const unit = column.unit ?? text.unit
  const score = field === null ? 0 : 1
  return { field, score, confidence: 'sure', runnerUp: null, text, unit, girth, unused: null }
}

/** Columns that contend for one field at most; the likeliest do. */
const contenders = 8

/** The field of each column so that the scores add up to the most. */
function bestTotal(candidates: readonly (readonly Candidate[])[]): (Field | null)[] {
  const scores = new Map<Field, number[]>()
  for (const each of candidates)
    for (const { field, score } of each)
      if (score >= likelyFrom) scores.set(field, [...(scores.get(field) ?? []), score])
  const least = new Map(
    [...scores].map(([field, list]) => [field, list.sort((a, b) => b - a)[contenders - 1] ?? 0])
  )
  const usable = candidates.map((each) =>
    each.filter(({ field, score }) => score >= likelyFrom && score >= (least.get(field) ?? 0))
  )
  const fields = [...least.keys()]
  const rows = usable.flatMap((each, at) => (each.length > 0 ? [at] : []))
  const chosen: (Field | null)[] = candidates.map(() => null)
  if (rows.length === 0) return chosen
  const costs = rows.map((at) => [
    ...fields.map((field) => 1 - (usable[at]?.find((each) => each.field === field)?.score ?? -1)),
    ...rows.map(() => 1)
  ])
  for (const [row, field] of munkres(costs)) {
    const at = rows[row]
    if (at !== undefined) chosen[at] = fields[field] ?? null
  }
  return chosen
}
