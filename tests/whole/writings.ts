/**
 * Ways of writing a number, and what an estimator means by them. Written from the requirement alone: a number that was
 * written plainly is read; one that can be read two ways is asked about; what is no number is refused; and no cell is
 * ever read as another number in silence. Common practice, no source.
 */

/**
 * reads: read as the value, always. may: read as one of the values, or refused with a sentence. asks: a sentence in
 * any case, and where a value is used all the same, it is one of these. refused: never used, with a sentence. blank:
 * taken as an empty cell, or refused with a sentence.
 */
export type Kind = 'reads' | 'may' | 'asks' | 'refused' | 'blank'

export interface Meaning {
  readonly kind: Kind
  readonly values: readonly number[]
}

/** Where a number may stand. */
export const surfaces = ['limb', 'rate', 'rule', 'call'] as const
export type Surface = (typeof surfaces)[number]

export interface Writing {
  readonly text: string
  readonly meaning: Readonly<Record<Surface, Meaning>>
  /** The same answer is expected on every surface: this is a way of writing a number, not a length or an amount. */
  readonly plain: boolean
}

export const reads = (...values: number[]): Meaning => ({ kind: 'reads', values })
export const may = (...values: number[]): Meaning => ({ kind: 'may', values })
export const asks = (...values: number[]): Meaning => ({ kind: 'asks', values })
export const refused: Meaning = { kind: 'refused', values: [] }
const blank: Meaning = { kind: 'blank', values: [] }

const everywhere = (meaning: Meaning) => ({ limb: meaning, rate: meaning, rule: meaning, call: meaning })

const plainly = (meaning: Meaning, ...texts: string[]): Writing[] =>
  texts.map((text) => ({ text, meaning: everywhere(meaning), plain: true }))

/** A writing whose meaning depends on where it stands; elsewhere it is refused. */
const somewhere = (text: string, where: Partial<Record<Surface, Meaning>>): Writing => ({
  text,
  meaning: { ...everywhere(refused), ...where },
  plain: false
})

/** A length in millimeters: for a limb and for a rule in millimeters; a bare fraction may also be read elsewhere. */
const length = (text: string, meaning: Meaning): Writing => somewhere(text, { limb: meaning, rule: meaning })

const none = (...texts: string[]): Writing[] => plainly(refused, ...texts)

/** An estimate in the field is used and named with what was taken; of a rate, a rule or an argument none is made. */
const estimates = (value: number, ...texts: string[]): Writing[] =>
  texts.map((text) => somewhere(text, { limb: asks(value) }))

