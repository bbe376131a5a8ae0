import type { Choice, ChoiceName, Growth } from './choices'
import type { CalendarDate } from './dates'
import { percent } from './words/percent'

/** What kind of number or word a column holds. Lengths are kept in mm (diameters) or m (heights), shares from 0 to 1. */
export type ColumnKind =
  | 'text'
  /** More than 0, up to 12 m. */
  | 'diameter'
  /** The same, or several stems written "5 + 6 + 8". */
  | 'stems'
  /** 0 or more, up to 130 m. */
  | 'height'
  /** More than 0, up to 130 m. */
  | 'positive height'
  | 'share'
  /** Degrees from 0 to `limit`. */
  | 'degrees'
  /** Degrees from north, or a compass point. */
  | 'bearing'
  /** The same, or a side in other words, which is kept as it was typed. */
  | 'side'
  | 'year'
  /** A day, or as much of it as is known. */
  | 'date'
  /** A growth class, or a measured growth of the trunk in mm a year. */
  | 'growth'
  | 'choice'
  | 'flag'
  /** Live or dead; under a header "Dead", yes means dead. */
  | 'dead'

/** A side of the tree: as it was typed, for print, and in degrees from north; null where every side is meant. */
export interface Side {
  readonly text: string
  readonly degrees: number | null
}

/** What is taken for a value that stands in a cell and cannot be read, and how the problem says so. */
export interface Instead<T> {
  readonly value: T
  readonly said: string
}

/** How a column's cells are read; `T` is what a tree or limb holds of it. */
export interface Reads<T> {
  readonly kind: ColumnKind
  /** Stands for a blank cell and for a column that is not there. */
  readonly absent: T
  /** What a cell that cannot be read means: "row" where the row, or the tree, cannot be planned without it. */
  readonly unread: 'row' | Instead<T>
  readonly choice?: ChoiceName
  /** Degrees at most. */
  readonly limit?: number
}

const leftOut: Instead<null> = { value: null, said: 'it was left out' }

type Known = number | null
type NumberKind = 'diameter' | 'stems' | 'height' | 'positive height' | 'share' | 'bearing' | 'year'

/** A number that the plan can do without. */
export function optional(kind: NumberKind): Reads<Known> {
  return { kind, absent: null, unread: leftOut }
}

/** A number without which the limb, or every limb of the tree, cannot be planned. */
export function needed(kind: NumberKind): Reads<Known> {
  return { kind, absent: null, unread: 'row' }
}

export function degrees(limit: number): Reads<Known> {
  return { kind: 'degrees', absent: null, unread: leftOut, limit }
}

/** A limit on what may come off: where it cannot be read, the strictest is taken until it is corrected. */
export function limit<A extends Known>(absent: A, strictest: 0 | 1): Reads<A | number> {
  const said = `it counts as ${percent(strictest)} until it is corrected`
  return { kind: 'share', absent, unread: { value: strictest, said } }
}

export function text<A extends string | null>(absent: A, said = 'it was left out'): Reads<A | string> {
  return { kind: 'text', absent, unread: { value: absent, said } }
}

/** The id by which the rows of a tree belong together. */
export const treeId: Reads<string> = { kind: 'text', absent: '', unread: 'row' }

/** One of the words of a choice on which the plan rests: a word that is not known holds up the limb or the tree. */
export function askedChoice<N extends ChoiceName>(name: N): Reads<Choice<N> | null> {
  return { kind: 'choice', choice: name, absent: null, unread: 'row' }
}

/** One of the words of a choice; `absent` also where the word cannot be read. */
export function choice<N extends ChoiceName, A extends Choice<N> | null>(
  name: N,
  absent: A,
  said: string
): Reads<A | Choice<N>> {
  return { kind: 'choice', choice: name, absent, unread: { value: absent, said } }
}

export const flag: Reads<boolean> = {
  kind: 'flag',
  choice: 'flag',
  absent: false,
  unread: { value: false, said: 'it counts as no' }
}

export const dead: Reads<boolean> = {
  kind: 'dead',
  choice: 'live',
  absent: false,
  unread: { value: false, said: 'it counts as live' }
}

export const growth: Reads<Growth | Known> = {
  kind: 'growth',
  choice: 'growth',
  absent: null,
  unread: leftOut
}

export const date: Reads<CalendarDate | null> = { kind: 'date', absent: null, unread: leftOut }

export const side: Reads<Side | null> = { kind: 'side', absent: null, unread: leftOut }
