import { munkres } from 'munkres'
import { columnOf, type Field } from '../../../shared/columns'
import type { LengthUnit } from '../../../shared/units'
import { fitOf, type ColumnValues } from './columnValues'
import { readHeaderText, type HeaderText } from './headerText'
import { likelihoods } from './likelihood'

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
}

/** Scores from which a meaning is used without a question, and from which it is used and asked once (house judgment). */
const sureFrom = 0.8
const likelyFrom = 0.55
/** A runner-up this close makes the best one a question. */
const clearBy = 0.12

/** Headers of fewer notions than this say too little alone; where they stand decides. */
const bare = 0.72

interface Candidate {
  readonly field: Field
  readonly score: number
}

/** Whether a field that a bare header may mean belongs where the header stands: right of the limb's id is the limb's. */
function placed(candidate: Candidate, at: number, limbsFrom: number): number {
  if (candidate.score >= bare) return candidate.score
  const ofLimb = columnOf(candidate.field).of === 'limb'
  if (limbsFrom === Infinity) return ofLimb ? candidate.score * 0.5 : Math.min(0.86, candidate.score * 1.35)
  return at >= limbsFrom === ofLimb ? Math.min(0.86, candidate.score * 1.3) : candidate.score * 0.7
}

/** The first column that speaks of a limb; from there on a bare "diameter" is the limb's. Infinity without limbs. */
function firstLimbColumn(all: readonly (readonly Candidate[])[]): number {
  const limbs = all.map((each) => each[0] !== undefined && each[0].score >= bare && columnOf(each[0].field).of === 'limb')
  const id = all.findIndex((each) => each[0]?.field === 'limb' && each[0].score >= 0.6)
  const count = limbs.filter(Boolean).length
  if (count < 2) return id >= 0 && count > 0 ? id : Infinity
  return id >= 0 ? id : limbs.indexOf(true)
}

/** Assigns all columns at once: the best total, one column a field and one field a column. */
export function assignColumns(columns: readonly HeadedColumn[]): ColumnMeaning[] {
  const texts = columns.map(({ header }) => readHeaderText(header))
  const worded = columns.map((column, at) => {
    const text = texts[at]
    return text === undefined || column.header === '' ? [] : likelihoods(text)
  })
  const limbsFrom = firstLimbColumn(worded)
  const candidates = worded.map((likely, at) =>
    likely
      .map(({ field, score }) => {
        const column = columns[at]
        const unit = column?.unit ?? texts[at]?.unit ?? null
        const fit = column === undefined ? 1 : fitOf(column.values, field, unit)
        return { field, score: Math.min(1, placed({ field, score }, at, limbsFrom) * fit) }
      })
      .sort((a, b) => b.score - a.score)
  )
  const chosen = bestTotal(candidates)
  return columns.map((column, at): ColumnMeaning => {
    const text = texts[at] ?? readHeaderText('')
    const field = chosen[at] ?? null
    const score = candidates[at]?.find((each) => each.field === field)?.score ?? 0
    const rivals = (candidates[at] ?? []).filter((each) => each.field !== field)
    const free = rivals.find((each) => !chosen.includes(each.field)) ?? null
    const near = free !== null && free.score > score - clearBy && free.score >= 0.4
    const confidence = field === null ? 'unsure' : score >= sureFrom && !near ? 'sure' : 'likely'
    const runnerUp = free?.field ?? rivals[0]?.field ?? null
    return { field, score, confidence, runnerUp, text, unit: column.unit ?? text.unit, girth: text.notions.has('girth') }
  })
}

function bestTotal(candidates: readonly (readonly Candidate[])[]): (Field | null)[] {
  const usable = candidates.map((each) => each.filter(({ score }) => score >= likelyFrom))
  const fields = [...new Set(usable.flatMap((each) => each.map(({ field }) => field)))]
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
