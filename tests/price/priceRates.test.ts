import type { Cell, CellBlock } from '../../shared/cells'
import { rateBook, rateEntry, rateNames, startValues, type RateName } from '../../src/price/rateBook'
import { inventedRatesIn, rateValues, type Rates } from '../../src/price/rates'
import { readRates } from '../../src/price/readRates'
import { describeRates } from '../../src/sheets/rates/ratesSheet'
import type { UnitSystem } from '../../shared/units'

/** The Rates sheet as it is read back, some values typed over. */
function typedOver(
  typed: Partial<Record<RateName, Cell>>,
  system: UnitSystem = 'in-ft',
  mine: RateName[] = []
): CellBlock {
  const rows = describeRates(inventedRatesIn[system]).rows.map((row) =>
    row.map((cell): Cell => (typeof cell === 'object' && cell !== null ? null : cell))
  )
  for (const [name, value] of Object.entries(typed)) rowOf(rows, name as RateName)[1] = value
  for (const name of mine) rowOf(rows, name)[4] = 'yes'
  return { rows, sheet: 'Rates', top: 0, left: 0 }
}

function rowOf(rows: Cell[][], name: RateName): Cell[] {
  return rows.find((row) => row[0] === rateEntry(name).name)!
}

function addressOf(block: CellBlock, name: RateName, column = 'B'): string {
  return `Rates!${column}${String(block.rows.findIndex((row) => row[0] === rateEntry(name).name) + 1)}`
}

/** What a typed value comes to, with the problem it makes. */
function one(name: RateName, value: Cell, more: Partial<Record<RateName, Cell>> = {}) {
  const block = typedOver({ ...more, [name]: value })
  const { rates, problems } = readRates(block)
  return { rates, problems, value: rateValues(rates)[name], cell: addressOf(block, name) }
}

describe('a Rates sheet as it was written', () => {
  test.each(['in-ft', 'cm-m'] as const)('is read without a problem, in %s, every rate invented', (system) => {
    const { rates, problems } = readRates(typedOver({}, system), system === 'in-ft' ? 'cm-m' : 'in-ft')
    expect(problems).toEqual([])
    expect(rates).toEqual(normal(inventedRatesIn[system]))
  })

  test('names every rate once', () => {
    const names = Object.values(rateBook).map(({ name }) => name)
    expect(new Set(names).size).toBe(names.length)
    const { rows } = describeRates(inventedRatesIn['in-ft'])
    for (const name of names) expect(rows.filter((row) => row[0] === name)).toHaveLength(1)
  })

  test('every start value lies in its own range', () => {
    for (const name of rateNames)
      for (const system of ['in-ft', 'cm-m'] as const) {
        const { kind, low, high, start } = rateEntry(name)
        if (kind === 'choice' || kind === 'code') continue
        expect([name, Number(start[system]) >= low && Number(start[system]) <= high]).toEqual([name, true])
      }
  })

  test('keeps the rates of a business when it is written from them', () => {
    const own: Rates = { ...inventedRatesIn['cm-m'], wage: '31.25', invented: ['taxRate'] }
    const rows = describeRates(own).rows as Cell[][]
    const { rates, problems } = readRates({ rows, sheet: 'Rates', top: 0, left: 0 })
    expect(problems).toEqual([])
    expect({ ...rates, wage: Number(rates.wage) }).toEqual({ ...normal(own), wage: 31.25 })
  })
})

/** The texts of money as a sheet gives them back: 28.00 is a 28. */
function normal(rates: Rates): Rates {
  const plain = { ...rates } as Record<string, unknown>
  const keys = ['burdenRate', 'equipmentHour', 'forecastSpread', 'loadCharge', 'mobilization', 'wage']
  for (const key of [...keys, 'minimumPerTree', 'minimumPerTrip']) plain[key] = String(Number(plain[key]))
  return plain as unknown as Rates
}

