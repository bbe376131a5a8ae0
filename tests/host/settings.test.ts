/** Document settings through the unmodified Office client library, and the members by which hidden columns are read. */
import { readSetting, keepSetting } from '../../src/excel/keptSettings'
import { startOffice, type OfficeInNode } from './officeInNode'
import { MemoryBook } from '../../src/workbench/memoryBook'

let office: OfficeInNode

beforeAll(async () => {
  const book = new MemoryBook('Trees')
  book.setSetting('from before', '{"version":1}')
  book.setSetting('of somebody else', { a: [1, 2] })
  office = await startOffice(book)
})

test('what the workbook kept is there when the library has started', () => {
  expect(readSetting('from before')).toBe('{"version":1}')
  expect(Office.context.document.settings.get('of somebody else')).toEqual({ a: [1, 2] })
  expect(readSetting('never kept')).toBeUndefined()
})

test('what is kept stands in the workbook, beside what stood there', async () => {
  expect(await keepSetting('answers', '{"field":"“tip” & more"}')).toBeNull()
  expect(office.book.settings()).toEqual({
    'from before': '{"version":1}',
    'of somebody else': { a: [1, 2] },
    answers: '{"field":"“tip” & more"}'
  })
  expect(readSetting('answers')).toBe('{"field":"“tip” & more"}')
})

test('nothing takes it away again', async () => {
  expect(await keepSetting('answers', null)).toBeNull()
  expect(Object.keys(office.book.settings())).not.toContain('answers')
  expect(readSetting('answers')).toBeUndefined()
})

test('a workbook that does not take it is a problem in a sentence', async () => {
  const take = office.book.setSetting.bind(office.book)
  office.book.setSetting = () => {
    throw new Error('The workbook is read only.')
  }
  const found = await keepSetting('answers', '{}')
  office.book.setSetting = take
  expect(found?.code).toBe('answers-not-kept')
  expect(found?.message).toMatch(/^The workbook does not keep the answers about columns: ./)
})

test('hidden columns are told: all, none, or null where they differ', async () => {
  office.book.hideColumns(office.book.activeSheet(), 2, 2)
  office.book.setValues(office.book.activeSheet(), { row: 0, column: 0, rows: 1, columns: 6 }, [
    [1, 2, 3, 4, 5, 6]
  ])
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem('Trees')
    const ranges = ['A1:B1', 'C1:D1', 'A1:F1'].map((address) => sheet.getRange(address).load('columnHidden'))
    await context.sync()
    expect(ranges.map(({ columnHidden }) => columnHidden)).toEqual([false, true, null])
  })
})
