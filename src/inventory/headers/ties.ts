import type { Field } from '../../../shared/columns'
import type { Candidate, HeadedColumn } from './headedColumn'

/** The measurements that every priority rests on. */
export const measured: ReadonlySet<Field> = new Set(['diameter', 'stem', 'origin', 'tip'])
/** Scores so close are equal, and so close where headers differ in what counts them. House judgment. */
const tied = 0.005
const nearlyTied = 0.12

function plain(header: string | undefined): string {
  return (header ?? '').trim().toLowerCase()
}

/** "Stem A" and "Stem B" without the letter or number that tells them apart. */
function uncounted(header: string): string {
  return header.replace(/(?<![\p{L}\d])(?:\p{L}|\d{1,2})(?![\p{L}\d])/gu, '#')
}

/** Whether another column, without a field, fits this one's field as well under another header. */
export function isTied(
  columns: readonly HeadedColumn[],
  candidates: readonly (readonly Candidate[])[],
  chosen: readonly (Field | null)[],
  at: number,
  { field, score }: Candidate
): boolean {
  const header = plain(columns[at]?.header)
  return candidates.some((others, other) => {
    const theirs = plain(columns[other]?.header)
    if (other === at || (chosen[other] ?? null) !== null || theirs === header) return false
    const close = uncounted(theirs) === uncounted(header) ? nearlyTied : tied
    return others.some((each) => each.field === field && each.score >= score - close)
  })
}
