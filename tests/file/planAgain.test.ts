/** A workbook that --out wrote holds all it was planned from: planned again, it gives the same. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import JSZip from 'jszip'
import { readXlsx, writeXlsx } from 'hucre/xlsx'
import { rateBook } from '../../src/price/rateBook'
import { ruleBook } from '../../shared/rules'
import { sampleInventory } from '../../src/file/sampleInventory'
import { describeDetails } from '../../src/sheets/details/detailsSheet'
import { describeStartRates } from '../../src/sheets/rates/ratesSheet'
import { describeRules } from '../../src/sheets/rules/rulesSheet'
import type { SheetDescription } from '../../src/sheets/sheet'
import type { Cell } from '../../shared/cells'
import { metricRows } from '../sheets/samplePlan'
import { commandRun } from './commandRun'

const folder = mkdtempSync(join(tmpdir(), 'limbwright-again-'))
afterAll(() => {
  rmSync(folder, { recursive: true })
})

const run = (...args: string[]) => commandRun(folder, '2026-03-02', args)

/** What is printed of a file, and what is printed of the workbook that was written from it. */
async function twice(...args: string[]): Promise<[unknown, unknown]> {
  const first = await run('--json', '--force', '--documents', 'cut-plan', '--out', 'written.xlsx', ...args)
  expect(first.failures).toEqual([])
  const kept = args.flatMap((arg, at) => (args[at - 1] === '--offer' || arg === '--offer' ? [arg] : []))
  const again = await run('--json', 'written.xlsx', ...kept)
  expect(again.failures).toEqual([])
  return [JSON.parse(first.out), JSON.parse(again.out)]
}

function csv(name: string, rows: readonly (readonly unknown[])[]): string {
  writeFileSync(join(folder, name), rows.map((row) => row.map((cell) => cell ?? '').join(',')).join('\n'))
  return name
}

/** The rows of a sheet of the user's with values typed into its second column. */
function typed({ rows }: SheetDescription, values: Record<string, Cell>): Cell[][] {
  return rows.map((row) => {
    const cells = row.map((content): Cell => (typeof content === 'object' ? null : content))
    if (String(cells[0]) in values) cells[1] = values[String(cells[0])] ?? null
    return cells
  })
}

async function workbook(name: string, ...own: [string, string, Cell[][]][]): Promise<string> {
  const sheets = [
    { name: 'Inventory', rows: sampleInventory as never },
    ...own.map(([sheet, , rows]) => ({ name: sheet, rows: rows as never }))
  ]
  const namedRanges = own.map(([sheet, mark]) => ({ name: mark, range: `'${sheet}'!$A$1` }))
  writeFileSync(join(folder, name), await writeXlsx({ sheets, namedRanges }))
  return name
}

test('the sample', async () => {
  const [first, again] = await twice()
  expect(again).toEqual(first)
})

test('its sheets: the documents, the inventory, and those that are the user’s', async () => {
  await run('--force', '--documents', 'cut-plan', '--out', 'sheets.xlsx')
  const { sheets } = await readXlsx(readFileSync(join(folder, 'sheets.xlsx')))
  expect(sheets.map(({ name }) => name).slice(-4)).toEqual(['Inventory', 'Rules', 'Rates', 'Job details'])
  expect(sheets.find(({ name }) => name === 'Inventory')!.rows[1]).toEqual(
    expect.arrayContaining(sampleInventory[1]!.filter((cell) => cell !== null))
  )
})

test('a table with columns that were answered, other units, and a name that no sheet can have', async () => {
  const name = csv('a [very] long name of a survey in the north of the park.csv', metricRows())
  const [first, again] = await twice(name, '--units', 'cm-m', '--column', 'J=limb diameter (cm)')
  const sheets = (printed: unknown) =>
    JSON.stringify(printed).replaceAll(/a ?\[?very\]?[^"!]*?(north of the park|survey)/g, '')
  expect(sheets(again).replaceAll(/[^"]*!([A-Z]+\d+)/g, '$1').length).toBeGreaterThan(500)
  const bare = ({ trees, estimate, unplanned }: Record<string, unknown>) => ({ trees, estimate, unplanned })
  expect(bare(again as never)).toEqual(bare(first as never))
})

test('rules, rates and details that were changed, wrong values among them', async () => {
  const name = await workbook(
    'own.xlsx',
    ['Rules', 'Limbwright_rules', typed(describeRules('in-ft'), { [ruleBook.cutsPerVisit.name]: 3 })],
    [
      'Our rates',
      'Limbwright_rates',
      typed(describeStartRates('in-ft'), {
        [rateBook.wage.name]: 41.35,
        [rateBook.setUpOpen?.name ?? '']: 'x'
      })
    ],
    [
      'Job',
      'Limbwright_job_details',
      typed(describeDetails('in-ft'), {
        Client: 'Quarry trust (invented)',
        'First work year': 2028,
        Mail: 'nobody',
        Paper: 'A4'
      })
    ]
  )
  const [first, again] = await twice(name)
  const plain = (printed: unknown) =>
    JSON.stringify(printed).replaceAll('Our rates', 'Rates').replaceAll("'Rates'", 'Rates')
  expect(plain(again).replaceAll("'Job details'", 'Job')).toBe(plain(first))
  const { trees, problems } = first as {
    trees: { visits: { year: number }[] }[]
    problems: { code: string; cell: string }[]
  }
  expect(trees[0]!.visits[0]!.year).toBe(2028)
  expect(problems.filter(({ code }) => code === 'detail-unusable').map(({ cell }) => cell)).toEqual([
    expect.stringMatching(/^Job!B\d+$/)
  ])
})

test('details and a first year that were given are on its sheet', async () => {
  writeFileSync(join(folder, 'job.json'), JSON.stringify({ client: 'Quarry trust (invented)', reference: 7 }))
  const given = ['--details', 'job.json', '--first-year', '2027', '--paper', 'a4', '--offer', 'whole']
  const [first, again] = await twice(...given)
  expect(again).toEqual(first)
  expect((first as { trees: { visits: { year: number }[] }[] }).trees[0]!.visits[0]!.year).toBe(2027)
})

test('is replaced as long as nobody touched it, and kept once somebody did', async () => {
  const write = (...args: string[]) => run('--out', 'sealed.xlsx', '--documents', 'cut-plan', ...args)
  expect((await write()).code).toBe(0)
  expect((await write('--date', '2027-01-01')).code).toBe(0)
  const path = join(folder, 'sealed.xlsx')
  const zip = await JSZip.loadAsync(readFileSync(path))
  writeFileSync(path, await zip.generateAsync({ type: 'nodebuffer' }))
  const { code, failures } = await write()
  expect([code, failures]).toEqual([2, [expect.stringContaining('perhaps with changes of yours')]])
})

test('the file says what it is, whose it is and what made it, as programs show it', async () => {
  const details = {
    company: 'Invented & Daughters',
    preparedBy: 'A. Person',
    site: 'North \u0001Campus',
    reference: '7'
  }
  writeFileSync(join(folder, 'details.json'), JSON.stringify(details))
  await run('--details', 'details.json', '--documents', 'cut-plan', '--force', '--out', 'named.xlsx')
  const file = readFileSync(join(folder, 'named.xlsx'))
  const { properties } = await readXlsx(file)
  expect(properties).toMatchObject({
    title: 'Structural pruning plan: North Campus, 7',
    creator: 'A. Person',
    company: 'Invented & Daughters'
  })
  const zip = await JSZip.loadAsync(file)
  expect(await zip.file('docProps/app.xml')?.async('string')).toContain('<Application>Limbwright<')
})
