import { munkres } from 'munkres'
import { columnOf, type Field } from '../../../shared/columns'
import type { LengthUnit } from '../../../shared/units'
import type { ColumnValues } from './columnValues'
import { fitOf } from './fit'
import { readHeaderText, type HeaderText } from './headerText'
import { likelihoods } from './likelihood'
import { neighbors, placedScore } from './placing'

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
}

/** A column as the sheet has it: its header (group title first, where there is one) and the cells below. */
export interface HeadedColumn {
  readonly header: string
  readonly unit: LengthUnit | null
  readonly values: ColumnValues
  /** What a person said the column gives, null for nothing; not there where nobody said anything. */
  readonly answered?: Field | null | undefined
}

/** Scores from which a meaning is used without a question, and from which it is used and asked once. House judgment. */
const sureFrom = 0.8
const likelyFrom = 0.55
/** A runner-up this close makes the best one a question, and another column this close for the same field. House judgment. */
const clearBy = 0.12
const contestedBy = 0.04
/** What an `asked` reading reaches at most, and how well the values have to fit it. House judgment. */
const askedMost = 0.78
const askedFit = 0.9

interface Candidate {
  readonly field: Field
  readonly score: number
  readonly girth: boolean
}

/** The candidates of every column, by words, place and values, likeliest first, one a field. */
function candidatesOf(columns: readonly HeadedColumn[], texts: readonly HeaderText[]): Candidate[][] {
  const worded = texts.map((text) => (text.words.length === 0 ? [] : likelihoods(text)))
  const places = neighbors(worded)
  const given = new Set(columns.flatMap(({ answered }) => answered ?? []))
  return columns.map((column, at) => {
    if (column.answered !== undefined) return []
    const unit = column.unit ?? texts[at]?.unit ?? null
    const best = new Map<Field, Candidate>()
    for (const likely of worded[at] ?? []) {
      const { field, girth, standing } = likely
      if (given.has(field)) continue
      const fit = fitOf(column.values, field, unit)
      const score = Math.min(1, placedScore(likely, at, places) * fit)
      const kept = standing !== 'asked' ? score : fit < askedFit ? 0 : Math.min(askedMost, score)
      if (kept > (best.get(field)?.score ?? 0)) best.set(field, { field, score: kept, girth })
    }
    return [...best.values()].sort((a, b) => b.score - a.score)
  })
}

/** Assigns all columns at once: the best total, one column per field and one field per column. */
export function assignColumns(columns: readonly HeadedColumn[]): ColumnMeaning[] {
  const texts = columns.map(({ header }) => readHeaderText(header))
  const candidates = candidatesOf(columns, texts)
  const chosen = bestTotal(candidates)
  const taken = new Set(chosen)
  return columns.map((column, at): ColumnMeaning => {
    const text = texts[at] ?? readHeaderText('')
    if (column.answered !== undefined) return asAnswered(column, column.answered, text)
    const field = chosen[at] ?? null
    const own = candidates[at]?.find((each) => each.field === field)
    const score = own?.score ?? 0
    const rivals = (candidates[at] ?? []).filter((each) => each.field !== field)
    const free = rivals.find((each) => !taken.has(each.field)) ?? null
    const near = free !== null && free.score > score - clearBy && free.score >= 0.4
    const printed = field !== null && columnOf(field).use === 'document'
    const contested =
      !printed &&
      candidates.some(
        (others, other) =>
          other !== at &&
          (chosen[other] ?? null) === null &&
          others.some((each) => each.field === field && each.score > score - contestedBy)
      )
    // Two headers that say it equally well leave a measurement open: neither is taken, and the reader is asked.
    if (field !== null && measured.has(field) && isTied(candidates, chosen, columns, at, field, score))
      return {
        field: null,
        score: 0,
        confidence: 'unsure',
        runnerUp: field,
        text,
        unit: column.unit ?? text.unit,
        girth: false
      }
    const confidence =
      field === null ? 'unsure' : score >= sureFrom && !near && !contested ? 'sure' : 'likely'
    const runnerUp = free?.field ?? rivals[0]?.field ?? null
    return {
      field,
      score,
      confidence,
      runnerUp,
      text,
      unit: column.unit ?? text.unit,
      girth: own?.girth ?? text.notions.has('girth')
    }
  })
}

/** The measurements that every priority rests on. */
const measured: ReadonlySet<Field> = new Set(['diameter', 'stem', 'origin', 'tip'])
/** Scores so close are equal (house judgment). */
const tied = 0.005

function plain(header: string | undefined): string {
  return (header ?? '').trim().toLowerCase()
}

/** "Stem A" and "Stem B" without the letter or number that tells them apart. */
function uncounted(header: string): string {
  return header.replace(/(?<![\p{L}\d])(?:\p{L}|\d{1,2})(?![\p{L}\d])/gu, '#')
}

/** Whether another column, without a field, fits this field as well under another header. */
function isTied(
  candidates: readonly (readonly Candidate[])[],
  chosen: readonly (Field | null)[],
  columns: readonly HeadedColumn[],
  at: number,
  field: Field,
  score: number
): boolean {
  const header = plain(columns[at]?.header)
  return candidates.some((others, other) => {
    const theirs = plain(columns[other]?.header)
    if (other === at || (chosen[other] ?? null) !== null || theirs === header) return false
    const close = uncounted(theirs) === uncounted(header) ? clearBy : tied
    return others.some((each) => each.field === field && each.score >= score - close)
  })
}

function asAnswered(column: HeadedColumn, field: Field | null, text: HeaderText): ColumnMeaning {
  const girth = text.notions.has('girth') || text.notions.has('gbh')
  const unit = column.unit ?? text.unit
  return { field, score: field === null ? 0 : 1, confidence: 'sure', runnerUp: null, text, unit, girth }
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
