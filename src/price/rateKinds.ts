import { convertLength, systems, type UnitSystem } from '../../shared/units'

/** How the text in a rate's cell becomes the value that the arithmetic uses, and how it is written back. */
interface RateKindOf<T> {
  /** Words stay texts in the cell and are compared as such. */
  holds: 'number' | 'word'
  decode: (text: string, system: UnitSystem) => T
  encode: (value: T, system: UnitSystem) => string
}

/** Twelve figures, so that a converted length comes back as it was typed. */
const digits = (value: number): string => String(Number(value.toPrecision(12)))

/** Money and shares stay text, so that they stay exact. */
const exact: RateKindOf<string> = { holds: 'number', decode: (text) => text, encode: (text) => text }

/** Words are as they were read. */
const word: RateKindOf<string> = { ...exact, holds: 'word' }

const counted: RateKindOf<number> = { holds: 'number', decode: Number, encode: digits }

/**
 * What a rate's cell may hold, each kind with its decoding and the way back. A share is 0.18 or 18 %; a diameter is typed
 * in in or cm and used in mm, a height typed in ft or m and used in m; a choice is one of `choices`; a code is a
 * currency's letters.
 */
export const rateKinds = {
  money: exact,
  share: exact,
  number: counted,
  whole: counted,
  diameter: {
    ...counted,
    decode: (text, system) => convertLength(Number(text), systems[system].diameter, 'mm'),
    encode: (value, system) => digits(convertLength(value, 'mm', systems[system].diameter))
  } satisfies RateKindOf<number>,
  height: {
    ...counted,
    decode: (text, system) => convertLength(Number(text), systems[system].height, 'm'),
    encode: (value, system) => digits(convertLength(value, 'm', systems[system].height))
  } satisfies RateKindOf<number>,
  choice: word,
  code: word
}

export type RateKind = keyof typeof rateKinds

/** What a rate of a kind is once decoded; a choice is narrowed to its words where it is used. */
export type DecodedKind<Kind extends RateKind> = ReturnType<(typeof rateKinds)[Kind]['decode']>
