import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { readXlsx, writeXlsx } from 'hucre/xlsx'
import { readArguments } from '../../src/file/planArguments'
import { textWidth } from '../../src/file/textRows'
import { cautions } from '../../src/sheets/cautions'
import { planDocuments } from '../../src/sheets/documentBook'
import { isRefusal } from '../../shared/refusal'
import { version } from '../../shared/version'
import { metricRows } from '../sheets/samplePlan'
import { commandRun } from './commandRun'

const folder = mkdtempSync(join(tmpdir(), 'limbwright-'))
afterAll(() => {
  rmSync(folder, { recursive: true })
})

const run = (...args: string[]) => commandRun(folder, '2026-03-02', args)

interface Printed {
  version: string
  date: string
  trees: {
    tree: string
    leader: string
    allowedRemoval: number
    liveCrownRatio: number | null
    visits: {
      visit: number
      year: number
      dose: number
      cuts: Record<string, unknown>[]
      objective: number
    }[]
    clearance: Record<string, unknown> | null
    outcomes: Record<string, unknown>[]
    scaffold: Record<string, unknown> | null
  }[]
  unplanned: { tree: string; row: number; reason: string }[]
  estimate: {
    currency: string
    lines: Record<string, unknown>[]
    subtotal: string
    tax: string
    total: string
    budgetFigures: { tree: string; price: string }[]
  }
  problems: Record<string, unknown>[]
}

async function printed(...args: string[]): Promise<Printed> {
  const { out } = await run('--json', ...args)
  return JSON.parse(out) as Printed
}

function file(name: string, content: string | Uint8Array): string {
  writeFileSync(join(folder, name), content)
  return name
}

const csv = (rows: unknown[][]) => rows.map((row) => row.map((cell) => cell ?? '').join(',')).join('\n')

