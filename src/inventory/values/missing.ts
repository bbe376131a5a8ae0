import type { Column } from '../../../shared/columns'
import type { ColumnKind } from '../../../shared/columnKinds'

function set(...lines: readonly string[]): ReadonlySet<string> {
  return new Set(lines.flatMap((line) => line.split(', ')))
}

/**
 * What people write where nothing was measured or known, in English, German, French and Spanish (common practice, no
 * source): lower case, without spaces around.
 */
const everywhere = set(
  'n/a, na, n.a., n/m, nm, n.m., n.d., nd, n/d, null, not measured, not taken, not available, not assessed, not recorded',
  'no data, missing, unknown, unk, unk., tbd, k.a., k. a., ka, nicht gemessen, nicht erfasst, nicht bekannt, unbekannt',
  'keine angabe, fehlt, non mesuré, non mesurée, non mesure, non relevé, inconnu, inconnue, s/d, s.d., s/m, sin dato',
  'n.e., n. e., nicht einsehbar, nicht zugänglich, not visible, not accessible, no access, inaccessible, non accessible',
  'pas accessible, non visible, no accesible, inaccesible, no visible',
  'sin datos, no medido, no medida, desconocido, desconocida, no tomado'
)

const longestWord = 18

/** Signs that stand for nothing in a column of numbers or words, and for "no" or a doubt in a column of ticks. */
const signs = set('-, --, ---, –, —, −, ?, ??, ., ..., …, /, \\')

/** Of these, what may also say that there is none: the leader has no stem beside it. */
const notApplicable = set('n/a, na, n.a., null')

/** Whether a cell says that something is there and was not measured. */
export function saysUnmeasured(cell: unknown): boolean {
  const word = typeof cell === 'string' ? cell.trim().toLowerCase() : ''
  return /^\?+$/.test(word) || (everywhere.has(word) && !notApplicable.has(word))
}

/** Words for nothing, in a column of numbers only. */
const nothing = set(
  'none, nil, never, keine, keiner, keins, nie, aucun, aucune, jamais, ninguno, ninguna, nunca'
)

/** Shares of which "none" is one: a tree without dieback. */
const shares = new Set<Column['field']>(['dieback', 'removed'])

/** Whether a text says that there is nothing of what a column measures, and not that it was not measured. */
export function saysNone(text: string, field: Column['field']): boolean {
  const word = text.trim().toLowerCase()
  return shares.has(field) && nothing.has(word)
}

const numbers: ReadonlySet<ColumnKind> = new Set<ColumnKind>([
  'diameter',
  'stems',
  'height',
  'positive height',
  'share',
  'degrees',
  'bearing',
  'year',
  'date'
])

/** A limit that is not known is none that was lifted: only these say that there is none. */
const noLimit = set('n/a, na, n.a., -, --, –, —')

/** How a column can say that a value is missing. */
export interface MissingWords {
  /** Whether a text says so. */
  says(text: string): boolean
  /** A number of nines can say so. */
  readonly byNines: boolean
}

/** Null for columns of plain texts, in which every word may be meant. */
export function missingWords({ reads, field }: Column): MissingWords | null {
  const { kind } = reads
  if (kind === 'text' && field !== 'parent') return null
  const byNumbers = numbers.has(kind)
  const limits = kind === 'share' && reads.unread !== 'row' && reads.unread.value !== null
  const ticks = kind === 'flag' || kind === 'dead' || field === 'bark'
  return {
    byNines: byNumbers,
    says(text) {
      const word = text.trim().toLowerCase()
      if (word.length > longestWord) return false
      if (limits) return noLimit.has(word) || (!shares.has(field) && nothing.has(word))
      return (
        everywhere.has(word) ||
        (!ticks && signs.has(word)) ||
        ((byNumbers || field === 'parent') && !shares.has(field) && nothing.has(word))
      )
    }
  }
}

/** -9999, -999, -99, -9: no measurement is below zero. */
export function isNegativeCode(value: number): boolean {
  return value <= -9 && /^-9+$/.test(String(value))
}

/** The least number of nines that stands for "not measured". */
export const leastNines = 999

/** 999, 9999, 99999: a code only where the column shows it. */
export function isNines(value: number): boolean {
  return value >= leastNines && /^9+$/.test(String(value))
}

/** Whether a number can be a code at all: asked of every number of a sheet. */
export function couldBeCode(value: number): boolean {
  return value <= -9 || value >= leastNines
}