describe('the decimals of a currency', () => {
  const priced = (currency: Cell, minorDigits: Cell = 2, mine: RateName[] = []) => {
    const { rates, problems } = readRates(typedOver({ currency, minorDigits }, 'in-ft', mine))
    return [rates.minorDigits, problems.map(({ code }) => code)]
  }

  // ISO 4217 (from memory): JPY has none, KWD has three.
  test('follow it where nobody put them in, with a sentence', () => {
    expect(priced('JPY')).toEqual([0, ['rate-decimals']])
    expect(priced('KWD')).toEqual([3, ['rate-decimals']])
    expect(priced('EUR')).toEqual([2, []])
    expect(priced('XTS')).toEqual([2, []])
  })

  test('are kept where somebody did', () => {
    expect(priced('JPY', 0)).toEqual([0, []])
    expect(priced('KWD', 3)).toEqual([3, []])
    expect(priced('JPY', 2, ['minorDigits'])).toEqual([2, []])
    expect(priced('USD', 0)).toEqual([0, []])
  })
})

describe('a rate of one’s own', () => {
  test('is used, and only the others stay invented', () => {
    const { rates, problems } = one('wage', 31.5)
    expect(problems).toEqual([])
    expect(rates.wage).toBe('31.5')
    expect(rates.invented).toEqual(rateNames.filter((name) => name !== 'wage'))
  })

  test('that equals the start value counts as one’s own once it is marked', () => {
    expect(readRates(typedOver({}, 'in-ft', ['taxRate', 'currency'])).rates.invented).toEqual(
      rateNames.filter((name) => name !== 'taxRate' && name !== 'currency')
    )
  })

  test.each([
    ['overheadRate', '22 %', '0.22'],
    ['overheadRate', '22.5%', '0.225'],
    ['wage', '$31.40', '31.40'],
    // An hour's wage and equipment, and brush by weight, in a currency of small units.
    ['wage', 28_000, '28000'],
    ['equipmentHour', 65_000, '65000'],
    ['disposalPerWeight', 1500, '1500'],
    ['mobilization', '1,250.00', '1250.00'],
    ['wage', '31,40', '31.40'],
    ['currency', 'eur', 'EUR'],
    ['profitKind', 'Markup', 'markup'],
    ['wage', 1e-7, '0.0000001']
  ] as [RateName, Cell, string][])('%s typed as %s is %s', (name, typed, value) => {
    const found = one(name, typed)
    expect(found.problems).toEqual([])
    expect(found.value).toBe(value)
  })

  test.each([
    ['JPY', { wage: 3100, equipmentHour: 28000, mobilization: 10007, minorDigits: 0 }],
    [
      'VND',
      {
        wage: 90000,
        equipmentHour: 400000,
        loadCharge: 1500000,
        minimumPerTree: 2000000,
        disposalPerWeight: 2500
      }
    ]
  ] as [string, Partial<Record<RateName, Cell>>][])(
    'may be of a currency of large numbers: %s',
    (currency, typed) => {
      const { rates, problems } = readRates(typedOver({ ...typed, currency }, 'in-ft', ['minorDigits']))
      expect(problems).toEqual([])
      expect([rates.currency, Number(rates.wage)]).toEqual([currency, typed.wage])
    }
  )

  test('lengths are in the unit of the sheet', () => {
    expect(one('cutLimit1', 1.5).rates.cutClasses[0]!.upToMillimeters).toBeCloseTo(38.1, 10)
    expect(readRates(typedOver({ cutLimit1: 3 }, 'cm-m')).rates.cutClasses[0]!.upToMillimeters).toBe(30)
  })

  test('is found wherever its row and its columns stand', () => {
    const rows: Cell[][] = [
      [null, 'unit', null, 'RATE', 'value'],
      [null, 'an hour', null, 'wage of one person ', 40],
      [null, 'of the wage', null, 'Burden on wages', 0.5]
    ]
    const { rates } = readRates({ rows, sheet: 'Office', top: 4, left: 2 })
    expect([rates.wage, rates.burdenRate]).toEqual(['40', '0.5'])
  })
})

