/** The Job details sheet, read back as a person leaves it. */
import type { Cell, CellBlock } from '../../shared/cells'
import { detailEntry, detailNames, noDetails } from '../../src/details/detailsBook'
import { detailsFor } from '../../src/details/detailsFor'
import { readDetails } from '../../src/details/readDetails'
import { detailsOfDay, settleDetails } from '../../src/details/settleDetails'
import { describeDetails } from '../../src/sheets/details/detailsSheet'

const fresh = describeDetails('in-ft')

/** The sheet with values typed into it. */
function sheetWith(values: Record<string, Cell>, sheet = 'Job details'): CellBlock {
  const rows = fresh.rows.map((row) => {
    const cells = row.map((content): Cell => (typeof content === 'object' ? null : content))
    if (String(cells[0]) in values) cells[1] = values[String(cells[0])] ?? null
    return cells
  })
  return { rows, sheet, top: 0, left: 0 }
}

const cellOf = (name: string) =>
  `'Job details'!B${String(fresh.rows.findIndex(([cell]) => cell === name) + 1)}`

test('says nothing as it is first written', () => {
  expect(readDetails(sheetWith({}))).toEqual({
    details: noDetails,
    logoFile: '',
    cells: new Map(),
    problems: []
  })
})

test('every detail is read by its name', () => {
  const value = {
    day: '2027-03-31',
    year: 2027,
    paper: 'A4',
    mail: 'a@b.example',
    text: 'x',
    long: 'x',
    picture: 'x'
  }
  const typed = detailNames.map((name) => [detailEntry(name).name, value[detailEntry(name).kind]] as const)
  const { details, logoFile, problems } = readDetails(sheetWith(Object.fromEntries(typed)))
  expect(problems).toEqual([])
  // The logo is a picture: its name is kept apart.
  expect([details.logo, logoFile]).toEqual([null, 'x'])
  for (const name of detailNames.filter((each) => each !== 'logo')) {
    const wanted = detailEntry(name).kind === 'paper' ? 'a4' : value[detailEntry(name).kind]
    expect([name, details[name]]).toEqual([name, wanted])
  }
})

test.each<[string, Cell, unknown]>([
  ['Phone', 5550100, '5550100'],
  ['Client', '  Quarry\n trust ', 'Quarry trust'],
  ['Date', 46112, '2026-03-31'],
  ['Date', '31 Mar 2026', '2026-03-31'],
  ['First work year', '2027', 2027],
  ['Paper', ' Letter ', 'letter'],
  ['Paper', 'a 4', 'a4']
])('%s %p is %p', (name, typed, wanted) => {
  const key = detailNames.find((each) => detailEntry(each).name === name)!
  const { details, problems } = readDetails(sheetWith({ [name]: typed }))
  expect([details[key], problems]).toEqual([wanted, []])
})

test.each<[string, Cell, RegExp]>([
  ['Mail', 'office at example', /Type a mail address/],
  ['Date', '3/31/2026', /Type a day such as 2026-03-31/],
  ['Date', '2026-02-30', /Type a day/],
  ['First work year', 27, /Type a year such as 2027/],
  ['First work year', 2027.5, /Type a year/],
  ['Paper', 'A3', /Type letter or A4/],
  ['Client', '#N/A', /Type a text/],
  ['Site', 'x'.repeat(201), /at most 200/]
])('%s %p is told with its cell and a remedy, and is blank', (name, typed, remedy) => {
  const { details, problems } = readDetails(sheetWith({ [name]: typed }))
  expect(details).toEqual(noDetails)
  expect(problems).toHaveLength(1)
  expect(problems[0]).toMatchObject({ code: 'detail-unusable', cell: cellOf(name) })
  expect(problems[0]!.remedy).toMatch(remedy)
})

test('rows that are gone are blank; doubles, strangers and missing headers are told', () => {
  const block = sheetWith({ Client: 'A' })
  const rows = [
    ...block.rows.filter(([name]) => name !== 'Site'),
    ['client', 'B'],
    ['Favorite color', 'green']
  ]
  const { details, problems } = readDetails({ ...block, rows })
  expect([details.client, details.site]).toEqual(['A', ''])
  expect(problems.map(({ code }) => code)).toEqual(['detail-twice', 'detail-unknown'])
  const bare = readDetails({ ...block, rows: [['Client', 'A']] })
  expect(bare.problems.map(({ code }) => code)).toEqual(['no-details'])
})

test('what does not go with the day of the plan is told', () => {
  const codes = (values: Partial<typeof noDetails>) =>
    settleDetails({ ...noDetails, ...values }, '2026-11-27').problems.map(({ code }) => code)
  expect(codes({ firstYear: 2025 })).toEqual(['detail-year-past'])
  expect(settleDetails({ ...noDetails, firstYear: 2025 }, '2026-11-27').details.firstYear).toBeNull()
  expect(codes({ validUntil: '2026-11-26' })).toEqual(['detail-prices-over'])
  expect(codes({ validUntil: '2026-12-31', firstYear: 2027 })).toEqual(['detail-prices-early'])
  expect(codes({ validUntil: '2026-12-31' })).toEqual([])
  const cell = cellOf('Prices hold until')
  const told = detailsOfDay(sheetWith({ 'Prices hold until': '2020-01-01' }), '2026-11-27').problems
  expect(told.map((each) => each.cell)).toEqual([cell])
})

describe('several inventories in one workbook', () => {
  const of = (inventory: string | null, sheet: string, writtenFor: string | null = null) => ({
    block: sheetWith({ 'Inventory sheet': inventory }, sheet),
    of: writtenFor
  })
  const sheets = ['North', 'South', 'D1', 'D2']
  const chosen = (written: ReturnType<typeof of>[], inventory: string) => {
    const { block, problems } = detailsFor(written, [inventory], sheets)
    return [block?.sheet ?? null, problems.map(({ code }) => code)]
  }

  test('each has the details that name its sheet; details without a name are for the others', () => {
    const written = [of('South', 'D1'), of('north', 'D2')]
    expect(chosen(written, 'North')).toEqual(['D2', []])
    expect(chosen(written, 'South')).toEqual(['D1', []])
    expect(chosen([of(null, 'D1'), of('North', 'D2')], 'North')).toEqual(['D2', []])
    expect(chosen([of(null, 'D1'), of('North', 'D2')], 'South')).toEqual(['D1', []])
    expect(chosen([of('North', 'D1')], 'South')).toEqual([null, []])
  })

  test('are found by the sheet they were written for once that is renamed', () => {
    expect(chosen([of('Old name', 'D1', 'North')], 'North')).toEqual(['D1', []])
  })

  test('a name that leads nowhere, and two for one inventory, are told', () => {
    expect(chosen([of('East', 'D1')], 'North')).toEqual([null, ['details-nowhere']])
    expect(chosen([of('North', 'D1'), of('North', 'D2')], 'North')).toEqual(['D1', ['details-several']])
  })
})
