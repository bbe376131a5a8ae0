import { number } from '../../functions/argument'
import { readCell } from '../../functions/cell'
import type { Cell } from '../../shared/cells'
import { isRefusal } from '../../shared/refusal'
import { compassDegrees } from '../../shared/compass'
import { readLength } from '../../shared/lengths'
import { digitsIn, numberIn, readDecimal, styleOf, type NumberStyle } from '../../shared/numbers'
import { rulesHeaders, readRules } from '../../src/plan/rules/readRules'
import { ruleBook } from '../../shared/rules'
import { rateEntry } from '../../src/price/rateBook'
import { rateValues } from '../../src/price/rates'
import { readBudget } from '../../src/price/readBudget'
import { readRates } from '../../src/price/readRates'
import { readInventory } from '../../src/inventory/readInventory'

/** What a surface makes of one typed cell: its number, or the code or word of what it says instead. */
const surfaces = {
  inventory(cell: Cell): number | string {
    const rows = [
      ['Tree', 'Foliage share', 'Limb', 'Limb dia (mm)'],
      ['T1', null, 'A', cell]
    ]
    const { trees, problems } = readInventory({ rows, sheet: 'Trees', top: 0, left: 0 })
    const fault = problems.find(({ cell: at }) => at === 'Trees!D2')
    return trees[0]!.limbs[0]!.diameter ?? fault?.code ?? 'nothing'
  },
  rules(cell: Cell): number | string {
    const rows = [
      [rulesHeaders.rule, rulesHeaders.value],
      [ruleBook.reasonedCut.name, cell]
    ]
    const { rules, problems } = readRules({ rows, sheet: 'Rules', top: 0, left: 0 })
    const code = problems[0]?.code
    return code === undefined ? rules.reasonedCut : code === 'rule-range' ? 'out of range' : code
  },
  rates(cell: Cell): number | string {
    const rows = [
      ['Rate', 'Value', 'Unit'],
      [rateEntry('mobilization').name, cell, 'a year of work']
    ]
    const { rates, problems } = readRates({ rows, sheet: 'Rates', top: 0, left: 0 })
    const fault = problems.find(({ cell: at }) => at === 'Rates!B2')
    return fault?.code ?? Number(rateValues(rates).mobilization)
  },
  budget(cell: Cell): number | string {
    const budget = readBudget(String(cell ?? ''), { currency: 'USD', minorDigits: 2 })
    return typeof budget === 'string' ? budget : budget.toNumber()
  },
  function(cell: Cell): number | string {
    const value = readCell(number('x'), cell)
    return isRefusal(value) ? value.sentence : value
  }
}

/** Everywhere the same number, alone in its column. */
const sameEverywhere: [string, number][] = [
  ['12.5', 12.5],
  ['12,5', 12.5],
  ['12,25', 12.25],
  [' 70 ', 70],
  ['+55', 55],
  ['1 016', 1016],
  ['1\u00a0016', 1016],
  ['1\u2009016,5', 1016.5],
  ["1'016", 1016],
  ['1.016,5', 1016.5],
  ['1,016.5', 1016.5],
  ['0060.500', 60.5]
]

/** Everywhere refused, as powers of ten, hexadecimal and full-width digits are. */
const refusedEverywhere = [
  '1e3',
  '0x10',
  '1_000',
  'about three',
  'Infinity',
  'NaN',
  '--2',
  '1,23,456',
  '１２',
  '12,'
]