describe('--json', () => {
  test('prints the sample inventory’s plan with exactly the agreed keys', async () => {
    const plan = await printed()
    expect(Object.keys(plan)).toEqual([
      'version',
      'date',
      'summary',
      'trees',
      'unplanned',
      'estimate',
      'columns',
      'problems'
    ])
    expect(plan.version).toBe(version)
    const tree = plan.trees[0]!
    expect(Object.keys(tree)).toEqual([
      'tree',
      'form',
      'leader',
      'allowedRemoval',
      'liveCrownRatio',
      'clearance',
      'visits',
      'outcomes',
      'scaffold'
    ])
    expect(Object.keys(tree.scaffold!)).toEqual([
      'lowestPermanentM',
      'lowestElsewhereM',
      'lowestFrom',
      'spacingM',
      'limbs',
      'withheld'
    ])
    expect(Object.keys(tree.visits[0]!)).toEqual(['visit', 'year', 'dose', 'cuts', 'objective'])
    expect(Object.keys(tree.visits[0]!.cuts[0]!)).toEqual([
      'limb',
      'kind',
      'obligation',
      'must',
      'share',
      'count',
      'cutDiameterMm',
      'heightM',
      'distanceM',
      'lateralMinMm',
      'dose',
      'aspectRatio',
      'projectedAspectRatio',
      'priority',
      'nextPriority',
      'reason'
    ])
    expect(Object.keys(tree.clearance!)).toEqual(['requiredM', 'reachedNowM', 'reachedYear', 'heldBy'])
    const outcomes = plan.trees.flatMap((each) => each.outcomes)
    expect(outcomes.length).toBeGreaterThan(0)
    for (const outcome of outcomes)
      expect(Object.keys(outcome)).toEqual(['limb', 'outcome', 'visit', 'year', 'heldBy', 'priority'])
    expect(Object.keys(plan.unplanned[0]!)).toEqual(['tree', 'row', 'reason'])
    expect(Object.keys(plan.estimate)).toEqual([
      ...['currency', 'offer', 'lines', 'subtotal', 'tax', 'total'],
      ...['forecast', 'waiting', 'budgetFigures']
    ])
    expect(Object.keys(plan.estimate.budgetFigures[0]!)).toEqual(['tree', 'price'])
    expect(Object.keys(plan.estimate.lines[0]!)).toEqual(['tree', 'visit', 'year', 'crewHours', 'price'])
    expect(Object.keys(plan.problems[0]!)).toEqual(['code', 'cell', 'count', 'message', 'remedy'])
  })

  test('money is text with the minor digits, and the total is the sum of what is printed', async () => {
    const { estimate } = await printed()
    const prices = estimate.lines.map(({ price }) => String(price))
    for (const text of [...prices, estimate.subtotal, estimate.tax, estimate.total])
      expect(text).toMatch(/^\d+\.\d\d$/)
    const cents = prices.reduce((sum, price) => sum + Math.round(Number(price) * 100), 0)
    expect(Math.round(Number(estimate.subtotal) * 100)).toBe(cents)
    expect(typeof estimate.lines[0]!.crewHours).toBe('number')
  })

  test('the lateral of a removal and what is not known are null', async () => {
    const { trees } = await printed()
    const cuts = trees.flatMap(({ visits }) => visits.flatMap((visit) => visit.cuts))
    const removals = cuts.filter(({ kind }) => kind === 'remove')
    expect(removals.length).toBeGreaterThan(0)
    for (const cut of removals) expect(cut.lateralMinMm).toBeNull()
    for (const cut of cuts.filter(({ kind }) => kind === 'reduce'))
      // What was cut before in the plan is measured then: neither its diameter nor its lateral is told.
      if (cut.cutDiameterMm === null) expect([cut.lateralMinMm, cut.heightM]).toEqual([null, null])
      else expect(cut.lateralMinMm).toBeGreaterThan(0)
  })

  test('rows are counted as the sheet counts them', async () => {
    const rows = [...metricRows(), metricRows()[2]!.map((cell, column) => (column === 0 ? null : cell))]
    const { unplanned } = await printed(file('orphan.csv', csv(rows)))
    expect(unplanned.map(({ tree, row }) => [tree, row])).toEqual([['', 4]])
  })

  test('trees stand in the inventory’s order', async () => {
    const { trees } = await printed()
    expect(trees.map(({ tree }) => tree)).toEqual(
      Array.from({ length: 15 }, (_none, index) => `T${String(index + 1).padStart(2, '0')}`)
    )
  })

  test('--date fixes the years; without it today is taken', async () => {
    const later = await printed('--date', '2031-07-01')
    expect(later.date).toBe('2031-07-01')
    expect(later.trees[0]!.visits[0]!.year).toBe(2031)
    expect((await printed()).date).toBe('2026-03-02')
  })

  test('the same file gives the same text twice', async () => {
    expect((await run('--json')).out).toBe((await run('--json')).out)
  })
})

describe('the table', () => {
  test('fits 100 characters and ends with the cautions', async () => {
    const { out, code } = await run()
    expect(code).toBe(0)
    const lines = out.split('\n')
    expect(lines.filter((line) => line.length > textWidth)).toEqual([])
    const end = out.slice(-1200).replace(/\s+/g, ' ')
    for (const caution of cautions) expect(end).toContain(caution)
    expect(out.trimEnd().endsWith('Never work alone aloft.')).toBe(true)
  })

  test('keeps its columns in line', async () => {
    const { out } = await run()
    const lines = out.split('\n')
    const header = lines.findIndex((line) => line.includes('priority') && line.includes('Limb'))
    const end = lines[header]!.indexOf('leaves') + 'leaves'.length
    const first = lines[header + 1] === '' ? lines[header + 2]! : lines[header + 1]!
    expect(first.slice(0, end)).toMatch(/\d %$/)
  })

  test('names each tree, limb and problem', async () => {
    const { out } = await run()
    for (const word of ['T03 ', 'Visit 1, 2026', 'Inventory!N57', 'ESTIMATE', 'Total'])
      expect(out).toContain(word)
  })
})

