import { keptText } from '../../src/inventory/keptAnswers'
import { readSheets } from '../../src/inventory/readSheets'
import { planInventory } from '../../src/plan/planInventory'
import { describeCutPlan } from '../../src/sheets/cut-plan/cutPlan'
import { sampleInventory } from '../../src/file/sampleInventory'
import { excelSurface } from '../../taskpane/excelSurface'
import type { Selected, Steps } from '../../taskpane/surface'
import { fill, startWith, type InventoryBook } from '../excel/inventorySheet'

/** The pane's side of the spreadsheet, through the unmodified Office library and the host in memory. */
let office: InventoryBook
const rows = sampleInventory.length
const columns = sampleInventory[0]!.length
const whole = `Trees!A1:V${String(rows)}`

beforeAll(async () => {
  office = await startWith()
})

const steps = (): Steps => ({ signal: new AbortController().signal, onProgress: () => undefined })

test('one cell means the inventory, and the cell itself is told too', async () => {
  office.select({ row: 4, column: 0 })
  const selected = await excelSurface.describeSelection()
  expect(selected).toMatchObject({ places: [{ address: whole, rows, columns }], range: null, problem: null })
  expect(selected.cells).toEqual({ sheet: 'Trees', row: 4, column: 0, rows: 1, columns: 1 })
})

test('what cannot be planned has its problem, and no cells where there are several areas', async () => {
  const area = { row: 0, column: 0, rows: 3, columns: 2 }
  office.book.selectAreas(office.sheetId, [area, { ...area, row: 10 }])
  const selected = await excelSurface.describeSelection()
  expect(selected).toMatchObject({ places: [], remark: '', cells: null })
  expect(selected.problem?.code).toBe('several-areas')
})

test('the selection is followed until it is no longer wanted', async () => {
  const seen: Selected[] = []
  const seenOne = () => new Promise<void>((resolve) => (next = resolve))
  let next: () => void = () => undefined
  const stop = await excelSurface.watchSelection((selected) => {
    seen.push(selected)
    next()
  })
  const first = seenOne()
  office.select({ row: 7, column: 0 })
  await first
  expect(seen.at(-1)?.cells?.row).toBe(7)
  await stop()
  const count = seen.length
  office.select({ row: 8, column: 0 })
  await excelSurface.describeSelection()
  expect(seen).toHaveLength(count)
})

test('the inventory and a range are read again, wherever the selection is', async () => {
  office.select({ row: 500, column: 60 })
  for (const wanted of ['selection', 'workbook', { range: whole }] as const) {
    const { read, problems } = await excelSurface.readInventory(wanted, steps())
    expect(problems).toEqual([])
    expect(read?.sheets).toMatchObject([{ name: 'Trees', top: 0, left: 0, rows: sampleInventory }])
    expect(read?.range).toBe(typeof wanted === 'string' ? null : whole)
  }
})

test('answers stay in the workbook, and what they say counts when sheets are looked at', async () => {
  const { id } = office.book.addSheet('Odd')
  office.book.setValues(id, { row: 0, column: 0, rows: 2, columns: 4 }, [
    ['Tree', 'Species', 'Vigor', 'Qq'],
    ['X1', 'Elm', 'good', 30]
  ])
  const found = async () =>
    (await excelSurface.describeSelection()).places.map(({ address }) => address.split('!')[0])
  office.book.selectAreas(id, [{ row: 0, column: 0, rows: 1, columns: 1 }])
  expect(await found()).toEqual(['Trees'])
  const text = keptText({ answers: [{ header: 'Qq', field: 'height' }] })
  expect(await excelSurface.keepAnswers(text)).toBeNull()
  expect(excelSurface.readAnswers()).toBe(text)
  expect(await found()).toEqual(['Trees', 'Odd'])
  expect(await excelSurface.keepAnswers(null)).toBeNull()
  expect(excelSurface.readAnswers()).toBeUndefined()
  office.book.deleteSheet(id)
})

