import type { ColumnValues } from './columnValues'
import { readHeaderText } from './headerText'
import type { Notion } from './words/notion'

/** What a column of two numbers a cell may give: both diameters, or where a limb begins and ends. */
const couples: readonly { fields: Couple; one: readonly Notion[]; other: readonly Notion[] }[] = [
  { fields: ['diameter', 'stem'], one: ['limb', 'lateral'], other: ['stem', 'trunk', 'leader'] },
  { fields: ['origin', 'tip'], one: ['from', 'origin'], other: ['to', 'tip'] }
]

export type Couple = readonly ['diameter', 'stem'] | readonly ['origin', 'tip']

const between = /\s*(?:[/&+|,–—-]|(?<!\p{L})(?:and|und|et|y|to|bis)(?!\p{L}))\s*/iu

/** The two things that a header names at once, or null: "Limb/stem dia", "From-to", "Origin and tip". */
export function coupleIn(header: string): Couple | null {
  return named(header)?.fields ?? null
}

/** The same in the order in which they are named. */
export function orderIn(
  header: string
): readonly [Couple[0], Couple[1]] | readonly [Couple[1], Couple[0]] | null {
  const found = named(header)
  if (found === null) return null
  const [one, other] = found.fields
  return found.isTurned ? [other, one] : [one, other]
}

function named(header: string): { readonly fields: Couple; readonly isTurned: boolean } | null {
  const bare = header.replace(/[([{][^)\]}]*[)\]}]/g, ' ')
  const sign = between.exec(bare)
  if (sign === null) return null
  // "To" parts two things, and says what the second one is.
  const after = bare.slice(sign.index + (/^\s*(?:to|bis)/i.test(sign[0]) ? 0 : sign[0].length))
  const [first, second] = [readHeaderText(bare.slice(0, sign.index)).notions, readHeaderText(after).notions]
  const has = (notions: ReadonlySet<Notion>, list: readonly Notion[]): boolean =>
    list.some((notion) => notions.has(notion))
  const apart = (one: readonly Notion[], other: readonly Notion[]): boolean =>
    has(first, one) && !has(first, other) && has(second, other) && !has(second, one)
  const found = couples.find(({ one, other }) => apart(one, other) || apart(other, one))
  return found === undefined ? null : { fields: found.fields, isTurned: !apart(found.one, found.other) }
}

const pair =
  /^\D*(\d+(?:[.,]\d+)?)\s*(?:in|ft|cm|m|["”″])?\s*(?:[/|;x×&+–—-]|to|bis|and|und|et|y)\s*(\d+(?:[.,]\d+)?)\s*\D*$/u
/** "3/4" and "7/8" are parts of an inch. */
const parts: ReadonlySet<number> = new Set([2, 4, 8, 16, 32])

/** The two numbers in a text, each as a number and as it is written; null where there are not two, or they may be a fraction. */
export function pairIn(text: string): readonly [number, string, number, string] | null {
  const [, first, second] = pair.exec(text.trim()) ?? []
  if (first === undefined || second === undefined) return null
  const [one, other] = [first, second].map((figure) => Number(figure.replace(',', '.')))
  if (!one || !other) return null
  const isPart = text.includes('/') && one < other && Number.isInteger(one) && parts.has(other)
  return isPart && !/[.,]/.test(text) ? null : [one, first, other, second]
}

function ratioOf(text: string): number | null {
  const found = pairIn(text)
  if (found === null) return null
  const [one, , other] = found
  return Math.max(one, other) / Math.min(one, other)
}

/** Shares of the cells that hold two numbers, and how far apart those of two different things are. House judgment. */
const half = 0.5
const most = 0.6
const farApart = 2

/** Whether most cells hold two numbers: any two under a header that names two things, else two that are far apart. */
export function holdsTwo(values: ColumnValues, named: boolean): boolean {
  if (values.filled === 0) return false
  const ratios = values.texts.map(ratioOf).filter((ratio) => ratio !== null)
  const apart = ratios.filter((ratio) => ratio >= farApart)
  return named ? ratios.length >= values.filled * half : apart.length >= values.filled * most
}
