import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { readXlsx } from 'hucre/xlsx'
import { rateBook } from '../../src/price/rateBook'
import { describeStartRates } from '../../src/sheets/rates/ratesSheet'
import { runCommandLine } from '../../src/file/commandLine'
import type { Cell } from '../../shared/cells'
import { workbookWith } from './commandRun'

const folder = mkdtempSync(join(tmpdir(), 'limbwright-'))
afterAll(() => {
  rmSync(folder, { recursive: true })
})

const rateRows = describeStartRates('in-ft').rows
const rowOf = (name: string) => rateRows.findIndex((cells) => cells[0] === name) + 1

/** A workbook of the invented sample and a sheet of rates with these values typed in, found by its hidden name. */
const workbook = (typed: Record<string, Cell>): Promise<string> =>
  workbookWith(folder, { sheet: 'Prices', hiddenName: 'Limbwright_rates', rows: rateRows }, typed)

async function run(...args: string[]) {
  const out: string[] = []
  const code = await runCommandLine(args, {
    out: (text) => out.push(text),
    fail: (sentence) => out.push(sentence),
    today: '2030-05-02',
    folder
  })
  return { code, out: out.join('\n') }
}

interface Printed {
  estimate: { currency: string; lines: { price: string }[]; subtotal: string; tax: string; total: string }
  problems: { code: string; cell: string; remedy: string }[]
}

const printed = async (path: string) => JSON.parse((await run(path, '--json')).out) as Printed

test('the estimate of a workbook goes by its sheet of rates', async () => {
  const untouched = await printed(await workbook({}))
  const unpriced = JSON.parse((await run('--json')).out) as Printed
  const own = { [rateBook.wage.name]: 56, [rateBook.taxRate.name]: '8.25 %', [rateBook.currency.name]: 'CAD' }
  const { estimate } = await printed(await workbook(own))
  expect(estimate.currency).toBe('CAD')
  expect(Number(estimate.subtotal)).toBeGreaterThan(Number(untouched.estimate.subtotal))
  const cents = estimate.lines.reduce((sum, { price }) => sum + Math.round(Number(price) * 100), 0)
  expect(Math.round(Number(estimate.subtotal) * 100)).toBe(cents)
  expect(Number(estimate.tax)).toBeCloseTo(Number(estimate.subtotal) * 0.0825, 1)
  expect(untouched.estimate.total).toBe(unpriced.estimate.total)
})

test('a rate that cannot be used is a problem with its cell and a remedy, and the others hold', async () => {
  const name = rateBook.wage.name
  const path = await workbook({ [name]: 'a lot', [rateBook.mobilization.name]: 500 })
  const { estimate, problems } = await printed(path)
  expect(problems).toContainEqual(
    expect.objectContaining({ code: 'rate-not-a-number', cell: `Prices!B${String(rowOf(name))}` })
  )
  const alone = await printed(await workbook({ [rateBook.mobilization.name]: 500 }))
  expect(estimate).toEqual(alone.estimate)
  expect((await run(await workbook({ [name]: 'a lot' }))).out).toContain('reads “a lot”')
})

test('the written Estimate holds the rates that were used', async () => {
  const path = await workbook({ [rateBook.wage.name]: 56 })
  await run(path, '--out', 'plan.xlsx')
  const { sheets } = await readXlsx(readFileSync(join(folder, 'plan.xlsx')))
  const row = sheets
    .find(({ name }) => name === 'Estimate')!
    .rows.find((cells) => cells.includes(rateBook.wage.name))!
  expect(row.slice(9, 12)).toEqual([56, 'USD, an hour', 56])
  expect(row.at(12)).not.toBe('invented')
})

test('the written Estimate says which rates could not be used, with the cell and what to do', async () => {
  const path = await workbook({ [rateBook.wage.name]: 'a lot' })
  await run(path, '--out', 'refused.xlsx')
  const { sheets } = await readXlsx(readFileSync(join(folder, 'refused.xlsx')))
  const rows = sheets.find(({ name }) => name === 'Estimate')!.rows
  const said = rows.map(([first]) => String(first ?? '')).join(' ')
  expect(said.match(/reads “a lot”/g)).toHaveLength(1)
  expect(said).toContain(`Prices!B${String(rowOf(rateBook.wage.name))}`)
})
