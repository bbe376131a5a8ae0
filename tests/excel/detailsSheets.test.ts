/** Details and documents of several inventories in one workbook, through the real Office library. */
import { applySheets } from '../../src/excel/applySheets'
import { isProblem } from '../../src/excel/failures'
import { findOwnSheets } from '../../src/excel/ownSheetsInBook'
import { readDetailsSheet, writeDetailsSheet } from '../../src/excel/usersSheet'
import { readDetails } from '../../src/details/readDetails'
import { firstVisit } from '../../src/price/offers'
import { estimatePlan } from '../../src/price/estimatePlan'
import { describeDocuments } from '../../src/sheets/describeDocuments'
import { describeDetails } from '../../src/sheets/details/detailsSheet'
import { samplePlan } from '../sheets/samplePlan'
import { startWith, type InventoryBook } from './inventorySheet'

let office: InventoryBook

beforeAll(async () => {
  office = await startWith()
  office.book.addSheet('South field')
})

const idOf = (name: string) => office.book.sheets().find((sheet) => sheet.name === name)!.id

async function detailsOf(inventory: string) {
  const found = await readDetailsSheet([inventory])
  if (isProblem(found)) throw new Error(found.message)
  return found
}

function type(sheet: string, what: string, value: string): void {
  const row = describeDetails('in-ft').rows.findIndex(([cell]) => cell === what)
  office.book.setValues(idOf(sheet), { row, column: 1, rows: 1, columns: 1 }, [[value]])
}

const write = (inventory: string) => writeDetailsSheet(describeDetails('in-ft', { inventory }), [inventory])

test('each inventory has its own details, found again when its sheet is renamed, and never replaced', async () => {
  expect((await detailsOf('Trees')).block).toBeNull()
  expect(await write('Trees')).toBe('Job details')
  expect(await write('South field')).toBe('Job details (2)')
  const again = await write('Trees')
  expect(isProblem(again) && again.code).toBe('users-sheet-exists')
  type('Job details', 'Client', 'North trust (invented)')
  type('Job details (2)', 'Client', 'South trust (invented)')
  type('Job details (2)', 'Reference number', '0042')
  const client = async (sheet: string) => readDetails((await detailsOf(sheet)).block!).details.client
  expect([await client('Trees'), await client('South field')]).toEqual([
    'North trust (invented)',
    'South trust (invented)'
  ])
  expect(readDetails((await detailsOf('South field')).block!).details.reference).toBe('0042')
  office.book.renameSheet(idOf('South field'), 'Far field')
  expect(await client('Far field')).toBe('South trust (invented)')
})

test('documents of one inventory never offer to replace those of the other', async () => {
  const plan = samplePlan()
  const sheets = describeDocuments(['cut-plan'], plan, firstVisit(estimatePlan(plan)))
  const put = async (inventory: string) => {
    const result = await applySheets(sheets, { replace: true, inventory: [inventory] })
    return isProblem(result) ? result : result.written.map(({ sheetName }) => sheetName)
  }
  expect(await put('Trees')).toEqual(['Cut plan'])
  expect(await findOwnSheets(['Far field'])).toEqual([])
  expect(await put('Far field')).toEqual(['Cut plan (2)'])
  expect(await findOwnSheets(['Trees'])).toEqual([{ kind: 'cut-plan', sheetName: 'Cut plan' }])
  expect(await put('Trees')).toEqual(['Cut plan'])
  expect(await findOwnSheets(['Far field'])).toEqual([{ kind: 'cut-plan', sheetName: 'Cut plan (2)' }])
})
