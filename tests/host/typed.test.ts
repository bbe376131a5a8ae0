/** Texts written into cells as if typed. Expected values are common practice, no source; not compared with Excel. */
import { shownText } from '../../src/workbench/memory/shownText'
import { readTyped } from '../../src/workbench/memory/typed'

test.each([
  ['12.5', 12.5],
  [' 1,250 ', 1250],
  ['-3', -3],
  ['1e3', 1000],
  ['.5', 0.5],
  ['true', true],
  ['#N/A', '#N/A'],
  ['oak', 'oak'],
  ['1_000', '1_000'],
  ['12 in', '12 in'],
  ['.', '.'],
  ['', null],
  ["'007", '007'],
  ["'=A1", '=A1']
])('%j becomes %j', (text, value) => {
  expect(readTyped(text, 'General')).toEqual({ value })
})

test('A tree id that reads like a number or a date is lost unless it is guarded', () => {
  expect(readTyped('007', 'General')).toEqual({ value: 7 })
  expect(readTyped('3-14', 'General')).toMatchObject({ value: expect.any(Number) as number })
  expect(readTyped("'3-14", 'General')).toEqual({ value: '3-14' })
  expect(readTyped('3-14', '@')).toEqual({ value: '3-14' })
})

test('A text that begins like a formula becomes one', () => {
  expect(readTyped('=A1', 'General')).toEqual({ formula: '=A1' })
  expect(readTyped('-A1', 'General')).toEqual({ formula: '=-A1' })
  expect(readTyped('@oak', 'General')).toEqual({ formula: '=@oak' })
})

test('Days are counted so that 2024-03-31 is 45382', () => {
  expect(readTyped('2024-03-31', 'General')).toEqual({ value: 45_382, numberFormat: 'm/d/yyyy' })
  expect(readTyped('2024-02-30', 'General')).toEqual({ value: '2024-02-30' })
})

test('A percentage is a share that shows as one', () => {
  expect(readTyped('25%', 'General')).toEqual({ value: 0.25, numberFormat: '0%' })
})

test.each([
  [0.25, '0%', '25%'],
  [1234.5, '#,##0.00', '1,234.50'],
  [1 / 3, '0.00', '0.33'],
  [45_382, 'yyyy-mm-dd', '2024-03-31'],
  [0.1 + 0.2, 'General', '0.3'],
  [true, 'General', 'TRUE'],
  [null, 'General', '']
])('%j in the format %s shows as %s', (value, format, text) => {
  expect(shownText(value, format)).toBe(text)
})
