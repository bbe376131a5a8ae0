/** The user's own Rules sheet, written and read through the real Office library. */
import { readRules } from '../../src/plan/rules/readRules'
import { rateBook } from '../../src/price/rateBook'
import { readRates } from '../../src/price/readRates'
import { describeStartRates } from '../../src/sheets/rates/ratesSheet'
import { describeRules } from '../../src/sheets/rules/rulesSheet'
import { applySheets } from '../../src/excel/applySheets'
import { isProblem } from '../../src/excel/failures'
import { findOwnSheets } from '../../src/excel/ownSheetsInBook'
import { readUsersSheet, writeUsersSheet } from '../../src/excel/usersSheet'
import type { CellBlock } from '../../shared/cells'
import { ruleBook } from '../../shared/rules'
import { startWith, type InventoryBook } from './inventorySheet'

let office: InventoryBook

beforeAll(async () => {
  office = await startWith()
})

afterEach(() => {
  for (const { id, name } of office.book.sheets()) if (name !== 'Trees') office.book.deleteSheet(id)
  for (const { name } of office.book.names()) office.book.deleteName(name)
})

async function found(): Promise<CellBlock | null> {
  const sheet = await readUsersSheet('rules')
  if (isProblem(sheet)) throw new Error(sheet.message)
  return sheet
}

const idOf = (name: string) => office.book.sheets().find((sheet) => sheet.name === name)!.id

test('a workbook without one has none', async () => {
  expect(await found()).toBeNull()
})

test('is found again by its hidden name, and says what was written', async () => {
  expect(await writeUsersSheet(describeRules())).toBe('Rules')
  expect(office.book.names()).toContainEqual({
    name: 'Limbwright_rules',
    formula: '=Rules!$A$1',
    visible: false
  })
  const sheet = await found()
  expect(sheet!.rows).toHaveLength(describeRules().rows.length)
  expect(readRules(sheet!).problems).toEqual([])
})

test('a value typed into it is read, with its address', async () => {
  await writeUsersSheet(describeRules())
  const row = describeRules().rows.findIndex((cells) => cells[0] === ruleBook.cutsPerVisit.name)
  office.book.setValues(idOf('Rules'), { row, column: 1, rows: 1, columns: 1 }, [[4]])
  expect(readRules((await found())!).rules.cutsPerVisit).toBe(4)
  office.book.setValues(idOf('Rules'), { row, column: 1, rows: 1, columns: 1 }, [['many']])
  expect(readRules((await found())!).problems.map(({ cell }) => cell)).toEqual([`Rules!B${String(row + 1)}`])
})

test('a date that stands where a rate belongs is reported as a date, and is no amount', async () => {
  await writeUsersSheet(describeStartRates('in-ft'))
  const row = describeStartRates('in-ft').rows.findIndex(
    (cells) => cells[0] === rateBook.disposalPerWeight.name
  )
  const area = { row, column: 1, rows: 1, columns: 1 }
  office.book.setValues(idOf('Rates'), area, [[46083]])
  office.book.setNumberFormats(idOf('Rates'), area, [['m/d/yyyy']])
  const sheet = await readUsersSheet('rates')
  if (sheet === null || isProblem(sheet)) throw new Error('No sheet of rates was found')
  const said = readRates(sheet).problems.find(({ cell }) => cell === `Rates!B${String(row + 1)}`)
  expect(said?.code).toBe('rate-date')
  expect(said?.message).toContain('2026-03-02')
})

test('is never replaced: not by a second one, not by writing with replacing, and it is offered for neither', async () => {
  await writeUsersSheet(describeRules())
  office.book.setValues(idOf('Rules'), { row: 0, column: 0, rows: 1, columns: 1 }, [['our rules']])
  const again = await writeUsersSheet(describeRules())
  expect(isProblem(again) && [again.code, again.message]).toEqual([
    'users-sheet-exists',
    'There is already a sheet Rules in this workbook; it is yours and is not replaced.'
  ])
  await applySheets([describeRules()], { replace: true })
  expect(office.book.values(idOf('Rules'), { row: 0, column: 0, rows: 1, columns: 1 })).toEqual([
    ['our rules']
  ])
  expect(await findOwnSheets()).toEqual([])
})

test('is still found once rows stand above its title', async () => {
  await writeUsersSheet(describeRules())
  office.book.deleteName('Limbwright_rules')
  office.book.addName({ name: 'Limbwright_rules', formula: "='Rules'!$A$4", visible: false } as never)
  expect(await found()).not.toBeNull()
})

test('a Rates sheet is written, found and read in the same way', async () => {
  expect(await readUsersSheet('rates')).toBeNull()
  expect(await writeUsersSheet(describeStartRates('in-ft'))).toBe('Rates')
  const row = describeStartRates('in-ft').rows.findIndex((cells) => cells[0] === rateBook.wage.name)
  office.book.setValues(idOf('Rates'), { row, column: 1, rows: 1, columns: 1 }, [[41.35]])
  const sheet = await readUsersSheet('rates')
  if (sheet === null || isProblem(sheet)) throw new Error('There is no Rates sheet.')
  const { rates, problems } = readRates(sheet)
  expect([rates.wage, problems]).toEqual(['41.35', []])
  expect(rates.invented).not.toContain('wage')
  const again = await writeUsersSheet(describeStartRates('in-ft'))
  expect(isProblem(again) && again.code).toBe('users-sheet-exists')
  expect(await findOwnSheets()).toEqual([])
})
