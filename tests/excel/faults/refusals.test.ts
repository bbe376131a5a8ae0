/** What a spreadsheet may do otherwise: members that it refuses, sheets that are no worksheets, days counted from 1904. */
import { isProblem } from '../../../src/excel/failures'
import { readInventorySheets } from '../../../src/excel/readInventorySheets'
import { describeSelection } from '../../../src/excel/selection'
import { showsInventory } from '../../../src/inventory/survey/showsInventory'
import type { SheetDescription } from '../../../src/sheets/sheet'
import { documentsOf, sentenceOf, startWriting, type WritingBook } from './writingBook'

let office: WritingBook
const documents = documentsOf('a')

beforeAll(async () => {
  office = await startWriting()
})
afterEach(() => {
  const { faults } = office.book
  faults.refusedMembers.clear()
  faults.chartSheets.clear()
  faults.countsFrom1904 = false
  faults.beforeRequest = null
  for (const { id, name } of office.book.sheets())
    if (name !== 'Trees' && name !== 'Mine') office.book.deleteSheet(id)
  for (const { name } of office.book.names()) office.book.deleteName(name)
})

const refusals: [member: string, missing: string][] = [
  ['TableCollection.add', 'a table on Cut plan'],
  ['Table.style', 'a table on Cut plan'],
  ['DataValidation.rule', 'a rule of what cells take on Cut plan'],
  ['ConditionalFormatCollection.add', 'a look that follows the cells on Cut plan'],
  ['ConditionalFormatRule.formula', 'a look that follows the cells on Cut plan'],
  ['ChartCollection.add', 'a chart on Cut plan'],
  ['ChartSeries.gapWidth', 'a chart on Cut plan'],
  ['ShapeCollection.addImage', 'a picture on Cut plan'],
  ['Shape.placement', 'a picture on Cut plan'],
  ['WorksheetFreezePanes.freezeRows', 'the frozen rows and columns on Cut plan'],
  ['PageLayout.zoom', 'the page set-up on Cut plan and the page set-up on Estimate working'],
  ['PageBreakCollection.add', 'the page breaks on Cut plan'],
  ['PageLayout.setPrintTitleRows', 'the headers on each page on Cut plan']
]

/** Everything on a sheet but what one refusal may cost. */
function kept(name: string) {
  const { book } = office
  const id = office.idOf(name)
  return {
    cells: office.hash(id),
    tables: book.tables().filter(({ sheetId }) => sheetId === id).length,
    rules: book.validations(id).length,
    looks: book.conditionalFormats(id).length,
    charts: book.charts(id).length,
    pictures: book.pictures(id).length,
    titleRows: book.page(id).titleRows,
    breaks: book.page(id).breaks
  }
}

test.each(refusals)(
  'where %s is refused, that is all that is missing, and one sentence names it',
  async (member, missing) => {
    await office.write(documents)
    const whole = kept('Cut plan')
    expect(whole).toMatchObject({ tables: 1, rules: 1, looks: 1, charts: 1, pictures: 1 })
    office.book.faults.refusedMembers.add(member)
    const result = await office.write(documentsOf('b'))
    expect(sentenceOf(result)).toBe(`Written without ${missing}: the spreadsheet did not take that.`)
    const now = kept('Cut plan')
    const other = Object.keys(whole).filter(
      (key) => key !== 'cells' && JSON.stringify(whole[key as never]) !== JSON.stringify(now[key as never])
    )
    expect(other.length).toBeLessThanOrEqual(1)
    expect(now.charts + now.pictures).toBeGreaterThanOrEqual(1)
    office.book.faults.refusedMembers.clear()
    const again = await office.write(documents)
    expect(!isProblem(again) && again.missing).toBeNull()
    expect(kept('Cut plan')).toEqual(whole)
  }
)

test('where the copy into the earlier sheet is refused, that sheet stands as it was, and new sheets can be written', async () => {
  await office.write(documents)
  const before = kept('Cut plan')
  office.book.faults.refusedMembers.add('Range.copyFrom')
  expect(isProblem(await office.write(documentsOf('b')))).toBe(true)
  expect(office.hash(office.idOf('Cut plan'))).toBe(before.cells)
  expect(office.drafts()).toEqual([])
  expect(office.names()).toEqual(['Trees', 'Mine', 'Cut plan', 'Estimate working'])
})

