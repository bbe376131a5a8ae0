import { wholeProgram } from '../../src/price/offers'
import { estimatePlan } from '../../src/price/estimatePlan'
import { describeCutPlan } from '../../src/sheets/cut-plan/cutPlan'
import { describeEstimateSheets } from '../../src/sheets/estimate/estimateSheet'
import type { SheetDescription } from '../../src/sheets/sheet'
import { applySheets } from '../../src/excel/applySheets'
import { isProblem } from '../../src/excel/failures'
import { findOwnSheets } from '../../src/excel/ownSheetsInBook'
import { readInventorySheets } from '../../src/excel/readInventorySheets'
import { showsInventory } from '../../src/inventory/survey/showsInventory'
import { sampleInventory } from '../../src/file/sampleInventory'
import { metricRows, planOf, samplePlan } from '../sheets/samplePlan'
import { startWith, type InventoryBook } from './inventorySheet'

let office: InventoryBook
const plan = samplePlan()
const documents = [describeCutPlan(plan), ...describeEstimateSheets(wholeProgram(estimatePlan(plan)), plan)]

beforeAll(async () => {
  office = await startWith()
})

const sheetNames = () => office.book.sheets().map(({ name }) => name)
const sheetId = (name: string) => office.book.sheets().find((sheet) => sheet.name === name)!.id

function cells(name: string) {
  const area = office.book.usedArea(sheetId(name), true)!
  return office.book.values(sheetId(name), {
    row: 0,
    column: 0,
    rows: area.row + area.rows,
    columns: area.column + area.columns
  })
}

/** Takes away every sheet but the inventory, and our names with them. */
function clearBook(): void {
  for (const { id, name } of office.book.sheets()) if (name !== 'Trees') office.book.deleteSheet(id)
  for (const { name } of office.book.names()) office.book.deleteName(name)
}

async function written(
  options: Partial<Parameters<typeof applySheets>[1]> = {},
  what: SheetDescription[] = documents
) {
  const result = await applySheets(what, { replace: false, ...options })
  if (isProblem(result)) throw new Error(result.message)
  return result.written
}

async function refused(options: Partial<Parameters<typeof applySheets>[1]> = {}) {
  const result = await applySheets(documents, { replace: false, ...options })
  if (!isProblem(result)) throw new Error('It was written')
  return result
}

afterEach(() => {
  office.book.faults.protectedWorkbook = false
  office.book.faults.protectedSheets.clear()
  office.book.faults.cellEditRequests = 0
  office.book.faults.failingRequests = 0
  office.book.faults.beforeRequest = null
  clearBook()
})

describe('writing the documents', () => {
  test('each on a sheet of its own, found again by a hidden name; the plan is shown', async () => {
    expect(await written()).toEqual([
      { kind: 'cut-plan', sheetName: 'Cut plan' },
      { kind: 'estimate', sheetName: 'Estimate' },
      { kind: 'estimate-working', sheetName: 'Estimate working' }
    ])
    expect(sheetNames()).toEqual(['Trees', 'Cut plan', 'Estimate', 'Estimate working'])
    expect(office.book.activeSheet()).toBe(sheetId('Cut plan'))
    expect(office.book.names()).toContainEqual({
      name: 'Limbwright_cut_plan',
      formula: "='Cut plan'!$A$1",
      visible: false
    })
    expect(await findOwnSheets()).toEqual([
      { kind: 'cut-plan', sheetName: 'Cut plan' },
      { kind: 'estimate', sheetName: 'Estimate' },
      { kind: 'estimate-working', sheetName: 'Estimate working' }
    ])
  })

  test('leaves the inventory as it was', async () => {
    await written()
    expect(cells('Trees').map((row) => row.map((cell) => cell ?? null))).toEqual(sampleInventory)
  })

  test('tells of progress up to the end', async () => {
    const seen: [number, number][] = []
    await written({ onProgress: (done, total) => seen.push([done, total]) })
    const [done, total] = seen.at(-1)!
    expect(done).toBe(total)
    expect(total).toBe(documents.reduce((sum, { rows, widths }) => sum + rows.length * widths.length, 0))
  })

  test('a sheet of the user’s with the same name is left alone', async () => {
    const own = office.book.addSheet('Cut plan')
    office.book.setValues(own.id, { row: 0, column: 0, rows: 1, columns: 1 }, [['mine']])
    const [first] = await written({ replace: true })
    expect(first!.sheetName).toBe('Cut plan (2)')
    expect(cells('Cut plan')).toEqual([['mine']])
  })

  test('without replacing, an earlier plan stays and the new one stands beside it', async () => {
    await written()
    const again = await written()
    expect(again.map(({ sheetName }) => sheetName)).toEqual([
      'Cut plan (2)',
      'Estimate (2)',
      'Estimate working (2)'
    ])
    expect(sheetNames()).toEqual([
      'Trees',
      ...['Cut plan', 'Estimate', 'Estimate working'],
      ...['Cut plan (2)', 'Estimate (2)', 'Estimate working (2)']
    ])
    const hidden = office.book.sheets().filter(({ visible }) => !visible)
    expect(hidden.map(({ name }) => name)).toEqual(['Estimate working', 'Estimate working (2)'])
    expect((await findOwnSheets()) as unknown[]).toHaveLength(6)
    const tables = office.book.tables().map(({ name }) => name)
    expect(new Set(tables).size).toBe(4)
  })

  test('with replacing, the earlier plan makes way and keeps its name, table and place in the book', async () => {
    await written()
    const other = planOf(metricRows(), 'Trees')
    const next = [describeCutPlan(other), ...describeEstimateSheets(wholeProgram(estimatePlan(other)), other)]
    const again = await written({ replace: true }, next)
    expect(again.map(({ sheetName }) => sheetName)).toEqual(['Cut plan', 'Estimate', 'Estimate working'])
    expect(sheetNames().sort()).toEqual(['Cut plan', 'Estimate', 'Estimate working', 'Trees'])
    expect(cells('Cut plan').flat()).toContain('M1')
    expect(cells('Cut plan').flat()).not.toContain('T03')
    expect(
      office.book
        .tables()
        .map(({ name }) => name)
        .sort()
    ).toEqual(['CutPlan', 'EstimateLines'])
    expect((await findOwnSheets()) as unknown[]).toHaveLength(3)
  })

  test('a sheet of ours that was renamed is replaced under its new name', async () => {
    await written()
    const id = sheetId('Cut plan')
    office.book.renameSheet(id, 'Spring plan')
    office.book.changeName('Limbwright_cut_plan', { formula: "='Spring plan'!$A$1" })
    const [first] = await written({ replace: true })
    expect(first!.sheetName).toBe('Spring plan')
  })

  test('a name of ours that points at a sheet of the user’s does not make it ours', async () => {
    await written()
    office.book.changeName('Limbwright_cut_plan', { formula: '=Trees!$A$1' })
    const [first] = await written({ replace: true })
    expect(first!.sheetName).toBe('Cut plan (2)')
    expect(cells('Trees')[0]![0]).toBe('Tree')
  })

  test('a name whose sheet was deleted is used again', async () => {
    await written()
    office.book.deleteSheet(sheetId('Cut plan'))
    office.book.changeName('Limbwright_cut_plan', { formula: '=#REF!' })
    await written({}, [documents[0]!])
    expect(office.book.names().find(({ name }) => name === 'Limbwright_cut_plan')!.formula).toBe(
      "='Cut plan'!$A$1"
    )
  })

  test('a text that begins like a formula is written as text', async () => {
    const rows = metricRows()
    rows[1]![1] = '=1+1'
    rows[1]![0] = '3-2'
    rows[2]![0] = '3-2'
    await written({}, [describeCutPlan(planOf(rows))])
    const flat = cells('Cut plan').flat()
    expect(flat).toContain('=1+1')
    expect(flat).toContain('3-2')
    const id = sheetId('Cut plan')
    const area = office.book.usedArea(id, true)!
    const formulas = office.book.formulas(id, area).flat()
    expect(
      formulas.filter((cell) => typeof cell === 'string' && cell.startsWith('=') && cell !== '=1+1')
    ).toEqual([])
    expect(office.book.texts(id, area).flat()).toContain('=1+1')
  })
})