test('an address that is gone is a problem, not an exception', async () => {
  const { read, problems } = await excelSurface.readInventory({ range: 'Gone!A1:B2' }, steps())
  expect(read).toBeNull()
  expect(problems[0]?.code).toBe('address-gone')
  expect((await excelSurface.goToCell('Gone!A1'))?.code).toBe('address-gone')
  expect(await excelSurface.goToCell('Trees!C5')).toBeNull()
  expect(office.book.selection().areas).toEqual([{ row: 4, column: 2, rows: 1, columns: 1 }])
})

test('a written sheet is named, found again, and not written over changed cells', async () => {
  const { read } = await excelSurface.readInventory('workbook', steps())
  const source = read!.sheets
  const plan = planInventory(readSheets(source), { date: '2031-03-02' })
  const sheets = [describeCutPlan(plan)]
  const options = { replace: false, inventory: [], source }
  expect(await excelSurface.writeSheets(sheets, options, steps())).toEqual({
    written: ['Cut plan'],
    problems: [],
    notes: []
  })
  expect(await excelSurface.findOwnSheets([])).toEqual([{ kind: 'cut-plan', sheetName: 'Cut plan' }])
  const trunk = { row: 1, column: 3, rows: 1, columns: 1 }
  office.book.setValues(office.sheetId, trunk, [[9.9]])
  const refused = await excelSurface.writeSheets(sheets, options, steps())
  expect(refused.written).toEqual([])
  expect(refused.problems.map(({ code }) => code)).toEqual(['range-changed'])
})

test('an inventory on two sheets is written only while both are unchanged', async () => {
  for (const { id } of office.book.sheets().slice(1)) office.book.deleteSheet(id)
  for (const { name } of office.book.names()) office.book.deleteName(name)
  office.book.clear(office.sheetId, { row: 0, column: 0, rows, columns })
  const trees = [
    ['Tree', 'Species', 'DBH (in)', 'Height (ft)', 'Crown base (ft)', 'Life stage', 'Vigor', 'Last pruned'],
    ['T1', 'Red oak', 8, 34, 8, 'young', 'good', 46082],
    ['T2', 'Red oak', 7, 30, 7, 'young', 'good', 46083]
  ]
  const limbs = [
    ['Tree', 'Limb', 'Limb dia (in)', 'Stem dia (in)', 'Origin (ft)', 'Tip (ft)'],
    ['T1', 'A', 3, 4, 12, 30],
    ['T2', 'A', 2, 4, 10, 26]
  ]
  fill(office, office.sheetId, trees)
  office.book.setNumberFormats(office.sheetId, { row: 1, column: 7, rows: 2, columns: 1 }, [
    ['yyyy-mm-dd'],
    ['yyyy-mm-dd']
  ])
  const { id } = office.book.addSheet('Limbs')
  fill(office, id, limbs)
  office.book.selectAreas(id, [{ row: 2, column: 2, rows: 1, columns: 1 }])
  const { read } = await excelSurface.readInventory('selection', steps())
  const source = read!.sheets
  const inventory = readSheets(source)
  expect(inventory.trees.map((tree) => [tree.id, tree.limbs.length, tree.height])).toEqual([
    ['T1', 1, 34 * 0.3048],
    ['T2', 1, 30 * 0.3048]
  ])
  const sheets = [describeCutPlan(planInventory(inventory, { date: '2031-03-02' }))]
  const write = () => excelSurface.writeSheets(sheets, { replace: true, inventory: [], source }, steps())
  const pruned = { row: 2, column: 7, rows: 1, columns: 1 }
  office.book.setValues(office.sheetId, pruned, [[46090]])
  const refused = await write()
  expect(refused.problems.map(({ code, cell }) => [code, cell])).toEqual([['range-changed', 'Trees!A1:H3']])
  office.book.setValues(office.sheetId, pruned, [[46083]])
  expect((await write()).written).toEqual(['Cut plan'])
})