test('replacing keeps the sheet, so that what points at it still does', async () => {
  await office.write(documents)
  const { id } = office.book.sheets().find(({ name }) => name === 'Cut plan')!
  office.book.addName({ name: 'my_total', formula: "='Cut plan'!$B$4", visible: true })
  await office.write(documentsOf('c'))
  expect(office.idOf('Cut plan')).toBe(id)
  expect(office.book.names().find(({ name }) => name === 'my_total')!.formula).toBe("='Cut plan'!$B$4")
  // The longer plan is followed by the shorter one: nothing of the longer one is left below.
  await office.write(documents)
  expect(office.book.usedArea(id, true)).toEqual({ row: 0, column: 0, rows: 7, columns: 2 })
  expect(office.book.tables()).toHaveLength(1)
})

test('a chart sheet that has the name of a document keeps it', async () => {
  office.book.faults.chartSheets.add('Cut plan')
  const result = await office.write(documents)
  expect(!isProblem(result) && result.written.map(({ sheetName }) => sheetName)).toEqual([
    'Cut plan (2)',
    'Estimate working'
  ])
  expect(office.drafts()).toEqual([])
})

test('in a workbook that counts its days from 1904 a date is read and written as the same day', async () => {
  const dated: SheetDescription = {
    ...documents[0]!,
    rows: [['Cut plan'], ['Day'], [{ date: 46_083 }]],
    formats: [{ area: { row: 2, column: 0, rows: 1, columns: 1 }, format: { numberFormat: 'yyyy-mm-dd' } }],
    tables: [],
    charts: []
  }
  office.book.faults.countsFrom1904 = true
  await office.write([dated])
  const place = { row: 2, column: 0, rows: 1, columns: 1 }
  expect(office.book.values(office.idOf('Cut plan'), place)).toEqual([[46_083 - 1462]])
  const at = { row: 1, column: 13, rows: 1, columns: 1 }
  office.book.setNumberFormats(office.sheetId, at, [['yyyy-mm-dd']])
  office.book.setValues(office.sheetId, at, [[46_083 - 1462]])
  office.select({})
  const { sheets } = await readInventorySheets('selection', showsInventory)
  expect(sheets[0]!.rows[1]![13]).toBe('2026-03-02')
  office.book.clear(office.sheetId, at)
})

test('two panes that write at once leave whole documents of one of them', async () => {
  await office.write(documents)
  const results = await Promise.all([office.write(documentsOf('b')), office.write(documentsOf('c'))])
  expect(results.some((result) => !isProblem(result))).toBe(true)
  for (const result of results) if (isProblem(result)) expect(result.message).not.toBe('')
  const last = await office.write(documents)
  expect(!isProblem(last) && last.missing).toBeNull()
  expect(office.drafts()).toEqual([])
  expect(office.names()).toEqual(['Trees', 'Mine', 'Cut plan', 'Estimate working'])
})

test('a pane that was closed while it wrote leaves a hidden sheet, which the next writing takes away', async () => {
  let count = 0
  office.book.faults.beforeRequest = () => {
    if (++count === 12) office.book.faults.failingRequests = Infinity
  }
  const result = await office.write(documents)
  office.book.faults.failingRequests = 0
  office.book.faults.beforeRequest = null
  expect(isProblem(result) && result.code).toBe('drafts-left')
  expect(sentenceOf(result)).toContain('Begun for it and left hidden: Cut plan and Estimate working.')
  expect(
    office.book
      .sheets()
      .filter(({ visible }) => visible)
      .map(({ name }) => name)
  ).toEqual(['Trees', 'Mine'])
  office.select({})
  // What is left is no inventory, and the next writing is as if it had never been.
  expect((await describeSelection(showsInventory)).places.map(({ address }) => address)).toEqual([
    'Trees!A1:M3'
  ])
  expect(isProblem(await office.write(documents))).toBe(false)
  expect(office.names()).toEqual(['Trees', 'Mine', 'Cut plan', 'Estimate working'])
})

test('a sheet of the user’s that one of our names marks is not taken away', async () => {
  office.book.addName({ name: 'Limbwright_draft_1', formula: '=Mine!$A$1', visible: false })
  const before = office.hash(office.idOf('Mine'))
  expect(isProblem(await office.write(documents))).toBe(false)
  expect(office.hash(office.idOf('Mine'))).toBe(before)
})
