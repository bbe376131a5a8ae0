/** What a document tells of the numbers that it was made from, as its formula says it. */
import type { Cell } from '../../shared/cells'
import { ageFormula, ageOfBasis, noSources, type Sources } from '../../src/sheets/basisStands'
import { describeDocuments } from '../../src/sheets/describeDocuments'
import { isFormula } from '../../src/sheets/sheet'
import { sampleInventory } from '../../src/file/sampleInventory'
import { readInventory } from '../../src/inventory/readInventory'
import { planInventory } from '../../src/plan/planInventory'
import { estimatePlan } from '../../src/price/estimatePlan'
import { firstVisit } from '../../src/price/offers'

function basis(rows: readonly (readonly Cell[])[], name = 'Trees', top = 0) {
  const sheet = { name, rows: rows.map((row) => [...row]), top, left: 0 }
  const inventory = readInventory({ ...sheet, sheet: name })
  return { inventory, sources: { sheets: [sheet], rules: null } }
}

/** The columns, count and sum that a condition names. */
function named(condition: string) {
  const count = Number(/=(\d+),ABS/.exec(condition)![1])
  const sum = Number(/-\((-?[\d.e+-]+)\)\)</.exec(condition)![1])
  const columns = [...condition.split('ABS')[0]!.matchAll(/!\$([A-Z]+)\$(\d+):\$[A-Z]+\$(\d+)/g)]
  return {
    count,
    sum,
    columns: columns.map(([, column]) => column),
    rows: columns.map(([, , a, b]) => [Number(a), Number(b)])
  }
}

test('the numbers of the columns that were used are counted and added', () => {
  const { inventory, sources } = basis(sampleInventory)
  const [[stands, older] = ['', ''], ...rest] = ageOfBasis(inventory, sources)
  expect(rest).toEqual([])
  expect(older).toContain('Measurements changed since')
  const { count, sum, columns, rows } = named(stands)
  const at = columns.map((letters) => letters!.charCodeAt(0) - 65)
  const numbers = sampleInventory
    .slice(1)
    .flatMap((row) => at.map((column) => row[column]).filter((cell) => typeof cell === 'number'))
  expect(count).toBe(numbers.length)
  expect(sum).toBeCloseTo(
    numbers.reduce((all, each) => all + each, 0),
    6
  )
  expect(new Set(rows.map(String))).toEqual(new Set([`2,${String(sampleInventory.length)}`]))
  expect(columns.length).toBeGreaterThan(5)
})

test('a column that a formula sees otherwise than it was read is left out', () => {
  const trunk = sampleInventory[0]!.findIndex((header) => String(header).startsWith('Trunk'))
  for (const odd of ['5 %', '#N/A', '2026-03-01']) {
    const rows = sampleInventory.map((row, at) =>
      row.map((cell, column): Cell => (at === 1 && column === trunk ? odd : cell))
    )
    const { inventory, sources } = basis(rows)
    expect([
      odd,
      named(ageOfBasis(inventory, sources)[0]![0]).columns.includes(String.fromCharCode(65 + trunk))
    ]).toEqual([odd, false])
  }
})

test('a sheet may be called anything, and may be gone', () => {
  const { inventory, sources } = basis(sampleInventory, `It's "x",1)+HYPERLINK("y`)
  const [[stands] = ['']] = ageOfBasis(inventory, sources)
  // Within the text of each reference both kinds of quotes are doubled, so that none ends it.
  const outside = stands.replace(/"(?:[^"]|"")*"/g, '')
  expect(outside).not.toMatch(/HYPERLINK|!/)
  expect(stands).toMatch(/^IFERROR\(.*,TRUE\)$/)
})

test('a changed rule is told where the Rules sheet was read', () => {
  const { inventory, sources } = basis(sampleInventory)
  const rules = {
    sheet: 'Rules',
    rows: [
      ['Rule', 'Value'],
      ['One', 4],
      ['Two', 0.25]
    ],
    top: 0,
    left: 0
  }
  const age = ageOfBasis(inventory, { ...sources, rules })
  expect(age).toHaveLength(2)
  expect(named(age[1]![0])).toMatchObject({ count: 2, sum: 4.25, columns: ['B'] })
  expect(ageFormula(age, 'as it was')).toMatch(
    /^=IF\(IFERROR.*,IF\(IFERROR.*,"as it was","Rules changed.*"\),"Measurements.*"\)$/
  )
})

test('report and work order tell it, with the Estimate and without, and nothing where nothing can be told', () => {
  const { inventory, sources } = basis(sampleInventory)
  const plan = planInventory(inventory, { date: '2026-03-02' })
  const offer = firstVisit(estimatePlan(plan))
  const formulas = (kinds: Parameters<typeof describeDocuments>[0], from: Sources = sources) =>
    describeDocuments(kinds, plan, offer, undefined, undefined, from)
      .filter(({ kind }) => kind === 'client-report' || kind === 'work-order')
      .flatMap(({ rows }) => rows.flat().filter(isFormula))
  for (const kinds of [
    ['client-report', 'work-order'],
    ['client-report', 'work-order', 'estimate']
  ] as const) {
    const found = formulas(kinds)
    expect(found).toHaveLength(2)
    for (const { formula, value } of found) {
      expect(formula).toContain('Measurements changed since')
      expect(formula.includes('Offer_total')).toBe(kinds.length === 3)
      expect(formula).toContain(`"${String(value)}"`)
    }
  }
  expect(formulas(['client-report', 'work-order'], noSources)).toEqual([])
})
