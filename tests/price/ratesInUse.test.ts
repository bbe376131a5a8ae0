/** Every rate on the Rates sheet moves what is printed: none is typed in, counted as one's own, and then ignored. */
import { cellAddress, type Cell } from '../../shared/cells'
import { estimatePlan } from '../../src/price/estimatePlan'
import { rateEntry, rateNames, startValues, type RateName } from '../../src/price/rateBook'
import { ratesFrom, rateValues, type Rates } from '../../src/price/rates'
import { describeEstimate } from '../../src/sheets/estimate/estimateSheet'
import { isFormula } from '../../src/sheets/sheet'
import { formulasOf, precedents } from '../sheets/sheetFormulas'
import { planOf } from '../sheets/samplePlan'

const headers =
  'Tree | Access | Height (m) | Crown base (m) | Life stage | Vigor | Limb | Role | Limb dia (mm) | Stem dia (mm) | Origin (m) | Tip (m) | Status'

/** An invented tree of an access whose dead limbs come off whole: a cut of each diameter, in mm, at each height, in m. */
function tree(id: string, access: string, cuts: [diameter: number, height: number][]): Cell[][] {
  const whole = (row: number): Cell[] =>
    row === 0 ? [access, 24, 2, 'mature', 'good'] : [null, null, null, null, null]
  return [
    [id, ...whole(0), 'A', 'leader', 500, null, 2, 24, null],
    ...cuts.map(([diameter, height], at): Cell[] => [
      id,
      ...whole(at + 1),
      `L${String(at)}`,
      null,
      diameter,
      600,
      height,
      height + 4,
      'dead'
    ])
  ]
}

/** Cuts in every class of diameter and every band of height, on trees of every access. */
const plan = planOf([
  headers.split(' | '),
  ...tree('one', 'open', [
    [20, 2],
    [40, 5],
    [90, 9],
    [140, 15],
    [200, 2]
  ]),
  ...tree('two', 'fenced', [[90, 2]]),
  ...tree('three', 'no machine', [[90, 5]])
])

/** With a tax, so that everything that a price goes through shows. */
const start = { ...startValues('cm-m'), taxRate: '0.08' }
const ratesWith = (values: Partial<Record<RateName, string>>): Rates =>
  ratesFrom({ ...start, ...values }, 'cm-m', [])

/** The two ends of a rate's range, or the other words that it may be. */
function ends(name: RateName): string[] {
  const { kind, choices, low, high } = rateEntry(name)
  const range = name === 'profitRate' ? [low, 0.9] : [low, high]
  const all = kind === 'code' ? ['EUR'] : kind === 'choice' ? choices : range.map(String)
  return all.filter((value) => value !== start[name])
}

/** What the client is charged, in what currency and until when. */
function charged(rates: Rates): string {
  const { lines, subtotal, tax, total, currency, validUntil } = estimatePlan(plan, rates)
  return JSON.stringify([lines.map(({ price }) => price), subtotal, tax, total, currency, validUntil])
}

/** The values in the Estimate above its list of rates. */
function printed(rates: Rates): string {
  const { rows, names = [] } = describeEstimate(estimatePlan(plan, rates), plan)
  const first = names.find(({ name }) => name === 'Crew_persons')!.area.row
  const cells = rows.slice(0, first).flat()
  return JSON.stringify(cells.map((content) => (isFormula(content) ? content.value : content)))
}

describe.each(rateNames)('the rate %s', (name) => {
  test('moves what is charged at one end of its range', () => {
    const before = charged(ratesWith({}))
    expect(ends(name).some((end) => charged(ratesWith({ [name]: end })) !== before)).toBe(true)
  })

  test('moves what the Estimate shows', () => {
    const before = printed(ratesWith({}))
    expect(ends(name).some((end) => printed(ratesWith({ [name]: end })) !== before)).toBe(true)
  })

  test('comes back from the arithmetic as it was typed', () => {
    for (const end of ends(name)) expect(rateValues(ratesWith({ [name]: end }))[name]).toBe(end)
  })
})

/** Cells that the total of the Estimate depends on, through any number of formulas. */
function behindTotal(): Set<string> {
  const sheet = describeEstimate(estimatePlan(plan, ratesWith({})), plan)
  const formulas = new Map(formulasOf(sheet).map(({ address, formula }) => [address, formula]))
  const total = sheet.rows.findIndex(([label]) => typeof label === 'string' && label.startsWith('Total ('))
  const found = new Set<string>()
  const follow = (address: string): void => {
    if (found.has(address)) return
    found.add(address)
    for (const next of precedents(formulas.get(address) ?? '', sheet)) follow(next)
  }
  sheet.rows[total]!.forEach((content, column) => {
    if (isFormula(content)) follow(cellAddress(total, column))
  })
  return found
}

const named = rateNames.filter((name) => rateEntry(name).cell !== null)
const total = behindTotal()
const { names = [] } = describeEstimate(estimatePlan(plan, ratesWith({})), plan)

test.each(named)('the total of the Estimate follows the cell of the rate %s', (rate) => {
  const cells = names.filter(({ name }) => name === rateEntry(rate).cell)
  expect(cells).toHaveLength(1)
  expect(total).toContain(cellAddress(cells[0]!.area.row, cells[0]!.area.column))
})

test('the cells of rates have names of their own', () => {
  const cells = named.map((name) => rateEntry(name).cell)
  expect(new Set(cells).size).toBe(cells.length)
})