describe('nothing is written', () => {
  test('where the workbook is protected', async () => {
    office.book.faults.protectedWorkbook = true
    expect((await refused()).code).toBe('sheet-protected')
    expect(sheetNames()).toEqual(['Trees'])
  })

  test('over a sheet of ours that somebody protected', async () => {
    await written()
    office.book.faults.protectedSheets.add(sheetId('Cut plan'))
    const before = cells('Cut plan')
    const problem = await refused({ replace: true })
    expect(problem.code).toBe('sheet-protected')
    expect(problem.message).toContain('Cut plan')
    expect(sheetNames()).toEqual(['Trees', 'Cut plan', 'Estimate', 'Estimate working'])
    expect(cells('Cut plan')).toEqual(before)
  })

  test('while a cell is being edited', async () => {
    office.book.faults.cellEditRequests = 1
    expect((await refused()).code).toBe('cell-editing')
    expect(sheetNames()).toEqual(['Trees'])
  })

  test('when the inventory changed since it was read', async () => {
    office.select({ rows: 1048576, columns: 16384 })
    const { sheets } = await readInventorySheets('selection', showsInventory)
    const area = { row: 2, column: 13, rows: 1, columns: 1 }
    const before = office.book.values(office.sheetId, area)
    office.book.setValues(office.sheetId, area, [[77]])
    const problem = await refused({ source: sheets })
    expect(problem.code).toBe('range-changed')
    expect(problem.cell).toMatch(/^Trees!A1:V/)
    expect(sheetNames()).toEqual(['Trees'])
    office.book.setValues(office.sheetId, area, before)
    expect(await written({ source: sheets })).toHaveLength(3)
  })

  test('when a co-author changes the inventory while the sheets are being written', async () => {
    office.select({ rows: 1048576, columns: 16384 })
    const { sheets } = await readInventorySheets('selection', showsInventory)
    const area = { row: 2, column: 13, rows: 1, columns: 1 }
    const before = office.book.values(office.sheetId, area)
    const change = () => {
      if (office.book.sheets().length > 2) office.book.setValues(office.sheetId, area, [[78]])
    }
    office.book.faults.beforeRequest = change
    expect((await refused({ source: sheets })).code).toBe('range-changed')
    office.book.faults.beforeRequest = null
    office.book.setValues(office.sheetId, area, before)
    expect(sheetNames()).toEqual(['Trees'])
  })
})

describe('a half-written sheet never stays', () => {
  test('when it is canceled between two requests', async () => {
    await written()
    const before = cells('Cut plan')
    const stop = new AbortController()
    const writing = applySheets(documents, {
      replace: true,
      signal: stop.signal,
      onProgress: () => {
        stop.abort()
      }
    })
    await expect(writing).rejects.toMatchObject({ name: 'AbortError' })
    expect(sheetNames()).toEqual(['Trees', 'Cut plan', 'Estimate', 'Estimate working'])
    expect(cells('Cut plan')).toEqual(before)
  })
})