/** The texts, each alone among whole numbers, so that no other cell tells the decimal sign. */
export const writings: readonly Writing[] = [
  ...plainly(reads(40), '40', ' 40 ', '40.0'),
  ...plainly(reads(12.5), '12.5', '12.50'),
  ...plainly(may(12.5), '12,5', '12,50', '012,5', '012.5'),
  ...plainly(may(0.5), '0,5', '.5', ',5', '0,50'),
  ...plainly(reads(0.5), '0.5'),
  // A group of thousands never starts with 0.
  ...plainly(may(0.03), '0,030', '0.030'),
  ...plainly(may(0.125), '0,125', '0.125'),
  ...plainly(may(12.3456), '12,3456', '12.3456'),
  ...plainly(may(234.5678), '234,5678'),
  // Three digits behind one comma: a thousand and sixteen, or a little over one.
  ...plainly(asks(1.016, 1016), '1,016', '+1,016'),
  ...plainly(asks(12.345, 12345), '12,345'),
  ...plainly(asks(123.456, 123456), '123,456'),
  // A point is the decimal sign unless the column says otherwise; it may be asked about, and is never a thousands mark.
  ...plainly(may(1.016), '1.016'),
  ...plainly(may(12.345), '12.345'),
  ...plainly(may(1016.5), '1,016.5', '1.016,5', '1 016,5', '1 016.5'),
  ...plainly(may(1_016_000), '1,016,000', '1.016.000'),
  ...plainly(may(1016), '1 016', '1\u00a0016', '1\u2009016', '1\u202f016', "1'016", '1’016', '1016'),
  ...plainly(may(140), '1.4e2', '1.4E2'),
  ...plainly(may(1000), '1e3', '1E3', '1e+3'),
  ...plainly(may(0.1), '1e-1'),
  ...plainly(may(5), '+5', '5.', '5,', '05', '\u200b5', '5\u200b', '\ufeff5'),
  ...plainly(may(12), '١٢', '１２', '\u00a012', "'12"),
  ...none('-5', '−5', '–5', '(5)', '5-'),
  ...none(
    'NaN',
    'nan',
    'Infinity',
    '-Infinity',
    '∞',
    '1e999',
    '9'.repeat(400),
    'null',
    'undefined',
    'TRUE',
    'ja'
  ),
  ...none('#DIV/0!', '#N/A', '#VALUE!', '#REF!', '#NUM!', '#NAME?'),
  ...none('2026-03-01', '01.03.2026', '3-Feb', 'Feb 3', '12:30', '2026-03-01T00:00:00Z'),
  ...none('0x10', '0b11', '0o17', '1_000', '1__0', '1e', 'e3', '1e3.5', '12n'),
  ...none('n/a', 'N/A', 'none', '-', '—', '.', ',', '+', '?', 'TBD', 'x', '%', '"'),
  ...none('<2', '>12', '5+'),
  ...estimates(2, '~2', 'ca. 2', '2?'),
  ...estimates(3, 'about 3', '3±1'),
  ...estimates(4, '≈ 4', 'c. 4'),
  ...estimates(12, '12 est.', '12 approx', '12*'),
  ...none('2-3', '2–3', '2 to 3', '2..3', '2...3', '3 or 4', '5²', '2^3', '=2+3', '2+3', '2*3'),
  ...none(
    '--2',
    '+-2',
    '-+2',
    '++2',
    '1.2.3',
    '1..2',
    '1,,2',
    '5,5,5',
    '5.5,5.5',
    '1,5.5',
    '12.345.6',
    '1 2 3'
  ),
  ...none(
    '1O',
    'l2',
    'O.5',
    '1 2.5',
    '12 . 5',
    '12 apples',
    '12 kg',
    '12 %%',
    '% 12',
    'twelve',
    '½½',
    '1/0',
    '1/2/3'
  ),
  ...none('1,01,6', '1,0160,000', '10,16,000', '1 01 6', "1'01'6", ',016,000', '1.016,000.5'),

  ...['', '  ', '\t', '\u00a0'].map((text) => ({
    text,
    meaning: { limb: refused, rate: blank, rule: blank, call: refused },
    plain: false
  })),
  ...['0', '0.0', '-0', '-0.0', '0,0', '+0'].map((text) => ({
    text,
    meaning: { limb: refused, rate: may(0), rule: may(0), call: refused },
    plain: false
  })),

  // A share of something is neither a length nor an amount of money nor a diameter.
  ...none('25,5 %', '25.5 %', '25%', '25 percent', '½ %'),

  // Fractions, as tapes in inches are read.
  ...['½', '1/2', '1⁄2'].map((text) => somewhere(text, everywhere(may(0.5)))),
  ...['4 1/2', '4½', '4 ½', '4-1/2'].map((text) => somewhere(text, everywhere(may(4.5)))),
  length('4 1/2 in', reads(114.3)),
  length('17 cm', reads(170)),
  length('1.5 cm', reads(15)),
  length('1,5 cm', may(15)),
  length('12 in', reads(304.8)),
  length('12in', may(304.8)),
  length('12"', may(304.8)),
  length('12″', may(304.8)),
  length("3'", may(914.4)),
  length('0.1 m', may(100)),
  length('1,016 mm', asks(1.016, 1016)),
  length('-3 cm', refused),
  // A diameter may be two readings: their mean.
  somewhere('10 x 12', { limb: may(11) }),
  somewhere('10/12', { limb: may(11) }),
  somewhere('10,5 x 11,5', { limb: may(11) }),
  // An amount of money may carry its currency.
  ...['$12', '12 USD', '12 $'].map((text) => somewhere(text, { rate: may(12) })),
  somewhere('$1,016', { rate: asks(1.016, 1016) })
]
