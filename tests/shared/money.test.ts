import fc from 'fast-check'
import { asNumber, Money, printMoney, sumPrinted } from '../../shared/money'

/** Amounts of any size and number of digits, as people and rates make them. */
const amount = fc.oneof(
  fc
    .tuple(fc.integer(), fc.integer({ min: 0, max: 6 }))
    .map(([units, digits]) => new Money(units).div(10 ** digits)),
  fc.double({ noNaN: true, min: -1e15, max: 1e15 }).map((value) => new Money(value)),
  fc.bigInt({ min: -(10n ** 27n), max: 10n ** 27n }).map((value) => new Money(String(value)).div('1e9'))
)

describe('an amount as a number', () => {
  test.each([
    '0',
    '-0',
    '1240.5',
    '0.07',
    '-3.33',
    '9999999.99',
    '12345678901234.5',
    '1e-9',
    '1e21',
    '123456789012345678'
  ])('is what its text says: %s', (text) => {
    expect(Object.is(asNumber(new Money(text)), new Money(text).toNumber())).toBe(true)
  })

  test('is the nearest number there is, as by way of a text', () => {
    fc.assert(
      fc.property(amount, (value) => {
        expect(asNumber(value)).toBe(value.toNumber())
      }),
      { numRuns: 2000 }
    )
  })

  test('is none where the amount is none', () => {
    expect(asNumber(new Money(NaN))).toBeNaN()
    expect(asNumber(new Money(Infinity))).toBe(Infinity)
  })
})

test('printed amounts add up as Decimals do', () => {
  const printed = fc.array(fc.integer({ min: -1e9, max: 1e9 }), { maxLength: 200 })
  fc.assert(
    fc.property(printed, fc.constantFrom(0, 2, 3), (units, digits) => {
      const amounts = units.map((each) => new Money(each).div(10 ** digits))
      const sum = amounts.reduce((total, each) => total.plus(each), new Money(0))
      expect(
        printMoney(
          sumPrinted(amounts, (each) => each, digits),
          digits
        )
      ).toBe(printMoney(sum, digits))
    })
  )
})