describe('a file of one’s own', () => {
  test('.csv in centimeters and meters', async () => {
    const { trees } = await printed(file('small.csv', csv(metricRows())))
    expect(trees).toHaveLength(1)
    expect(trees[0]).toMatchObject({ tree: 'M1', leader: 'A' })
    expect(trees[0]!.visits[0]!.cuts[0]).toMatchObject({ limb: 'B', kind: 'reduce' })
  })

  test('.xlsx gives the same plan as .csv but for the sheet’s name', async () => {
    const bytes = await writeXlsx({ sheets: [{ name: 'small', rows: metricRows() as never }] })
    const fromXlsx = await printed(file('small.xlsx', bytes))
    expect(fromXlsx).toEqual(await printed(file('small.csv', csv(metricRows()))))
  })

  test('--out writes a workbook with every document and prints the plan as well', async () => {
    const { code, out } = await run('--json', '--out', 'plan.xlsx')
    expect(code).toBe(0)
    expect(() => JSON.parse(out) as unknown).not.toThrow()
    const { sheets } = await readXlsx(readFileSync(join(folder, 'plan.xlsx')))
    expect(sheets.map(({ name }) => name)).toEqual([
      'Cut plan',
      'Estimate',
      'Estimate working',
      'Client report',
      'Work order',
      'Round sheet',
      'Specification',
      'Inventory',
      'Rules',
      'Rates',
      'Job details'
    ])
  })

  test('an earlier plan of ours is replaced', async () => {
    await run('--out', 'again.xlsx', '--documents', 'cut-plan', '--date', '2026-01-01')
    const { code } = await run('--out', 'again.xlsx', '--documents', 'cut-plan', '--date', '2027-01-01')
    expect(code).toBe(0)
    const { sheets } = await readXlsx(readFileSync(join(folder, 'again.xlsx')))
    const made = sheets[0]!.rows.find(([label]) => label === 'Made for')
    expect(made?.[1]).toEqual(new Date('2027-01-01T00:00:00Z'))
  })
})

describe('what cannot be used ends with 2 and one line', () => {
  async function refusal(...args: string[]): Promise<string> {
    const { code, out, failures } = await run(...args)
    expect(code).toBe(2)
    expect(out).toBe('')
    expect(failures).toHaveLength(1)
    expect(failures[0]).not.toContain('\n')
    return failures[0]!
  }

  test.each([
    [['--color'], /--color.*npm run -s plan/],
    [['a.csv', 'b.csv'], /One inventory at a time/],
    [['--date', '2026-02-30'], /not a day of the calendar/],
    [['--date', 'tomorrow'], /YYYY-MM-DD/],
    [['--date'], /--date.*argument missing/],
    [['--out', 'plan.pdf'], /does not end in \.xlsx/],
    [['--units', 'm'], /--units m is not known: write in-ft or cm-m/],
    [['--sheet', 'Trees'], /no sheet “Trees”; the file has “Inventory”/],
    [['--offer', 'all'], /--offer all is not known: write first, whole, or budget=/],
    [['--offer', 'budget=plenty'], /--offer budget=plenty: “plenty” is not an amount/],
    [['--offer', 'budget=€2,000'], /is in €, the estimate in USD/],
    [['--first-year', 'soon'], /--first-year soon is not known: write a year such as 2027/],
    [
      ['--first-year', '2025'],
      /--first-year 2025, which is over on the day of the plan: write 2026 or a later/
    ],
    [['--documents', 'cut-plan,invoice'], /--documents invoice is not known: write any of cut-plan/],
    [['--documents', 'rates'], /--documents rates is not known/],
    [['--paper', 'A3'], /--paper A3 is not known: write letter or A4/],
    [['--details', 'none.json'], /--details none\.json is not there/],
    [['--column', 'J'], /does not say what a column gives/],
    [['--column', 'AZ=tip'], /no sheet has a column AZ; “Inventory” ends with V/],
    [['none.xlsx'], /There is no file/],
    [['--out', 'no such folder/plan.xlsx'], /its folder does not exist/]
  ])('%j', async (args, sentence) => {
    expect(await refusal(...args)).toMatch(sentence)
  })

  test('a workbook of the user’s is never written over', async () => {
    const bytes = await writeXlsx({ sheets: [{ name: 'Budget', rows: [[1]] }] })
    const name = file('budget.xlsx', bytes)
    expect(await refusal('--out', name)).toMatch(/holds other sheets/)
    expect(new Uint8Array(readFileSync(join(folder, name)))).toEqual(bytes)
  })

  test('nor the inventory itself', async () => {
    const bytes = await writeXlsx({ sheets: [{ name: 'small', rows: metricRows() as never }] })
    const name = file('mine.xlsx', bytes)
    expect(await refusal(name, '--out', `./${name}`)).toMatch(/is the inventory itself/)
  })
})