describe('one text is one number on every surface', () => {
  test.each(sameEverywhere)('%j is %d', (text, value) => {
    expect(surfaces.inventory(text)).toBe(value)
    expect(surfaces.rates(text)).toBe(value)
    expect(surfaces.budget(text)).toBe(value)
    expect(surfaces.function(text)).toBe(value)
    expect([value, 'out of range']).toContain(surfaces.rules(text))
  })

  test.each(refusedEverywhere)('%j is no number', (text) => {
    expect(surfaces.inventory(text)).toBe('not-a-number')
    expect(surfaces.rules(text)).toBe('rule-value')
    expect(surfaces.rates(text)).toBe('rate-not-a-number')
    expect(surfaces.budget(text)).toContain('is not an amount')
    expect(surfaces.function(text)).toContain('not a number')
  })

  test.each(['1,016', '1.016', '12.345'])('%j alone can be two numbers, and every surface asks', (text) => {
    expect(surfaces.inventory(text)).toBe('number-two-ways')
    expect(surfaces.rules(text)).toBe('rule-two-ways')
    expect(surfaces.rates(text)).toBe('rate-two-ways')
    const digits = text.replace(/\D/g, '')
    expect(surfaces.function(text)).toContain(`can be ${digits} or `)
  })

  test.each(['2026-03-01', '3-Feb', '31.03.2024', '3 Feb 2026'])(
    '%j is a date, and is reported as one',
    (text) => {
      expect(surfaces.inventory(text)).toBe('date-not-number')
      expect(surfaces.rules(text)).toBe('rule-date')
      expect(surfaces.rates(text)).toBe('rate-date')
      expect(surfaces.function(text)).toContain('a date')
    }
  )

  test.each([NaN, Infinity, -Infinity])('the result %d of a formula is no number', (cell) => {
    expect(surfaces.inventory(cell)).toBe('not-finite')
    expect(surfaces.rules(cell)).toBe('rule-not-finite')
    expect(surfaces.rates(cell)).toBe('rate-not-finite')
    expect(surfaces.function(cell)).toContain('not a number')
  })

  test('a thousandth is never read as thirty: “0,030” can only be 0.03', () => {
    const rates = (cell: Cell) => {
      const rows = [
        ['Rate', 'Value', 'Unit'],
        [rateEntry('disposalPerWeight').name, cell, 'a lb']
      ]
      return rateValues(readRates({ rows, sheet: 'Rates', top: 0, left: 0 }).rates).disposalPerWeight
    }
    expect(['0,03', '0,030', '0,125', '0.125'].map(rates).map(Number)).toEqual([0.03, 0.03, 0.125, 0.125])
    expect(surfaces.function('0,030')).toBe(0.03)
    expect(numberIn('0,030', '.')).toBe(0.03)
  })

  test('the budget’s currency tells what a comma means: a reading with more decimals than it has is none', () => {
    const budget = (text: string, minorDigits: number) => {
      const read = readBudget(text, { currency: 'USD', minorDigits })
      return typeof read === 'string' ? read : read.toNumber()
    }
    for (const text of ['2,000', '$2,000', '2.000', '$ 2 000', '2000.00']) expect(budget(text, 2)).toBe(2000)
    expect(['1,016', '1.016', '12.345'].map((text) => budget(text, 2))).toEqual([1016, 1016, 12345])
    expect([budget('1,450', 2), budget('1,45', 2), budget('1,450', 0)]).toEqual([1450, 1.45, 1450])
    expect(budget('1,45', 0)).toBe(
      '“1,45” is not an amount of a currency with no decimals: type an amount that it has, such as 2500.'
    )
    expect(budget('0,125', 2)).toContain('“0,125” is not an amount of a currency with 2 decimals')
    // A dinar of a thousand parts: both readings are amounts.
    expect(budget('1,450', 3)).toBe('“1,450” can be 1450 or 1.450: type 1450 without the comma, or “1,4500”.')
    expect([budget('1,4500', 3), budget('12,5', 3)]).toEqual([1.45, 12.5])
  })

  test('a percentage is no amount, no diameter and no count, and is a share wherever a share is meant', () => {
    for (const text of ['25%', '25,5 %']) {
      expect(surfaces.inventory(text)).toBe('not-a-number')
      expect(surfaces.rates(text)).toBe('rate-not-a-number')
      expect(surfaces.budget(text)).toContain('is not an amount')
      expect(surfaces.function(text)).toContain('not a number')
      expect(surfaces.rules(text)).toBe('rule-value')
    }
    const rateOf = (name: 'taxRate' | 'dayHours', cell: Cell) => {
      const rows = [
        ['Rate', 'Value', 'Unit'],
        [rateEntry(name).name, cell, 'x']
      ]
      const { rates, problems } = readRates({ rows, sheet: 'Rates', top: 0, left: 0 })
      return problems.find(({ cell: at }) => at === 'Rates!B2')?.code ?? Number(rateValues(rates)[name])
    }
    expect([rateOf('taxRate', '8,25 %'), rateOf('dayHours', '8 %')]).toEqual([0.0825, 'rate-not-a-number'])
    expect(rateOf('taxRate', '$0.08')).toBe('rate-not-a-number')
    const ruleOf = (name: 'partialBark' | 'leastGain', cell: Cell) => {
      const rows = [
        [rulesHeaders.rule, rulesHeaders.value],
        [ruleBook[name].name, cell]
      ]
      const { rules, problems } = readRules({ rows, sheet: 'Rules', top: 0, left: 0 })
      return problems[0]?.code ?? rules[name]
    }
    expect([ruleOf('partialBark', '40 %'), ruleOf('leastGain', '40 %')]).toEqual([0.4, 'rule-value'])
  })

  test('a percent sign belongs to a share, and the sign of a currency to money', () => {
    expect(numberIn('25,5 %', null, { percent: true })).toBe(0.255)
    expect(numberIn('25,5 %', null)).toEqual({ why: 'no-number' })
    expect(surfaces.rates('$ 1,250.00')).toBe(1250)
    for (const text of ['2500 $', '$2,500', 'USD 2,500', '2 500 usd'])
      expect(surfaces.budget(text)).toBe(2500)
    for (const text of ['2500 €', 'EUR 2500', '£2,500'])
      expect(surfaces.budget(text)).toMatch(/ the estimate in USD: type the amount in USD\.$/)
    expect(surfaces.inventory('$12')).toBe('not-a-number')
  })

  test('there is no number below zero that is zero', () => {
    expect(Object.is(numberIn(-0, null), 0)).toBe(true)
    expect(Object.is(numberIn('-0,0', null), 0)).toBe(true)
    expect(surfaces.function('-3')).toBe(-3)
    expect(readDecimal('−3', null)).toBe('-3')
  })

  test('money keeps its digits', () => {
    expect([digitsIn('1,250.00', null), digitsIn('31,40', null), digitsIn(1e-7, null)]).toEqual([
      '1250.00',
      '31.40',
      '0.0000001'
    ])
  })
})

