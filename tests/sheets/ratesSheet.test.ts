import { rateEntry, rateNames } from '../../src/price/rateBook'
import { inventedRatesIn } from '../../src/price/rates'
import { describeRates } from '../../src/sheets/rates/ratesSheet'
import { usersSheets } from '../../src/sheets/ownSheets'

const sheet = describeRates(inventedRatesIn['in-ft'])

describe('the Rates sheet', () => {
  test('is the user’s', () => expect(usersSheets.has('rates')).toBe(true))

  test('has a row for every rate, with unit, range and the invented start value', () => {
    for (const name of rateNames) {
      const { name: said, unit, start } = rateEntry(name)
      const row = sheet.rows.find((cells) => cells[0] === said)!
      expect(row[2]).toBe(unit['in-ft'])
      expect(String(row[3]).length).toBeGreaterThan(2)
      expect(row[5]).toEqual(Number.isNaN(Number(start['in-ft'])) ? start['in-ft'] : Number(start['in-ft']))
      expect(row[1]).toEqual(row[5])
    }
  })

  test('says that the start values are invented, where the values are and at the foot of the page', () => {
    expect(sheet.rows.flat().join(' ')).toContain('Every start value is invented')
    expect(sheet.rows.flat()).toContain(
      `${String(rateNames.length)} of ${String(rateNames.length)} rates when this sheet was written.`
    )
    expect(sheet.page.footer).toContain('invented')
  })

  test('refuses what is out of range while it is typed, with a sentence of at most 255 characters', () => {
    const values = sheet.rules!.filter(({ area }) => area.column === 1)
    const free = rateNames.filter((name) => rateEntry(name).kind === 'code')
    expect(values).toHaveLength(rateNames.length - free.length)
    for (const { sentence } of sheet.rules!) expect(sentence.length).toBeLessThanOrEqual(255)
    const choices = values.flatMap(({ takes }) => ('values' in takes ? [takes.values] : []))
    expect(choices).toEqual([
      ['weight', 'load'],
      ['margin', 'markup']
    ])
  })

  test('marks as the user’s own a start value that was confirmed', () => {
    const invented = rateNames.filter((name) => name !== 'taxRate')
    const own = describeRates({ ...inventedRatesIn['cm-m'], wage: '31', invented })
    const mine = own.rows.filter((row) => row[4] === 'yes').map((row) => row[0])
    expect(mine).toEqual([rateEntry('taxRate').name])
  })
})