describe('where no row could be planned it ends with 3', () => {
  test('and still prints the JSON with the reasons', async () => {
    const { code, out } = await run('--json', file('empty.csv', 'Tree,Limb,Limb dia (in)'))
    expect(code).toBe(3)
    const plan = JSON.parse(out) as Printed
    expect(plan.trees).toEqual([])
    expect(plan.problems.map((problem) => problem.code)).toContain('headers-only')
  })

  test('when every limb is unusable', async () => {
    const rows = metricRows(['B', null, 'thick', 14, 2, 8])
    rows[1] = rows[1]!.map((cell, column) => (column === 9 ? 'unknown' : cell))
    rows[1]![3] = null
    const { code } = await run('--json', file('bad.csv', csv(rows)))
    expect(code).toBe(3)
  })

  test('when no limb of any tree could be judged, though trees and leaders could; nothing is written', async () => {
    const rows = [
      ['Tree', 'Height (ft)', 'Crown base (ft)', 'Limb', 'Role', 'Limb dia (in)', 'Origin (ft)', 'Tip (ft)'],
      ['T1', 30, 6, 'A', 'leader', 5, 7, 30],
      ['T1', 30, 6, 'B', '', 'thick', 8, 24],
      ['T2', 33, 7, 'A', '', '?', 8, 31]
    ]
    const name = file('waiting.csv', csv(rows))
    const { code, out, failures } = await run('--json', name, '--out', 'waiting.xlsx')
    expect(code).toBe(3)
    expect((JSON.parse(out) as Printed).trees.map(({ tree }) => tree)).toEqual(['T1', 'T2'])
    expect(failures).toEqual([])
    expect((await run(name, '--out', 'waiting.xlsx')).out).toMatch(
      /\nNot written to .*waiting\.xlsx: nothing/
    )
    expect(existsSync(join(folder, 'waiting.xlsx'))).toBe(false)
  })

  test('but not for a list of trees without limbs', async () => {
    const rows = [
      ['Tree', 'Trunk dia (in)', 'Height (ft)', 'Crown base (ft)'],
      ['T1', 7, 30, 6]
    ]
    const { code } = await run('--json', file('list.csv', csv(rows)), '--out', 'list.xlsx')
    expect(code).toBe(0)
    expect(existsSync(join(folder, 'list.xlsx'))).toBe(true)
  })

  test('for a file without headers', async () => {
    const { code, out } = await run(file('letters.csv', 'a,b\nc,d'))
    expect(code).toBe(3)
    expect(out).toMatch(/was not recognized as headers/)
  })
})

test('arguments are taken apart', () => {
  expect(readArguments(['t.csv', '--json', '--out', 'p.xlsx', '--date', '2026-03-02'])).toEqual({
    inventory: 't.csv',
    out: 'p.xlsx',
    json: true,
    force: false,
    date: '2026-03-02',
    sheet: null,
    system: null,
    answers: [],
    details: null,
    offer: 'first',
    firstYear: null,
    documents: planDocuments,
    paper: null
  })
  expect(isRefusal(readArguments(['--json=yes']))).toBe(true)
})