describe('which sign stands before the decimals is told from the column', () => {
  test.each<[NumberStyle, Cell[]]>([
    ['.', ['1.5', '1,016']],
    ['.', ['1,234,567', null, 3]],
    ['.', ['1,234.5']],
    ['.', ['.125', 'x']],
    [',', ['12,25 cm', '1.016']],
    [',', ['0,030']],
    [',', ['1.016,5']],
    [',', ['10,2 x 9,8']],
    [',', ['5,5 + 6,25', '1.016']],
    [',', ['-12,5 %']],
    ['.', ['12\'-6.5"']],
    ['.', ['$ 1.50']],
    ['.', ['10.2 cm and 9.8 cm']],
    // Guesses, ranges, lists and remarks are no numbers, and tell nothing.
    [null, ['about 12,5 or so', '2,5-3,5', 'limbs 3,4', '12,5?', '1,016']],
    ['either', ['1 016', '1,016']],
    [null, ['1,016', '12,345', 'about 3', '31.03.2024']],
    [null, ['1,5', '1.5', '1,016']],
    [null, [1.5, true, null]]
  ])('%j: %j', (style, cells) => {
    expect(styleOf(cells)).toBe(style)
  })

  test.each<[string, NumberStyle, string]>([
    ['1,016', '.', '1016'],
    ['1,016', ',', '1.016'],
    ['1.016', ',', '1016'],
    ['1.016', '.', '1.016'],
    ['1,016', 'either', '1.016'],
    ['-12,345', ',', '-12.345']
  ])('%s in a column of %j is %s', (text, style, digits) => {
    expect(readDecimal(text, style)).toBe(digits)
  })

  test('a diameter is read as its column writes decimals, and asked for where the column does not tell', () => {
    const read = (...cells: Cell[]) => {
      const rows = [['Tree', 'Limb', 'Limb dia (mm)'], ...cells.map((cell, at) => ['T1', `L${at}`, cell])]
      const { trees, problems } = readInventory({ rows, sheet: 'Trees', top: 0, left: 0 })
      const asked = problems.filter(({ code }) => code === 'number-two-ways')
      return { diameters: trees[0]!.limbs.map(({ diameter }) => diameter), asked }
    }
    expect(read('1.016', '104,5').diameters).toEqual([1016, 104.5])
    expect(read('1.016', '104.5').diameters).toEqual([1.016, 104.5])
    const { diameters, asked } = read('1,016', 104.5)
    expect(diameters).toEqual([null, 104.5])
    expect(asked).toHaveLength(1)
    expect(asked[0]).toMatchObject({ cell: 'Trees!C2', level: 'row' })
    expect(asked[0]!.message).toContain('reads “1,016”, which can be 1.016 or 1016')
    expect(asked[0]!.remedy).toBe('Type 1016 without the comma, or 1.016 as “1,0160”.')
    expect(read('1,0160').diameters).toEqual([1.016])
  })
})

