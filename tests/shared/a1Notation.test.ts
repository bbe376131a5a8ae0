/** Addresses in A1 notation. */
import { sharedPart } from '../../shared/cells'
import { absoluteAddress, areaAddress, parseAddress, sheetColumns, sheetRows } from '../../shared/a1Notation'

test.each([
  ['B2', { row: 1, column: 1, rows: 1, columns: 1 }],
  ['$B$2:C4', { row: 1, column: 1, rows: 3, columns: 2 }],
  ['C4:B2', { row: 1, column: 1, rows: 3, columns: 2 }],
  ['XFD1048576', { row: 1_048_575, column: 16_383, rows: 1, columns: 1 }],
  ['AA:AB', { row: 0, column: 26, rows: sheetRows, columns: 2 }],
  ['$2:4', { row: 1, column: 0, rows: 3, columns: sheetColumns }]
])('%s is read', (text, area) => {
  expect(parseAddress(text)).toEqual({ sheet: null, area })
})

test.each(['', 'oak', 'A', '7', 'A1:B', 'A1:2', 'XFE1', 'A1048577', 'A0', 'A1:B2:C3', 'A1,B2', "'Trees'"])(
  '"%s" is no address of one area',
  (text) => {
    expect(parseAddress(text)).toBeNull()
  }
)

test('A sheet before the address is taken off, with its quotes', () => {
  expect(parseAddress("'Oak''s plan'!A1")?.sheet).toBe("Oak's plan")
  expect(parseAddress('Trees!A1')?.sheet).toBe('Trees')
})

test('What is written is read back', () => {
  for (const area of [
    { row: 0, column: 0, rows: 1, columns: 1 },
    { row: 7, column: 25, rows: 2, columns: 2 },
    { row: 0, column: 701, rows: sheetRows, columns: 3 },
    { row: 4, column: 0, rows: 6, columns: sheetColumns }
  ])
    expect(parseAddress(areaAddress(area))?.area).toEqual(area)
})

test('Names hold absolute addresses', () => {
  const area = { row: 0, column: 0, rows: 2, columns: 27 }
  expect(absoluteAddress('Cut plan', area)).toBe("'Cut plan'!$A$1:$AA$2")
})

test('Areas that do not meet share nothing', () => {
  const area = { row: 0, column: 0, rows: 2, columns: 2 }
  expect(sharedPart(area, { ...area, row: 2 })).toBeNull()
  expect(sharedPart(area, { ...area, row: 1, column: 1 })).toEqual({
    row: 1,
    column: 1,
    rows: 1,
    columns: 1
  })
})