describe('--details', () => {
  const given = (content: string) => {
    writeFileSync(join(folder, 'job.json'), content)
    return run('--details', 'job.json', '--json')
  }

  test.each([
    ['{"company": "A",}', /is no JSON/],
    ['[1]', /holds no object/],
    ['{"klient": "A"}', /unknown key “klient”: use company, address/],
    ['{"client": {"name": "A"}}', /gives “client” no single value: write a text of at most 200/],
    ['{"mail": "office"}', /gives “mail” as “office”, which is not a mail address/],
    ['{"firstYear": 20270}', /gives “firstYear” as “20270”, which is not a year/],
    ['{"firstYear": 2020}', /gives “firstYear” as 2020, which is over on the day of the plan/],
    ['{"date": "next week"}', /“date” as “next week”, which is not a day/],
    ['{"paper": "A3"}', /“paper” as “A3”, which is not letter or A4/]
  ])('%s is refused in one line', async (content, sentence) => {
    const { code, failures } = await given(content)
    expect([code, failures]).toEqual([2, [expect.stringMatching(sentence)]])
  })

  test('moves the years, and says where prices end before the first visit', async () => {
    const { out } = await given('{"firstYear": "2028", "validUntil": "2026-06-30", "client": ""}')
    const plan = JSON.parse(out) as Printed
    expect(plan.trees[0]!.visits[0]!.year).toBe(2028)
    expect(plan.estimate.lines.every(({ year }) => year === 2028)).toBe(true)
    expect(plan.problems.map(({ code }) => code)).toContain('detail-prices-early')
  })
})

describe('--offer', () => {
  test('whole offers every visit, a budget what fits; a dollar sign and a comma are understood', async () => {
    const first = await printed()
    const whole = await printed('--offer', 'whole')
    expect(whole.estimate.lines.length).toBeGreaterThan(first.estimate.lines.length)
    const budget = await printed('--offer', 'budget=$2,000')
    expect(Number(budget.estimate.total)).toBeLessThanOrEqual(2000)
    expect(budget.estimate.lines.length).toBeGreaterThan(0)
  })

  test('a budget below the cheapest visit says what that costs', async () => {
    const { out } = await run('--offer', 'budget=5')
    expect(out.replace(/\s+/g, ' ')).toMatch(
      /No visit fits a budget of 5\.00 USD: the cheapest one, to tree \w+, comes to/
    )
  })
})

test('--documents writes those named, in the order of their sheets', async () => {
  await run('--out', 'some.xlsx', '--documents', 'specification, cut-plan')
  const { sheets } = await readXlsx(readFileSync(join(folder, 'some.xlsx')))
  expect(sheets.slice(0, 3).map(({ name }) => name)).toEqual(['Cut plan', 'Specification', 'Inventory'])
})

test.each([[['--help', '--date', 'x']], [['-h', '--nothing-known']], [['--version', '--paper', 'silk']]])(
  'a question about the program is answered whatever stands beside it: %j',
  async (args) => {
    const ran = await run(...args)
    expect([ran.code, ran.failures]).toEqual([0, []])
  }
)

test.each([
  [['--out', 'a.xlsx', '--out', 'b.xlsx'], '--out was given twice, a.xlsx and b.xlsx: give it once.'],
  [['--date', '2027-01-02', '--date=2027-01-03'], '--date was given twice'],
  [[''], 'The name of the inventory is empty']
])('no argument is passed over: %j', async (args, sentence) => {
  const ran = await run(...args)
  expect(ran.code).toBe(2)
  expect(ran.failures.join()).toContain(sentence)
})

test('--version', async () => {
  expect((await run('--version')).out).toBe(version)
})

test('--help explains every argument and key', async () => {
  const { out } = await run('--help')
  for (const word of [
    '--first-year',
    '--details',
    '--offer',
    '--documents',
    '--units',
    '--paper',
    '--version'
  ])
    expect(out).toContain(`  ${word}`)
  for (const word of ['credentialNumber', 'validUntil', 'work-order']) expect(out).toContain(`    ${word}`)
})

test('--help says how it is called', async () => {
  const { code, out } = await run('--help')
  expect(code).toBe(0)
  expect(out).toContain('[--date YYYY-MM-DD]')
})