describe('a rate that cannot be used', () => {
  test.each([
    ['wage', 'a lot', 'rate-not-a-number', '28.00'],
    ['wage', '0x10', 'rate-not-a-number', '28.00'],
    ['wage', '1_000', 'rate-not-a-number', '28.00'],
    ['wage', '#N/A', 'rate-not-a-number', '28.00'],
    ['wage', true, 'rate-not-a-number', '28.00'],
    ['wage', -1, 'rate-out-of-range', '28.00'],
    ['crewPersons', 2.5, 'rate-out-of-range', '3'],
    ['taxRate', '120 %', 'rate-out-of-range', '0'],
    ['overheadRate', 18, 'rate-out-of-range', '0.18'],
    ['profitKind', 'both', 'rate-not-a-choice', 'margin'],
    ['currency', 'US dollars', 'rate-not-a-choice', 'USD'],
    ['wage', null, 'rate-missing', '28.00'],
    ['wage', '  ', 'rate-missing', '28.00']
  ] as [RateName, Cell, string, string][])('%s typed as %s', (name, typed, code, value) => {
    const found = one(name, typed)
    expect(found.problems.map((each) => [each.code, each.cell])).toEqual([[code, found.cell]])
    expect(found.problems[0]!.message).toContain(found.cell)
    expect(found.problems[0]!.message).toContain(rateEntry(name).name)
    expect(found.problems[0]!.message + found.problems[0]!.remedy).not.toMatch(/[{}]/)
    expect(found.value).toBe(value)
    expect(found.rates.invented).toContain(name)
  })

  test.each([1, '100 %', 1.5])('a margin of %s is refused with a sentence', (typed) => {
    const { problems, value, cell } = one('profitRate', typed)
    expect(problems.map((each) => [each.code, each.cell])).toEqual([['rate-margin-whole', cell]])
    expect(problems[0]!.message).toContain('no price covers the cost')
    expect(value).toBe('0.15')
  })

  test('a markup of 100 % or more is a price that can be asked', () => {
    const { problems, value } = one('profitRate', 1.2, { profitKind: 'markup' })
    expect(problems).toEqual([])
    expect(value).toBe('1.2')
  })

  test('limits that do not rise are put back together', () => {
    const { problems, rates, cell } = one('cutLimit2', 0.5)
    expect(problems.map((each) => [each.code, each.cell])).toEqual([['rate-order', cell]])
    expect(rates.cutClasses).toEqual(inventedRatesIn['in-ft'].cutClasses)
  })

  test('a start value that stands in for a refused one is invented, even where the refused one was marked', () => {
    const marked = (typed: Partial<Record<RateName, Cell>>, mine: RateName[]) =>
      readRates(typedOver(typed, 'in-ft', mine)).rates.invented
    expect(marked({ profitRate: 1.2 }, ['profitRate'])).toEqual(rateNames)
    expect(marked({ cutLimit2: 0.5 }, ['cutLimit2'])).toContain('cutLimit2')
    expect(marked({ profitRate: 0.2 }, ['profitRate'])).not.toContain('profitRate')
  })

  test('a row given twice, an unknown row and a changed unit are reported', () => {
    const block = typedOver({})
    block.rows.push(
      ['Wage of one person', 99, 'an hour'],
      ['Coffee', 3, 'a day'],
      ['Remark to myself', null, null]
    )
    const unit = rowOf(block.rows, 'loadVolume')
    unit[2] = 'barrows'
    const { problems, rates } = readRates(block)
    expect(problems.map(({ code }) => code).sort()).toEqual(['rate-twice', 'rate-unit', 'rate-unknown'])
    expect(rates.wage).toBe(String(Number(startValues('in-ft').wage)))
  })

  test('a sheet without rates gives the invented ones and says so', () => {
    const { rates, problems } = readRates({ rows: [['hello']], sheet: 'Rates', top: 0, left: 0 }, 'cm-m')
    expect(problems.map(({ code }) => code)).toEqual(['no-rates'])
    expect(rates).toEqual(inventedRatesIn['cm-m'])
  })
})
