import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { writeXlsx } from 'hucre/xlsx'
import { describeRules } from '../../src/sheets/rules/rulesSheet'
import type { Cell } from '../../shared/cells'
import { ruleBook } from '../../shared/rules'
import { commandRun, workbookWith } from './commandRun'

const folder = mkdtempSync(join(tmpdir(), 'limbwright-'))
afterAll(() => {
  rmSync(folder, { recursive: true })
})

/** A workbook of the invented sample and a sheet of rules with these values typed in, found by its hidden name. */
const workbook = (typed: Record<string, Cell>): Promise<string> =>
  workbookWith(folder, { sheet: 'House', hiddenName: 'Limbwright_rules', rows: describeRules().rows }, typed)

const run = (...args: string[]) => commandRun(folder, '2030-05-02', args)

interface Printed {
  trees: { tree: string; allowedRemoval: number }[]
  problems: { code: string; cell: string }[]
}

test('the plan of a workbook goes by its sheet of rules, and says so', async () => {
  const path = await workbook({ [ruleBook.allowedYoung.name]: 0.15 })
  const { out } = await run(path, '--json')
  const printed = JSON.parse(out) as Printed
  expect(printed.trees.find(({ tree }) => tree === 'T01')?.allowedRemoval).toBeCloseTo(0.15, 12)
  expect((await run(path)).out).toContain(
    `Rule changed: ${ruleBook.allowedYoung.name}, 0.25 to 0.15 (share).`
  )
})

test('a rule that cannot be used is a problem with its cell, and the default is used', async () => {
  const path = await workbook({ [ruleBook.allowedYoung.name]: 0.4 })
  const printed = JSON.parse((await run(path, '--json')).out) as Printed
  const row = describeRules().rows.findIndex((cells) => cells[0] === ruleBook.allowedYoung.name) + 1
  expect(printed.problems).toContainEqual(
    expect.objectContaining({ code: 'rule-reason', cell: `House!B${String(row)}` })
  )
  expect(printed.trees.find(({ tree }) => tree === 'T01')?.allowedRemoval).toBe(0.25)
})

test('a closed window is a line of its own before the trees, once', async () => {
  const path = await workbook({ 'Region of the trees': 'Minnesota' })
  const { out } = await run(path)
  const text = out.replace(/\s+/g, ' ')
  expect(text.split('closed from 1 April to 31 July').length - 1).toBe(1)
  expect(text.indexOf('Closed window: ')).toBeLessThan(text.indexOf('Visit 1, 2030'))
  const outside = await run(path, '--date', '2030-12-01')
  expect(outside.out).not.toContain('Closed window')
})

test('without one, a single problem asks for the region', async () => {
  const { problems } = JSON.parse((await run('--json')).out) as Printed
  expect(problems.filter(({ code }) => code === 'region-unknown')).toHaveLength(1)
})

test('a workbook with a sheet of rules is never written over', async () => {
  const path = await workbook({})
  writeFileSync(
    path,
    await writeXlsx({
      sheets: [{ name: 'House', rows: [['Rules']] }],
      namedRanges: [{ name: 'Limbwright_rules', range: "'House'!$A$1" }]
    })
  )
  const before = readFileSync(path)
  const { code, failures } = await run('--out', path)
  expect(code).toBe(2)
  expect(failures[0]).toContain('holds other sheets')
  expect(readFileSync(path).equals(before)).toBe(true)
})
