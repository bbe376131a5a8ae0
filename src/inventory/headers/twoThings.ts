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
  const bare = header.replace(/[([{][^)\]}]*[)\]}]/g, ' ')
  const [before, ...after] = bare.split(between)
  if (before === undefined || after.length === 0) return null
  const [first, second] = [readHeaderText(before).notions, readHeaderText(after.join(' ')).notions]
  const has = (notions: ReadonlySet<Notion>, list: readonly Notion[]): boolean =>
    list.some((notion) => notions.has(notion))
  const apart = (one: readonly Notion[], other: readonly Notion[]): boolean =>
    has(first, one) && !has(first, other) && has(second, other) && !has(second, one)
  return couples.find(({ one, other }) => apart(one, other) || apart(other, one))?.fields ?? null
}

const pair =
  /^\D*(\d+(?:[.,]\d+)?)\s*(?:in|ft|cm|m|["”″])?\s*(?:[/|;x×&+–—-]|to|bis|and|und|et|y)\s*(\d+(?:[.,]\d+)?)\s*\D*$/u
/** "3/4" and "7/8" are parts of an inch. */
const parts: ReadonlySet<number> = new Set([2, 4, 8, 16, 32])

function ratioOf(text: string): number | null {
  const found = pair.exec(text)
  if (found === null) return null
  const [one, other] = [found[1], found[2]].map((figure) => Number(figure?.replace(',', '.')))
  if (!one || !other) return null
  const isPart = text.includes('/') && one < other && Number.isInteger(one) && parts.has(other)
  return isPart ? null : Math.max(one, other) / Math.min(one, other)
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