describe('lengths as people type them', () => {
  it.each([
    ['17 cm', 17, 'cm'],
    ['4 1/2 in', 4.5, 'in'],
    ['3/4"', 0.75, 'in'],
    ['3½"', 3.5, 'in'],
    ["12''", 12, 'in'],
    ['12\' 6"', 12.5, 'ft'],
    ['4\'-6"', 4.5, 'ft'],
    ['12 ft 6 in', 12.5, 'ft'],
    ["1'016", 1016, null],
    ['10.2 x 9.8', 10, null],
    ['10,2 x 9,8', 10, null],
    ['10.2/9.8', 10, null],
    ['10 cm x 12 cm', 11, 'cm']
  ])('reads the length %p', (text, value, unit) => {
    const length = readLength(text, null)
    if (length === null || 'why' in length) throw new Error(`${text} was not read`)
    expect(length.value).toBeCloseTo(value, 12)
    expect(length.unit).toBe(unit)
  })

  it.each(['about 3', '3 apples', 'x', '3 x', '1 2 3', '4 x -2', '8ft?', ''])(
    'refuses the length %p',
    (text) => {
      expect(readLength(text, null)).toBeNull()
    }
  )

  it('asks where a length with its unit can be two', () => {
    expect(readLength('1,016 mm', null)).toMatchObject({ why: 'two-ways', low: '1.016', high: '1016' })
    expect(readLength('1,016 mm', ',')).toEqual({ value: 1.016, unit: 'mm' })
    expect(readLength('9 x 1.016', null)).toMatchObject({ why: 'two-ways' })
  })
})

it('reads all sixteen compass points, and words for them', () => {
  const points = 'N NNE NE ENE E ESE SE SSE S SSW SW WSW W WNW NW NNW'.split(' ')
  expect(points.map(compassDegrees)).toEqual(points.map((_, at) => at * 22.5))
  expect(compassDegrees('south-west')).toBe(225)
  expect(compassDegrees('north-northeast')).toBe(22.5)
  expect(compassDegrees('East side')).toBe(90)
  for (const text of ['up', 'street', 'N/E', '']) expect(compassDegrees(text)).toBeNull()
})
